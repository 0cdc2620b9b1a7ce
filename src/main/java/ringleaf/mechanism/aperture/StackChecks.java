package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.leaf.BladeNeeds;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.BladeSolver;
import ringleaf.leaf.DrivePin;
import ringleaf.leaf.Layout;
import ringleaf.leaf.PinRoom;
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

    private final boolean advises;

    StackChecks(ApertureDesign design, boolean advises) {
        this.advises = advises;
        this.design = design;
        this.spec = design.spec();
        this.stack = design.stack();
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        pins(found);
        found.addAll(new Fasteners(design).findings());
        double need = stack.layers() * (spec.thickness() + spec.blade().burr()) + spec.clearances().bladePlay();
        found.add(Finding.atLeast(
                "cavity-depth",
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
                "ring-seat",
                rim.rim() - rim.cavity() + HAIR,
                spec.ledge(),
                "mm",
                "ledge",
                "width of the seat on which the ring rides, outside everything the blades reach"));
        double play = stack.retainerBottom() - stack.ringTop();
        found.add(new Finding(
                "axial-play",
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
                    "pin-engagement",
                    spec.thickness(),
                    LEAST_POST_BLADE,
                    "mm",
                    "post on the base",
                    "a blade must be thick enough to hold on a post no higher than itself"));
        } else {
            found.add(Finding.atLeast(
                    "pin-engagement",
                    stack.pivotEngagement() + HAIR,
                    hold,
                    "mm",
                    "pivot pin, blade at its highest",
                    "bore that the pivot pin still holds; it ends flush with its blade's upper face"));
        }
        found.add(Finding.atLeast(
                "pin-engagement",
                stack.driveEngagement() + HAIR,
                hold / 2,
                "mm",
                "drive pin, blade at its lowest",
                "slot that the drive pin still holds; it starts flush with its blade's lower face"));
        if (design.pin() instanceof DrivePin.Lever) {
            found.add(leverClear());
        }
        found.add(besideRoots());
        if (!(design.pin() instanceof DrivePin.Lever)) {
            found.add(besideTips());
        }
        double length = spec.pinStyle() == PinStyle.BASE_POSTS ? spec.thickness() : stack.pivotPinDepth();
        double tilt = length * Math.tan(stack.pinSlope());
        found.add(Finding.atMost(
                "pin-tilt",
                tilt,
                spec.clearances().bore() + HAIR,
                "mm",
                "pivot pin",
                "a pin of " + Words.mm(length) + " tilts with its blade by " + Words.degrees(stack.pinSlope(), 2)
                        + " and needs this much clearance in its bore"));
    }

    /**
     * A pivot pin, or a post under it, stands where the next blade's root lies lower than its own: pins are 2 Rp sin(pi/N)
     * apart, and a root is a disc about its pin (derived for this project; at every state, as pivots stand still).
     */
    private Finding besideRoots() {
        double apart = 2 * design.band().pivotRadius() * Math.sin(spec.pitch() / 2);
        return Finding.atLeast(
                "pin-clearance",
                apart - half() - spec.pinDiameter() / 2 + HAIR,
                ApertureRequirements.APART,
                "mm",
                "pivot pin and the next blade's root",
                "room beside a pivot pin, which comes down past its neighbour's root; fewer or narrower blades, thinner"
                        + " pins or a larger opening make more");
    }

    /** The same where the next blade's end lies over a drive pin, at the dip, where the pins are nearest together. */
    private Finding besideTips() {
        double radius = design.band().leastPinRadius(design.pin(), design.closed());
        double apart = 2 * radius * Math.sin(spec.pitch() / 2);
        return Finding.atLeast(
                "pin-clearance",
                apart - half() - spec.pinDiameter() / 2 + HAIR,
                ApertureRequirements.APART,
                "mm",
                "drive pin and the next blade's end",
                "room beside a drive pin, which comes up past the end of the blade over it; fewer or narrower blades,"
                        + " thinner pins or a larger opening make more");
    }

    /** Radius of a blade's round ends about its pins, mm. */
    private double half() {
        return Math.max(design.band().width() / 2, design.ear());
    }

    private Finding leverClear() {
        double middle = new PinRoom().least(design.band(), design.pin(), design.ear(), design.closed());
        double room = middle - spec.pinDiameter() / 2;
        String message = "room between a drive pin on its lever and the other blades, which pass over the roots and"
                + " must not meet it on its way to the ring";
        double asked = spec.clearances().blade();
        return Finding.atLeast(
                "pin-clearance",
                room + HAIR,
                asked,
                "mm",
                "drive pin on its lever",
                room + HAIR < asked && advises ? message + leverThatWould(design) : message);
    }

    /** What would do instead of a lever as given: that which is found where it is left open; empty when it was. */
    static String leverThatWould(ApertureDesign design) {
        ApertureSpec spec = design.spec();
        if (spec.lever().isEmpty() && spec.leverAngle().isEmpty()) {
            return "";
        }
        BladeNeeds needs = new ApertureDesigner(spec).needs(spec.lap());
        BladeNeeds.Given own = needs.given();
        BladePlan open = BladeSolver.solve(
                needs.withGiven(new BladeNeeds.Given(own.width(), own.span(), Double.NaN, Double.NaN)), Layout.LEVER);
        if (!open.holds() || !(open.pin() instanceof DrivePin.Lever lever)) {
            return "; no lever would do, drive-pin: far-end may";
        }
        double angle = spec.mirrored() ? -lever.angle() : lever.angle();
        return "; one that points outward far enough would do: lever: " + Words.mm(lever.length())
                + " with lever-angle: " + Words.degrees(angle, 1) + ", found when both are left out";
    }

    /** Thinnest blade for posts on the base, mm; common practice, no source. */
    static final double LEAST_POST_BLADE = 0.8;
}
