// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Circle;
import ringleaf.curve.Distances;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** Base, cover, retainer and servo plate: flat plates round the opening. */
final class PlateParts {
    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Rim rim;
    private final Stack stack;
    private final Housing housing;

    PlateParts(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
        this.rim = design.rim();
        this.stack = design.stack();
        this.housing = design.housing();
    }

    Part base() {
        List<Contour> through = plateHoles(0);
        List<Contour> upper = new ArrayList<>(through);
        upper.addAll(new ApertureJoints(design, spec.blades()).bores().cuts());
        Region drilled = new Region(housing.outline(), upper);
        List<Layer> layers = new ArrayList<>();
        if (stack.boreFloor() > 0) {
            layers.add(Layer.of(new Region(housing.outline(), through), 0, stack.boreFloor()));
        }
        layers.add(Layer.of(drilled, stack.boreFloor(), stack.baseTop()));
        String note = stack.hasCover()
                ? "bores go through; the cover closes them behind"
                : "blind bores, open towards the blades";
        return new Part("base-plate", Family.PLATE, 1, spec.plate().source(), layers, marks(), note);
    }

    Part cover() {
        Region region = new Region(housing.outline(), plateHoles(stack.coverBottom()));
        Layer layer = Layer.of(region, stack.coverBottom(), 0);
        return new Part(
                "cover",
                Family.PLATE,
                1,
                Stack.coverMaking(spec).source(),
                List.of(layer),
                marks(),
                "closes the pivot bores behind the base");
    }

    Part retainer() {
        List<Contour> holes = new ArrayList<>();
        holes.add(Contour.circle(Point.ORIGIN, rim.opening()));
        holes.addAll(housing.holes());
        design.pinionPlan().ifPresent(p -> holes.add(Contour.circle(p.centre(), accessRadius())));
        Region region = new Region(housing.outline(), holes);
        Layer layer = Layer.of(region, stack.retainerBottom(), stack.retainerTop());
        // its face is the one that a viewer sees: nothing but a scale that was asked for is engraved there
        List<Path> marks = new OpeningScale(design).marks();
        return new Part("retainer", Family.PLATE, 1, spec.plate().source(), List.of(layer), marks, "front plate")
                .shown();
    }

    /** Hole in the retainer: for the step-up's axle, or to reach the screw in the servo's output. */
    double accessRadius() {
        if (design.pinionPlan().flatMap(PinionPlan::stepUp).isPresent()) {
            return design.mount().orElseThrow().throughRadius();
        }
        return Math.max(spec.screw().headDiameter(), 4) / 2 + ServoOutline.ROOM;
    }

    Part servoPlate() {
        PinionPlan plan = design.pinionPlan().orElseThrow();
        ServoMount mount = design.mount().orElseThrow();
        double web = spec.plate().leastWeb();
        List<Point> screws = servoScrews();
        List<Circle> pads = ServoMount.pads(plan, screws, housing.screwHole() + web, web);
        List<Contour> holes = new ArrayList<>();
        holes.addAll(plan.servoOutline().seat(web));
        for (Point screw : screws) {
            holes.add(Contour.circle(screw, housing.screwHole()));
        }
        Region cut = clearOfView(Region.of(Shapes.hull(pads)), rim.opening() + web);
        double back = mount.earFace();
        boolean slotted = plan.servoOutline().isSlotted(web);
        Layer layer = Layer.of(cut.withHoles(holes), back, back + mount.plateThickness());
        return new Part(
                "servo-plate",
                Family.PLATE,
                1,
                spec.plate().source(),
                List.of(layer),
                List.of(),
                "servo's ears against its back" + (slotted ? ", clamped through the slots by screws and nuts" : "")
                        + "; on standoffs under the housing's long screws");
    }

    /** What of a plate lies outside the view; most plates do so anyway. */
    private static Region clearOfView(Region plate, double radius) {
        for (Segment edge : plate.outer().segments()) {
            if (Distances.distance(edge, Point.ORIGIN) < radius) {
                return Overlay.difference(List.of(plate), List.of(Region.disc(Point.ORIGIN, radius)))
                        .get(0);
            }
        }
        return plate;
    }

    /** The housing's screws that run on into the servo plate: those in the lobe and two beside the window. */
    List<Point> servoScrews() {
        return housing.servoScrews();
    }

    /** Openings of a plate whose back face lies at {@code z}: the view, the screws, and what the servo needs. */
    private List<Contour> plateHoles(double z) {
        List<Contour> holes = new ArrayList<>();
        holes.add(Contour.circle(Point.ORIGIN, rim.opening()));
        holes.addAll(housing.holes());
        if (design.drive() instanceof PinionPlan plan) {
            ServoMount mount = design.mount().orElseThrow();
            Contour turning = Contour.circle(plan.centre(), mount.throughRadius());
            boolean window = plan.stepUp().isEmpty() && mount.caseReaches(z);
            boolean ears = !mount.hasPlate();
            if (window) {
                List<Contour> seat = ears
                        ? plan.servoOutline().seat(spec.plate().leastWeb())
                        : List.of(plan.servoOutline().body());
                holes.add(Overlay.union(List.of(Region.of(seat.get(0)), Region.of(turning)))
                        .get(0)
                        .outer());
                holes.addAll(seat.subList(1, seat.size()));
            } else {
                holes.add(turning);
            }
            if (ears && !window) {
                for (Point ear : plan.servoOutline().earHoles()) {
                    holes.add(Contour.circle(ear, plan.servo().holeDiameter() / 2));
                }
            }
        }
        return holes;
    }

    private List<Path> marks() {
        return housing.alignmentHole() > 0 ? List.of(mark()) : List.of();
    }

    /** A half arrow beside the alignment hole that points counter-clockwise when the face towards the ring is up. */
    private Path mark() {
        double radius = housing.alignment().norm();
        double at = housing.alignment().angle() + 2.5 * housing.alignmentHole() / radius;
        double size = 3;
        Point tail = Point.polar(radius, at);
        Point tip = Point.polar(radius, at + size / radius);
        Point barb = Point.polar(radius + size / 3, at + size / 2 / radius);
        return Path.of(new Line(tail, tip), new Line(tip, barb));
    }
}
