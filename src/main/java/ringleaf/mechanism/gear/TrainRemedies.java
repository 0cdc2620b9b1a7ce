// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import ringleaf.part.Finding;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Values;

/** What would make a pair or a train pass; each was tried as it would be typed, and passed every check. */
final class TrainRemedies {
    /** Teeth more that are tried. */
    private static final int MORE_TEETH = 20;

    private final TrainSpec spec;
    private final List<Finding> findings;
    private final List<String> lines = new ArrayList<>();

    TrainRemedies(TrainDesign design, List<Finding> findings) {
        this.spec = design.spec();
        this.findings = findings;
    }

    /** A line a remedy; none when nothing fails, or nothing that is known helps. */
    List<String> lines() {
        if (failed("overall-length")) {
            double length = Math.ceil(100 * spec.length() - 1e-6) / 100;
            Bound most = limits(OptionalDouble.empty(), OptionalDouble.of(length));
            offer("overall-length: {at-most: " + Words.mm(length) + "}", v -> v.with(GearFields.OVERALL_LENGTH, most));
        }
        if (failed("centre-distance") && spec.isPair()) {
            distance();
        }
        if (failed("overall-length") || failed("centre-distance")) {
            smaller();
        }
        if (failed("bending")) {
            stronger();
        }
        if (failed("contact-ratio-as-made") || failed("tooth-thickness")) {
            coarser();
        }
        if (failed("trochoid-interference") && spec.isPair()) {
            moreTeeth();
        }
        if (failed("interference") || failed("involute-interference")) {
            offer("tips: shortened", v -> v.with(GearFields.TIPS, "shortened"));
        }
        return lines;
    }

    private static Bound limits(OptionalDouble least, OptionalDouble most) {
        return new Bound(OptionalDouble.empty(), least, most);
    }

    private void distance() {
        StageSpec stage = spec.stages().get(0);
        double distance = stage.mesh().centreDistance();
        boolean above = distance > stage.ask().centreDistance().mostOr(distance);
        double rounded = above ? Math.ceil(100 * distance - 1e-6) / 100 : Math.floor(100 * distance + 1e-6) / 100;
        OptionalDouble limit = OptionalDouble.of(rounded);
        Bound bound = above ? limits(OptionalDouble.empty(), limit) : limits(limit, OptionalDouble.empty());
        offer(
                "centre-distance: {" + (above ? "at-most: " : "at-least: ") + Words.mm(rounded) + "}",
                v -> v.with(GearFields.CENTRE_DISTANCE, bound));
    }

    /** The largest module of the series with which it passes. */
    private void smaller() {
        double now = spec.stages().get(0).mesh().module();
        for (int i = TeethSearch.MODULES.length - 1; i >= 0; i--) {
            double module = TeethSearch.MODULES[i];
            if (module < now && offer("module: " + Words.number(module, 4), v -> v.with(GearFields.MODULE, module))) {
                return;
            }
        }
    }

    /** Wider teeth, in whole sheets where they are cut from sheet, or the next larger module that carries the load. */
    private void stronger() {
        double share = worst("bending");
        double step = spec.material().sheet() ? spec.material().thickness() : 0.1;
        double width = Math.ceil(spec.width() * share / step - 1e-6) * step;
        double typed = Math.rint(1e6 * width) / 1e6;
        offer("width: " + Words.mm(typed), v -> v.with(GearFields.WIDTH, typed));
        coarser();
    }

    /** More teeth of a ring, the fewest with which it passes. */
    private void moreTeeth() {
        int now = spec.stages().get(0).mesh().drivenTeeth();
        for (int teeth = now + 1; teeth <= now + MORE_TEETH; teeth++) {
            int typed = teeth;
            if (offer("driven.teeth: " + teeth, Tryout.of(GearFields.DRIVEN, GearFields.TEETH, typed))) {
                return;
            }
        }
    }

    /** The next module of the series with which it passes. */
    private void coarser() {
        double now = spec.stages().get(0).mesh().module();
        for (double module : TeethSearch.MODULES) {
            if (module > now && offer("module: " + Words.number(module, 4), v -> v.with(GearFields.MODULE, module))) {
                return;
            }
        }
    }

    private boolean offer(String words, UnaryOperator<Values> change) {
        Optional<TrainDesign> tried = spec.tryout().design(change);
        if (tried.isPresent()) {
            lines.add(words + " would pass");
        }
        return tried.isPresent();
    }

    private boolean failed(String check) {
        return !Double.isNaN(worst(check));
    }

    private double worst(String check) {
        double worst = Double.NaN;
        for (Finding finding : findings) {
            if (finding.failed() && finding.check().equals(check)) {
                worst = Double.isNaN(worst) ? finding.measured() : Math.max(worst, finding.measured());
            }
        }
        return worst;
    }
}
