package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import ringleaf.curve.FreeTurn;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Requirement;

/**
 * Rolls two members through a period: their overlap as polygons, their gap on lines and arcs, and by how much the
 * driven one can turn to either side while the other stands.
 */
final class MeshCheck extends Check {
    /** Free turns are looked for up to this many times the play that is required, and no less than a degree. */
    private static final double LOOK = 4;

    private static final double LEAST_LOOK = Math.toRadians(1);

    private final Requirement.Meshes required;
    private final List<Region> first = new ArrayList<>();
    private final List<Region> second = new ArrayList<>();
    private double worstArea;
    private int areaStep;
    private double leastGap = Double.POSITIVE_INFINITY;
    private int gapStep;
    private Point gapAt = Point.ORIGIN;
    private double leastPlay = Double.POSITIVE_INFINITY;
    private double mostPlay;
    private double reach;

    MeshCheck(Scene scene, Requirement.Meshes required) {
        super(scene);
        this.required = required;
        Member one = scene.assembly.members().get(required.first());
        Member other = scene.assembly.members().get(required.second());
        for (Layer a : one.part().layers()) {
            for (Layer b : other.part().layers()) {
                if (a.zTo() > b.zFrom() + scene.hair && b.zTo() > a.zFrom() + scene.hair) {
                    a.regions().forEach(region -> add(first, region));
                    b.regions().forEach(region -> add(second, region));
                }
            }
        }
    }

    private static void add(List<Region> regions, Region region) {
        if (!regions.contains(region)) {
            regions.add(region);
        }
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        if (pose.state == 0 && !first.isEmpty()) {
            roll(pose.members[required.first()], pose.members[required.second()]);
        }
        return null;
    }

    private void roll(Placement firstHome, Placement secondHome) {
        Overlaps overlaps = new Overlaps(polygons(first, firstHome), polygons(second, secondHome));
        List<Segment> drivers = pieces(first, firstHome);
        List<Segment> drivens = pieces(second, secondHome);
        double[] firstReach = reach(drivers, required.firstAxis());
        double[] secondReach = reach(drivens, required.secondAxis());
        reach = Math.min(secondReach[1], required.firstAxis().distance(required.secondAxis()) + firstReach[1]);
        for (int i = 0; i < required.steps(); i++) {
            double turn = required.period() * i / required.steps();
            double follows = turn * required.ratio();
            double area = overlaps.area(turn, follows);
            if (area > worstArea) {
                worstArea = area;
                areaStep = i;
            }
            Placement firstMoved = Placement.turnAbout(required.firstAxis(), turn);
            Placement secondMoved = Placement.turnAbout(required.secondAxis(), follows);
            List<Segment> driver = near(drivers, firstMoved, required.secondAxis(), secondReach);
            List<Segment> driven = near(drivens, secondMoved, required.firstAxis(), firstReach);
            play(driver, driven);
            gap(i, driver, driven);
        }
    }

    /** The two members as polygons; the one with more corners is made ready once and the other turns about it. */
    private final class Overlaps {
        private final List<PreparedGeometry> ready = new ArrayList<>();
        private final List<Geometry> moving;
        private final boolean firstMoves;

        Overlaps(List<Geometry> one, List<Geometry> other) {
            firstMoves = corners(one) < corners(other);
            moving = firstMoves ? one : other;
            for (Geometry polygon : firstMoves ? other : one) {
                ready.add(PreparedGeometryFactory.prepare(polygon));
            }
        }

        private static int corners(List<Geometry> polygons) {
            int corners = 0;
            for (Geometry polygon : polygons) {
                corners += polygon.getNumPoints();
            }
            return corners;
        }

        /** Shared area when the first has turned and the second has followed, mm². */
        double area(double turn, double follows) {
            Point about = firstMoves ? required.firstAxis() : required.secondAxis();
            Point back = firstMoves ? required.secondAxis() : required.firstAxis();
            AffineTransformation move =
                    AffineTransformation.rotationInstance(firstMoves ? turn : follows, about.x(), about.y());
            move.rotate(firstMoves ? -follows : -turn, back.x(), back.y());
            double area = 0;
            for (Geometry polygon : moving) {
                Geometry moved = move.transform(polygon);
                for (PreparedGeometry still : ready) {
                    if (still.intersects(moved)) {
                        area += OverlayNGRobust.overlay(still.getGeometry(), moved, OverlayNG.INTERSECTION)
                                .getArea();
                    }
                }
            }
            return area;
        }
    }

