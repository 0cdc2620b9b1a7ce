// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Circle;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.mechanism.Standoff;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * The plates that hold axles and servo. Where the centre distance moves, everything of the driver has slots along the
 * line of centres; where an idler tightens, it has one. What stands in the way goes through the plates with its room.
 */
final class DrivePlates {
    /** Axle where a bore is none, mm. */
    private static final double USUAL_AXLE = 3;

    /**
     * A hole in a plate.
     *
     * @param what it is for
     * @param group holes of one group may run into one another
     */
    record Cut(String what, String group, Region region) {}

    private final DrivePlan plan;
    private final DriveSpec spec;
    private final double thickness;
    private final Optional<ServoPlace> servo;
    private final Standoff standoff;
    private final Standoffs standoffs;

    DrivePlates(DrivePlan plan) {
        this.plan = plan;
        this.spec = plan.spec();
        this.thickness = spec.plate().thickness();
        this.servo = ServoPlace.of(spec, plan.slot());
        List<Region> taken = new ArrayList<>();
        for (boolean base : new boolean[] {true, false}) {
            for (Cut cut : cutsBesideScrews(base)) {
                taken.add(cut.region());
            }
        }
        this.standoff = new DriveFasteners(plan).standoff();
        this.standoffs = Standoffs.of(plan, standoffRadius(), servo, taken);
    }

    private double standoffRadius() {
        return standoff.outerRadius();
    }

    Standoffs standoffs() {
        return standoffs;
    }

    List<Point> screws() {
        return standoffs.places();
    }

    /** Packing between the servo's ears and the base so that the driver turns at its height, mm. */
    double packing() {
        return Math.max(0, hornSpare());
    }

    /** Whether the servo's long side looks away from the driven pulley. */
    boolean servoAlong() {
        return servo.isPresent() && servo.get().isAlong();
    }

    /** By how much the servo's horn stands over where the driver's foot is, mm; 0 without a servo. */
    double hornSpare() {
        return servo.isPresent() ? servo.get().servo().hornHeight() - thickness - plan.foot() : 0;
    }

    /** Height of the front plate's lower face: as long as the standoffs come. */
    double frontBottom() {
        return standoff.length();
    }

