// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ringleaf.curve.Distances;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.Bolt;
import ringleaf.mechanism.CutRod;
import ringleaf.mechanism.Hardware;
import ringleaf.mechanism.Standoff;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/**
 * What of a belt drive is bought by its size: screws and spacers of plates and servo, the screws of stacked pulleys, and
 * the rod of which axles are cut. Heads of the plates' screws lie on the front plate, those of servo and pulleys below.
 */
final class DriveFasteners {
    static final String BEARING = "axle-bearing";
    static final String STANDOFF = "standoff";

    private final DrivePlan plan;
    private final DriveSpec spec;

    DriveFasteners(DrivePlan plan) {
        this.plan = plan;
        this.spec = plan.spec();
    }

    /** Room that heads below what turns ask for, mm: on the base for the servo's ears, under stacked pulleys. */
    static double headRoom(DrivePlan plan) {
        DriveSpec spec = plan.spec();
        double room = 0;
        if (spec.plates() == 0) {
            return room;
        }
        for (PulleySpec pulley : pulleys(plan)) {
            if (pulley.joining().isPresent()) {
                room = Math.max(room, pulley.joining().get().screw().headHeight() + Hardware.HEAD_ROOM);
            }
        }
        Optional<Screw> ear = earScrew(plan);
        return ear.isPresent() && isUnderWheel(plan, ear.get().headDiameter() / 2)
                ? Math.max(room, ear.get().headHeight() + Hardware.HEAD_ROOM)
                : room;
    }

