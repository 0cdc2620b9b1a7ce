// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Members stay inside a room. */
final class InsideCheck extends Check {
    private final Requirement.StaysInside required;
    private final Shape room;

    InsideCheck(Scene scene, Requirement.StaysInside required) {
        super(scene);
        this.required = required;
        this.room = Shape.of(required.room());
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        double least = Double.POSITIVE_INFINITY;
        Slab nearest = null;
        Point at = Point.ORIGIN;
        for (int i = 0; i < pose.shapes.length; i++) {
            Slab slab = scene.slabs.get(i);
            if (!required.members().contains(slab.member)) {
                continue;
            }
            Reach reach = room.isDisc() ? inDisc(pose.shapes[i]) : inRoom(pose.shapes[i]);
            if (reach.distance() < least - scene.hair) {
                least = reach.distance();
                nearest = slab;
                at = reach.at();
            }
        }
        if (nearest == null) {
            return null;
        }
        Place place = Place.of(name(nearest.member), at);
        return new Measure(pose.state, least - required.clearance(), least, required.clearance(), place);
    }

    /** Exact: what is left between the farthest point and the round wall. */
    private Reach inDisc(Shape shape) {
        Piece wall = room.pieces[0];
        Point far = shape.farthestFrom(wall.cx, wall.cy);
        return new Reach(wall.r - Math.hypot(far.x() - wall.cx, far.y() - wall.cy), far);
    }

    private Reach inRoom(Shape shape) {
        Nearest nearest = new Nearest(Double.POSITIVE_INFINITY);
        nearest.between(shape, room);
        boolean apart = nearest.distance > scene.hair;
        if (apart && room.contains(shape.pieces[0].x0, shape.pieces[0].y0) && !coversHole(shape)) {
            return new Reach(nearest.distance, nearest.middle());
        }
        double fine = scene.tolerance / 4;
        Geometry outside =
                OverlayNGRobust.overlay(Chords.lean(shape, fine), Chords.full(room, fine), OverlayNG.DIFFERENCE);
        List<Coordinate> probes = new ArrayList<>(List.of(outside.getCoordinates()));
        for (Polygon polygon : Reach.polygons(outside)) {
            Point deep = Reach.deepest(polygon, fine).at();
            probes.add(new Coordinate(deep.x(), deep.y()));
        }
        double most = 0;
        Point at = nearest.middle();
        for (Coordinate c : probes) {
            double d = room.distanceFromOutline(c.x, c.y);
            if (d > most && !room.contains(c.x, c.y)) {
                most = d;
                at = new Point(c.x, c.y);
            }
        }
        return new Reach(most <= scene.tolerance ? 0 : -most, at);
    }

    private boolean coversHole(Shape shape) {
        for (int i = 1; i < room.contours(); i++) {
            Piece p = room.pieces[room.starts[i]];
            if (shape.contains(p.x0, p.y0)) {
                return true;
            }
        }
        return false;
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        if (worst == null) {
            findings.add(still(required.check(), List.of())
                    .unmeasured(Finding.Relation.AT_LEAST, required.clearance(), "mm", true)
                    .says("verify.none-inside"));
            return;
        }
        String who = worst.place().who();
        boolean out = worst.value() < -scene.tolerance;
        findings.add(on(required.check(), worst)
                .room(worst.value(), worst.limit(), "mm")
                .says(
                        "verify.inside",
                        out,
                        who,
                        Words.mm(out ? -worst.value() : Math.max(0, worst.value())),
                        Words.mm(worst.limit()),
                        scene.judged()));
    }
}
