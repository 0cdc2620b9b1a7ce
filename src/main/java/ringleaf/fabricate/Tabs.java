// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Winding;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * Places along an outer contour where it is not cut, so that the piece stays in its sheet: spread as evenly as the
 * working edges allow, and never on one of those.
 */
final class Tabs {
    private static final int OFFSETS = 48;
    private static final int LEAST_STATIONS = 400;

    private final Contour contour;
    private final double length;
    private final double[] starts;

    private Tabs(Contour contour) {
        this.contour = contour;
        this.length = contour.length();
        starts = new double[contour.segments().size()];
        double at = 0;
        for (int i = 0; i < starts.length; i++) {
            starts[i] = at;
            at += contour.segments().get(i).length();
        }
    }

    /**
     * The middles of the tabs as lengths along the contour, in order; fewer than asked for where there is no room.
     *
     * @param working regions in which the contour must be cut
     * @param width of the stretch that is left out, mm
     */
    static List<Double> places(Contour contour, List<Region> working, int count, double width) {
        return new Tabs(contour).spread(working, count, width);
    }

    private List<Double> spread(List<Region> working, int count, double width) {
        int n = Math.max(LEAST_STATIONS, (int) Math.ceil(8 * length / width));
        boolean[] free = new boolean[n];
        for (int i = 0; i < n; i++) {
            free[i] = isFree(pointAt((i + 0.5) * length / n), working);
        }
        boolean[] room = new boolean[n];
        int half = (int) Math.ceil(width / 2 / length * n) + 1;
        for (int i = 0; i < n; i++) {
            boolean all = 2 * half < n;
            for (int k = -half; all && k <= half; k++) {
                all = free[Math.floorMod(i + k, n)];
            }
            room[i] = all;
        }
        List<Integer> best = List.of();
        long bestOff = Long.MAX_VALUE;
        for (int offset = 0; offset < OFFSETS; offset++) {
            List<Integer> chosen = new ArrayList<>();
            long off = 0;
            for (int i = 0; i < count; i++) {
                int ideal = (int) (((long) i * OFFSETS + offset) * n / ((long) count * OFFSETS));
                int nearest = nearest(room, ideal, chosen, 2 * half + 1);
                if (nearest >= 0) {
                    chosen.add(nearest);
                    long away = Math.min(Math.floorMod(nearest - ideal, n), Math.floorMod(ideal - nearest, n));
                    off += away * away;
                }
            }
            if (chosen.size() > best.size() || chosen.size() == best.size() && off < bestOff) {
                best = chosen;
                bestOff = off;
            }
        }
        List<Double> places = new ArrayList<>();
        for (int station : best) {
            places.add((station + 0.5) * length / n);
        }
        places.sort(Double::compare);
        return places;
    }

    private static int nearest(boolean[] room, int ideal, List<Integer> chosen, int apart) {
        int n = room.length;
        for (int k = 0; k <= n / 2; k++) {
            for (int side = -1; side <= 1; side += 2) {
                int at = Math.floorMod(ideal + side * k, n);
                boolean good = room[at];
                for (int i = 0; good && i < chosen.size(); i++) {
                    int way = Math.floorMod(at - chosen.get(i), n);
                    good = Math.min(way, n - way) > apart;
                }
                if (good) {
                    return at;
                }
            }
        }
        return -1;
    }

    private static boolean isFree(Point p, List<Region> working) {
        for (Region region : working) {
            if (Winding.of(region, p) > 0) {
                return false;
            }
        }
        return true;
    }

    private Point pointAt(double along) {
        int i = piece(along);
        Segment segment = contour.segments().get(i);
        return segment.pointAt(Math.min(1, (along - starts[i]) / segment.length()));
    }

    private int piece(double along) {
        int i = starts.length - 1;
        while (i > 0 && starts[i] > along) {
            i--;
        }
        return i;
    }

    /** What is cut between the tabs, in the contour's own sense; arcs stay on their circles. */
    static List<Path> cuts(Contour contour, List<Double> places, double width) {
        Tabs tabs = new Tabs(contour);
        List<Path> cuts = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            double from = places.get(i) + width / 2;
            double to = places.get((i + 1) % places.size()) - width / 2;
            if (i + 1 == places.size()) {
                to += tabs.length;
            }
            cuts.add(tabs.part(from, to));
        }
        return cuts;
    }

    private Path part(double from, double to) {
        List<Segment> pieces = new ArrayList<>();
        double hair = 1e-9 * length;
        int n = starts.length;
        int turn = from >= length ? 1 : 0;
        int i = piece(from - turn * length);
        while (true) {
            Segment segment = contour.segments().get(i);
            double start = starts[i] + turn * length;
            double end = start + segment.length();
            double a = Math.max(0, (from - start) / segment.length());
            double b = Math.min(1, (to - start) / segment.length());
            if ((b - a) * segment.length() > hair) {
                Segment part = a == 0 && b == 1 ? segment : segment.part(a, b);
                Point begin = pieces.isEmpty()
                        ? part.start()
                        : pieces.get(pieces.size() - 1).end();
                pieces.add(part.withEnds(begin, part.end()));
            }
            if (to <= end + hair) {
                return new Path(pieces);
            }
            i++;
            if (i == n) {
                i = 0;
                turn++;
            }
        }
    }
}
