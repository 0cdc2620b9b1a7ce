package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Status;
import ringleaf.part.Words;

/** Checks of heights, seats and pins, which hold for the whole travel at once. */
final class StackChecks {
    private static final double HAIR = 1e-6;

    /** More axial play than this lets the ring tip, mm; common practice, no source. */
    private static final double MOST_AXIAL_PLAY = 0.6;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Stack stack;

    StackChecks(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
        this.stack = design.stack();
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        pins(found);
        double need = stack.layers() * (spec.thickness() + spec.blade().burr()) + spec.clearances().bladePlay();
        found.add(Finding.atLeast(
                "depth",
                stack.cavity() + HAIR,
                need,
                "mm",
                stack.layers() + " layers",
                "the cavity holds the blades where most of them lie over one point"));
        if (spec.depth().isPresent()) {
            found.add(Finding.atMost(
                    "depth", stack.depth() - HAIR, spec.depth().getAsDouble(), "mm", "front to back", "depth of the stack"));
        }
        if (spec.outer().hasMost()) {
            found.add(Finding.atMost(
                    "outer-diameter",
                    2 * design.rim().outer() - HAIR,
                    spec.outer().most(),
                    "mm",
                    "round housing",
                    "outer diameter; bound by " + design.bound()));
        }
        if (spec.bezel().housing().isPresent()) {
            found.addAll(BezelFit.findings(design));
        }
        Rim rim = design.rim();
        found.add(Finding.atLeast(
                "ring-guided",
                rim.rim() - rim.cavity() + HAIR,
                spec.ledge(),
                "mm",
                "ledge",
                "width of the seat on which the ring rides, outside everything the blades reach"));
        double play = stack.retainerBottom() - stack.ringTop();
        found.add(new Finding(
                "ring-guided",
                play <= MOST_AXIAL_PLAY ? Status.PASS : Status.WARN,
                play,
                MOST_AXIAL_PLAY,
                "mm",
                "between ledge and retainer",
                "axial play of the ring; sheets that do not match the ring's thickness make it loose"));
        return found;
    }

    private void pins(List<Finding> found) {
        double hold = Math.min(spec.pinDiameter(), spec.plate().thickness());
        if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            found.add(Finding.atLeast(
                    "pins-pass",
                    spec.thickness(),
                    LEAST_POST_BLADE,
                    "mm",
                    "post on the base",
                    "a blade must be thick enough to hold on a post no higher than itself"));
        } else {
            found.add(Finding.atLeast(
                    "pins-pass",
                    stack.pivotEngagement() + HAIR,
                    hold,
                    "mm",
                    "pivot pin, blade at its highest",
                    "bore that the pivot pin still holds; it ends flush with its blade's upper face"));
        }
        found.add(Finding.atLeast(
                "pins-pass",
                stack.driveEngagement() + HAIR,
                hold / 2,
                "mm",
                "drive pin, blade at its lowest",
                "slot that the drive pin still holds; it starts flush with its blade's lower face"));
        if (design.pin() instanceof DrivePin.Lever) {
            found.add(Finding.atMost(
                    "pins-pass",
                    stack.overDrivePin(),
                    0,
                    "1",
                    "drive pin on its lever",
                    "other blades that lie over the drive pin: a root lies under the blades that pass it, so that a pin"
                            + " on a lever reaches the ring only where none passes"));
        }
        double length = spec.pinStyle() == PinStyle.BASE_POSTS ? spec.thickness() : stack.pivotPinDepth();
        double tilt = length * Math.tan(stack.pinSlope());
        found.add(Finding.atMost(
                "pins-pass",
                tilt,
                spec.clearances().bore() + HAIR,
                "mm",
                "pivot pin",
                "a pin of " + Words.mm(length) + " tilts with its blade by " + Words.degrees(stack.pinSlope(), 2)
                        + " and needs this much clearance in its bore"));
    }

    /** Thinnest blade for posts on the base, mm; common practice, no source. */
    static final double LEAST_POST_BLADE = 0.8;
}