    private void play(List<Segment> driver, List<Segment> driven) {
        double look = Math.max(LEAST_LOOK, LOOK * required.play());
        Point axis = required.secondAxis();
        double forward = FreeTurn.of(driven, axis, driver, true, look).angle();
        double back = FreeTurn.of(driven, axis, driver, false, look).angle();
        leastPlay = Math.min(leastPlay, forward + back);
        mostPlay = Math.max(mostPlay, forward + back);
    }

    private void gap(int step, List<Segment> driver, List<Segment> driven) {
        Nearest nearest = new Nearest(leastGap);
        Piece[] others = new Piece[driven.size()];
        for (int i = 0; i < others.length; i++) {
            others[i] = Piece.of(driven.get(i));
        }
        for (Segment a : driver) {
            Piece p = Piece.of(a);
            for (Piece q : others) {
                nearest.between(p, q);
            }
        }
        if (nearest.distance < leastGap - scene.hair) {
            leastGap = nearest.distance;
            gapStep = step;
            gapAt = nearest.middle();
        }
    }

    private List<Geometry> polygons(List<Region> regions, Placement home) {
        List<Geometry> polygons = new ArrayList<>();
        for (Region region : regions) {
            Polygon full = Chords.full(Shape.of(region).placed(home), scene.tolerance / 4);
            polygons.add(full);
        }
        return polygons;
    }

    private static List<Segment> pieces(List<Region> regions, Placement home) {
        List<Segment> pieces = new ArrayList<>();
        for (Region region : regions) {
            for (Contour contour : region.contours()) {
                pieces.addAll(contour.placed(home).segments());
            }
        }
        return pieces;
    }

    /** Least and greatest distance from an axis that any piece can have. */
    private static double[] reach(List<Segment> pieces, Point axis) {
        double near = Double.POSITIVE_INFINITY;
        double far = 0;
        for (Segment piece : pieces) {
            // No point of a piece is farther from the middle of its chord than half its length.
            double middle = piece.start().towards(piece.end(), 0.5).distance(axis);
            boolean round = piece instanceof Arc arc && arc.centre().distance(axis) < arc.radius() * 1e-9;
            double half = round ? 0 : piece.length() / 2;
            double radius = round ? ((Arc) piece).radius() : middle;
            near = Math.min(near, radius - half);
            far = Math.max(far, radius + half);
        }
        return new double[] {near, far};
    }

    /** Those pieces, moved, that come within a range of distances from a point. */
    private static List<Segment> near(List<Segment> pieces, Placement moved, Point of, double[] range) {
        List<Segment> near = new ArrayList<>();
        for (Segment piece : pieces) {
            double distance = moved.apply(piece.start()).distance(of);
            double length = piece.length();
            if (distance - length <= range[1] && distance + length >= range[0]) {
                near.add(piece.placed(moved));
            }
        }
        return near;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        String pair = name(required.first()) + " and " + name(required.second());
        if (first.isEmpty()) {
            findings.add(new Finding(required.check(), Finding.Status.FAIL, 0, 0, "mm", pair,
                    "The " + pair + " share no height and cannot mesh"));
            return;
        }
        boolean clear = worstArea <= scene.tolerance * scene.tolerance;
        String rolled = " (rolled through a pitch in " + required.steps() + " steps)";
        findings.add(new Finding(
                required.check(),
                clear ? Finding.Status.PASS : Finding.Status.FAIL,
                clear ? leastGap : worstArea,
                0,
                clear ? "mm" : "mm2",
                "step " + (clear ? gapStep : areaStep) + ", " + pair + ", " + Words.at(gapAt),
                clear
                        ? "The outlines never overlap; the least gap is " + Words.mm(leastGap) + rolled
                        : "The outlines overlap by up to " + Words.area(worstArea) + rolled));
        double off = Math.max(Math.abs(leastPlay - required.play()), Math.abs(mostPlay - required.play()));
        findings.add(new Finding(
                required.playCheck(),
                off * reach <= required.tolerance() ? Finding.Status.PASS : Finding.Status.FAIL,
                Math.toDegrees(leastPlay),
                Math.toDegrees(required.play()),
                "deg",
                pair,
                "Free play measured on the outlines is " + Words.number(Math.toDegrees(leastPlay), 4) + "° to "
                        + Words.number(Math.toDegrees(mostPlay), 4) + "°, computed "
                        + Words.number(Math.toDegrees(required.play()), 4) + "°" + rolled));
    }
}
