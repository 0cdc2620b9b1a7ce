// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Relation;
import ringleaf.part.Saying;
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
                all.add(Finding.of("teeth-in-mesh")
                        .about(wheel.name())
                        .plain(true)
                        .says("belt.mesh-idle", Figure.number(mesh, 2)));
            } else if (mesh >= TeethChoice.FULL_MESH || whole >= LEAST_MESH) {
                all.add(Finding.of("teeth-in-mesh")
                        .about(wheel.name())
                        .atLeast(mesh, LEAST_MESH, TeethChoice.FULL_MESH, "1")
                        .says(
                                "belt.mesh",
                                whole >= TeethChoice.FULL_MESH,
                                Figure.number(mesh, 2),
                                Figure.number(whole >= TeethChoice.FULL_MESH ? 1 : DERATED[5 - whole], 1)));
            } else {
                all.add(Finding.of("teeth-in-mesh")
                        .about(wheel.name())
                        .atLeast(mesh, LEAST_MESH, "1")
                        .says("belt.mesh-jumps", Figure.number(mesh, 2)));
            }
        }
    }

    private void distance() {
        Bound asked = spec.distance();
        double distance = plan.layout().distance();
        int teeth = plan.layout().beltTeeth();
        if (spec.fixed() || asked.equals(Bound.open())) {
            return;
        }
        Finding.Draft draft = Finding.of("centre-distance").about("driver", "driven");
        if (asked.isExact()) {
            double off = Math.abs(distance - spec.wanted());
            draft = off > FAR * spec.wanted() ? draft : draft.orWarn();
            draft.about(distance, spec.wanted(), NEAR * spec.wanted(), "mm");
            all.add(draft.says(
                    "belt.distance-exact",
                    draft.isHeld(),
                    teeth,
                    Figure.mm(distance),
                    Figure.mm(off),
                    Figure.mm(spec.wanted()),
                    Saying.plain(plan.search().others())));
            return;
        }
        boolean low = distance < asked.leastOr(distance) - Finding.ROUNDING;
        draft = low || asked.atMost().isEmpty()
                ? draft.atLeast(distance, asked.leastOr(distance), "mm")
                : draft.atMost(distance, asked.mostOr(distance), "mm");
        all.add(draft.says("belt.distance", draft.isHeld(), teeth, Figure.mm(distance, 3)));
    }

    private void stock() {
        if (!plan.search().stocked()) {
            all.add(Finding.of("belt-stock")
                    .about("belt")
                    .orWarn()
                    .plain(false)
                    .says("belt.not-stocked", plan.layout().beltTeeth()));
        }
        List<Double> widths = spec.choice().belt().widths();
        boolean known = widths.isEmpty();
        for (double width : widths) {
            known |= Math.abs(width - spec.choice().width()) < Finding.ROUNDING;
        }
        if (!known) {
            all.add(Finding.of("belt-width")
                    .about("belt")
                    .orWarn()
                    .plain(false)
                    .says("belt.width-not-stocked", Figure.mm(spec.choice().width())));
        }
        double length = plan.path().length();
        double whole = plan.layout().beltTeeth() * spec.choice().belt().pitch();
        all.add(Finding.of("belt-length")
                .about("belt")
                .about(length, whole, DriveLayout.SAME_LENGTH * whole, "mm")
                .says("belt.length", Figure.mm(length, 6), plan.layout().beltTeeth(), Figure.mm(whole, 3)));
    }

    private void rooms() {
        DriveRoom.Nearest pulleys = room.pulleys();
        all.add(Finding.of("pulley-clearance")
                .about(pulleys.first(), pulleys.second())
                .room(pulleys.distance(), spec.pulleyRoom(), "mm")
                .says("belt.pulleys-apart", apart(pulleys)));
        DriveRoom.Nearest belt = room.belt();
        all.add(Finding.of("belt-clearance")
                .about(belt.first(), belt.second())
                .room(belt.distance(), spec.beltRoom(), "mm")
                .says("belt.apart-from", apart(belt)));
        DriveRoom.Nearest obstacle = room.obstacle();
        if (!spec.obstacles().isEmpty()) {
            all.add(Finding.of("obstacle-clearance")
                    .about(obstacle.first(), obstacle.second())
                    .room(obstacle.distance(), spec.beltRoom(), "mm")
                    .says("belt.apart-from", apart(obstacle)));
        }
    }

    private Saying apart(DriveRoom.Nearest nearest) {
        boolean apart = nearest.distance() > 0;
        String moved = plan.slot().moves() ? moved() : "";
        return Saying.of("belt.apart", apart, nearest.words(), Figure.mm(Math.abs(nearest.distance())), moved);
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
            all.add(Finding.of("tension-allowance")
                    .about("belt")
                    .orWarn()
                    .unmeasured(Relation.AT_LEAST, take, "mm", false)
                    .says("belt.nothing-tightens"));
            return;
        }
        Finding.Draft draft =
                Finding.of("installation-allowance").about(moved()).atLeast(slot.free(), slot.needed(), "mm");
        all.add(draft.says(
                "belt.installation", moved(), Figure.mm(slot.free()), slot.together(), Figure.mm(slot.needed())));
        draft = Finding.of("tension-allowance").about(moved()).atLeast(slot.taken(), take, "mm");
        all.add(draft.says(
                "belt.tension",
                draft.isHeld(),
                moved(),
                Figure.mm(draft.isHeld() ? slot.taken() : Math.max(0, slot.taken())),
                Figure.mm(take)));
    }

    private void servo() {
        Optional<Servo> servo = spec.servo();
        if (servo.isEmpty()) {
            return;
        }
        double turn = Math.toDegrees(Math.abs(plan.driverTravel()));
        all.add(Finding.of("servo-travel")
                .about("driver")
                .atMost(turn, Math.toDegrees(servo.get().travel()), "deg")
                .says(
                        "belt.servo-travel",
                        Figure.degrees(Math.abs(plan.driverTravel()), 1),
                        Figure.degrees(Math.abs(plan.travel()), 1)));
        if (spec.load().isPresent()) {
            double need = spec.load().getAsDouble() / spec.ratio() / DrivePlan.EFFICIENCY * spec.reserve();
            all.add(Finding.of("servo-torque")
                    .about("servo")
                    .atMost(need, servo.get().torque(), "Nmm")
                    .says("belt.servo-torque", Figure.number(need, 1), Figure.number(spec.reserve(), 1)));
        }
    }

    private void pull() {
        if (plan.driverTorque() == 0) {
            return;
        }
        double tight = plan.pretension() + plan.effectivePull() / 2;
        if (spec.choice().belt().pullPerWidth().isEmpty()) {
            all.add(Finding.of("belt-tension")
                    .about("belt")
                    .orWarn()
                    .plain(false)
                    .says("belt.tension-unrated", Figure.number(tight, 1)));
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
        all.add(Finding.of("belt-tension")
                .about("belt")
                .atMost(tight, left * rating, "N")
                .says("belt.tension-rated", Figure.number(tight, 1)));
    }

    private void flanges() {
        double small =
                Math.min(spec.driver().rim().outside(), spec.driven().rim().outside());
        boolean both = spec.driver().flanges() == 2 && spec.driven().flanges() == 2;
        double far = plan.layout().distance() / small;
        if (far >= FLANGE_BOTH && !both) {
            all.add(Finding.of("flanges")
                    .about("driver", "driven")
                    .orWarn()
                    .atMost(far, FLANGE_BOTH, "1")
                    .says("belt.flanges-both", Figure.number(far, 1)));
        } else if (spec.driver().flanges() + spec.driven().flanges() < 2) {
            all.add(Finding.of("flanges")
                    .about("driver", "driven")
                    .orWarn()
                    .atLeast(spec.driver().flanges() + spec.driven().flanges(), 2, "1")
                    .says("belt.flanges-few"));
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
                all.add(draft.says("belt.bend", draft.isHeld()));
            }
        }
    }
}
