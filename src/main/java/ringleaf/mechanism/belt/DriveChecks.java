// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Relation;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.spec.shared.Servo;

/** What must hold of a belt drive, by its own geometry. */
final class DriveChecks {
    /** Rating left with 5, 4, 3 and 2 teeth in mesh; common practice, no source. */
    private static final double[] DERATED = {0.8, 0.6, 0.4, 0.2};

    private static final int LEAST_MESH = 2;
    /** Centre distance over the small pulley's diameter from which both need flanges: a maker's catalogue, K-2 note. */
    private static final double FLANGE_BOTH = 8;
    /** Share by which a stocked belt may stand off the distance asked for without a word; a choice. */
    private static final double NEAR = 0.02;
    /** The same from which on it is not what was asked for; a choice. */
    static final double FAR = 0.1;

    private final DrivePlan plan;
    private final DriveSpec spec;
    private final DriveRoom room;
    private final List<Finding> all = new ArrayList<>();

    private DriveChecks(DrivePlan plan, DriveRoom room) {
        this.plan = plan;
        this.spec = plan.spec();
        this.room = room;
    }

    static List<Finding> of(DrivePlan plan, DriveRoom room, DrivePlates plates) {
        DriveChecks checks = new DriveChecks(plan, room);
        checks.mesh();
        checks.distance();
        checks.stock();
        checks.rooms();
        checks.slot();
        checks.servo();
        checks.pull();
        checks.flanges();
        checks.wheels();
        checks.all.addAll(PlateChecks.of(plan, plates));
        return checks.all;
    }

    /** Whether a length is at least its limit: for choosing a belt, by the rule that judges it. */
    static boolean holds(double measured, double limit) {
        return Finding.of("").atLeast(measured, limit, "mm").isHeld();
    }

    /** The same of room that must be there. */
    static boolean leaves(DriveRoom.Nearest room, double limit) {
        return Finding.of("").room(room.distance(), limit, "mm").isHeld();
    }

