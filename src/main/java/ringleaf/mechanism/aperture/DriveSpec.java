// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.spec.shared.Servo;

/**
 * What turns the ring. {@code at} of either is the direction from the axis in which pinion or arm lies, rad, in the frame
 * as built.
 */
public sealed interface DriveSpec {
    /**
     * An arm for a hand.
     *
     * @param armWidth across, mm
     * @param armReach beyond the housing, mm
     * @param scaleFactor ratio of the openings at which the scale is engraved, above 1; absent for no scale
     */
    record Hand(double at, double armWidth, double armReach, OptionalDouble scaleFactor) implements DriveSpec {}

    /**
     * A pinion on a servo.
     *
     * @param module mm
     * @param pressureAngle rad
     * @param pinionTeeth given, or chosen as the least that the servo's travel allows
     * @param spareTeeth beyond what the travel needs, at each end of the sector
     * @param backlash circumferential, mm; absent for what the ring's play needs
     * @param tipClearance from tips to roots, mm; absent for what ring and processes ask for
     * @param stepUp whether a compound pair stands between servo and pinion
     */
    record Pinion(
            double at,
            double module,
            double pressureAngle,
            OptionalInt pinionTeeth,
            int spareTeeth,
            OptionalDouble backlash,
            OptionalDouble tipClearance,
            boolean stepUp,
            Servo servo)
            implements DriveSpec {}
}
