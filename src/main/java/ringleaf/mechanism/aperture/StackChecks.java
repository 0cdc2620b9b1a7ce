// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.leaf.BladeNeeds;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.BladeSolver;
import ringleaf.leaf.DrivePin;
import ringleaf.leaf.Layout;
import ringleaf.leaf.PinRoom;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Place;
import ringleaf.part.Words;

/** Checks of heights, seats and pins, which hold for the whole travel at once. */
final class StackChecks {
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
        found.add(cavity());
        if (spec.depth().isPresent()) {
            found.add(Finding.of("depth")
                    .about(stack.hasCover() ? "cover" : "base-plate", "retainer")
                    .atMost(stack.depth(), spec.depth().getAsDouble(), "mm")
                    .inWords("depth of the stack, front to back"));
        }
        if (spec.outer().hasMost()) {
            found.add(Finding.of("outer-diameter")
                    .about("spacer-ring")
                    .atMost(2 * design.rim().outer(), spec.outer().most(), "mm")
                    .inWords("outer diameter of the round housing; limited by " + design.bound()));
        }
        if (spec.bezel().housing().isPresent()) {
            found.addAll(BezelFit.findings(design));
        }
        Rim rim = design.rim();
        found.add(Finding.of("ring-seat")
                .about("drive-ring", "spacer-ring")
                .at(Place.NONE.withDetail("ledge"))
                .atLeast(rim.rim() - rim.cavity(), spec.ledge(), "mm")
                .inWords("width of the seat on which the ring rides, outside everything the blades reach"));
        found.add(Finding.of("axial-play")
                .about("drive-ring", "retainer")
                .orWarn()
                .atMost(stack.retainerBottom() - stack.ringTop(), MOST_AXIAL_PLAY, "mm")
                .inWords("axial play of the ring; sheets that do not match the ring's thickness make it loose"));
        return found;
    }

    /** The cavity's height, against what the blades take where most of them lie over one point. */
    private Finding cavity() {
        double taken = stack.layers() * (spec.thickness() + spec.blade().burr());
        double play = spec.clearances().bladePlay();
        return Finding.of("cavity-depth")
                .about("blade", "spacer-ring")
                .room(stack.cavity(), taken, taken + play, "mm")
                .inWords("height between base and ring; " + stack.layers() + " blades over one point take "
                        + Words.mm(taken) + ", and " + Words.mm(play) + " is their play");
    }

    private void pins(List<Finding> found) {
        double hold = Math.min(spec.pinDiameter(), spec.plate().thickness());
        boolean posts = spec.pinStyle() == PinStyle.BASE_POSTS;
        if (posts) {
            found.add(Finding.of("pin-engagement")
                    .about("pivot-pin")
                    .atLeast(spec.thickness(), LEAST_POST_BLADE, "mm")
                    .inWords("a blade must be thick enough to hold on a post no higher than itself"));
        } else {
            found.add(Finding.of("pin-engagement")
                    .about(pivot())
                    .at(Place.state(-1, "blade at its highest"))
                    .atLeast(stack.pivotEngagement(), hold, "mm")
                    .inWords("bore that the pivot pin still holds; it ends flush with its blade's upper face"));
        }
        found.add(Finding.of("pin-engagement")
                .about("drive-pin")
                .at(Place.state(-1, "blade at its lowest"))
                .atLeast(stack.driveEngagement(), hold / 2, "mm")
                .inWords("slot that the drive pin still holds; it starts flush with its blade's lower face"));
        if (design.pin() instanceof DrivePin.Lever) {
            found.add(leverClear());
        }
        found.add(besideRoots());
        if (!(design.pin() instanceof DrivePin.Lever)) {
            found.add(besideTips());
        }
        tilt(found, posts);
    }

    private void tilt(List<Finding> found, boolean posts) {
        PinLean pins = new PinLean(design);
        double length = posts ? spec.thickness() : pins.inside(false);
        tilt(found, pivot(), false, length, pins.inJig(false), spec.clearances().bore());
        if (pins.isJigged(true)) {
            tilt(
                    found,
                    "drive-pin",
                    true,
                    pins.inside(true),
                    pins.inJig(true),
                    spec.clearances().slot());
        }
    }

    /** A pin leans with its blade, and by what the jig allowed while it was glued in, both one way at worst. */
    private void tilt(List<Finding> found, String pin, boolean slides, double length, double inJig, double room) {
        found.add(Finding.of("pin-tilt")
                .about(pin)
                .atMost(length * Math.tan(stack.pinSlope() + inJig), room, "mm")
                .says(
                        "aperture.tilt",
                        Figure.mm(length),
                        Figure.degrees(stack.pinSlope(), 2),
                        inJig > 0,
                        Figure.degrees(inJig, 2),
                        slides));
    }

    /** What turns in the base, or on it: a printed blade carries its pin itself. */
    private String pivot() {
        return spec.pinStyle() == PinStyle.ONE_GLUED ? "blade" : "pivot-pin";
    }

    /**
     * A pivot pin, or a post under it, stands where the next blade's root lies lower than its own: pins are 2 Rp sin(pi/N)
     * apart, and a root is a disc about its pin (derived for this project; at every state, as pivots stand still).
     */
    private Finding besideRoots() {
        double apart = 2 * design.band().pivotRadius() * Math.sin(spec.pitch() / 2);
        return Finding.of("pin-clearance")
                .about(pivot())
                .at(Place.NONE.withDetail("beside the next blade's root"))
                .room(apart - half() - spec.pinDiameter() / 2, ApertureRequirements.APART, "mm")
                .inWords(
                        "room beside a pivot pin, which comes down past its neighbour's root; fewer or narrower blades,"
                                + " thinner pins or a larger opening make more");
    }

    /** The same where the next blade's end lies over a drive pin, at the dip, where the pins are nearest together. */
    private Finding besideTips() {
        double radius = design.band().leastPinRadius(design.pin(), design.closed());
        double apart = 2 * radius * Math.sin(spec.pitch() / 2);
        return Finding.of("pin-clearance")
                .about("drive-pin")
                .at(Place.NONE.withDetail("beside the next blade's end"))
                .room(apart - half() - spec.pinDiameter() / 2, ApertureRequirements.APART, "mm")
                .inWords("room beside a drive pin, which comes up past the end of the blade over it; fewer or narrower"
                        + " blades, thinner pins or a larger opening make more");
    }

    /** Radius of a blade's round ends about its pins, mm. */
    private double half() {
        return Math.max(design.band().width() / 2, design.ear());
    }

    private Finding leverClear() {
        double middle = new PinRoom().least(design.band(), design.pin(), design.ear(), design.closed());
        String message = "room between a drive pin on its lever and the other blades, which pass over the roots and"
                + " must not meet it on its way to the ring";
        Finding.Draft draft = Finding.of("pin-clearance")
                .about("drive-pin")
                .at(Place.NONE.withDetail("on its lever, beside the other blades"))
                .room(middle - spec.pinDiameter() / 2, spec.clearances().blade(), "mm");
        return draft.inWords(draft.isHeld() || !advises ? message : message + leverThatWould(design));
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
