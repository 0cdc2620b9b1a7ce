// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.ToDoubleBiFunction;
import ringleaf.geom.Point;

/**
 * The least distance of two mechanisms over all settings of their drives, by branch and bound: where a box of settings
 * has distance d in its middle, nowhere in it is less than d minus how far either outline goes within the box. So the
 * least distance found is one that is there, and the bound one below which none is, between states as well.
 *
 * <p>Outlines that stand at different heights are judged by both: they are prisms along one axis, so their distance is
 * the hypotenuse of the distance seen along the axis and of that of their heights.
 */
final class Neighbours {
    /** What surely stands so far beyond what is asked is looked at no more than {@link #ENOUGH} times, mm. */
    private static final double FAR = 5;

    private static final int ENOUGH = 1000;
    /** The bound comes so near to what was found, as a share. */
    private static final double NEAR = 0.95;
    /** Boxes in which nothing goes further than this are not divided, mm. */
    private static final double FINEST = 1e-5;
    /** Looks after a contact was found, for a deeper one. */
    private static final int AFTER_CONTACT = 12;

    /** Two outlines, by how much their heights are apart, and the distance that will do. */
    private record Pair(Rider first, Rider second, double apart, double enough) {}

    /** Settings to either side of a middle, and by how much the pair at least has more than will do there. */
    private record Box(Pair pair, double[] middle, double[] half, double bound, int number) {}

    private final List<Course> drives;
    private final ToDoubleBiFunction<Rider, Rider> least;
    private final double tolerance;
    private final int most;
    private final PriorityQueue<Box> open =
            new PriorityQueue<>(Comparator.comparingDouble(Box::bound).thenComparingInt(Box::number));
    private int boxes;
    private int looks;
    private double closed = Double.POSITIVE_INFINITY;
    /** Two that never move against each other and share an area, whichever most deeply. */
    private Nearest joined;

    private Nearest nearest;
    /** By how much the nearest has more than will do, mm. */
    private double margin = Double.POSITIVE_INFINITY;

    /**
     * What was found.
     *
     * @param least that is asked for, mm
     * @param distance the least that was found, mm; negative where they run into each other, and how deep at least
     * @param bound below which it is nowhere, mm
     * @param settings of the drives there
     * @param at in the common plane
     */
    record Nearest(
            Rider first, Rider second, double least, double distance, double bound, double[] settings, Point at) {
        Nearest withBound(double proved) {
            return new Nearest(first, second, least, distance, proved, settings, at);
        }
    }

    /**
     * @param drives that move any of the outlines
     * @param least distance that is asked for between two, mm; 0 for some room
     * @param most times that two outlines are compared
     */
    Neighbours(List<Course> drives, ToDoubleBiFunction<Rider, Rider> least, double tolerance, int most) {
        this.drives = drives;
        this.least = least;
        this.tolerance = tolerance;
        this.most = most;
    }

    /** Adds all pairs of outlines of two lists, which are in one common plane. */
    void add(List<Rider> first, List<Rider> second) {
        for (Rider a : first) {
            for (Rider b : second) {
                double apart = Math.max(b.zFrom - a.zTo, a.zFrom - b.zTo);
                double asked = least.applyAsDouble(a, b);
                Pair pair = new Pair(a, b, apart, asked > 0 ? asked - tolerance : tolerance);
                if (a.isStill() && b.isStill()) {
                    addJoined(pair);
                } else {
                    double[] middle = new double[drives.size()];
                    double[] half = new double[drives.size()];
                    for (int i = 0; i < half.length; i++) {
                        middle[i] = half[i] = moves(pair, i) ? drives.get(i).last() / 2.0 : 0;
                    }
                    push(pair, middle, half, inSpace(a.gapTo(b), apart) - pair.enough);
                }
            }
        }
    }

    private static boolean moves(Pair pair, int drive) {
        return pair.first.isMovedBy(drive) || pair.second.isMovedBy(drive);
    }

    /** What never moves against each other may touch, and is only wrong where it takes the same room. */
    private void addJoined(Pair pair) {
        if (pair.apart >= -tolerance) {
            return;
        }
        double[] none = new double[drives.size()];
        Reach reach = Reach.of(pair.first.at(none), pair.second.at(none), 0, tolerance);
        double deep = Math.max(reach.distance(), pair.apart);
        if (reach.distance() < -tolerance && (joined == null || deep < joined.distance)) {
            joined = new Nearest(pair.first, pair.second, 0, deep, deep, none, reach.at());
        }
    }

    /** Distance of two prisms; where they share heights, that seen along the axis. */
    private static double inSpace(double flat, double apart) {
        return apart <= 0 ? flat : Math.hypot(Math.max(0, flat), apart);
    }

    private void push(Pair pair, double[] middle, double[] half, double bound) {
        open.add(new Box(pair, middle, half, bound, boxes++));
    }

    /** The nearest two, with what is proved; null where nothing moves and nothing takes the same room. */
    Nearest search() {
        if (joined != null) {
            return joined;
        }
        int contact = -1;
        while (!open.isEmpty() && Math.min(open.peek().bound, closed) < wanted()) {
            boolean found = nearest != null && margin < 0;
            contact = found && contact < 0 ? looks : contact;
            if (looks >= most || found && looks >= contact + AFTER_CONTACT || closed < open.peek().bound) {
                break;
            }
            look(open.poll());
        }
        double bound = open.isEmpty() ? closed : Math.min(closed, open.peek().bound);
        return nearest == null ? null : nearest.withBound(nearest.distance - margin + Math.min(bound, margin));
    }

    /** The bound from which on nothing more need be known. */
    private double wanted() {
        if (nearest == null) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.max(0, looks < ENOUGH ? NEAR * margin : Math.min(NEAR * margin, FAR));
    }

    private void look(Box box) {
        looks++;
        double way = 0;
        int widest = -1;
        double most = 0;
        for (int i = 0; i < box.half.length; i++) {
            if (box.half[i] > 0) {
                double own = box.pair.first.way(i, box.middle[i], box.half[i])
                        + box.pair.second.way(i, box.middle[i], box.half[i]);
                way += own;
                widest = widest < 0 || own > most ? i : widest;
                most = Math.max(most, own);
            }
        }
        Pair pair = box.pair;
        double interest = nearest == null ? Double.POSITIVE_INFINITY : Math.max(margin, FAR) + pair.enough + way;
        Reach reach = Reach.of(pair.first.at(box.middle), pair.second.at(box.middle), interest, tolerance);
        double distance = reach.distance() < 0 && pair.apart <= 0
                ? Math.max(reach.distance(), Math.min(pair.apart, -0.0))
                : inSpace(reach.distance(), pair.apart);
        if (nearest == null || distance - pair.enough < margin) {
            margin = distance - pair.enough;
            double asked = least.applyAsDouble(pair.first, pair.second);
            nearest = new Nearest(pair.first, pair.second, asked, distance, distance, box.middle, reach.at());
        }
        double bound = Math.max(box.bound, inSpace(reach.distance() - way, pair.apart) - pair.enough);
        if (way <= FINEST) {
            closed = Math.min(closed, bound);
            return;
        }
        double half = box.half[widest] / 2;
        for (int side = -1; side <= 1; side += 2) {
            double[] middle = box.middle.clone();
            double[] halves = box.half.clone();
            middle[widest] += side * half;
            halves[widest] = half;
            push(pair, middle, halves, bound);
        }
    }
}
