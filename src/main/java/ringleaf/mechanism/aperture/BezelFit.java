// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import ringleaf.curve.Containment;
import ringleaf.curve.Distances;
import ringleaf.curve.Gap;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Saying;
import ringleaf.part.Words;

/**
 * Whether the mechanism fits into the user's own housing: walls between its round rooms and the outline, the screws and
 * the other openings, calculated. The judge measures the same webs on the finished plates.
 */
final class BezelFit {
    private static final String CHECK = "housing-fits";
    private static final int DIRECTIONS = 720;
    private static final int ALIGNMENT_TRIES = 360;
    /** A servo plate hangs on up to so many screws, those next to it. */
    private static final int SERVO_SCREWS = 4;
    /** Screws further off the drive's direction than this would lay the plate across the view, rad. */
    private static final double SERVO_SIDE = Math.toRadians(100);

    private BezelFit() {}

    /** A room of the mechanism that the housing's walls stand round. */
    private record Room(String name, Point centre, double radius) {}

    /** The housing of the user's outline; its screws begin with those next to the drive. */
    static Housing housing(ApertureSpec spec, Rim rim, DrivePlan drive) {
        Bezel.Own own = spec.bezel().housing().orElseThrow();
        List<Point> screws = new ArrayList<>(own.screws());
        Point towards =
                drive instanceof PinionPlan plan ? plan.centre() : Point.polar(rim.outer(), drive.blockedCentre());
        screws.sort(Comparator.comparingDouble(p -> p.distance(towards)));
        double web = Rim.housingWeb(spec);
        double radius = Math.max(0.5, Math.min(own.screwHole(), spec.plate().leastWeb() / 2));
        Housing plain = new Housing(
                own.outline(),
                screws,
                besideDrive(screws, drive),
                own.screwHole(),
                Point.ORIGIN,
                0,
                own.others(),
                true);
        for (int i = 0; i < ALIGNMENT_TRIES; i++) {
            double turn = drive.blockedCentre() + Math.PI + Angles.TURN * i / ALIGNMENT_TRIES;
            Point alignment = Point.polar(rim.wall() + web + radius, turn);
            if (isFree(plain, spec, rim, drive, alignment, radius + web)) {
                return new Housing(
                        own.outline(),
                        screws,
                        plain.ownScrews(),
                        own.screwHole(),
                        alignment,
                        radius,
                        own.others(),
                        true);
            }
        }
        return plain;
    }

    /** How many of the screws, nearest first, hold a servo plate: two at least. */
    private static int besideDrive(List<Point> screws, DrivePlan drive) {
        int count = 0;
        for (Point screw : screws) {
            boolean beside = Math.abs(Angles.signed(screw.angle() - drive.blockedCentre())) <= SERVO_SIDE;
            if (count >= SERVO_SCREWS || count >= 2 && !beside) {
                break;
            }
            count++;
        }
        return count;
    }

    private static boolean isFree(Housing plain, ApertureSpec spec, Rim rim, DrivePlan drive, Point at, double radius) {
        if (Containment.of(plain.outline(), at, 0) != Containment.INSIDE || nearest(plain.outline(), at) < radius) {
            return false;
        }
        for (Contour hole : plain.holes()) {
            if (Containment.of(hole, at, 0) != Containment.OUTSIDE || nearest(hole, at) < radius) {
                return false;
            }
        }
        double off = Math.abs(Angles.signed(at.angle() - drive.blockedCentre()));
        return off > drive.blockedHalfAngle(rim, radius) + radius / at.norm();
    }

