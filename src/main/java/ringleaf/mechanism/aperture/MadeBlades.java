// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.leaf.BladeArcs;

/**
 * N blades of which each has its own edges, pivot and angle, and what they cover together. Nothing is folded, as no two
 * are alike. The blades leave a gap when some point within the clear circle is in no blade and not in the opening,
 * which is the common part of the discs of their inner edges. The edge of such a gap has corners, where outlines of two
 * blades cross or where one meets the clear circle; so it is enough to look whether every such crossing lies in a third
 * blade or is a corner of the opening. A gap without any corner, a hole within one outline, cannot be: outlines have
 * none. Plain arrays, filled again for every pose; not for several threads at once.
 */
final class MadeBlades {
    private static final int ARCS = BladeArcs.COUNT;
    /** Points this near to an edge, as a share of the pivot radius, count as on it. */
    private static final double HAIR = 1e-9;

    private static final double[] GROWS = {1, -1, -1, -1};

    private final int n;
    private final double scale;
    /** Centre of each band's circle, its centre line's radius and half width. */
    private final double[] bandX;

    private final double[] bandY;
    private final double[] middle;
    private final double[] half;
    /** Ends of the centre line. */
    private final double[] rootX;

    private final double[] rootY;
    private final double[] endX;
    private final double[] endY;
    /** The outline's arcs: centre, radius unshrunk, middle direction, cosine of half the sweep. */
    private final double[] arcX;

    private final double[] arcY;
    private final double[] arcRadius;
    private final double[] midX;
    private final double[] midY;
    private final double[] cosHalf;
    private final double[] shrink;
    private final int[] nearArcs;
    private final double[] radius;
    private double grown;
    private int apart;
    private boolean gap;

    /** Room for so many blades about pivots at this radius, mm. */
    MadeBlades(int blades, double pivotRadius) {
        n = blades;
        scale = pivotRadius;
        bandX = new double[n];
        bandY = new double[n];
        middle = new double[n];
        half = new double[n];
        rootX = new double[n];
        rootY = new double[n];
        endX = new double[n];
        endY = new double[n];
        shrink = new double[n];
        nearArcs = new int[n * ARCS];
        arcX = new double[n * ARCS];
        arcY = new double[n * ARCS];
        arcRadius = new double[n * ARCS];
        radius = new double[n * ARCS];
        midX = new double[n * ARCS];
        midY = new double[n * ARCS];
        cosHalf = new double[n * ARCS];
    }

