// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import ringleaf.machine.Fit;
import ringleaf.machine.Room;

/**
 * Room left on purpose, mm. All are on one side (radial) unless a diameter is named.
 *
 * @param opening between the clear opening and blades or plates in the open pose
 * @param blade between the blades' reach and the cavity wall
 * @param slotEnd between the drive pin and either end of its slot
 * @param ringRadial between the ring's rim and the wall
 * @param ringAxial between ring and retainer
 * @param bladePlay height in the cavity beyond the blades' own layers
 * @param pinion between the pinion's tips and the pocket
 * @param pinionAxial between pinion and retainer
 * @param pivotEnd between a pivot pin's end and what lies beyond it
 * @param driveEnd between a drive pin's end and the retainer
 * @param stop way of the ring past either end of its travel, along its rim
 * @param pivot of a pivot pin in what it turns in
 * @param drive of a drive pin in its slot
 * @param set of a pin in the hole of the blade into which it is set
 * @param rooms all of these with where they come from
 */
public record Clearances(
        double opening,
        double blade,
        double slotEnd,
        double ringRadial,
        double ringAxial,
        double bladePlay,
        double pinion,
        double pinionAxial,
        double pivotEnd,
        double driveEnd,
        double stop,
        Fit pivot,
        Fit drive,
        Fit set,
        List<Room> rooms) {
    /** Where the width of a hole comes from in which a pin is held that is as wide. */
    static final String AS_WIDE = "as wide as the pin";

    /** Added to the diameter of the pivot bore. */
    double bore() {
        return pivot.room().mm();
    }

    /** Added to the width of the drive pin's slot. */
    double slot() {
        return drive.room().mm();
    }
}
