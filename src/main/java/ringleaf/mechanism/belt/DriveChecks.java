package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.spec.shared.Servo;

/** What must hold of a belt drive, by its own geometry. */
final class DriveChecks {
    /** Rating left with 5, 4, 3 and 2 teeth in mesh; common practice, no source. */
    private static final double[] DERATED = {0.8, 0.6, 0.4, 0.2};

    /** What rounding may take from a length that was designed to its limit, mm. */
    static final double SAME = 1e-6;
    private static final int LEAST_MESH = 2;
    /** Centre distance over the small pulley's diameter from which both need flanges: a maker's catalogue, K-2 note. */
    private static final double FLANGE_BOTH = 8;

    private final DrivePlan plan;
    private final DriveSpec spec;
    private final DriveRoom room;
    private final DrivePlates plates;
    private final List<Finding> all = new ArrayList<>();

    DriveChecks(DrivePlan plan, DriveRoom room, DrivePlates plates) {
        this.plates = plates;
        this.plan = plan;
        this.spec = plan.spec();
        this.room = room;
    }

    /** Whether a length is at least its limit, rounding aside: one rule for choosing a belt and for judging it. */
    static boolean holds(double measured, double limit) {
        return measured >= limit - SAME;
    }

    List<Finding> all() {
        mesh();
        distance();
        stock();
        rooms();
        servo();
        pull();
        flanges();
        pulleys();
        return all;
    }

