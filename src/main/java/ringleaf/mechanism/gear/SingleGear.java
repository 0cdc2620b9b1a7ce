package ringleaf.mechanism.gear;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
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
    /** Hundredths of a module to either side in which another profile shift is looked for. */
    private static final int REACH = 200;

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
    public List<String> weighed() {
        return List.of("gear-tip-diameter", "width");
    }

    @Override
    public List<String> compared() {
        return List.of("ring-diameter", "module", "gear-root-diameter");
    }

    @Override
    public Planned read(Request request) {
        Values values = request.values();
        Problems problems = request.problems();
        // what is wrong with mechanisms before this one does not keep its own faults from being told
        int earlier = problems.count();
        SharedReader shared = new SharedReader(request);
        Material material = shared.material();
        if (!values.isGiven(GearFields.TEETH)) {
            problems.at(
                    values.where(GearFields.TEETH),
                    "is missing (" + GearFields.TEETH.help() + ")",
                    "e.g. teeth: 24");
        }
        if (problems.count() > earlier) {
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
        if (problems.count() > earlier) {
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
            return Optional.of(made(module, teeth, shift, thinning, rack, internal, asked.isEmpty()));
        } catch (IllegalArgumentException e) {
            double nearest = asked.isPresent()
                    ? nearest(shift, x -> made(module, teeth, x, thinning, rack, internal, false))
                    : Double.NaN;
            String hint = !Double.isNaN(nearest)
                    ? "the nearest that works is " + Words.number(nearest, 2)
                    : asked.isPresent()
                            ? "left out it is chosen, and the tips are shortened"
                            : "more teeth work, " + (int) Math.ceil(rack.leastTeeth()) + " without any profile shift";
            problems.at(
                    values.where(asked.isPresent() ? GearFields.PROFILE_SHIFT : GearFields.TEETH),
                    teeth + " teeth of module " + Words.number(module, 4) + " cannot be: " + Unmeshable.words(e),
                    hint);
            return Optional.empty();
        }
    }

    private static Rim made(
            double module,
            int teeth,
            double shift,
            double thinning,
            BasicRack rack,
            boolean internal,
            boolean lowered) {
        Rim rim;
        if (internal) {
            rim = new Rim.Inner(InternalForm.of(module, teeth, shift, thinning, rack));
        } else {
            ToothForm form = ToothForm.of(module, teeth, shift, thinning, rack);
            rim = new Rim.Outer(lowered ? form.withLeastTipThickness(ShiftChoice.LEAST_TIP * module) : form);
        }
        rim.cut(TipFinish.NONE);
        return rim;
    }

    /** The hundredth nearest to a profile shift at which teeth can be; not a number where none is within reach. */
    private static double nearest(double shift, DoubleFunction<Rim> make) {
        double middle = Math.rint(100 * shift) / 100;
        for (int i = 0; i <= REACH; i++) {
            for (int way = -1; way <= 1; way += 2) {
                try {
                    double tried = Math.rint(100 * middle + way * i) / 100;
                    make.apply(tried);
                    return tried;
                } catch (IllegalArgumentException e) {
                    continue;
                }
            }
        }
        return Double.NaN;
    }
}
