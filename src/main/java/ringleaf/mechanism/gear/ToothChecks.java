package ringleaf.mechanism.gear;

import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.part.Words;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.ShiftChoice;
import ringleaf.tooth.ToothForm;

/** Checks of one gear's teeth by closed forms, shared by single gears and meshing ones. */
final class ToothChecks {
    private static final double HAIR = 1e-6;

    private ToothChecks() {}

    static void add(List<Finding> found, String which, Wheel wheel, double web) {
        Rim rim = wheel.rim();
        if (rim instanceof Rim.Outer outer) {
            undercut(found, which, outer.form());
        }
        double tip = rim.tipThickness() / rim.module();
        found.add(new Finding(
                "tip-thickness",
                tip + HAIR >= ShiftChoice.LEAST_TIP ? Status.PASS : tip > 0 ? Status.WARN : Status.FAIL,
                tip,
                ShiftChoice.LEAST_TIP,
                "1",
                which,
                "width of a tooth's tip in modules"));
        web(found, which, wheel, web);
    }

    private static void undercut(List<Finding> found, String which, ToothForm form) {
        double least = form.leastShift();
        found.add(new Finding(
                "undercut",
                form.shift() + HAIR >= least ? Status.PASS : Status.WARN,
                form.shift(),
                least,
                "1",
                which,
                form.shift() + HAIR >= least
                        ? "the profile shift keeps the root from being undercut"
                        : "the root is undercut; profile-shift: " + Words.number(Math.ceil(1000 * least) / 1000, 3)
                                + " clears it"));
        int fewest = fewest(form.rack());
        found.add(new Finding(
                "least-teeth",
                form.teeth() >= fewest ? Status.PASS : Status.WARN,
                form.teeth(),
                fewest,
                "1",
                which,
                "fewest teeth that some profile shift gives both a root without undercut and tips of "
                        + Words.number(ShiftChoice.LEAST_TIP, 2) + " modules at full height; "
                        + (int) Math.ceil(form.rack().leastTeeth()) + " need no shift"));
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

    private static void web(List<Finding> found, String which, Wheel wheel, double web) {
        boolean ring = wheel.rim() instanceof Rim.Inner;
        double root = wheel.rim().rootRadius();
        double left = ring ? ringWeb(wheel, root) : root - wheel.spec().body().hubReach();
        found.add(Finding.atLeast(
                "bore-web",
                left + HAIR,
                web,
                "mm",
                which,
                ring
                        ? "least material outside the root circle of the ring"
                        : "material from bore or hub screws to the root circle"));
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
