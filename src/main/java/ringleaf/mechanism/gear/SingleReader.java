// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.Optional;
import java.util.function.DoubleFunction;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.TipFinish;
import ringleaf.tooth.ToothForm;

/** From the values of a {@code gear} to what is made; a field that cannot be is refused with the nearest that can. */
final class SingleReader {
    private static final double USUAL_MODULE = 1;
    /** Hundredths to either side in which another profile shift is looked for, and its range. */
    private static final int REACH = 200;

    static final double LEAST_SHIFT = -1;
    static final double MOST_SHIFT = 2;

    /** Teeth more in which some that can be are looked for. */
    private static final int MORE_TEETH = 30;

    private final Request request;
    private final Values values;
    private final Problems problems;
    /** Problems of mechanisms before this one, which do not keep its own from being told. */
    private final int earlier;

    private final boolean proposes;
    private Material material;

    SingleReader(Request request) {
        this(request, true);
    }

    /** For a trial, which proposes nothing itself. */
    private SingleReader(Request request, boolean proposes) {
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
        this.earlier = problems.count();
        this.proposes = proposes;
    }

    /** What is made; empty when problems were found. */
    Optional<SingleDesign> read() {
        SharedReader shared = new SharedReader(request);
        material = shared.material();
        if (!values.isGiven(GearFields.TEETH)) {
            if (!values.isRefused(GearFields.TEETH)) {
                problems.at(
                        values.where(GearFields.TEETH),
                        "is missing (" + GearFields.TEETH.help() + ")",
                        "e.g. teeth: 24");
            }
            return Optional.empty();
        }
        Optional<Rim> rim = rim();
        if (rim.isEmpty()) {
            return Optional.empty();
        }
        WheelSpec wheel = new WheelReader(request, values, material).read(rim.get(), Optional.empty());
        if (wheel.sector().isPresent() && wheel.sector().get().teeth().isEmpty()) {
            problems.at(
                    values.where(GearFields.SECTOR),
                    "a gear alone has no travel to cut a sector for",
                    "give the sector's teeth, e.g. sector: {teeth: "
                            + Math.max(1, rim.get().teeth() / 3) + "}");
        }
        if (problems.count() > earlier) {
            return Optional.empty();
        }
        return Optional.of(new SingleDesign(
                request.name(),
                Wheel.of(rim.get(), wheel, material.leastWeb()),
                material,
                shared.width(material),
                values.require(GearFields.MARKS),
                backlash(),
                SharedReader.given(values),
                shift -> passes(GearFields.PROFILE_SHIFT, shift)));
    }

    /** Whether the gear can be with another value typed in the place of one field. */
    private <T> boolean passes(Field<T> field, T value) {
        if (!proposes) {
            return false;
        }
        Problems own = new Problems();
        Request changed = new Request(
                request.name(), values.with(field, value), request.fabrication(), request.catalogues(), own);
        return new SingleReader(changed, false).read().isPresent() && own.isEmpty();
    }

    private double module() {
        return values.given(GearFields.MODULE).orElse(USUAL_MODULE);
    }

    private double backlash() {
        return backlash(module());
    }

    private double backlash(double module) {
        return new MeshRoom(material)
                .backlash(SharedReader.open(values, GearFields.SINGLE_BACKLASH), module, rack().pressureAngle())
                .mm();
    }

    private BasicRack rack() {
        return BasicRack.ofAngle(values.given(GearFields.PRESSURE_ANGLE).orElse(Math.toRadians(20)));
    }

    /** The teeth, when they can be; half the play of a pair is taken from them. */
    private Optional<Rim> rim() {
        int teeth = values.require(GearFields.TEETH);
        boolean internal = values.require(GearFields.INTERNAL);
        double usual = internal ? 0 : ShiftChoice.forPinion(rack(), teeth);
        Optional<Double> asked = values.given(GearFields.PROFILE_SHIFT);
        double shift = asked.orElse(usual);
        try {
            return Optional.of(made(teeth, shift, backlash(), asked.isEmpty()));
        } catch (IllegalArgumentException e) {
            refuse(teeth, shift, Unmeshable.words(e));
            return Optional.empty();
        }
    }

