// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * The least distance of two bodies over all settings of the drives between them, by branch and bound: in a box of
 * settings they are nowhere nearer than in its middle less what the drives can move them by, half its width times
 * their reach. The box with the least bound is halved first, along the drive that moves most. Between the steps the
 * nearest setting found is followed downhill, so that a place where they touch is found long before its box is small.
 *
 * <p>Whether one body lies within the other is asked once: at every other setting it would have to pass through the
 * other's surface first.
 */
public final class LeastDistance {
    private static final int LOOK = 256;
    /** Downhill first at this number of poses, then whenever it has doubled. */
    private static final int FIRST_DESCENT = 64;

    /** Settings looked at before the first descent: middle and ends of four drives. */
    private static final int MOST_STARTS = 81;

    private static final double FINEST_STEP = 1e-8;

    private final Nearness nearness;
    private final DrivenPose driven;
    private final double[] from;
    private final double[] to;
    private final Ask ask;
    private final Watch watch;
    private final double chords;
    private final PriorityQueue<Box> boxes =
            new PriorityQueue<>(Comparator.comparingDouble(Box::bound).thenComparingInt(Box::number));

    private int poses;
    private boolean stopped;
    private double done;
    /** Least bound of the boxes that need not be halved any more. */
    private double leftBound = Double.POSITIVE_INFINITY;

    private double least = Double.POSITIVE_INFINITY;
    private double[] setting;
    private Near near;
    private int nextDescent = FIRST_DESCENT;
    private double descended = Double.POSITIVE_INFINITY;

    /** Settings from one corner to the other; they are nowhere nearer than the bound. */
    private record Box(double[] from, double[] to, double bound, double share, Near.Pair hint, int number) {}

    /**
     * A search to be run once.
     *
     * @param from least value of every drive
     * @param to greatest value of every drive
     */
    public LeastDistance(Nearness nearness, DrivenPose driven, double[] from, double[] to, Ask ask, Watch watch) {
        for (int i = 0; i < from.length; i++) {
            if (!(from[i] <= to[i]) || Double.isInfinite(to[i] - from[i])) {
                throw new IllegalArgumentException("drive " + i + " runs from " + from[i] + " to " + to[i]);
            }
        }
        this.nearness = nearness;
        this.driven = driven;
        this.from = from.clone();
        this.to = to.clone();
        this.ask = ask;
        this.watch = watch;
        this.chords = nearness.chords();
    }

    /** Searches until what was asked is proved or refuted, poses run out, or the watch stops it. */
    public Outcome find() {
        double distance = first();
        double bound = distance - move(from, to) - Nearness.EXACT;
        if (least > ask.slack() && bound < goal()) {
            begin();
            boxes.add(new Box(from, to, bound, 1, near.pair(), 0));
        } else {
            leftBound = bound;
            done = 1;
            begin();
        }
        while (!boxes.isEmpty() && goesOn()) {
            Box box = boxes.poll();
            if (box.bound >= goal()) {
                leave(box.bound, box.share);
            } else {
                halve(box);
            }
            if (poses >= nextDescent) {
                nextDescent = 2 * poses;
                descend();
            }
        }
        return outcome();
    }

    /** What the bound has to reach. */
    private double goal() {
        double asked = ask.least() - ask.slack();
        return least < asked ? least - ask.settle() : asked;
    }

    private boolean goesOn() {
        return !stopped && least > ask.slack() && poses < ask.budget();
    }

    private double first() {
        double[] middle = middle(from, to);
        double distance = look(middle, Double.POSITIVE_INFINITY, null);
        Pose pose = driven.secondInFirst(middle);
        Optional<Vector> inside = distance > 0 ? nearness.within(pose) : Optional.empty();
        if (inside.isPresent()) {
            near = new Near(0, inside.get(), inside.get(), near.pair());
            least = 0;
        }
        return least;
    }

    /** The distance at a setting, or the limit where they are not nearer; what is nearest so far is kept. */
    private double look(double[] at, double limit, Near.Pair hint) {
        if (hint != null) {
            nearness.beginWith(hint);
        }
        Optional<Near> found = nearness.surfaces(driven.secondInFirst(at), limit + chords);
        poses++;
        double distance = found.isPresent() ? Math.max(0, found.get().distance() - chords) : limit;
        if (found.isPresent() && distance < least) {
            least = distance;
            near = found.get();
            setting = at.clone();
        }
        if (poses % LOOK == 0) {
            stopped |= !watch.goesOn(done, least, bound());
        }
        return distance;
    }

