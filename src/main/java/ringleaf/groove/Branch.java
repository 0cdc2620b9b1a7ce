// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import ringleaf.curve.Roots;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Point;

/**
 * What one piece of the tooth's right-hand edge leaves behind while the belt rolls: a branch of the envelope, run
 * from the rim inwards. A point of the edge touches the envelope when its normal passes through the point in which
 * the pitch line rolls on the pitch circle (the instantaneous centre), which gives the contact in closed form.
 *
 * <p>With n = (sin v, -cos v) the edge's outward normal and q = |y| / cos v the distance from the instantaneous
 * centre, the envelope runs at ds/du + q dX/du / r along the edge's own direction (the belt's frame turns against the
 * pulley at -1/r a millimetre of roll). Where that is negative the envelope runs back and lies within what other
 * pieces sweep.
 */
abstract class Branch implements SmoothCurve {
    final BeltTooth tooth;
    final Rolling rolling;
    private final double from;
    private final double to;

    Branch(BeltTooth tooth, Rolling rolling, double from, double to) {
        this.tooth = tooth;
        this.rolling = rolling;
        this.from = from;
        this.to = to;
    }

    /** Direction of the edge's normal, rad from that of the land. */
    abstract double normal(double u);

    /** Place of the edge's point in the belt's frame. */
    abstract Point onEdge(double u);

    /** Contact at which that point touches the envelope, mm. */
    abstract double contact(double u);

    /** Speed of the envelope along the edge's direction; at or below 0 the envelope turns back. */
    abstract double speed(double u);

    /** The same branch over a part of its parameter. */
    abstract Branch over(double newFrom, double newTo);

    /** Distance of the envelope from the pulley's axis. */
    double radiusAt(double u) {
        Point p = onEdge(u);
        double along = p.x() - contact(u);
        double out = rolling.radius() + p.y();
        return Math.sqrt(along * along + out * out);
    }

    @Override
    public double from() {
        return from;
    }

    @Override
    public double to() {
        return to;
    }

    @Override
    public Point at(double u) {
        return rolling.place(onEdge(u), contact(u));
    }

    @Override
    public Point tangent(double u) {
        double v = normal(u);
        return rolling.direct(new Point(-Math.cos(v), -Math.sin(v)), contact(u));
    }

    /** Where the envelope first turns back, or {@link #to} when it never does. */
    double turnsBack() {
        int steps = 64;
        double before = from;
        if (speed(from) <= 0) {
            return from;
        }
        for (int i = 1; i <= steps; i++) {
            double u = from + (to - from) * i / steps;
            if (speed(u) <= 0) {
                return Roots.last(at -> speed(at) > 0, before, u);
            }
            before = u;
        }
        return to;
    }

    /** The rounding at the root, by the normal's direction; it leaves the rim with the rim's own tangent. */
    static final class Root extends Branch {
        private final Point centre;

        Root(BeltTooth tooth, Rolling rolling, double from, double to) {
            super(tooth, rolling, from, to);
            centre = tooth.rootCentre();
        }

        static Root whole(BeltTooth tooth, Rolling rolling) {
            double least = Math.atan((tooth.rootCentre().x() + rolling.reach(tooth))
                    / -tooth.rootCentre().y());
            return new Root(tooth, rolling, 0, Math.min(tooth.turn(), least));
        }

        @Override
        double normal(double u) {
            return u;
        }

        @Override
        Point onEdge(double u) {
            return centre.minus(new Point(Math.sin(u), -Math.cos(u)).times(tooth.rootRadius()));
        }

        @Override
        double contact(double u) {
            return centre.x() + Math.tan(u) * centre.y();
        }

        @Override
        double speed(double u) {
            double cos = Math.cos(u);
            double q = -onEdge(u).y() / cos;
            return tooth.rootRadius() + q * centre.y() / (rolling.radius() * cos * cos);
        }

        @Override
        Branch over(double newFrom, double newTo) {
            return new Root(tooth, rolling, newFrom, newTo);
        }
    }

    /** The flank, by depth below the land; its envelope is an involute. None for flanks square to the belt. */
    static final class Flank extends Branch {
        Flank(BeltTooth tooth, Rolling rolling, double from, double to) {
            super(tooth, rolling, from, to);
        }

        @Override
        double normal(double u) {
            return tooth.turn();
        }

        @Override
        Point onEdge(double u) {
            return tooth.onFlank(u);
        }

        @Override
        double contact(double u) {
            Point p = tooth.onFlank(u);
            return p.x() + p.y() / Math.tan(tooth.flank());
        }

        @Override
        double speed(double u) {
            double sin = Math.sin(tooth.flank());
            double cos = Math.cos(tooth.flank());
            return (1 - (tooth.land() + u) / (rolling.radius() * sin * sin)) / cos;
        }

        @Override
        Branch over(double newFrom, double newTo) {
            return new Flank(tooth, rolling, newFrom, newTo);
        }
    }

    /**
     * The rounding at the tip, by the normal's direction turned back; its envelope never runs back while its
     * centre lies below the pitch line.
     */
    static final class Tip extends Branch {
        private final Point centre;

        Tip(BeltTooth tooth, Rolling rolling, double from, double to) {
            super(tooth, rolling, from, to);
            centre = tooth.tipCentre();
        }

        static Tip whole(BeltTooth tooth, Rolling rolling) {
            Point centre = tooth.tipCentre();
            // a flat tip may have its centre beyond the pitch line; then its normals reach no further than its flank's
            double most = centre.y() < 0 ? Math.atan((centre.x() + rolling.reach(tooth)) / -centre.y()) : tooth.turn();
            return new Tip(tooth, rolling, -Math.min(tooth.turn(), most), 0);
        }

        @Override
        double normal(double u) {
            return -u;
        }

        @Override
        Point onEdge(double u) {
            return centre.plus(new Point(Math.sin(-u), -Math.cos(-u)).times(tooth.tipRadius()));
        }

        @Override
        double contact(double u) {
            return centre.x() + Math.tan(-u) * centre.y();
        }

        @Override
        double speed(double u) {
            double cos = Math.cos(u);
            double q = -onEdge(u).y() / cos;
            return tooth.tipRadius() - q * centre.y() / (rolling.radius() * cos * cos);
        }

        @Override
        Branch over(double newFrom, double newTo) {
            return new Tip(tooth, rolling, newFrom, newTo);
        }
    }
}
