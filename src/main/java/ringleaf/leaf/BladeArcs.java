// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/**
 * The outline of one blade in one pose as four arcs in polar form, in plain arrays that are filled again for every
 * pose. The blade is the set of points within half a width of its centre arc, so the blade shrunk all round is the
 * same centre arc with a smaller half width. Order: inner edge, outer edge, root, far end.
 */
public final class BladeArcs {
    public static final int INNER = 0;
    public static final int OUTER = 1;
    public static final int ROOT = 2;
    public static final int END = 3;
    public static final int COUNT = 4;

    /** Distance of each arc's centre from the axis, mm. */
    final double[] dist = new double[COUNT];
    /** Direction of each arc's centre from the axis, rad. */
    final double[] phi = new double[COUNT];
    /** The unit vector in that direction. */
    final double[] cosPhi = new double[COUNT];

    final double[] sinPhi = new double[COUNT];
    /** Radius of each arc, mm. */
    final double[] rad = new double[COUNT];
    /** Unit vector from the arc's centre to the middle of the arc. */
    final double[] midX = new double[COUNT];

    final double[] midY = new double[COUNT];
    /** Cosine of half the arc's sweep: a direction lies on the arc when its dot product with the middle is no less. */
    final double[] cosHalf = new double[COUNT];
    /** Distances from the axis of the four points where the arcs join, mm. */
    final double[] joint = new double[COUNT];

    private double pivotRadius;
    private double halfWidth;

    public BladeArcs pose(Band band, double b, double shrink) {
        double rp = band.pivotRadius();
        double h = band.width() / 2 - shrink;
        double a = band.span();
        pivotRadius = rp;
        halfWidth = h;
        double cb = Math.cos(b);
        double sb = Math.sin(b);
        double ce = Math.cos(a + b);
        double se = Math.sin(a + b);
        double cx = 2 * rp * Math.sin(b / 2) * Math.sin(b / 2);
        double cy = -rp * sb;
        double d = Math.abs(band.shift(b));
        place(INNER, cx, cy, d, rp - h);
        copyCentre();
        rad[OUTER] = rp + h;
        place(ROOT, rp, 0, rp, h);
        double ex = cx + rp * ce;
        double ey = cy + rp * se;
        place(END, ex, ey, Math.sqrt(ex * ex + ey * ey), h);
        double cm = Math.cos(b + a / 2);
        double sm = Math.sin(b + a / 2);
        double half = Math.cos(a / 2);
        arc(INNER, cm, sm, half);
        arc(OUTER, cm, sm, half);
        arc(ROOT, sb, -cb, 0);
        arc(END, -se, ce, 0);
        joint[0] = norm(rp - h * cb, h * sb);
        joint[1] = norm(rp + h * cb, h * sb);
        joint[2] = norm(ex - h * ce, ey - h * se);
        joint[3] = norm(ex + h * ce, ey + h * se);
        return this;
    }

    private void place(int i, double x, double y, double distance, double radius) {
        dist[i] = distance;
        phi[i] = Math.atan2(y, x);
        boolean atAxis = distance == 0;
        cosPhi[i] = atAxis ? 1 : x / distance;
        sinPhi[i] = atAxis ? 0 : y / distance;
        rad[i] = radius;
    }

    private void copyCentre() {
        dist[OUTER] = dist[INNER];
        phi[OUTER] = phi[INNER];
        cosPhi[OUTER] = cosPhi[INNER];
        sinPhi[OUTER] = sinPhi[INNER];
    }

    private void arc(int i, double mx, double my, double half) {
        midX[i] = mx;
        midY[i] = my;
        cosHalf[i] = half;
    }

    /** Whether the arc holds the point that lies from its centre towards (1) or away from (-1) the centre's own ray. */
    boolean holdsRay(int i, int side) {
        return side * (cosPhi[i] * midX[i] + sinPhi[i] * midY[i]) >= cosHalf[i];
    }

    /** Distance from the point to the centre arc, mm. */
    double toCentreArc(double x, double y) {
        double dx = x - dist[INNER] * cosPhi[INNER];
        double dy = y - dist[INNER] * sinPhi[INNER];
        double r = Math.sqrt(dx * dx + dy * dy);
        if (dx * midX[INNER] + dy * midY[INNER] >= cosHalf[INNER] * r) {
            return Math.abs(r - pivotRadius);
        }
        double root = norm(x - dist[ROOT], y);
        double end = norm(x - dist[END] * cosPhi[END], y - dist[END] * sinPhi[END]);
        return Math.min(root, end);
    }

    /** Plain, and so several times faster than a guarded one; lengths here never overflow. */
    private static double norm(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    boolean covers(double x, double y) {
        return toCentreArc(x, y) <= halfWidth;
    }

    /** Distance from the pivot to the farthest point of the blade within {@code clear} mm of the axis; 0 if none. */
    public double farthestFromPivot(double clear) {
        double most = 0;
        for (int i = 0; i < COUNT; i++) {
            double d = dist[i];
            double r = rad[i];
            double cos = ((clear - r) * (clear + r) + d * d) / (2 * clear * d);
            if (!(Math.abs(cos) < 1)) {
                continue;
            }
            double sin = Math.sqrt((1 - cos) * (1 + cos));
            for (int side = -1; side <= 1; side += 2) {
                double x = clear * (cosPhi[i] * cos - sinPhi[i] * side * sin);
                double y = clear * (sinPhi[i] * cos + cosPhi[i] * side * sin);
                double ux = x - d * cosPhi[i];
                double uy = y - d * sinPhi[i];
                if (ux * midX[i] + uy * midY[i] >= cosHalf[i] * r) {
                    most = Math.max(most, norm(x - dist[ROOT], y));
                }
            }
        }
        // Farther in only the tip can be: along the edges the distance from the pivot grows as far as the end.
        double ex = dist[END] * cosPhi[END];
        double ey = dist[END] * sinPhi[END];
        double chord = norm(ex - dist[ROOT], ey);
        double out = 1 + halfWidth / chord;
        double tipX = dist[ROOT] + (ex - dist[ROOT]) * out;
        if (norm(tipX, ey * out) <= clear) {
            most = Math.max(most, chord + halfWidth);
        }
        return most;
    }

    /** Greatest distance of the outline from the axis, mm. */
    double greatest() {
        double most = Math.max(Math.max(joint[0], joint[1]), Math.max(joint[2], joint[3]));
        for (int i = 0; i < COUNT; i++) {
            if (holdsRay(i, 1)) {
                most = Math.max(most, dist[i] + rad[i]);
            }
        }
        return most;
    }
}
