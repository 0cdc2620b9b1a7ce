// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Point;

/** A curve with a continuous tangent, given by a parameter that runs from {@link #from} up to {@link #to}. */
public interface SmoothCurve {
    /** The least parameter. */
    double from();

    /** The greatest parameter, above {@link #from}. */
    double to();

    /** The point at {@code t}, mm; asked for only within the range. */
    Point at(double t);

    /** The direction in which the point travels as {@code t} grows: any length, never null, also where it stands. */
    Point tangent(double t);
}