    /**
     * Places blade {@code i}. Its own frame has the band's circle in the origin and the root on +x; lengths in mm.
     *
     * @param x pivot
     * @param y pivot
     * @param turn of the blade's frame, rad
     * @param hole distance of the pivot's hole from the band's circle's centre
     * @param inner radius of the inner edge
     * @param outer radius of the outer edge
     * @param span angle from root to far end, rad
     */
    void place(int i, double x, double y, double turn, double hole, double inner, double outer, double span) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        double ce = Math.cos(turn + span);
        double se = Math.sin(turn + span);
        double r = (inner + outer) / 2;
        double h = (outer - inner) / 2;
        bandX[i] = x - hole * c;
        bandY[i] = y - hole * s;
        middle[i] = r;
        half[i] = h;
        rootX[i] = bandX[i] + r * c;
        rootY[i] = bandY[i] + r * s;
        endX[i] = bandX[i] + r * ce;
        endY[i] = bandY[i] + r * se;
        double cm = Math.cos(turn + span / 2);
        double sm = Math.sin(turn + span / 2);
        double wide = Math.cos(span / 2);
        arc(i, BladeArcs.INNER, bandX[i], bandY[i], inner, cm, sm, wide);
        arc(i, BladeArcs.OUTER, bandX[i], bandY[i], outer, cm, sm, wide);
        arc(i, BladeArcs.ROOT, rootX[i], rootY[i], h, s, -c, 0);
        arc(i, BladeArcs.END, endX[i], endY[i], h, -se, ce, 0);
    }

    private void arc(int i, int k, double x, double y, double r, double mx, double my, double cos) {
        int a = i * ARCS + k;
        arcX[a] = x;
        arcY[a] = y;
        arcRadius[a] = r;
        midX[a] = mx;
        midY[a] = my;
        cosHalf[a] = cos;
    }

    /** Radius of the largest circle about the axis in the opening, mm; below 0 when there is none. */
    double inscribedRadius() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            least = Math.min(least, middle[i] - half[i] - Math.hypot(bandX[i], bandY[i]));
        }
        return least;
    }

    /** Greatest distance of blade {@code i} from the axis, mm. */
    double reach(int i) {
        double d = Math.hypot(bandX[i], bandY[i]);
        double ends = Math.max(Math.hypot(rootX[i], rootY[i]), Math.hypot(endX[i], endY[i]));
        return (holds(i, 1, d) ? Math.max(ends, d + middle[i]) : ends) + half[i];
    }

    /** Least distance of blade {@code i} from the axis, mm; below 0 when the axis lies in it. */
    double nearest(int i) {
        double d = Math.hypot(bandX[i], bandY[i]);
        double ends = Math.min(Math.hypot(rootX[i], rootY[i]), Math.hypot(endX[i], endY[i]));
        return (holds(i, -1, d) ? Math.min(ends, Math.abs(d - middle[i])) : ends) - half[i];
    }

    /** Whether the band reaches where the axis' ray through its circle's centre (or back) leaves that circle. */
    private boolean holds(int i, int side, double d) {
        int a = i * ARCS + BladeArcs.INNER;
        return d == 0 || side * (bandX[i] * midX[a] + bandY[i] * midY[a]) >= cosHalf[a] * d;
    }

    /**
     * Looks for gaps between blades that are shrunk all round, each by its own loss.
     *
     * @param clear radius within which all is to be covered that is not open, mm
     * @param loss of each blade, mm
     * @param slack by which the opening is taken to be larger than the common part of the inner discs, mm: blades that
     *     stand off leave slivers along its edge that nobody would call a leak; 0 for blades all alike
     * @return the most steps by which two blades stand apart that bound one gap; 0 where only the clear circle bounds
     *     it; -1 where there is none
     */
    int gapApart(double clear, double[] loss, double slack) {
        grown = slack;
        for (int i = 0; i < n; i++) {
            shrink[i] = Math.min(loss[i], half[i] * (1 - 1e-9));
            for (int k = 0; k < ARCS; k++) {
                radius[i * ARCS + k] = arcRadius[i * ARCS + k] + GROWS[k] * shrink[i];
            }
        }
        apart = 0;
        gap = false;
        boolean any = false;
        int near = within(clear);
        for (int i = 0; i < near; i++) {
            int a = nearArcs[i];
            any |= onCircle(a, clear);
            for (int k = i + 1; k < near; k++) {
                if (nearArcs[k] / ARCS != a / ARCS) {
                    crossing(a, nearArcs[k], clear);
                }
            }
        }
        if (!any && isBare(clear, 0, -1, -1) && !isOpen(clear, 0, -1, -1)) {
            gap = true;
        }
        return gap ? apart : -1;
    }

    /** Lists the arcs that reach into the clear circle; gives how many. */
    private int within(double clear) {
        int near = 0;
        for (int a = 0; a < n * ARCS; a++) {
            double d = Math.sqrt(arcX[a] * arcX[a] + arcY[a] * arcY[a]);
            // Nearest to the axis is where the way back from the circle's centre meets it, or an end of the arc.
            boolean facing = -(arcX[a] * midX[a] + arcY[a] * midY[a]) >= cosHalf[a] * d;
            if (facing ? Math.abs(d - radius[a]) < clear : reachesIn(a, clear)) {
                nearArcs[near++] = a;
            }
        }
        return near;
    }

    private boolean reachesIn(int a, double clear) {
        double sin = Math.sqrt(Math.max(0, 1 - cosHalf[a] * cosHalf[a]));
        for (int side = -1; side <= 1; side += 2) {
            double x = arcX[a] + radius[a] * (midX[a] * cosHalf[a] - side * midY[a] * sin);
            double y = arcY[a] + radius[a] * (midY[a] * cosHalf[a] + side * midX[a] * sin);
            if (x * x + y * y < clear * clear) {
                return true;
            }
        }
        return false;
    }

    private boolean onArc(int a, double x, double y) {
        return (x - arcX[a]) * midX[a] + (y - arcY[a]) * midY[a] >= cosHalf[a] * radius[a];
    }

    /** Whether the arc meets the clear circle; gaps there are noted. */
    private boolean onCircle(int a, double clear) {
        double d2 = arcX[a] * arcX[a] + arcY[a] * arcY[a];
        double along = (clear * clear - radius[a] * radius[a] + d2) / 2;
        double across2 = clear * clear * d2 - along * along;
        if (!(across2 > 0)) {
            return false;
        }
        double across = Math.sqrt(across2);
        boolean met = false;
        for (int side = -1; side <= 1; side += 2) {
            double x = (along * arcX[a] - side * across * arcY[a]) / d2;
            double y = (along * arcY[a] + side * across * arcX[a]) / d2;
            if (onArc(a, x, y)) {
                met = true;
                int i = a / ARCS;
                boolean inner = a % ARCS == BladeArcs.INNER;
                if (isBare(x, y, i, i) && !(inner ? isOpen(x, y, i, i) : besideOpening(x, y))) {
                    gap = true;
                }
            }
        }
        return met;
    }

    private void crossing(int a, int b, double clear) {
        double dx = arcX[b] - arcX[a];
        double dy = arcY[b] - arcY[a];
        double d2 = dx * dx + dy * dy;
        double along = (d2 + (radius[a] - radius[b]) * (radius[a] + radius[b])) / 2;
        double across2 = radius[a] * radius[a] * d2 - along * along;
        if (!(across2 > 0)) {
            return;
        }
        double across = Math.sqrt(across2);
        for (int side = -1; side <= 1; side += 2) {
            double x = arcX[a] + (along * dx - side * across * dy) / d2;
            double y = arcY[a] + (along * dy + side * across * dx) / d2;
            if (x * x + y * y < clear * clear && onArc(a, x, y) && onArc(b, x, y)) {
                corner(a, b, x, y);
            }
        }
    }

    private void corner(int a, int b, double x, double y) {
        int i = a / ARCS;
        int j = b / ARCS;
        boolean both = a % ARCS == BladeArcs.INNER && b % ARCS == BladeArcs.INNER;
        if (isBare(x, y, i, j) && !(both ? isOpen(x, y, i, j) : besideOpening(x, y))) {
            gap = true;
            int steps = Math.abs(i - j);
            apart = Math.max(apart, Math.min(steps, n - steps));
        }
    }

    /** Whether no blade but these two covers the point; the nearest in number are asked first. */
    private boolean isBare(double x, double y, int i, int j) {
        int from = Math.max(0, i);
        for (int k = 0; k < n; k++) {
            int step = (k + 1) / 2;
            int other = Math.floorMod(from + (k % 2 == 1 ? step : -step), n);
            if (other != i && other != j && covers(other, x, y)) {
                return false;
            }
        }
        return true;
    }

    private boolean covers(int i, double x, double y) {
        double dx = x - bandX[i];
        double dy = y - bandY[i];
        double r = Math.sqrt(dx * dx + dy * dy);
        int a = i * ARCS + BladeArcs.INNER;
        double within = Math.max(0, half[i] - shrink[i] - HAIR * scale);
        if (dx * midX[a] + dy * midY[a] >= cosHalf[a] * r) {
            return Math.abs(r - middle[i]) < within;
        }
        double square = within * within;
        return sq(x - rootX[i]) + sq(y - rootY[i]) < square || sq(x - endX[i]) + sq(y - endY[i]) < square;
    }

    /** Whether a point on an end or an outer edge still belongs to the opening of blades that stand off. */
    private boolean besideOpening(double x, double y) {
        return grown > 0 && isOpen(x, y, -1, -1);
    }

    /** Whether the point lies in the inner discs of all blades but these two. */
    private boolean isOpen(double x, double y, int i, int j) {
        for (int k = 0; k < n; k++) {
            double inner = radius[k * ARCS + BladeArcs.INNER] + grown + HAIR * scale;
            if (k != i && k != j && sq(x - bandX[k]) + sq(y - bandY[k]) > inner * inner) {
                return false;
            }
        }
        return true;
    }

    private static double sq(double value) {
        return value * value;
    }
}
