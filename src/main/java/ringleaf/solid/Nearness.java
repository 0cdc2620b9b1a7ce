// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import java.util.Arrays;
import java.util.Optional;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * How near a second solid comes to a first one, pose by pose. Goes down both trees of boxes at once and leaves out
 * every pair of boxes that is not nearer than what was found (Larsen and others, 1999), beginning with the pair of
 * triangles that was nearest last. The distance is exact to {@value #EXACT} mm and rounding.
 *
 * <p>Keeps what it needs from pose to pose: for one thread.
 */
public final class Nearness {
    /** Boxes that are nearer by less than this are left out, mm: faces that lie at one distance are not all compared. */
    static final double EXACT = 1e-9;

    /** The direction of parting is taken anew where the squared distance has fallen to less than this share. */
    private static final double RENEWED = 1 - 1e-6;

    private final BoxTree first;
    private final BoxTree second;
    private final Solid firstSolid;
    private final Solid secondSolid;
    private final TrianglePair pair = new TrianglePair();
    private final double[] onFirst = new double[3];
    private final double[] onSecond = new double[3];
    private final PlacedBoxes placed;
    private final Parting firstReach;
    private final Parting secondReach;
    private boolean parted;
    private double partedAt;

    private int[] stack = new int[256];
    private double[] bounds = new double[128];
    private double least;
    private double cut;
    private boolean anyWillDo;
    private int foundFirst;
    private int foundSecond;
    private int hintFirst;
    private int hintSecond;

    public Nearness(Solid first, Solid second) {
        this.firstSolid = first;
        this.secondSolid = second;
        this.first = first.tree();
        this.second = second.tree();
        placed = new PlacedBoxes(second.tree());
        firstReach = new Parting(first.tree());
        secondReach = new Parting(second.tree());
    }

    /** Both solids' chord errors, by which true surfaces may be nearer than their meshes, mm. */
    public double chords() {
        return firstSolid.chord() + secondSolid.chord();
    }

    /**
     * How near they are, where one inside the other touches too.
     *
     * @param secondInFirst where the second one's frame is in that of the first
     */
    public Near at(Pose secondInFirst) {
        Near near = surfaces(secondInFirst, Double.POSITIVE_INFINITY).orElseThrow();
        if (near.distance() <= EXACT) {
            return near;
        }
        Optional<Vector> inside = within(secondInFirst);
        return inside.map(point -> new Near(0, point, point, near.pair())).orElse(near);
    }

    /** Whether the solids are farther apart than this distance, mm; inside one another they are not. */
    public boolean isFarther(Pose secondInFirst, double distance) {
        anyWillDo = true;
        boolean nothing = surfaces(secondInFirst, distance).isEmpty();
        anyWillDo = false;
        return nothing && within(secondInFirst).isEmpty();
    }

    /**
     * How near the surfaces are, whether or not one lies inside the other.
     *
     * @return empty where they are not nearer than the limit
     */
    public Optional<Near> surfaces(Pose secondInFirst, double limit) {
        placed.place(secondInFirst);
        parted = false;
        least = limit < Double.POSITIVE_INFINITY ? limit * limit : limit;
        cut = limit < Double.POSITIVE_INFINITY ? Math.max(0, limit - EXACT) * Math.max(0, limit - EXACT) : limit;
        foundFirst = -1;
        if (limit > 0) {
            compare(hintFirst, hintSecond);
            search();
        }
        if (foundFirst < 0) {
            return Optional.empty();
        }
        hintFirst = foundFirst;
        hintSecond = foundSecond;
        return Optional.of(
                new Near(Math.sqrt(least), vector(onFirst), vector(onSecond), new Near.Pair(foundFirst, foundSecond)));
    }

    /** Begins the next search with these triangles. */
    void beginWith(Near.Pair hint) {
        hintFirst = hint.first();
        hintSecond = hint.second();
    }

    /** The triangles that were nearest when some were found last. */
    Near.Pair last() {
        return new Near.Pair(hintFirst, hintSecond);
    }

    /** A point of one that lies inside the other, in the first one's frame, where their surfaces do not meet. */
    Optional<Vector> within(Pose secondInFirst) {
        for (Vector corner : secondSolid.shells()) {
            if (firstSolid.contains(secondInFirst.apply(corner))) {
                return Optional.of(secondInFirst.apply(corner));
            }
        }
        Pose back = secondInFirst.inverse();
        for (Vector corner : firstSolid.shells()) {
            if (secondSolid.contains(back.apply(corner))) {
                return Optional.of(corner);
            }
        }
        return Optional.empty();
    }

    private static Vector vector(double[] v) {
        return new Vector(v[0], v[1], v[2]);
    }

    /** Pairs of boxes, the nearer of two first, on a stack of its own. */
    private void search() {
        int top = 0;
        stack[0] = 0;
        stack[1] = 0;
        bounds[top++] = bound(0, 0);
        while (top > 0) {
            top--;
            if (bounds[top] >= cut) {
                continue;
            }
            int a = stack[2 * top];
            int b = stack[2 * top + 1];
            boolean leafA = first.right[a] < 0;
            boolean leafB = second.right[b] < 0;
            if (leafA && leafB) {
                compare(-1 - first.right[a], -1 - second.right[b]);
                continue;
            }
            boolean splitA = leafB || !leafA && first.size(a) >= second.size(b);
            int a2 = splitA ? first.right[a] : a;
            int b2 = splitA ? b : second.right[b];
            a = splitA ? a + 1 : a;
            b = splitA ? b : b + 1;
            double one = bound(a, b);
            double other = bound(a2, b2);
            if (top + 2 > bounds.length) {
                stack = Arrays.copyOf(stack, 2 * stack.length);
                bounds = Arrays.copyOf(bounds, 2 * bounds.length);
            }
            boolean oneNearer = one <= other;
            push(top++, oneNearer ? a2 : a, oneNearer ? b2 : b, oneNearer ? other : one);
            push(top++, oneNearer ? a : a2, oneNearer ? b : b2, oneNearer ? one : other);
        }
    }

    private void push(int at, int a, int b, double bound) {
        stack[2 * at] = a;
        stack[2 * at + 1] = b;
        bounds[at] = bound;
    }

    /** The triangles with these numbers. */
    private void compare(int one, int other) {
        System.arraycopy(first.triangles, 9 * one, pair.p, 0, 9);
        placed.triangle(other, pair.q);
        double squared = pair.squared(least);
        if (squared < least) {
            least = squared;
            double shorter = Math.max(0, Math.sqrt(squared) - EXACT);
            cut = anyWillDo ? 0 : shorter * shorter;
            foundFirst = one;
            foundSecond = other;
            System.arraycopy(pair.onP, 0, onFirst, 0, 3);
            System.arraycopy(pair.onQ, 0, onSecond, 0, 3);
            if (!parted || squared < RENEWED * partedAt) {
                part(squared);
            }
        }
    }

    private void part(double squared) {
        partedAt = squared;
        double x = onSecond[0] - onFirst[0];
        double y = onSecond[1] - onFirst[1];
        double z = onSecond[2] - onFirst[2];
        double length = Math.sqrt(x * x + y * y + z * z);
        parted = length > EXACT;
        if (parted) {
            firstReach.along(x / length, y / length, z / length, 0);
            placed.along(secondReach, -x / length, -y / length, -z / length);
        }
    }

    /** Squared distance that two boxes have at least, mm², by the parting direction and along the axes of either. */
    private double bound(int a, int b) {
        double along = 0;
        if (parted) {
            double apart = -secondReach.reach(b) - firstReach.reach(a);
            along = apart > 0 ? apart * apart : 0;
            if (along >= cut) {
                return along;
            }
        }
        return Math.max(along, boxes(a, b));
    }

    /** The distance from either box to the box round the other along the first one's axes. */
    private double boxes(int a, int b) {
        placed.want(b);
        double[] p = first.axes;
        double[] q = placed.axes;
        double tx = placed.middles[3 * b] - first.middles[3 * a];
        double ty = placed.middles[3 * b + 1] - first.middles[3 * a + 1];
        double tz = placed.middles[3 * b + 2] - first.middles[3 * a + 2];
        double inFirst = 0;
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < 3; i++) {
            int k = 9 * a + 3 * i;
            double half = first.halves[3 * a + i];
            double gap = Math.abs(p[k] * tx + p[k + 1] * ty + p[k + 2] * tz) - half;
            for (int j = 0; j < 3; j++) {
                int m = 9 * b + 3 * j;
                double share = Math.abs(p[k] * q[m] + p[k + 1] * q[m + 1] + p[k + 2] * q[m + 2]);
                gap -= share * second.halves[3 * b + j];
                if (j == 0) {
                    x += share * half;
                } else if (j == 1) {
                    y += share * half;
                } else {
                    z += share * half;
                }
            }
            inFirst += gap > 0 ? gap * gap : 0;
        }
        if (inFirst >= cut) {
            return inFirst;
        }
        double inSecond = gap(b, 0, tx, ty, tz, x) + gap(b, 1, tx, ty, tz, y) + gap(b, 2, tx, ty, tz, z);
        return Math.max(inFirst, inSecond);
    }

    private double gap(int b, int j, double tx, double ty, double tz, double other) {
        int m = 9 * b + 3 * j;
        double[] q = placed.axes;
        double gap = Math.abs(q[m] * tx + q[m + 1] * ty + q[m + 2] * tz) - second.halves[3 * b + j] - other;
        return gap > 0 ? gap * gap : 0;
    }
}
