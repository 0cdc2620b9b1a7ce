// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import ringleaf.mechanism.Room;

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
 * @param bore added to the diameter of the pivot bore
 * @param slot added to the width of the drive pin's slot
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
        double bore,
        double slot,
        List<Room> rooms) {}
