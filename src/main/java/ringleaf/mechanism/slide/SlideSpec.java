// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import ringleaf.machine.Fit;
import ringleaf.machine.Room;
import ringleaf.mechanism.Hardware;
import ringleaf.mechanism.Material;
import ringleaf.spec.field.Bound;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.LinearBearing;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/**
 * What is asked of a slide; lengths in mm, angles in rad, torque in N mm, forces in N, masses in kg. What is absent is
 * solved.
 *
 * @param name of the mechanism
 * @param stroke way of the carriage
 * @param mass that rides on it
 * @param slope of the travel against level
 * @param force besides weight and friction
 * @param bearings that may be taken, in order of preference
 * @param rodSpacing between the rods
 * @param spread over both bearings of a rod
 * @param servo whose horn pushes
 * @param swing of the horn
 * @param link length of the link
 * @param plate what plates, bridge, arm and link are made of
 * @param pivot of the pins in the link
 * @param pinSet of the pins in arm and bridge
 * @param stop room at either end
 * @param beside room beside what moves
 * @param rodFit of the rods in the end plates
 * @param rodAllowance what the process adds to their seats
 * @param bearingFit of the bearings in the carriage
 * @param bearingAllowance what the process adds to their seats
 * @param tab what it adds to a slot for the tab of a plate
 * @param screw for what is carried and for the end plates
 * @param hardware what is bought by size
 * @param length limits along the travel
 * @param height limits of the end plates
 * @param given paths of the fields that were given
 */
record SlideSpec(
        String name,
        double stroke,
        double mass,
        double slope,
        double force,
        List<LinearBearing> bearings,
        OptionalDouble rodSpacing,
        OptionalDouble spread,
        Servo servo,
        OptionalDouble swing,
        OptionalDouble link,
        Material plate,
        Fit pivot,
        Fit pinSet,
        Room stop,
        Room beside,
        FitName rodFit,
        double rodAllowance,
        FitName bearingFit,
        double bearingAllowance,
        double tab,
        Screw screw,
        Hardware hardware,
        Bound length,
        Bound height,
        Set<String> given) {
    /** Standard acceleration of free fall, m/s²: 3rd CGPM, 1901. */
    private static final double GRAVITY = 9.80665;
    /** Between a linear bearing or a dry sleeve and its rod; a sleeve's, as dust makes balls no better; common practice, no source. */
    static final double FRICTION = 0.2;

    /** Push along the travel that weight, friction and what is asked come to, without what the link's place beside the rods adds, N. */
    double push() {
        double weight = mass * GRAVITY;
        return force + weight * Math.sin(slope) + FRICTION * weight * Math.cos(slope);
    }

    /** Load across the rods, N. */
    double load() {
        return mass * GRAVITY * Math.cos(slope);
    }

    double pin() {
        return pivot.nominal();
    }
}