    private static double nearest(Contour contour, Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : contour.segments()) {
            least = Math.min(least, Distances.distance(segment, p));
        }
        return least;
    }

    static boolean holds(ApertureDesign design) {
        for (Finding finding : findings(design)) {
            if (finding.failed()) {
                return false;
            }
        }
        return true;
    }

    /** The least wall between each room and the outline, and to the nearest hole of the user's pattern. */
    static List<Finding> findings(ApertureDesign design) {
        double web = Rim.housingWeb(design.spec());
        List<Finding> findings = new ArrayList<>();
        for (Room room : rooms(design)) {
            findings.add(wall(design, room, web));
            Finding hole = nextHole(design, room, web);
            if (hole != null) {
                findings.add(hole);
            }
        }
        findings.add(taken(design));
        return findings;
    }

    /** Which of the user's holes take screws, and which stay open as they are drawn. */
    private static Finding taken(ApertureDesign design) {
        Bezel.Own own = design.spec().bezel().housing().orElseThrow();
        TreeMap<Double, Integer> sizes = new TreeMap<>();
        int shaped = 0;
        for (Contour hole : own.others()) {
            if (hole.isCircle()) {
                sizes.merge(Math.rint(2000 * ((Arc) hole.segments().get(0)).radius()) / 1000, 1, Integer::sum);
            } else {
                shaped++;
            }
        }
        List<Saying> open = new ArrayList<>();
        sizes.forEach((size, count) -> open.add(Saying.of("aperture.holes-of", count, Figure.mm(size, 3))));
        if (shaped > 0) {
            open.add(Saying.of("aperture.openings", shaped));
        }
        return Finding.of(CHECK)
                .about("base-plate")
                .plain(true)
                .says(
                        "aperture.holes-taken",
                        own.screws().size(),
                        Figure.mm(2 * own.screwHole(), 3),
                        design.spec().screw().name(),
                        open,
                        !open.isEmpty());
    }

    private static List<Room> rooms(ApertureDesign design) {
        List<Room> rooms = new ArrayList<>();
        rooms.add(new Room("the ring's wall", Point.ORIGIN, design.rim().wall()));
        design.pinionPlan().ifPresent(plan -> {
            rooms.add(new Room("the pinion's pocket", plan.centre(), plan.pocketRadius()));
            if (plan.stepUp().isPresent()
                    || design.mount().isEmpty()
                    || design.mount().get().hasPlate()) {
                return;
            }
            for (Point ear : plan.servoOutline().earHoles()) {
                rooms.add(
                        new Room("a hole of the servo's ears", ear, plan.servo().holeDiameter() / 2));
            }
        });
        return rooms;
    }

    private static Finding wall(ApertureDesign design, Room room, double web) {
        Contour outline = design.housing().outline();
        Point near = nearestPoint(outline, room.centre);
        boolean inside = Containment.of(outline, room.centre, 0) == Containment.INSIDE;
        double distance = near.distance(room.centre);
        double wall = (inside ? distance : -distance) - room.radius;
        String needs = wall >= web
                ? ""
                : "; the outline would have to stand " + Words.mm(web - wall) + "" + " further out there";
        return finding(design, near, wall, web, "wall from " + room.name + " to the outline given" + needs);
    }

    /** The least wall to one of the user's holes; null when there are none. */
    private static Finding nextHole(ApertureDesign design, Room room, double web) {
        Contour circle = Contour.circle(room.centre, room.radius);
        double least = Double.POSITIVE_INFINITY;
        Point where = Point.ORIGIN;
        for (Contour hole : holes(design)) {
            Gap gap = Distances.between(circle, hole);
            Point near = nearestPoint(hole, room.centre);
            boolean within = near.distance(room.centre) < room.radius
                    || Containment.of(hole, room.centre, 0) == Containment.INSIDE;
            double wall = within ? near.distance(room.centre) - room.radius : gap.distance();
            if (wall < least) {
                least = wall;
                where = near;
            }
        }
        if (least == Double.POSITIVE_INFINITY) {
            return null;
        }
        String needs = least >= web ? "" : "; that hole would have to stand " + Words.mm(web - least) + " further off";
        return finding(design, where, least, web, "wall from " + room.name + " to the nearest hole given" + needs);
    }

    private static List<Contour> holes(ApertureDesign design) {
        List<Contour> holes = new ArrayList<>(design.housing().through());
        for (Point screw : design.housing().screws()) {
            holes.add(Contour.circle(screw, design.housing().screwHole()));
        }
        return holes;
    }

    private static Point nearestPoint(Contour contour, Point p) {
        Point best = null;
        for (Segment segment : contour.segments()) {
            Point near = Distances.nearest(segment, p);
            best = best == null || near.distance(p) < best.distance(p) ? near : best;
        }
        return best;
    }

    /** With its place in the frame in which the parts are drawn. */
    private static Finding finding(ApertureDesign design, Point p, double wall, double web, String message) {
        double y = design.spec().mirrored() ? -p.y() : p.y();
        return Finding.of(CHECK)
                .about("base-plate")
                .at(Finding.Place.NONE.withPoint(new Point(p.x(), y)))
                .room(wall, web, "mm")
                .inWords(message);
    }

    /** How far the user's outline reaches out where an arm passes, mm; looked at every half degree of it. */
    static double reachAlong(ApertureSpec spec, HandPlan hand, double over) {
        Contour outline = spec.bezel().housing().orElseThrow().outline();
        double far = 0;
        for (Segment segment : outline.segments()) {
            int steps = Math.max(8, (int) Math.ceil(segment.length() / 0.5));
            for (int i = 0; i <= steps; i++) {
                Point p = segment.pointAt((double) i / steps);
                double off = Math.abs(Angles.signed(p.angle() - hand.at() - hand.travel() / 2));
                double arm = Math.asin(Math.min(1, 2 * hand.halfWidth() / p.norm()));
                double wide = Math.abs(hand.travel()) / 2 + over + arm;
                far = off <= wide ? Math.max(far, p.norm()) : far;
            }
        }
        return far + 0.1;
    }

    /** Greatest width over all directions, to one part in 10⁵ (assumed: looked at every half degree), mm. */
    static double width(Contour outline) {
        double widest = 0;
        for (int i = 0; i < DIRECTIONS / 2; i++) {
            Contour turned = outline.placed(Placement.turn(i * Angles.TURN / DIRECTIONS));
            widest = Math.max(widest, turned.box().width());
        }
        return widest;
    }
}
