// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** A second opinion on coverage: polygons and point counts that share no code with the fold. */
final class FlatBlades {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Band band;
    private final double b;
    private final double tolerance;

    FlatBlades(Band band, double b, double tolerance) {
        this.band = band;
        this.b = b;
        this.tolerance = tolerance;
    }

    /** The first blade with the given half width as a polygon whose vertices lie on the true outline. */
    Geometry blade(double half) {
        double rp = band.pivotRadius();
        double a = band.span();
        List<Coordinate> ring = new ArrayList<>();
        arc(ring, 0, 0, rp + half, 0, a);
        arc(ring, rp * Math.cos(a), rp * Math.sin(a), half, a, a + Math.PI);
        arc(ring, 0, 0, rp - half, a, 0);
        arc(ring, rp, 0, half, Math.PI, 2 * Math.PI);
        ring.add(ring.get(0).copy());
        Geometry open = FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
        return AffineTransformation.rotationInstance(b, rp, 0).transform(open);
    }

    private void arc(List<Coordinate> ring, double cx, double cy, double r, double from, double to) {
        int n = Math.max(2, (int) Math.ceil(Math.abs(to - from) / (2 * Math.acos(1 - tolerance / r))));
        for (int i = ring.isEmpty() ? 0 : 1; i <= n; i++) {
            double t = from + (to - from) * i / n;
            ring.add(new Coordinate(cx + r * Math.cos(t), cy + r * Math.sin(t)));
        }
    }

    private Geometry disc(double cx, double cy, double r) {
        List<Coordinate> ring = new ArrayList<>();
        arc(ring, cx, cy, r, 0, 2 * Math.PI);
        ring.set(ring.size() - 1, ring.get(0).copy());
        return FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
    }

    /** What shrunk blades leave uncovered between the opening, grown by {@code spare} more, and the clear disc. */
    double leak(double clear, double shrink, double spare) {
        Geometry blade = blade(band.width() / 2 - shrink);
        double rp = band.pivotRadius();
        Geometry hole = disc(rp - rp * Math.cos(b), -rp * Math.sin(b), band.innerRadius() + shrink + spare);
        Geometry opening = hole;
        List<Geometry> blades = new ArrayList<>();
        for (int k = 0; k < band.blades(); k++) {
            AffineTransformation turn = AffineTransformation.rotationInstance(2 * Math.PI * k / band.blades());
            blades.add(turn.transform(blade));
            opening = OverlayNGRobust.overlay(opening, turn.transform(hole), OverlayNG.INTERSECTION);
        }
        Geometry cover = OverlayNGRobust.union(FACTORY.buildGeometry(blades));
        Geometry must = OverlayNGRobust.overlay(disc(0, 0, clear), opening, OverlayNG.DIFFERENCE);
        return OverlayNGRobust.overlay(must, cover, OverlayNG.DIFFERENCE).getArea();
    }

    /** Number of blades over a point, by turning the point back into the open pose of each blade. */
    int over(double x, double y) {
        int over = 0;
        double rp = band.pivotRadius();
        for (int k = 0; k < band.blades(); k++) {
            double turn = -2 * Math.PI * k / band.blades();
            double px = x * Math.cos(turn) - y * Math.sin(turn) - rp;
            double py = x * Math.sin(turn) + y * Math.cos(turn);
            double ox = rp + px * Math.cos(b) + py * Math.sin(b);
            double oy = -px * Math.sin(b) + py * Math.cos(b);
            double angle = Math.atan2(oy, ox);
            double in = angle < 0 ? angle + 2 * Math.PI : angle;
            double away;
            if (in <= band.span()) {
                away = Math.abs(Math.hypot(ox, oy) - rp);
            } else {
                away = Math.min(
                        Math.hypot(ox - rp, oy),
                        Math.hypot(ox - rp * Math.cos(band.span()), oy - rp * Math.sin(band.span())));
            }
            if (away <= band.width() / 2) {
                over++;
            }
        }
        return over;
    }

    /**
     * The most blades over any point near a crossing of the first blade's circles with those of any blade: every cell
     * of the pattern has such a corner.
     */
    int depth() {
        double[][] first = circles(0);
        int most = 0;
        for (int k = 0; k < band.blades(); k++) {
            for (double[] other : circles(2 * Math.PI * k / band.blades())) {
                for (double[] own : first) {
                    most = Math.max(most, aroundCrossings(own, other));
                }
            }
        }
        return most;
    }

    private int aroundCrossings(double[] p, double[] q) {
        double dx = q[0] - p[0];
        double dy = q[1] - p[1];
        double d = Math.hypot(dx, dy);
        double along = (d * d + p[2] * p[2] - q[2] * q[2]) / (2 * d);
        double high = p[2] * p[2] - along * along;
        if (!(high > 0)) {
            return 0;
        }
        int most = 0;
        for (int side = -1; side <= 1; side += 2) {
            double across = side * Math.sqrt(high);
            double x = p[0] + (along * dx - across * dy) / d;
            double y = p[1] + (along * dy + across * dx) / d;
            for (int i = 0; i < 16; i++) {
                double t = (i + 0.37) * Math.PI / 8;
                most = Math.max(most, over(x + 1e-6 * Math.cos(t), y + 1e-6 * Math.sin(t)));
            }
        }
        return most;
    }

    private double[][] circles(double turn) {
        double rp = band.pivotRadius();
        double h = band.width() / 2;
        double cx = rp - rp * Math.cos(b);
        double cy = -rp * Math.sin(b);
        double ex = cx + rp * Math.cos(b + band.span());
        double ey = cy + rp * Math.sin(b + band.span());
        double[][] own = {{cx, cy, rp - h}, {cx, cy, rp + h}, {rp, 0, h}, {ex, ey, h}};
        double[][] out = new double[4][];
        for (int i = 0; i < 4; i++) {
            double c = Math.cos(turn);
            double s = Math.sin(turn);
            out[i] = new double[] {own[i][0] * c - own[i][1] * s, own[i][0] * s + own[i][1] * c, own[i][2]};
        }
        return out;
    }
}
