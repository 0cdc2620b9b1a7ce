// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

/**
 * How far pins lean, and the room that this takes in what they turn or slide in: with their blade, which climbs over its
 * neighbours, and by what a jig lets them lean while glue sets. Both can lean one way, so they add up. Lengths in mm,
 * angles in rad.
 */
final class PinLean {
    /** Of what a bore leaves beside the blade's own slope a jig takes so much; the rest is for sizes that are off. */
    private static final double SHARE = 0.5;
    /** A socket opened with a drill of the pin's size is wider than the pin by this; common practice, no source. */
    static final double DRILLED = 0.05;
    /** Depth of the sunk floor round a pin in a jig, and the most of the pin's length that goes into it. */
    private static final double WELL = 0.8;

    private static final double WELL_SHARE = 0.3;

    private final ApertureSpec spec;
    private final Stack stack;

    PinLean(ApertureDesign design) {
        this.spec = design.spec();
        this.stack = design.stack();
    }

    /** How long the pin stands out of its blade. */
    double length(boolean drive) {
        return drive ? stack.drivePinHeight() : stack.pivotPinDepth();
    }

    /** Depth to which the floor of a jig's pocket is sunk round the pin. */
    double wellDepth(boolean drive) {
        return Math.min(WELL, WELL_SHARE * length(drive));
    }

    /** Whether a jig holds the pin while it is glued in. */
    boolean isJigged(boolean drive) {
        return spec.jigs().isPresent() && GlueJig.isWanted(spec, drive);
    }

    /**
     * What a jig's socket is wider than its pin: the jig's usual room, or less, so that no more than half of what the bore
     * or the slot leaves is taken; never less than a drill of the pin's size leaves.
     */
    double socketRoom(JigSpec jig, boolean drive) {
        double left = (drive ? spec.clearances().slot() : spec.clearances().bore()) - inside(drive) * Math.tan(slope());
        double most = SHARE * left * held(drive) / inside(drive);
        return Math.min(jig.socketRoom(), Math.max(DRILLED, most));
    }

    /** How far out of square a jig lets the pin lean; nought where there is none. */
    double inJig(boolean drive) {
        return isJigged(drive) ? Math.atan(socketRoom(spec.jigs().orElseThrow(), drive) / held(drive)) : 0;
    }

    /** Length of the pin that a socket holds: what stands below the sunk floor. */
    private double held(boolean drive) {
        return length(drive) - wellDepth(drive);
    }

    /** The length that must not jam: all of a pivot pin, and of a drive pin what can be in its slot. */
    double inside(boolean drive) {
        return drive ? Math.min(length(true), stack.ringTop() - stack.ringBottom()) : length(false);
    }

    private double slope() {
        return stack.pinSlope();
    }
}