    private void mesh() {
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Wheel wheel = plan.path().wheels().get(i);
            if (wheel.teeth() == 0) {
                continue;
            }
            double mesh = plan.path().teethInMesh(i);
            int whole = (int) Math.floor(mesh + Finding.ROUNDING);
            boolean drives = i == 0 || i == plan.layout().driven();
            if (!drives) {
                // no torque comes through an idler
                add(
                        Finding.of("teeth-in-mesh").about(wheel.name()).plain(true),
                        Words.number(mesh, 2) + " teeth are in mesh; no torque comes through there.");
            } else if (mesh >= TeethChoice.FULL_MESH || whole >= LEAST_MESH) {
                add(
                        Finding.of("teeth-in-mesh")
                                .about(wheel.name())
                                .atLeast(mesh, LEAST_MESH, TeethChoice.FULL_MESH, "1"),
                        whole >= TeethChoice.FULL_MESH
                                ? Words.number(mesh, 2) + " teeth are in mesh."
                                : "Only " + Words.number(mesh, 2) + " teeth are in mesh: the belt carries "
                                        + Words.number(DERATED[5 - whole], 1) + " of its rating there.");
            } else {
                add(
                        Finding.of("teeth-in-mesh").about(wheel.name()).atLeast(mesh, LEAST_MESH, "1"),
                        "With " + Words.number(mesh, 2) + " teeth in mesh the belt jumps under load.");
            }
        }
    }

    private void distance() {
        Bound asked = spec.distance();
        double distance = plan.layout().distance();
        String belt = "belt of " + plan.layout().beltTeeth() + " teeth";
        if (spec.fixed() || asked.equals(Bound.open())) {
            return;
        }
        Finding.Draft draft = Finding.of("centre-distance").about("driver", "driven");
        if (asked.isExact()) {
            double off = Math.abs(distance - spec.wanted());
            draft = off > FAR * spec.wanted() ? draft : draft.orWarn();
            draft.about(distance, spec.wanted(), NEAR * spec.wanted(), "mm");
            String others =
                    plan.search().others().isEmpty() ? "" : " (" + plan.search().others() + ")";
            add(
                    draft,
                    draft.isHeld()
                            ? "The " + belt + " stands at " + Words.mm(distance) + ", " + Words.mm(off)
                                    + " from what was asked for."
                            : "The nearest is a " + belt + " at " + Words.mm(distance) + ", " + Words.mm(off)
                                    + " from the " + Words.mm(spec.wanted()) + " asked for" + others + ".");
            return;
        }
        boolean low = distance < asked.leastOr(distance) - Finding.ROUNDING;
        draft = low || asked.atMost().isEmpty()
                ? draft.atLeast(distance, asked.leastOr(distance), "mm")
                : draft.atMost(distance, asked.mostOr(distance), "mm");
        add(
                draft,
                draft.isHeld()
                        ? "The " + belt + " stands within the limits."
                        : "No stocked belt stands within the limits; the nearest stands at " + Words.number(distance, 3)
                                + " mm.");
    }

    private void stock() {
        if (!plan.search().stocked()) {
            add(
                    Finding.of("belt-stock").about("belt").orWarn().plain(false),
                    "Belts of " + plan.layout().beltTeeth() + " teeth are not among the stocked lengths known here.");
        }
        List<Double> widths = spec.choice().belt().widths();
        boolean known = widths.isEmpty();
        for (double width : widths) {
            known |= Math.abs(width - spec.choice().width()) < Finding.ROUNDING;
        }
        if (!known) {
            add(
                    Finding.of("belt-width").about("belt").orWarn().plain(false),
                    "A width of " + Words.mm(spec.choice().width())
                            + " is not among the stocked ones known here; wider belts can be slit.");
        }
        double length = plan.path().length();
        double whole = plan.layout().beltTeeth() * spec.choice().belt().pitch();
        add(
                Finding.of("belt-length").about("belt").about(length, whole, DriveLayout.SAME_LENGTH * whole, "mm"),
                "The pitch line round all wheels is " + Words.number(length, 6) + " mm long, the belt of "
                        + plan.layout().beltTeeth() + " teeth " + Words.number(whole, 3) + " mm.");
    }

    private void rooms() {
        DriveRoom.Nearest pulleys = room.pulleys();
        add(
                Finding.of("pulley-clearance")
                        .about(pulleys.first(), pulleys.second())
                        .room(pulleys.distance(), spec.pulleyRoom(), "mm"),
                apart(pulleys) + ", flanges included.");
        DriveRoom.Nearest belt = room.belt();
        add(
                Finding.of("belt-clearance")
                        .about(belt.first(), belt.second())
                        .room(belt.distance(), spec.beltRoom(), "mm"),
                apart(belt) + ".");
        DriveRoom.Nearest obstacle = room.obstacle();
        if (!spec.obstacles().isEmpty()) {
            add(
                    Finding.of("obstacle-clearance")
                            .about(obstacle.first(), obstacle.second())
                            .room(obstacle.distance(), spec.beltRoom(), "mm"),
                    apart(obstacle) + ".");
        }
    }

    private String apart(DriveRoom.Nearest nearest) {
        boolean moves = plan.slot().moves();
        return nearest.distance() > 0
                ? "The " + nearest.words() + " stay " + Words.mm(nearest.distance()) + " apart"
                        + (moves ? " wherever in its slot the " + moved() + " stands" : "")
                : "The " + nearest.words() + " run into each other, " + Words.mm(-nearest.distance()) + " deep"
                        + (moves ? " at one end of the slot of the " + moved() : "");
    }

    private String moved() {
        return plan.path().wheels().get(plan.slot().wheel()).name();
    }

    /** The belt can be put on as the build order says, and be tightened. */
    private void slot() {
        DriveSlot slot = plan.slot();
        double whole = plan.layout().beltTeeth() * spec.choice().belt().pitch();
        double take = BeltRooms.takeUp(whole, spec.plate()).mm();
        if (!slot.moves()) {
            add(
                    Finding.of("tension-allowance")
                            .about("belt")
                            .orWarn()
                            .unmeasured(Relation.AT_LEAST, take, "mm", false),
                    "Nothing moves to tighten the belt: it is as tight as its length and the plates make it.");
            return;
        }
        Finding.Draft draft =
                Finding.of("installation-allowance").about(moved()).atLeast(slot.free(), slot.needed(), "mm");
        String goes = "The " + moved() + " can be pushed aside by " + Words.mm(slot.free());
        add(
                draft,
                goes
                        + (slot.together()
                                ? "; there is no room to lift the belt over the driver's flange, so it goes on together with the pulleys."
                                : " and needs " + Words.mm(slot.needed())
                                        + " to put the belt on over the driver's flange."));
        draft = Finding.of("tension-allowance").about(moved()).atLeast(slot.taken(), take, "mm");
        add(
                draft,
                draft.isHeld()
                        ? "The outer end of the slot takes up " + Words.mm(slot.taken()) + " of the belt's length."
                        : "The " + moved() + " takes up no more than " + Words.mm(Math.max(0, slot.taken()))
                                + " of the belt's length; tightening and the belt's tolerance ask for " + Words.mm(take)
                                + ".");
    }

    private void servo() {
        Optional<Servo> servo = spec.servo();
        if (servo.isEmpty()) {
            return;
        }
        double turn = Math.toDegrees(Math.abs(plan.driverTravel()));
        add(
                Finding.of("servo-travel")
                        .about("driver")
                        .atMost(turn, Math.toDegrees(servo.get().travel()), "deg"),
                "The driver turns " + Words.number(turn, 1) + "° for " + Words.degrees(Math.abs(plan.travel()), 1)
                        + " of the driven pulley.");
        if (spec.load().isPresent()) {
            double need = spec.load().getAsDouble() / spec.ratio() / DrivePlan.EFFICIENCY * spec.reserve();
            add(
                    Finding.of("servo-torque")
                            .about("servo")
                            .atMost(need, servo.get().torque(), "Nmm"),
                    "The load asks " + Words.number(need, 1) + " Nmm of the servo, with "
                            + Words.number(spec.reserve(), 1) + " times what it takes.");
        }
    }

    private void pull() {
        if (plan.driverTorque() == 0) {
            return;
        }
        double tight = plan.pretension() + plan.effectivePull() / 2;
        String says = "At stall the tight span pulls with " + Words.number(tight, 1) + " N";
        if (spec.choice().belt().pullPerWidth().isEmpty()) {
            add(
                    Finding.of("belt-tension").about("belt").orWarn().plain(false),
                    says + "; no open source gives what this belt carries: compare it with its maker's figure.");
            return;
        }
        double rating = spec.choice().belt().pullPerWidth().getAsDouble()
                * spec.choice().width();
        double left = 1;
        for (int wheel : new int[] {0, plan.layout().driven()}) {
            int whole = (int) Math.floor(plan.path().teethInMesh(wheel) + Finding.ROUNDING);
            if (whole < TeethChoice.FULL_MESH && whole >= LEAST_MESH) {
                left = Math.min(left, DERATED[5 - whole]);
            }
        }
        add(Finding.of("belt-tension").about("belt").atMost(tight, left * rating, "N"), says + ".");
    }

    private void flanges() {
        double small =
                Math.min(spec.driver().rim().outside(), spec.driven().rim().outside());
        boolean both = spec.driver().flanges() == 2 && spec.driven().flanges() == 2;
        double far = plan.layout().distance() / small;
        if (far >= FLANGE_BOTH && !both) {
            add(
                    Finding.of("flanges").about("driver", "driven").orWarn().atMost(far, FLANGE_BOTH, "1"),
                    "So far apart, " + Words.number(far, 1)
                            + " times the smaller pulley's diameter, both pulleys need flanges on both sides.");
        } else if (spec.driver().flanges() + spec.driven().flanges() < 2) {
            add(
                    Finding.of("flanges")
                            .about("driver", "driven")
                            .orWarn()
                            .atLeast(spec.driver().flanges() + spec.driven().flanges(), 2, "1"),
                    "With fewer than two flanges the belt walks off.");
        }
    }

    /** Pulleys by themselves, and rollers as tight as the belt can be bent. */
    private void wheels() {
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            String name = plan.path().wheels().get(i).name();
            if (pulley.isPresent()) {
                all.addAll(PulleyChecks.of(pulley.get(), plan.stack(pulley.get())));
            } else {
                double least =
                        spec.choice().belt().pitchDiameter(spec.choice().belt().leastTeeth());
                Finding.Draft draft = Finding.of("bend-diameter")
                        .about(name)
                        .orWarn()
                        .atLeast(spec.roller(name).diameter(), least, "mm");
                add(
                        draft,
                        draft.isHeld()
                                ? "The belt is bent no tighter than round its smallest pulley."
                                : "The belt is bent tighter than round its smallest pulley and tires sooner.");
            }
        }
    }

    private void add(Finding.Draft draft, String message) {
        all.add(draft.inWords(message));
    }
}
