// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.List;
import java.util.function.DoublePredicate;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Place;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;

/** Checks of one gear's teeth by closed forms, shared by single gears and meshing ones. */
final class ToothChecks {
    private ToothChecks() {}

    /**
     * The checks of one gear.
     *
     * @param id of the part
     * @param place what of it, where it carries several gears
     * @param printed what the process leaves of fine teeth
     * @param clears whether a profile shift was tried and clears the undercut
     */
    static void add(
            List<Finding> found,
            String id,
            Place place,
            Wheel wheel,
            double web,
            PrintedTeeth printed,
            DoublePredicate clears) {
        Rim rim = wheel.rim();
        if (rim instanceof Rim.Outer outer) {
            undercut(found, id, place, outer.form(), clears);
        }
        found.add(Finding.of("tip-thickness")
                .about(id)
                .at(place)
                .atLeast(rim.tipThickness() / rim.module(), 0, ShiftChoice.LEAST_TIP, "1")
                .says("gear.tip-thickness"));
        if (printed.matters()) {
            found.add(Finding.of("tooth-thickness")
                    .about(id)
                    .at(place)
                    .atLeast(PrintedTeeth.thickness(rim), printed.bead(), 2 * printed.bead(), "mm")
                    .says("gear.tooth-thickness"));
        }
        web(found, id, place, wheel, web);
    }

    private static void undercut(List<Finding> found, String id, Place place, ToothForm form, DoublePredicate clears) {
        double least = form.leastShift();
        double typed = Math.ceil(1000 * least) / 1000;
        boolean free = form.shift() >= least - Finding.ROUNDING;
        found.add(Finding.of("undercut")
                .about(id)
                .at(place)
                .orWarn()
                .atLeast(form.shift(), least, "1")
                .says("gear.undercut", free, !free && clears.test(typed), Figure.number(typed, 3)));
        found.add(Finding.of("least-teeth")
                .about(id)
                .at(place)
                .orWarn()
                .atLeast(form.teeth(), fewest(form.rack()), "1")
                .says("gear.least-teeth", Figure.number(ShiftChoice.LEAST_TIP, 2), (int)
                        Math.ceil(form.rack().leastTeeth())));
    }

    /** Fewest teeth for which the least shift against undercut still leaves the tip its width at full height. */
    static int fewest(BasicRack rack) {
        int teeth = ToothForm.FEWEST_TEETH;
        while (teeth < rack.leastTeeth()) {
            double shift = rack.leastShift(teeth);
            if (ToothForm.of(1, teeth, shift, 0, rack).tipThickness() >= ShiftChoice.LEAST_TIP) {
                return teeth;
            }
            teeth++;
        }
        return teeth;
    }

    private static void web(List<Finding> found, String id, Place place, Wheel wheel, double web) {
        boolean ring = wheel.rim() instanceof Rim.Inner;
        double root = wheel.rim().rootRadius();
        double left = ring
                ? ringWeb(wheel, root)
                : wheel.spec().body().web(root, wheel.cut().contour());
        found.add(Finding.of("minimum-web")
                .about(id)
                .at(place)
                .atLeast(left, web, "mm")
                .says("gear.minimum-web", ring));
    }

    private static double ringWeb(Wheel wheel, double root) {
        double outside = wheel.reach();
        if (wheel.spec().body().screws().isEmpty()) {
            return outside - root;
        }
        return Math.min(
                wheel.spec().body().screws().get().inner() - root,
                outside - wheel.spec().body().screws().get().reach());
    }
}