    /** Drawn from the foot up: base, standoffs, front plate. */
    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        if (spec.plates() == 0) {
            return parts;
        }
        parts.add(base());
        if (spec.plates() > 1) {
            parts.add(standoff.part(screws().isEmpty() ? Point.ORIGIN : screws().get(0), 0, screws().size()));
            parts.add(front());
        }
        return parts;
    }

    Part base() {
        return plate(DrivePart.BASE, true, -thickness);
    }

    Part front() {
        return plate(DrivePart.FRONT, false, frontBottom());
    }

    /** What is left of a plate once all is cut out of it; more than one region where it falls apart. */
    List<Region> outline(boolean base) {
        List<Region> cuts = new ArrayList<>();
        for (Cut cut : cuts(base)) {
            cuts.add(cut.region());
        }
        return Overlay.difference(List.of(Region.of(hull(base))), cuts);
    }

    private Part plate(DrivePart role, boolean base, double bottom) {
        Layer layer = new Layer(outline(base), bottom, bottom + thickness);
        return new Part(role.label(), Family.PLATE, 1, spec.plate().source(), List.of(layer), List.of(), "");
    }

    /** All standoffs in their places, as one thing. */
    Part placedStandoffs() {
        List<Region> rings = new ArrayList<>();
        for (Point screw : screws()) {
            rings.add(standoff.ring(screw));
        }
        Part one = standoff.part(Point.ORIGIN, 0, screws().size());
        return new Part(
                one.name(),
                Family.SPACER,
                one.quantity(),
                one.source(),
                List.of(new Layer(rings, 0, standoff.length())),
                List.of(),
                one.note());
    }

    /** All holes of a plate. */
    List<Cut> cuts(boolean base) {
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < screws().size(); i++) {
            cuts.add(new Cut(
                    "screw " + (i + 1),
                    "screw " + (i + 1),
                    Region.disc(screws().get(i), spec.screw().hole() / 2)));
        }
        cuts.addAll(cutsBesideScrews(base));
        for (int i = 0; i < spec.obstacles().size(); i++) {
            DriveSpec.Obstacle o = spec.obstacles().get(i);
            String name = "obstacle " + (i + 1);
            cuts.add(new Cut(name, "obstacles", Region.disc(o.centre(), o.diameter() / 2 + spec.beltRoom())));
        }
        return cuts;
    }

    private List<Cut> cutsBesideScrews(boolean base) {
        List<Cut> cuts = new ArrayList<>();
        if (spec.plates() == 0) {
            return cuts;
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            String name = wheels.get(i).name();
            boolean onServo = i == 0 && servo.isPresent();
            cuts.add(new Cut(
                    onServo ? "servo's output" : "axle of the " + name, onServo ? "servo" : name, hole(i, base)));
        }
        if (!base || servo.isEmpty()) {
            return cuts;
        }
        if (servo.get().servo().caseHeight() > packing()) {
            cuts.add(new Cut("servo's body", "servo", servo.get().bodyCut()));
        }
        int ear = 1;
        for (Region hole : servo.get().earCuts()) {
            cuts.add(new Cut("servo's screw " + ear, "ear " + ear, hole));
            ear++;
        }
        return cuts;
    }

    /** The hole for a wheel's axle, or the slot in which it moves. */
    Region hole(int wheel, boolean base) {
        Point centre = plan.path().wheels().get(wheel).centre();
        double radius = holeRadius(wheel, base);
        DriveSlot slot = plan.slot();
        return wheel == slot.wheel()
                ? Region.of(
                        Shapes.obround(slot.moved(centre, -slot.inward()), slot.moved(centre, slot.outward()), radius))
                : Region.disc(centre, radius);
    }

    private double holeRadius(int wheel, boolean base) {
        if (wheel == 0 && servo.isPresent()) {
            return servo.get().outputRadius(spec, base);
        }
        return wheel == plan.layout().driven()
                ? spec.axles().drivenHole(axle(spec.driven()))
                : spec.axles().hole(axle(wheel));
    }

    /** Diameter of the axle of a wheel that sits on none of a servo's. */
    double axle(int wheel) {
        String name = plan.path().wheels().get(wheel).name();
        return wheel == 0
                ? axle(spec.driver())
                : wheel == plan.layout().driven()
                        ? axle(spec.driven())
                        : spec.roller(name).axle();
    }

    /** Diameter of the axle that a pulley's bore takes. */
    static double axle(PulleySpec pulley) {
        double axle = pulley.body().axle().axle();
        return axle > 0 ? axle : USUAL_AXLE;
    }

    /** A hull round every hole with what has to stand round it; slots count with both their ends. */
    private Contour hull(boolean base) {
        List<Circle> discs = new ArrayList<>();
        double web = spec.plate().leastWeb();
        for (Point screw : screws()) {
            double hole = spec.screw().hole() / 2 + web;
            discs.add(new Circle(screw, Math.max(hole, standoffRadius() + Math.max(1, web / 2))));
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            // the base and the front plate are cut to one outline, whatever the servo needs of the base
            double radius = i == 0 ? spec.axles().hole(axle(0)) : holeRadius(i, base);
            discs.add(new Circle(wheels.get(i).centre(), radius + 3 * web));
            if (i == plan.slot().wheel()) {
                double end = holeRadius(i, base) + Math.max(1, 1.5 * web);
                discs.add(new Circle(
                        plan.slot().moved(wheels.get(i).centre(), -plan.slot().inward()), end));
                discs.add(new Circle(
                        plan.slot().moved(wheels.get(i).centre(), plan.slot().outward()), end));
            }
        }
        if (base && servo.isPresent()) {
            for (Point corner : servo.get().corners()) {
                discs.add(new Circle(corner, 2));
            }
            // the web stands round every hole of the servo's too: all are bounded by arcs at their ends or corners
            for (Cut cut : cutsBesideScrews(true)) {
                for (Segment piece : cut.region().outer().segments()) {
                    if (piece instanceof Arc arc) {
                        discs.add(new Circle(arc.centre(), arc.radius() + web));
                    }
                }
            }
        }
        return Shapes.hull(discs);
    }
}
