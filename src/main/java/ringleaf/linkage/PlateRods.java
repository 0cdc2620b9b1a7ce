// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

import java.util.Optional;
import ringleaf.space.Vector;

/**
 * A plate on a universal joint at the origin, led by two push rods. Angles in rad: pan about y, tilt about x, both 0 when
 * the plate faces z; lengths in mm.
 *
 * @param order of the joint's axes
 * @param panSeat middle of the pan rod's ball on the plate, in the plate's frame
 * @param tiltSeat middle of the tilt rod's ball on the plate, in the plate's frame
 * @param panRod to the servo that pans
 * @param tiltRod to the servo that tilts
 */
public record PlateRods(JointOrder order, Vector panSeat, Vector tiltSeat, PushRod panRod, PushRod tiltRod) {
    /** Newton's method comes to rounding in five steps from a neighbouring state; more than this has left the branch. */
    private static final int STEPS = 50;

    private static final double SETTLED = 1e-13;

    /**
     * Angles of the two servos' horns or of the plate, rad.
     *
     * @param pan or of the pan servo
     * @param tilt or of the tilt servo
     */
    public record Two(double pan, double tilt) {
        boolean isFinite() {
            return Double.isFinite(pan) && Double.isFinite(tilt);
        }
    }

    /** Where the pan rod's end is. */
    public Vector panEnd(double pan, double tilt) {
        return order.plate(pan, tilt).apply(panSeat);
    }

    /** Where the tilt rod's end is. */
    public Vector tiltEnd(double pan, double tilt) {
        return order.plate(pan, tilt).apply(tiltSeat);
    }

    /** How the horns stand for a direction of the plate, in closed form; not a number where a rod does not reach. */
    public Two horns(double pan, double tilt) {
        return new Two(panRod.angle(panEnd(pan, tilt)), tiltRod.angle(tiltEnd(pan, tilt)));
    }

    /**
     * How the plate stands for two angles of the horns, by Newton's method from a neighbouring state, so on its branch;
     * residual at rounding (1e-12 rad at the horns). Empty where it is not reached.
     */
    public Optional<Two> plate(Two horns, Two near) {
        double pan = near.pan;
        double tilt = near.tilt;
        for (int i = 0; i < STEPS; i++) {
            Two now = horns(pan, tilt);
            if (!now.isFinite()) {
                return Optional.empty();
            }
            double offPan = horns.pan - now.pan;
            double offTilt = horns.tilt - now.tilt;
            double[][] turns = hornsPerAngle(pan, tilt, now);
            double determinant = turns[0][0] * turns[1][1] - turns[0][1] * turns[1][0];
            double stepPan = (offPan * turns[1][1] - offTilt * turns[0][1]) / determinant;
            double stepTilt = (offTilt * turns[0][0] - offPan * turns[1][0]) / determinant;
            pan += stepPan;
            tilt += stepTilt;
            if (Math.abs(stepPan) + Math.abs(stepTilt) < SETTLED) {
                return Optional.of(new Two(pan, tilt));
            }
        }
        return Optional.empty();
    }

    /**
     * Turns of the horns per turn of the plate: rows pan and tilt servo, columns pan and tilt. Its transpose takes
     * torques at the horns to torques about the axes, by virtual work.
     */
    public double[][] hornsPerAngle(double pan, double tilt, Two horns) {
        Vector panEnd = panEnd(pan, tilt);
        Vector tiltEnd = tiltEnd(pan, tilt);
        Vector byPan = panRod.turnPerMove(panEnd, horns.pan);
        Vector byTilt = tiltRod.turnPerMove(tiltEnd, horns.tilt);
        Vector panAxis = order.panAxis(tilt);
        Vector tiltAxis = order.tiltAxis(pan);
        return new double[][] {
            {byPan.dot(panAxis.cross(panEnd)), byPan.dot(tiltAxis.cross(panEnd))},
            {byTilt.dot(panAxis.cross(tiltEnd)), byTilt.dot(tiltAxis.cross(tiltEnd))}
        };
    }

    /**
     * How far the other motion is dragged along when only one servo moves, with the other one left where it stands for
     * that direction with the first motion at 0: the plate's true angles less those wanted. Empty where it is not reached.
     */
    public Optional<Two> crossing(double pan, double tilt) {
        Two first = order == JointOrder.PAN ? horns(0, tilt) : horns(pan, 0);
        Two both = horns(pan, tilt);
        Two set = order == JointOrder.PAN ? new Two(both.pan, first.tilt) : new Two(first.pan, both.tilt);
        return plate(set, new Two(pan, tilt)).map(got -> new Two(got.pan - pan, got.tilt - tilt));
    }
}
