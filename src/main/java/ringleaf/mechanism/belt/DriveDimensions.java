// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.List;
import java.util.Optional;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;

/** Choices and sizes of a belt drive as they stand in design.json. */
final class DriveDimensions {
    private final DrivePlan plan;
    private final DriveSpec spec;
    private final Values values;
    private final DrivePlates plates;
    private final Figures out = new Figures();

    DriveDimensions(DrivePlan plan, DrivePlates plates, Values values) {
        this.plan = plan;
        this.spec = plan.spec();
        this.plates = plates;
        this.values = values;
    }

    List<Choice> choices() {
        List<Choice> choices = PulleyDimensions.choices(
                spec.choice(), values, spec.driver().material().sheet());
        choices.add(new Choice(
                "centres", spec.fixed() ? "fixed" : "movable", Figures.origin(values, DriveFields.CENTRES), ""));
        String tension = plan.layout().hasIdler() ? "idler" : spec.fixed() ? "none" : "centre-distance";
        choices.add(new Choice(
                "tensioner",
                tension,
                Origin.SOLVED,
                tension.equals("none") ? "the belt fits the distance without slack" : "takes up the slack"));
        if (plan.layout().hasIdler()) {
            choices.add(new Choice(
                    "idler-side",
                    spec.idler().inside() ? "inside" : "outside",
                    values.isGiven(DriveFields.IDLER) ? Origin.GIVEN : Origin.DEFAULT,
                    ""));
        }
        return choices;
    }

    List<Dimension> all() {
        PulleyDimensions.belt(out, spec.choice(), values);
        belt();
        pulleys();
        tension();
        turning();
        if (spec.plates() > 0) {
            out.mm(
                    "plate-thickness",
                    spec.plate().thickness(),
                    Figures.origin(values, DriveFields.PLATE_THICKNESS),
                    "");
            out.mm("servo-packing", plates.packing(), Origin.SOLVED, "between the servo's ears and the base");
            out.mm(
                    "depth",
                    (spec.plates() > 1 ? plates.frontBottom() + spec.plate().thickness() : plan.top())
                            + spec.plate().thickness(),
                    Origin.SOLVED,
                    "base to front, servo and screw heads apart");
        }
        return out.all();
    }

    private void belt() {
        DriveLayout layout = plan.layout();
        String others = plan.search().others();
        out.number(
                "belt-teeth",
                layout.beltTeeth(),
                Figures.solved(values, DriveFields.BELT_TEETH),
                "stocked length nearest to what is wanted" + (others.isEmpty() ? "" : "; " + others));
        out.mm("belt-length", plan.path().length(), Origin.SOLVED, "along the pitch line round all wheels, exact");
        out.mm(
                "centre-distance",
                layout.distance(),
                spec.fixed() ? Origin.GIVEN : Origin.SOLVED,
                "at which the belt has exactly its length");
        out.deg("at", spec.at(), Figures.origin(values, DriveFields.AT), "");
        out.number("ratio", spec.ratio(), Figures.solved(values, DriveFields.RATIO), "driven over driver teeth");
    }

    private void pulleys() {
        Optional<Values> driver = values.given(DriveFields.DRIVER);
        Optional<Values> driven = values.given(DriveFields.DRIVEN);
        pulley(spec.driver(), driver, driven);
        pulley(spec.driven(), driven, driver);
        BeltPath path = plan.path();
        for (int i = 0; i < path.wheels().size(); i++) {
            Wheel w = path.wheels().get(i);
            out.deg(w.name() + "-wrap", path.wrap(i), Origin.SOLVED, "angle over which the belt lies on it");
            if (w.teeth() > 0) {
                out.number(w.name() + "-teeth-in-mesh", path.teethInMesh(i), Origin.SOLVED, "teeth times wrap");
            } else {
                out.mm(w.name() + "-diameter", plan.roller(w.name()).diameter(), Origin.DEFAULT, "");
            }
            if (i > 0 && i != plan.layout().driven()) {
                out.mm(w.name() + "-x", w.centre().x(), Origin.SOLVED, "where it stands");
                out.mm(w.name() + "-y", w.centre().y(), Origin.SOLVED, "where it stands");
            }
            out.mm("span-after-" + w.name(), path.span(i).length(), Origin.SOLVED, "free length of the belt");
        }
    }

    private void pulley(PulleySpec pulley, Optional<Values> own, Optional<Values> other) {
        Origin teeth = hasTeeth(own) ? Origin.GIVEN : Origin.SOLVED;
        String how = hasTeeth(other) ? "the other pulley's teeth and the ratio" : TeethChoice.how();
        PulleyDimensions.pulley(
                out, pulley, plan.stack(pulley), teeth, how, own.orElse(PulleyFields.OF_DRIVE.none(values.where())));
    }

    private static boolean hasTeeth(Optional<Values> pulley) {
        return pulley.isPresent() && pulley.get().isGiven(PulleyFields.TEETH);
    }

    private void tension() {
        DriveLayout layout = plan.layout();
        DriveSlot slot = plan.slot();
        if (slot.moves()) {
            out.mm(
                    "slot-inward",
                    slot.inward(),
                    Origin.SOLVED,
                    slot.together()
                            ? "from its place to where a belt fits that is short by its tolerance; it goes on with the pulleys"
                            : "from its place to where the belt goes on over the driver's teeth and flange");
            out.mm(
                    "slot-outward",
                    slot.outward(),
                    Origin.SOLVED,
                    "from its place to where a belt is tight that is " + Words.mm(slot.taken()) + " longer");
            out.mm("slot-length", slot.length(), Origin.SOLVED, "travel of the axle in its slot");
        }
        if (layout.hasIdler()) {
            out.mm(
                    "idler-press",
                    layout.press().getAsDouble(),
                    Origin.SOLVED,
                    "beyond where it touches a straight span");
        }
        if (plan.driverTorque() > 0) {
            add("effective-pull", plan.effectivePull(), "the driver's greatest torque over its pitch radius");
            add("pretension", plan.pretension(), "as much, so that no span goes slack either way");
            add("tight-span", plan.pretension() + plan.effectivePull() / 2, "pretension and half the effective pull");
            add(
                    "shaft-pull",
                    2 * plan.pretension() * Math.sin(plan.path().wrap(0) / 2),
                    "of the belt at rest on the driver");
        }
    }

    private void add(String name, double newtons, String how) {
        out.newton(name, newtons, Origin.SOLVED, how);
    }

    private void turning() {
        out.deg(
                "travel",
                plan.travel(),
                Figures.solved(values, DriveFields.TRAVEL),
                "the servo's travel over the ratio");
        out.deg("driver-travel", plan.driverTravel(), Origin.SOLVED, "travel times ratio");
        spec.servo().ifPresent(servo -> {
            out.deg("servo-travel", servo.travel(), Origin.DEFAULT, "of the servo");
            out.torque("servo-torque", servo.torque(), Origin.DEFAULT, "of the servo at stall");
            out.torque(
                    "driven-torque",
                    servo.torque() * spec.ratio() * DrivePlan.EFFICIENCY,
                    Origin.SOLVED,
                    "stall torque times ratio, less a twentieth in the belt");
        });
    }
}