    private void halve(Box box) {
        int drive = widest(box);
        double middle = (box.from[drive] + box.to[drive]) / 2;
        if (!(middle > box.from[drive] && middle < box.to[drive])) {
            // as narrow as numbers can be: it stays as near as it is
            leave(box.bound, box.share);
            return;
        }
        for (int side = 0; side < 2; side++) {
            double[] low = box.from.clone();
            double[] high = box.to.clone();
            (side == 0 ? high : low)[drive] = middle;
            double move = move(low, high);
            double limit = goal() + move + 2 * Nearness.EXACT;
            double distance = limit > 0 ? look(middle(low, high), limit, box.hint) : limit;
            double bound = Math.max(box.bound, distance - move - Nearness.EXACT);
            if (bound >= goal()) {
                leave(bound, box.share / 2);
            } else {
                boxes.add(new Box(low, high, bound, box.share / 2, nearness.last(), 2 * poses + side));
            }
        }
    }

    private void leave(double bound, double share) {
        leftBound = Math.min(leftBound, bound);
        done += share;
    }

    private int widest(Box box) {
        int widest = 0;
        double most = -1;
        for (int i = 0; i < from.length; i++) {
            double move = driven.reach(i, box.from, box.to) * (box.to[i] - box.from[i]);
            if (move > most) {
                most = move;
                widest = i;
            }
        }
        return widest;
    }

    /** How far the bodies can move relative to one another from the middle of a box to anywhere in it, at most, mm. */
    private double move(double[] low, double[] high) {
        double move = 0;
        for (int i = 0; i < low.length; i++) {
            move += driven.reach(i, low, high) * (high[i] - low[i]) / 2;
        }
        return move;
    }

    private static double[] middle(double[] low, double[] high) {
        double[] middle = new double[low.length];
        for (int i = 0; i < low.length; i++) {
            middle[i] = (low[i] + high[i]) / 2;
        }
        return middle;
    }

    /** Downhill from the nearest of the middles and ends of the drives. */
    private void begin() {
        int many = 1;
        for (int i = 0; i < from.length && many <= MOST_STARTS; i++) {
            many *= 3;
        }
        for (int n = 0; n < Math.min(many, MOST_STARTS) && goesOn(); n++) {
            double[] at = middle(from, to);
            for (int i = 0, rest = n; i < at.length; i++, rest /= 3) {
                at[i] = rest % 3 == 0 ? at[i] : rest % 3 == 1 ? from[i] : to[i];
            }
            look(at, least, null);
        }
        descend();
    }

    /** From the nearest setting on, one drive at a time by ever smaller steps, to where none comes nearer. */
    private void descend() {
        if (!(least < descended)) {
            return;
        }
        for (double step = 0.25; step > FINEST_STEP && goesOn(); step /= 2) {
            boolean nearer = true;
            while (nearer && goesOn()) {
                nearer = false;
                for (int i = 0; i < 2 * from.length; i++) {
                    double[] at = setting.clone();
                    double by = (i % 2 == 0 ? step : -step) * (to[i / 2] - from[i / 2]);
                    at[i / 2] = Math.max(from[i / 2], Math.min(to[i / 2], at[i / 2] + by));
                    double before = least;
                    nearer |= at[i / 2] != setting[i / 2] && look(at, before, null) < before;
                }
            }
        }
        descended = least;
    }

    private double bound() {
        double open = boxes.isEmpty() ? Double.POSITIVE_INFINITY : boxes.peek().bound;
        return Math.max(0, Math.min(least, Math.min(leftBound, open)));
    }

    private Outcome outcome() {
        Outcome.State state = Outcome.State.OPEN;
        if (least <= ask.slack()) {
            state = Outcome.State.TOUCHING;
        } else if (least < ask.least() - ask.slack()) {
            state = Outcome.State.NEARER;
        } else if (boxes.isEmpty() && leftBound >= ask.least() - ask.slack()) {
            state = Outcome.State.PROVED;
        }
        return new Outcome(state, setting, least, near, bound(), poses);
    }
}
