package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.curve.FreeTurn;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** One stage rolled on its outlines as cut; only the pieces near the line of centres are looked at. */
final class RolledStage {
    /** Teeth that are looked at beside the line of centres, further than the tips of the mate reach. */
    private static final double MORE_TEETH = 0.5;
    /** A free turn is looked for up to this many plays. */
    private static final double LOOK = 4;

    private static final double LEAST_LOOK = Math.toRadians(1);

    private final Stage stage;
    private final Flanks driver;
    private final Flanks driven;

    /**
     * What is measured at one angle.
     *
     * @param error of the driven gear when the driver pushes, rad, positive ahead
     * @param gap least distance of the outlines in the middle of the play, mm
     * @param meets whether the driver finds a tooth to push
     */
    record At(double error, double gap, boolean meets) {}

    RolledStage(Stage stage) {
        this.stage = stage;
        double a = stage.mesh().centreDistance();
        double at = stage.spec().at();
        double facing = stage.mesh() instanceof Mesh.Inner ? at : at + Math.PI;
        double tip = stage.driver().rim().tipRadius();
        double mate = stage.mesh() instanceof Mesh.Inner
                ? stage.driven().rim().rootRadius()
                : stage.driven().rim().tipRadius();
        driver = new Flanks(stage.driver(), stage.driverHome(), at, lens(a, tip, mate));
        driven = new Flanks(stage.driven(), stage.drivenHome(), facing, lens(a, mate, tip));
    }

    Stage stage() {
        return stage;
    }

    /** Half the angle about a gear's axis over which its circle lies in the mate's; pi where it lies in it wholly. */
    private static double lens(double distance, double own, double mate) {
        double cosine = (distance * distance + own * own - mate * mate) / (2 * distance * own);
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** The measures when the first driver has turned by an angle, rad. */
    At at(double firstDriver) {
        double turned = firstDriver * stage.turn();
        List<Segment> pushing = driver.near(turned);
        List<Segment> pushed = driven.near(turned * stage.mesh().turn());
        double play = stage.mesh().drivenPlay();
        double look = Math.max(LEAST_LOOK, LOOK * play);
        // The driven gear is turned against its own sense until it lies on the flanks that push it.
        boolean against = stage.turn() * stage.mesh().turn() < 0;
        FreeTurn free = FreeTurn.of(pushed, stage.drivenAxis(), pushing, against, look);
        return new At(free.meets() ? play / 2 - free.angle() : 0, gap(pushing, pushed), free.meets());
    }

    private static double gap(List<Segment> one, List<Segment> other) {
        // Any two points bound the gap; with such a bound at hand few pairs of pieces are worth their closed forms.
        double least = Double.POSITIVE_INFINITY;
        int n = other.size();
        double[] x = new double[n];
        double[] y = new double[n];
        double[] half = new double[n];
        for (int i = 0; i < n; i++) {
            Segment b = other.get(i);
            x[i] = (b.start().x() + b.end().x()) / 2;
            y[i] = (b.start().y() + b.end().y()) / 2;
            half[i] = b.length() / 2;
        }
        for (Segment a : one) {
            for (Segment b : other) {
                least = Math.min(least, a.start().distance(b.start()));
            }
        }
        for (Segment a : one) {
            double ax = (a.start().x() + a.end().x()) / 2;
            double ay = (a.start().y() + a.end().y()) / 2;
            double own = a.length() / 2;
            for (int i = 0; i < n; i++) {
                // No point of a piece is farther from the middle of its chord than half its length.
                double reach = least + own + half[i];
                double dx = ax - x[i];
                double dy = ay - y[i];
                if (dx * dx + dy * dy < reach * reach) {
                    least = Math.min(least, Distances.between(a, other.get(i)).distance());
                }
            }
        }
        return least;
    }

    /** The toothed pieces of a gear, by the direction in which they lie. */
    private static final class Flanks {
        private final Placement home;
        private final double facing;
        private final double window;
        private final List<Segment> pieces;
        private final double[] directions;
        private final double[] halves;

        Flanks(Wheel wheel, Placement home, double facing, double lens) {
            this.home = home;
            this.facing = facing;
            this.window = lens + MORE_TEETH * wheel.rim().pitchAngle();
            this.pieces = toothed(wheel);
            this.directions = new double[pieces.size()];
            this.halves = new double[pieces.size()];
            for (int i = 0; i < directions.length; i++) {
                Point middle = pieces.get(i).pointAt(0.5);
                directions[i] = middle.angle();
                halves[i] = pieces.get(i).length() / 2 / Math.max(middle.norm(), 1e-9);
            }
        }

        private static List<Segment> toothed(Wheel wheel) {
            if (wheel.rim() instanceof Rim.Outer || wheel.spec().sector().isPresent()) {
                return wheel.region().outer().segments();
            }
            return wheel.cut().contour().segments();
        }

        List<Segment> near(double turned) {
            Turned place = new Turned(home.angle() + turned, home.shift());
            List<Segment> near = new ArrayList<>();
            for (int i = 0; i < directions.length; i++) {
                double off = Math.abs(Angles.signed(directions[i] + home.angle() + turned - facing));
                if (off <= window + halves[i]) {
                    near.add(place.of(pieces.get(i)));
                }
            }
            return near;
        }
    }

    /** A placement whose sine and cosine are worked out once for many pieces. */
    private static final class Turned {
        private final double angle;
        private final double cos;
        private final double sin;
        private final Point shift;

        Turned(double angle, Point shift) {
            this.angle = angle;
            this.cos = Math.cos(angle);
            this.sin = Math.sin(angle);
            this.shift = shift;
        }

        Segment of(Segment piece) {
            if (piece instanceof Arc arc) {
                return new Arc(
                        of(arc.centre()),
                        arc.radius(),
                        arc.startAngle() + angle,
                        arc.sweep(),
                        of(arc.start()),
                        of(arc.end()));
            }
            return new Line(of(piece.start()), of(piece.end()));
        }

        private Point of(Point p) {
            return new Point(cos * p.x() - sin * p.y() + shift.x(), sin * p.x() + cos * p.y() + shift.y());
        }
    }
}
