package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Words;

/** What goes on when, with the order in which the blades are laid. */
final class BuildOrder {
    private static final String TURNS = "the ring must still turn by a finger.";

    private final ApertureDesign design;
    private final ApertureSpec spec;

    BuildOrder(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    List<String> steps() {
        List<String> steps = new ArrayList<>();
        Stack stack = design.stack();
        steps.add("Deburr every part and lay the plates out with their witness holes in line.");
        steps.addAll(pins(spec.blades()));
        boolean stand = spec.jigs().map(JigSpec::stacking).orElse(false);
        if (stand) {
            steps.add("Stand the stacking jig up and lay " + (stack.hasCover() ? "the cover and then the base plate" : "the"
                    + " base plate, bores up,") + " over its collar"
                    + (design.pinionPlan().isPresent() ? ", the servo's place over the gap in its foot." : "."));
        } else if (stack.hasCover()) {
            steps.add("Lay the cover down and the base plate on it.");
        } else {
            steps.add("Lay the base plate down, bores up.");
        }
        if (design.pinionPlan().isPresent()) {
            servo(steps);
        }
        steps.add("Put the spacer ring on the base, ledge down"
                + (stack.ledgeSheets() > 0
                        ? " (" + stack.ledgeSheets() + " sheets of level-1, then " + stack.wallSheets() + " of level-2)."
                        : "."));
        laying(steps);
        steps.add("Lower the drive ring over all drive pins onto the ledge, "
                + (design.handPlan().isPresent() ? "its arm through the window." : "the stop notch over the tab."));
        if (design.pinionPlan().flatMap(PinionPlan::stepUp).isPresent()) {
            steps.add("Press and glue pinion and step wheel on the axle through the base, pinion in front with its mark"
                    + " on the ring's mark, wheel behind with its mark on the servo gear's; both must turn freely.");
        } else if (design.pinionPlan().isPresent()) {
            steps.add("Turn servo and ring to open, drop the pinion in with its mark on the ring's mark, and screw it"
                    + " to the servo.");
        }
        if (stack.shims() > 0) {
            steps.add("Lay " + stack.shims() + " spacer shim" + (stack.shims() > 1 ? "s" : "") + " on the wall.");
        }
        steps.add("Put the retainer on and draw the " + design.housing().screws().size() + " screws ("
                + spec.screw().name() + ") up crosswise, just tight" + (stand ? "." : "; " + TURNS));
        if (stand) {
            steps.add("Lift the housing off the stacking jig, and only now turn the ring: " + TURNS);
        }
        return steps;
    }

    /** Steps that set the pins of so many blades. */
    List<String> pins(int count) {
        List<String> steps = new ArrayList<>();
        Stack stack = design.stack();
        if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            steps.add("Set " + count + " posts into the base; each stands "
                    + Words.mm(new BladeParts(design).postHeight()) + " out of it.");
        }
        if (spec.jigs().isPresent()) {
            steps.addAll(new Jigs(design, spec.jigs().get()).setting());
        } else if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            steps.add("Set one drive pin into each blade, square to it and flush on the lower face.");
        } else if (spec.pinStyle() == PinStyle.ONE_GLUED) {
            steps.add("Set one drive pin into each printed blade, square to it and flush on the lower face.");
        } else {
            steps.add("Set both pins into each blade, square to it: the pivot pin below, "
                    + Words.mm(stack.pivotPinDepth()) + " long under the blade and flush on the upper face; the drive"
                    + " pin above, " + Words.mm(stack.drivePinHeight()) + " tall and flush on the lower face.");
        }
        return steps;
    }

    /**
     * Roots on the base, tips at the ring: a blade passes over the roots of its neighbours on the side of its tip, so
     * those are laid first.
     */
    private void laying(List<String> steps) {
        int n = spec.blades();
        String next = spec.mirrored() ? "counter-clockwise" : "clockwise";
        String collar = spec.jigs().map(JigSpec::stacking).orElse(false)
                ? " Each inner edge lies against the collar of the stacking jig."
                : "";
        steps.add("Lay the blades in the open pose one after another, blade " + n + " first and each next one in the"
                + " bore " + next + " of the last, down to blade 1: at every overlap the blade that is nearer its tip"
                + " lies over the one nearer its root." + collar);
        int under = Math.min(n - 1, Math.max(1, (int) Math.ceil(design.band().span() / spec.pitch()) - 1));
        steps.add("Close the circle: lift the tips of the first " + under + " blades laid and slip the roots of the"
                + " last " + under + " under them, so that there is no first and no last blade.");
    }

    private void servo(List<String> steps) {
        ServoMount mount = design.mount().orElseThrow();
        PinionPlan plan = design.pinionPlan().orElseThrow();
        steps.add("Drive the servo (" + plan.servo().name() + ") to the end of its travel that is to mean open before"
                + " anything is screwed to it.");
        if (mount.hasPlate()) {
            steps.add("Screw the servo by its ears to the back of the servo plate, output through the base; "
                    + (mount.standoff() > 1e-9
                            ? "standoffs of " + Words.mm(mount.standoff()) + " go between plate and base."
                            : "the plate lies flat on the base."));
        } else {
            steps.add("Screw the servo by its ears to the back of the base"
                    + (mount.standoff() > 1e-9 ? " on packing of " + Words.mm(mount.standoff()) + "." : "."));
        }
    }
}
