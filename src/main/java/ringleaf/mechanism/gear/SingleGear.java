package ringleaf.mechanism.gear;

import java.util.Optional;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.TipFinish;
import ringleaf.tooth.ToothForm;

/** The kind {@code gear}: one gear, outside or inside, whole or a sector. */
public final class SingleGear implements Kind {
    public static final String NAME = "gear";

    private static final double USUAL_MODULE = 1;

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "one gear or toothed ring, whole or a sector";
    }

    @Override
    public FieldSet fields() {
        return GearFields.SINGLE;
    }

    @Override
    public Planned read(Request request) {
        Values values = request.values();
        Problems problems = request.problems();
        SharedReader shared = new SharedReader(request);
        Material material = shared.material();
        if (!values.isGiven(GearFields.TEETH)) {
            problems.at(values.where(GearFields.TEETH), "is missing (" + GearFields.TEETH.help() + ")", "e.g. teeth: 24");
        }
        if (!problems.isEmpty()) {
            return states -> null;
        }
        Optional<Rim> rim = rim(values, material, problems);
        if (rim.isEmpty()) {
            return states -> null;
        }
        WheelSpec wheel = new WheelReader(request, values, material).read(rim.get(), Optional.empty());
        if (wheel.sector().isPresent() && wheel.sector().get().teeth().isEmpty()) {
            problems.at(
                    values.where(GearFields.SECTOR),
                    "a gear alone has no travel to cut a sector for",
                    "give the sector's teeth, e.g. sector: {teeth: 8}");
        }
        if (!problems.isEmpty()) {
            return states -> null;
        }
        SingleDesign design = new SingleDesign(
                request.name(),
                Wheel.of(rim.get(), wheel, material.leastWeb()),
                material,
                shared.width(material),
                values.require(GearFields.MARKS),
                backlash(values, material, rim.get().module()),
                SharedReader.given(values));
        return design::design;
    }

    private static double backlash(Values values, Material material, double module) {
        return values.given(GearFields.SINGLE_BACKLASH)
                .orElse(2 * material.repeatability() + PairAsk.BACKLASH_SHARE * module);
    }

    /** The teeth, when they can be; half the play of a pair is taken from them. */
    private static Optional<Rim> rim(Values values, Material material, Problems problems) {
        double module = values.given(GearFields.MODULE).orElse(USUAL_MODULE);
        int teeth = values.require(GearFields.TEETH);
        double angle = values.given(GearFields.PRESSURE_ANGLE).orElse(Math.toRadians(20));
        BasicRack rack = BasicRack.ofAngle(angle);
        boolean internal = values.require(GearFields.INTERNAL);
        double usual = internal ? 0 : ShiftChoice.forPinion(rack, teeth);
        Optional<Double> asked = values.given(GearFields.PROFILE_SHIFT);
        double shift = asked.orElse(usual);
        double thinning = backlash(values, material, module) / 2;
        try {
            Rim rim;
            if (internal) {
                rim = new Rim.Inner(InternalForm.of(module, teeth, shift, thinning, rack));
            } else {
                ToothForm form = ToothForm.of(module, teeth, shift, thinning, rack);
                rim = new Rim.Outer(asked.isPresent() ? form : form.withLeastTipThickness(ShiftChoice.LEAST_TIP * module));
            }
            rim.cut(TipFinish.NONE);
            return Optional.of(rim);
        } catch (IllegalArgumentException e) {
            String hint = asked.isPresent()
                    ? "the nearest profile-shift that works is about " + Words.number(usual, 3)
                    : "more teeth work, " + (int) Math.ceil(rack.leastTeeth()) + " without any profile shift";
            problems.at(
                    values.where(asked.isPresent() ? GearFields.PROFILE_SHIFT : GearFields.TEETH),
                    teeth + " teeth of module " + Words.number(module, 4) + " cannot be: " + Unmeshable.words(e),
                    hint);
            return Optional.empty();
        }
    }
}
