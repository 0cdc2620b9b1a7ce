// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.util.List;
import ringleaf.mechanism.ServoLaw;

/**
 * What measuring found.
 *
 * @param points in order of the servo's turn
 * @param build the zero and the pin's offset that fit best
 * @param residuals measured less fitted, one a point, mm or degrees
 * @param spread standard deviation of one measurement as the residuals tell it, mm or degrees
 * @param zeroWithin half the width of the 95 % interval of the zero, rad
 * @param pinWithin likewise of the pin's offset, mm; 0 where it was not fitted
 * @param pinFitted whether the pin's offset was fitted too
 * @param before greatest distance of a point from the table as drawn, mm or degrees
 */
public record Fitted(
        List<MeasuredPoint> points,
        ServoLaw.Build build,
        double[] residuals,
        double spread,
        double zeroWithin,
        double pinWithin,
        boolean pinFitted,
        double before) {}