    private void mesh() {
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Wheel wheel = plan.path().wheels().get(i);
            if (wheel.teeth() == 0) {
                continue;
            }
            double mesh = plan.path().teethInMesh(i);
            int whole = (int) Math.floor(mesh + 1e-9);
            if (mesh >= TeethChoice.FULL_MESH) {
                add("teeth-in-mesh", Status.PASS, mesh, TeethChoice.FULL_MESH, "1", wheel.name(),
                        Words.number(mesh, 2) + " teeth are in mesh.");
            } else if (whole >= LEAST_MESH) {
                add("teeth-in-mesh", Status.WARN, mesh, TeethChoice.FULL_MESH, "1", wheel.name(),
                        "Only " + Words.number(mesh, 2) + " teeth are in mesh: the belt carries "
                                + Words.number(DERATED[5 - whole], 1) + " of its rating there.");
            } else {
                add("teeth-in-mesh", wheel.name().startsWith("driv") ? Status.FAIL : Status.WARN, mesh,
                        LEAST_MESH, "1", wheel.name(),
                        "With " + Words.number(mesh, 2) + " teeth in mesh the belt jumps under load.");
            }
        }
    }

    private void distance() {
        Bound asked = spec.distance();
        double distance = plan.layout().distance();
        if (spec.fixed() || asked.isExact() || asked.atLeast().isEmpty() && asked.atMost().isEmpty()) {
            return;
        }
        boolean low = distance < asked.leastOr(distance) - 1e-9;
        boolean high = distance > asked.mostOr(distance) + 1e-9;
        double limit = low ? asked.leastOr(0) : asked.mostOr(asked.leastOr(0));
        add("centre-distance", low || high ? Status.FAIL : Status.PASS, distance, limit, "mm",
                "belt of " + plan.layout().beltTeeth() + " teeth",
                low || high
                        ? "No stocked belt stands within the limits; the nearest stands at " + Words.number(distance, 3)
                                + " mm."
                        : "The belt stands within the limits.");
    }

    private void stock() {
        if (!plan.search().stocked()) {
            add("belt-stock", Status.WARN, plan.layout().beltTeeth(), 0, "1", "belt",
                    "Belts of " + plan.layout().beltTeeth() + " teeth are not among the stocked lengths known here.");
        }
        List<Double> widths = spec.choice().belt().widths();
        boolean known = widths.isEmpty();
        for (double width : widths) {
            known |= Math.abs(width - spec.choice().width()) < 1e-6;
        }
        if (!known) {
            add("belt-width", Status.WARN, spec.choice().width(), 0, "mm", "belt",
                    "That width is not among the stocked ones known here; wider belts can be slit.");
        }
        double length = plan.path().length();
        double whole = plan.layout().beltTeeth() * spec.choice().belt().pitch();
        all.add(Finding.atMost("belt-length", Math.abs(length - whole), 1e-6, "mm", "belt",
                "The pitch line round all wheels is " + Words.number(length, 6) + " mm long, "
                        + plan.layout().beltTeeth() + " teeth."));
    }

    private void rooms() {
        all.add(Finding.atLeast("pulley-room", room.pulleys().distance(), spec.pulleyRoom(), "mm", room.pulleys().words(),
                "The " + room.pulleys().words() + " stay " + Words.mm(room.pulleys().distance()) + " apart, flanges included."));
        all.add(Finding.atLeast("belt-room", room.belt().distance(), spec.beltRoom(), "mm", room.belt().words(),
                "The belt keeps " + Words.mm(room.belt().distance()) + " at the " + room.belt().words() + "."));
        if (!spec.obstacles().isEmpty()) {
            all.add(Finding.atLeast("obstacle-room", room.obstacle().distance(), spec.beltRoom(), "mm", room.obstacle().words(),
                    "The " + room.obstacle().words() + " come as near as " + Words.mm(room.obstacle().distance()) + "."));
        }
    }

    private void servo() {
        Optional<Servo> servo = spec.servo();
        double turn = Math.toDegrees(Math.abs(plan.driverTravel()));
        if (servo.isPresent()) {
            all.add(Finding.atMost("servo-travel", turn, Math.toDegrees(servo.get().travel()), "deg", "driver",
                    "The driver turns " + Words.number(turn, 1) + "° for " + Words.degrees(Math.abs(plan.travel()), 1)
                            + " of the driven pulley."));
        }
        if (servo.isPresent() && spec.load().isPresent()) {
            double need = spec.load().getAsDouble() / spec.ratio() / DrivePlan.EFFICIENCY * spec.reserve();
            all.add(Finding.atMost("servo-torque", need, servo.get().torque(), "Nmm", "driver",
                    "The load asks " + Words.number(need, 1) + " Nmm of the servo, with "
                            + Words.number(spec.reserve(), 1) + " times what it takes."));
        }
    }

    private void pull() {
        if (plan.driverTorque() == 0) {
            return;
        }
        double tight = plan.pretension() + plan.effectivePull() / 2;
        if (spec.choice().belt().pullPerWidth().isPresent()) {
            double rating = spec.choice().belt().pullPerWidth().getAsDouble() * spec.choice().width();
            for (int i = 0; i <= 1; i++) {
                int whole = (int) Math.floor(plan.path().teethInMesh(i == 0 ? 0 : plan.layout().driven()) + 1e-9);
                rating = whole < TeethChoice.FULL_MESH && whole >= LEAST_MESH
                        ? Math.min(rating, rating * DERATED[5 - whole])
                        : rating;
            }
            all.add(Finding.atMost("belt-pull", tight, rating, "N", "tight span",
                    "At stall the tight span pulls with " + Words.number(tight, 1) + " N."));
        } else {
            add("belt-pull", Status.WARN, tight, 0, "N", "tight span",
                    "At stall the tight span pulls with " + Words.number(tight, 1)
                            + " N; no open source gives what this belt carries: compare it with its maker's figure.");
        }
    }

    private void flanges() {
        double small = Math.min(spec.driver().rim().outside(), spec.driven().rim().outside());
        boolean both = spec.driver().flanges() == 2 && spec.driven().flanges() == 2;
        boolean far = plan.layout().distance() >= FLANGE_BOTH * small;
        if (far && !both) {
            add("flanges", Status.WARN, plan.layout().distance() / small, FLANGE_BOTH, "1", "pulleys",
                    "So far apart both pulleys need flanges on both sides.");
        } else if (spec.driver().flanges() + spec.driven().flanges() < 2) {
            add("flanges", Status.WARN, spec.driver().flanges() + spec.driven().flanges(), 2, "1", "pulleys",
                    "With fewer than two flanges the belt walks off.");
        }
    }

    private void pulleys() {
        for (int i = 0; i < plan.path().wheels().size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            if (pulley.isPresent()) {
                all.addAll(PulleyChecks.of(pulley.get(), plan.stack(pulley.get())));
            }
        }
    }

    private void add(
            String check, Status status, double measured, double limit, String unit, String where, String message) {
        all.add(new Finding(check, status, measured, limit, unit, where, message));
    }
}
