// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Assembly;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Part;
import ringleaf.part.Requirement;

/**
 * A bare leaf aperture: bands with round ends along a circle of radius {@code pivot}, each turning about its pivot,
 * and the opening as the figure of their inner arcs. Leaf k is member k and rides on body k + 1.
 */
record BandLeaves(int count, double pivot, double width, double spanDeg, double clear, double least) {
    double inner() {
        return pivot - width / 2;
    }

    double mostAngle() {
        return 2 * Math.asin((inner() - least) / (2 * pivot));
    }

    Region leaf() {
        double a = Math.toRadians(spanDeg);
        double ri = inner();
        double ro = pivot + width / 2;
        Point o = Point.ORIGIN;
        Point p0 = new Point(ro, 0);
        Point p1 = Point.polar(ro, a);
        Point p2 = Point.polar(ri, a);
        Point p3 = new Point(ri, 0);
        return Region.of(Contour.of(
                Arc.around(o, p0, p1, true),
                Arc.around(Point.polar(pivot, a), p1, p2, true),
                Arc.around(o, p2, p3, false),
                Arc.around(new Point(pivot, 0), p3, p0, true)));
    }

    Region opening(double b, double by) {
        double radius = inner() + by;
        double d = 2 * pivot * Math.sin(b / 2);
        if (d < 1e-9) {
            return Region.disc(Point.ORIGIN, radius);
        }
        double half = Math.PI / count;
        double v = Math.sqrt(radius * radius - Math.pow(d * Math.sin(half), 2)) - d * Math.cos(half);
        Point c = new Point(pivot * (1 - Math.cos(b)), -pivot * Math.sin(b));
        double away = c.angle() + Math.PI;
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            corners.add(Point.polar(v, away + (2 * k - 1) * half));
        }
        List<Segment> arcs = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Point centre = c.turned(k * Angles.TURN / count);
            arcs.add(Arc.around(centre, corners.get(k), corners.get((k + 1) % count), true));
        }
        return Region.of(new Contour(arcs));
    }

    Motion motion(int states, Integer... notable) {
        List<IntFunction<Placement>> bodies = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Point at = Point.polar(pivot, k * Angles.TURN / count);
            bodies.add(s -> Placement.turnAbout(at, mostAngle() * s / (states - 1)));
        }
        return Mechanisms.motion(states, bodies, notable);
    }

    LeafFamily family(int states) {
        List<Integer> leaves = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            leaves.add(k);
        }
        return new LeafFamily(
                "blade",
                leaves,
                3,
                5,
                Region.disc(Point.ORIGIN, clear),
                s -> opening(mostAngle() * s.state() / (states - 1), s.by()));
    }

    List<Member> members() {
        Part part = Mechanisms.part("blade", leaf(), 3, 3.15);
        List<Member> members = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            members.add(new Member("blade " + (k + 1), part, k + 1, Placement.turn(k * Angles.TURN / count)));
        }
        return members;
    }

    Assembly assembly(int states, List<Member> more, Requirement... requirements) {
        List<Member> members = new ArrayList<>(members());
        members.addAll(more);
        return new Assembly(
                "made-up",
                members,
                motion(states),
                Optional.of(family(states)),
                List.of(requirements),
                List.of(),
                List.of());
    }
}
