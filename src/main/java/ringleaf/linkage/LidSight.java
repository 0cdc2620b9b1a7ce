// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

/**
 * A shell that turns about a hinge line through the origin, x, behind a round frame, seen by onlookers before it.
 * Angles in rad from the forward axis z; lengths in mm.
 *
 * @param middle radius of the middle of the shell
 * @param thickness of the shell
 * @param opening radius of the frame's opening
 * @param outer radius of the frame
 * @param clearance between shell and frame
 */
public record LidSight(double middle, double thickness, double opening, double outer, double clearance) {
    private double inside() {
        return middle - thickness / 2;
    }

    private double outside() {
        return middle + thickness / 2;
    }

    /** Room that is left to the frame's outer radius at every state; negative where the shell comes out of the frame. */
    public double roomInFrame() {
        return outer - outside() - clearance;
    }

    /**
     * How far behind the hinge's height the frame's rear may lie, at most, for the dome to pass through its opening:
     * sqrt((rho + s/2)^2 - (Rb - clearance)^2) before the hinge. 0 where the dome is narrower than the opening.
     */
    public double frameRear() {
        double free = opening - clearance;
        return Math.sqrt(Math.max(0, outside() * outside() - free * free));
    }

    /**
     * Least angle of the leading edge at which both its corners are hidden behind the frame, for onlookers up to
     * {@code seenFrom} off the axis; not a number where it cannot be hidden from there. A corner at radius rho is hidden
     * from rho sin(a + psi) = (Rb + margin) cos psi + rear sin psi on, so the inner corner decides.
     *
     * @param rear height of the frame's rear before the hinge
     * @param margin by which the edge lies beyond the line of sight
     */
    public double hidden(double rear, double seenFrom, double margin) {
        double sight = (opening + margin) * Math.cos(seenFrom) + rear * Math.sin(seenFrom);
        return Math.asin(sight / inside()) - seenFrom;
    }

    /**
     * Greatest angle off the axis, below pi / 2, from which the edge can be hidden at all; not a number where it never
     * can. The line of sight past the rim touches the shell's inner circle there.
     */
    public double furthestSight(double rear, double margin) {
        double reach = Math.hypot(opening + margin, rear);
        if (opening + margin > inside()) {
            return Double.NaN;
        }
        return reach <= inside() ? Math.PI / 2 : Math.atan2(rear, opening + margin) - Math.acos(inside() / reach);
    }

    /** From open to shut, where two shells lap by {@code lap} along the arc, half of it each. */
    public double travel(double open, double lap) {
        return open + lap / 2 / middle;
    }
}