    /** Blames what the user gave and what alone stands against the teeth: backlash, profile shift, else their number. */
    private void refuse(int teeth, double shift, String why) {
        boolean shifted = values.isGiven(GearFields.PROFILE_SHIFT);
        String what = teeth + " teeth of module " + Words.number(module(), 4) + " cannot be";
        if (values.isGiven(GearFields.SINGLE_BACKLASH) && canBe(0, x -> made(teeth, shift, x, !shifted))) {
            double most = backlash();
            double nearest = largestBacklash(most);
            problems.at(
                    values.where(GearFields.SINGLE_BACKLASH),
                    "half of " + Words.mm(most) + " is more than teeth of module " + Words.number(module(), 4)
                            + " can lose: " + why,
                    Double.isNaN(nearest) ? "" : "the nearest that works is " + Words.number(nearest, 2) + "mm");
        } else if (!values.isGiven(GearFields.SINGLE_BACKLASH) && canBe(0, x -> made(teeth, shift, x, !shifted))) {
            problems.at(
                    values.where(GearFields.MODULE),
                    "teeth of module " + Words.number(module(), 4) + " are too fine for " + material.process() + ": "
                            + why,
                    coarser());
        } else if (shifted) {
            double nearest = nearestShift(shift);
            problems.at(
                    values.where(GearFields.PROFILE_SHIFT),
                    what + " with it: " + why,
                    Double.isNaN(nearest) ? "" : "the nearest that works is " + Words.number(nearest, 2));
        } else {
            problems.at(values.where(GearFields.TEETH), what + ": " + why, moreTeeth(teeth));
        }
    }

    /** The next module of the series of which the process leaves a tooth. */
    private String coarser() {
        for (double module : TeethSearch.MODULES) {
            double left = Math.PI / 2 * module - backlash(module) / 2;
            boolean coarse =
                    module > module() && left > PrintedTeeth.of(material).bead();
            if (coarse && passes(GearFields.MODULE, module)) {
                return "the nearest that works is " + Words.number(module, 4);
            }
        }
        return "";
    }

    private String moreTeeth(int teeth) {
        for (int more = teeth + 1; more <= teeth + MORE_TEETH; more++) {
            if (passes(GearFields.TEETH, more)) {
                return "the nearest that works is " + more;
            }
        }
        return "";
    }

    private Rim made(int teeth, double shift, double backlash, boolean lowered) {
        Rim rim;
        double module = module();
        if (values.require(GearFields.INTERNAL)) {
            rim = new Rim.Inner(InternalForm.of(module, teeth, shift, backlash / 2, rack()));
        } else {
            ToothForm form = ToothForm.of(module, teeth, shift, backlash / 2, rack());
            rim = new Rim.Outer(lowered ? form.withLeastTipThickness(ShiftChoice.LEAST_TIP * module) : form);
        }
        rim.look(TipFinish.NONE);
        return rim;
    }

    private static boolean canBe(double value, DoubleFunction<Rim> make) {
        try {
            make.apply(value);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** The hundredth nearest to a profile shift that passes; not a number where none is within reach. */
    private double nearestShift(double shift) {
        double middle = Math.rint(100 * shift);
        for (int i = 0; i <= REACH; i++) {
            for (int way = -1; way <= 1; way += 2) {
                double tried = (middle + way * i) / 100;
                if (tried >= LEAST_SHIFT && tried <= MOST_SHIFT && passes(GearFields.PROFILE_SHIFT, tried)) {
                    return tried;
                }
            }
        }
        return Double.NaN;
    }

    /** The largest hundredth of a backlash that passes; not a number where none does. */
    private double largestBacklash(double most) {
        int low = 0;
        int high = (int) Math.floor(100 * most);
        if (!passes(GearFields.SINGLE_BACKLASH, 0.0)) {
            return Double.NaN;
        }
        while (high > low + 1) {
            int middle = (low + high) / 2;
            if (passes(GearFields.SINGLE_BACKLASH, middle / 100.0)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low / 100.0;
    }
}
