// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

import ringleaf.space.Turn;
import ringleaf.space.Vector;

/**
 * A universal joint between a base and a plate: which of its two axes stands still. The cross turns about the first
 * axis, which is the base's; the plate turns about the second, which the cross carries. Pan turns about y, tilt about x.
 */
public enum JointOrder {
    /** The base's fork holds the pan axis: plate = Ry(pan) Rx(tilt). */
    PAN,
    /** The base's fork holds the tilt axis: plate = Rx(tilt) Ry(pan). */
    TILT;

    /** How the plate is turned, angles in rad. */
    public Turn plate(double pan, double tilt) {
        Turn about = Turn.about(Vector.Y, pan);
        Turn up = Turn.about(Vector.X, tilt);
        return this == PAN ? up.then(about) : about.then(up);
    }

    /** How the cross is turned. */
    public Turn cross(double pan, double tilt) {
        return this == PAN ? Turn.about(Vector.Y, pan) : Turn.about(Vector.X, tilt);
    }

    /** Axis about which the plate turns when only the pan changes, of length 1. */
    public Vector panAxis(double tilt) {
        return this == PAN ? Vector.Y : Turn.about(Vector.X, tilt).apply(Vector.Y);
    }

    /** Axis about which the plate turns when only the tilt changes, of length 1. */
    public Vector tiltAxis(double pan) {
        return this == PAN ? Turn.about(Vector.Y, pan).apply(Vector.X) : Vector.X;
    }
}