    private static List<PulleySpec> pulleys(DrivePlan plan) {
        List<PulleySpec> all = new ArrayList<>();
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            plan.pulley(i).ifPresent(all::add);
        }
        return all;
    }

    /** Whether a wheel turns over the head of a screw in the servo's ears. */
    private static boolean isUnderWheel(DrivePlan plan, double head) {
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            // the driver moves along with the servo
            Optional<ServoPlace> place =
                    i == 0 ? ServoPlace.of(plan.spec(), 0, 0) : ServoPlace.of(plan.spec(), plan.slot());
            for (Region ear : place.map(ServoPlace::earCuts).orElse(List.of())) {
                double hole = plan.spec().servo().orElseThrow().holeDiameter() / 2;
                Region wheel = Region.disc(wheels.get(i).centre(), plan.reach(i));
                if (Distances.between(wheel, ear).distance() + hole < head + Hardware.HEAD_ROOM) {
                    return true;
                }
            }
        }
        return false;
    }

    /** In the servo's ears: as thick as they take where its head is clear of what turns, else with the flattest head. */
    private static Optional<Screw> earScrew(DrivePlan plan) {
        DriveSpec spec = plan.spec();
        if (spec.servo().isEmpty()) {
            return Optional.empty();
        }
        double hole = spec.servo().get().holeDiameter();
        Optional<Screw> beside = spec.hardware()
                .screwThrough(hole, Double.MAX_VALUE)
                .filter(screw -> !isUnderWheel(plan, screw.headDiameter() / 2));
        if (beside.isPresent()) {
            return beside;
        }
        Optional<Screw> below = spec.hardware().screwThrough(hole, spec.axialRoom());
        return below.isPresent() ? below : spec.hardware().flattestThrough(hole);
    }

    /** Between the plates, from the room that what turns between them asks for. */
    Standoff standoff() {
        return Standoff.from(STANDOFF, plan.top() + spec.axialRoom(), spec.screw(), spec.spacer());
    }

    /** Through both plates and a standoff. */
    private Bolt screw() {
        return Bolt.of(
                "screw", spec.screw(), standoff().length() + 2 * spec.plate().thickness());
    }

    /** Under the servo's ears; none where they lie on the base, or no screw holds them. */
    private Optional<Standoff> packing(double height) {
        return earScrew(plan).filter(s -> height > 1e-9).map(s -> new Standoff("packing", height, s, spec.spacer()));
    }

    private Optional<Bolt> servoScrew(double packing) {
        Servo servo = spec.servo().orElseThrow();
        return earScrew(plan)
                .map(s -> Bolt.of("servo-screw", s, spec.plate().thickness() + packing + servo.earThickness()));
    }

    /** The screws that join the plates of a pulley. */
    static Optional<Bolt> joining(PulleySpec pulley, PulleyStack stack) {
        return pulley.joining().map(j -> Bolt.of(pulley.partName("screw"), j.screw(), stack.joined()));
    }

    static void addJoining(PulleySpec pulley, PulleyStack stack, List<Part> parts) {
        joining(pulley, stack).ifPresent(bolt -> {
            int count = pulley.joining().orElseThrow().count();
            parts.add(bolt.part(count));
            parts.add(bolt.nuts(pulley.partName("nut"), count));
        });
    }

    List<Part> parts(DrivePlates plates) {
        List<Part> parts = new ArrayList<>();
        for (PulleySpec pulley : pulleys(plan)) {
            addJoining(pulley, plan.stack(pulley), parts);
        }
        if (spec.plates() == 0) {
            return parts;
        }
        axles(plates, parts);
        if (spec.servo().isPresent()) {
            servo(plates, parts);
        }
        if (spec.plates() > 1) {
            parts.add(screw().part(plates.screws().size()));
            parts.add(screw().nuts("nut", plates.screws().size()));
        }
        return parts;
    }

    private void servo(DrivePlates plates, List<Part> parts) {
        List<Region> ears = ServoPlace.of(spec, plan.slot()).orElseThrow().earCuts();
        Point first = ears.get(0).outer().centroid();
        double bottom = -spec.plate().thickness() - plates.packing();
        packing(plates.packing()).ifPresent(p -> parts.add(p.part(first, bottom, ears.size())));
        servoScrew(plates.packing()).ifPresent(bolt -> {
            parts.add(bolt.part(ears.size()));
            parts.add(bolt.nuts("servo-nut", ears.size()));
        });
    }

    /** Rods through the plates, for every wheel but one that sits on a servo, and what lies below these wheels. */
    private void axles(DrivePlates plates, List<Part> parts) {
        double through = spec.plate().thickness();
        if (spec.axles().seat().isPresent()) {
            through = Math.max(through, spec.axles().seat().get().bearing().width());
        }
        double inside = spec.plates() > 1 ? plates.frontBottom() : plan.top() + spec.axialRoom();
        for (int i : axled(plan)) {
            Wheel wheel = plan.path().wheels().get(i);
            String name = wheel.name();
            Part.Source rod = rod(wheel, plates.axle(i)).source(inside + spec.plates() * through);
            String note = i == plan.layout().driven() ? "longer by what it carries outside the plates" : "";
            parts.add(new Part(axle(wheel), Family.BOUGHT, 1, rod, List.of(), List.of(), note));
            if (plan.foot() > 0) {
                parts.add(Part.bought(
                        name + "-washers",
                        1,
                        "shim washers for " + Words.number(plates.axle(i), 2) + " mm, DIN 988, " + Words.mm(plan.foot())
                                + " together"));
            }
        }
    }

    /** Indices of the wheels that have an axle: all but one that sits on a servo; none without plates. */
    static List<Integer> axled(DrivePlan plan) {
        int first = plan.spec().servo().isPresent() ? 1 : 0;
        int end = plan.spec().plates() > 0 ? plan.path().wheels().size() : first;
        return IntStream.range(first, end).boxed().toList();
    }

    /** Name of a wheel's axle. */
    static String axle(Wheel wheel) {
        return wheel.name() + "-axle";
    }

    private CutRod rod(Wheel wheel, double diameter) {
        return spec.hardware().rod(axle(wheel), diameter);
    }

    /** Whether all of it can be bought or made, and no screw ends in the air. */
    List<Finding> findings(DrivePlates plates) {
        List<Finding> found = new ArrayList<>();
        for (PulleySpec pulley : pulleys(plan)) {
            joining(pulley, plan.stack(pulley)).ifPresent(bolt -> found.add(bolt.reaches()));
        }
        if (spec.plates() == 0) {
            return found;
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = spec.servo().isPresent() ? 1 : 0; i < wheels.size(); i++) {
            found.add(rod(wheels.get(i), plates.axle(i)).isSold());
        }
        if (spec.servo().isPresent()) {
            packing(plates.packing()).ifPresent(p -> found.add(p.isHad()));
            servoScrew(plates.packing()).ifPresent(bolt -> found.add(bolt.reaches()));
        }
        if (spec.plates() > 1) {
            found.add(standoff().isHad());
            found.add(screw().reaches());
        }
        return found;
    }
}
