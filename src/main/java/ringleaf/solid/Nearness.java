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

    private final BoxTree first;
    private final BoxTree second;
    private final Solid firstSolid;
    private final Solid secondSolid;
    private final TrianglePair pair = new TrianglePair();
    private final double[] onFirst = new double[3];
    private final double[] onSecond = new double[3];
    /** Rows of the turn, then the shift, of the second in the frame of the first. */
    private final double[] r = new double[9];

    private final double[] abs = new double[9];
    private final double[] shift = new double[3];

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
        place(secondInFirst);
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

    private void place(Pose pose) {
        Vector[] columns = {
            pose.turn().apply(Vector.X),
            pose.turn().apply(Vector.Y),
            pose.turn().apply(Vector.Z)
        };
        for (int j = 0; j < 3; j++) {
            r[j] = columns[j].x();
            r[3 + j] = columns[j].y();
            r[6 + j] = columns[j].z();
        }
        for (int i = 0; i < 9; i++) {
            abs[i] = Math.abs(r[i]);
        }
        shift[0] = pose.shift().x();
        shift[1] = pose.shift().y();
        shift[2] = pose.shift().z();
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
            boolean splitA = leafB || !leafA && size(first, a) >= size(second, b);
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

    private static double size(BoxTree tree, int node) {
        double[] boxes = tree.boxes;
        int at = 6 * node + 3;
        return Math.max(boxes[at], Math.max(boxes[at + 1], boxes[at + 2]));
    }

    /** The triangles with these numbers. */
    private void compare(int one, int other) {
        double[] q = pair.q;
        double[] t = second.triangles;
        System.arraycopy(first.triangles, 9 * one, pair.p, 0, 9);
        for (int i = 0, at = 9 * other; i < 9; i += 3, at += 3) {
            double x = t[at];
            double y = t[at + 1];
            double z = t[at + 2];
            q[i] = r[0] * x + r[1] * y + r[2] * z + shift[0];
            q[i + 1] = r[3] * x + r[4] * y + r[5] * z + shift[1];
            q[i + 2] = r[6] * x + r[7] * y + r[8] * z + shift[2];
        }
        double squared = pair.squared(least);
        if (squared < least) {
            least = squared;
            double shorter = Math.max(0, Math.sqrt(squared) - EXACT);
            cut = anyWillDo ? 0 : shorter * shorter;
            foundFirst = one;
            foundSecond = other;
            System.arraycopy(pair.onP, 0, onFirst, 0, 3);
            System.arraycopy(pair.onQ, 0, onSecond, 0, 3);
        }
    }

    /**
     * Squared distance that two boxes have at least, mm²: that of either one's box and the box round the other along
     * the first one's axes.
     */
    private double bound(int a, int b) {
        double[] p = first.boxes;
        double[] q = second.boxes;
        int i = 6 * a;
        int j = 6 * b;
        double cx = q[j];
        double cy = q[j + 1];
        double cz = q[j + 2];
        double hx = q[j + 3];
        double hy = q[j + 4];
        double hz = q[j + 5];
        double gx = p[i + 3];
        double gy = p[i + 4];
        double gz = p[i + 5];
        double tx = r[0] * cx + r[1] * cy + r[2] * cz + shift[0] - p[i];
        double ty = r[3] * cx + r[4] * cy + r[5] * cz + shift[1] - p[i + 1];
        double tz = r[6] * cx + r[7] * cy + r[8] * cz + shift[2] - p[i + 2];
        double inFirst = sum(
                Math.abs(tx) - gx - (abs[0] * hx + abs[1] * hy + abs[2] * hz),
                Math.abs(ty) - gy - (abs[3] * hx + abs[4] * hy + abs[5] * hz),
                Math.abs(tz) - gz - (abs[6] * hx + abs[7] * hy + abs[8] * hz));
        if (inFirst >= cut) {
            return inFirst;
        }
        double inSecond = sum(
                Math.abs(r[0] * tx + r[3] * ty + r[6] * tz) - hx - (abs[0] * gx + abs[3] * gy + abs[6] * gz),
                Math.abs(r[1] * tx + r[4] * ty + r[7] * tz) - hy - (abs[1] * gx + abs[4] * gy + abs[7] * gz),
                Math.abs(r[2] * tx + r[5] * ty + r[8] * tz) - hz - (abs[2] * gx + abs[5] * gy + abs[8] * gz));
        return Math.max(inFirst, inSecond);
    }

    private static double sum(double x, double y, double z) {
        double sum = x > 0 ? x * x : 0;
        sum += y > 0 ? y * y : 0;
        return z > 0 ? sum + z * z : sum;
    }
}
