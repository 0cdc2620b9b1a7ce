// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * How far to either side of the line of centres a rim has to be cut, so that the pinion's teeth find their spaces.
 *
 * <p>Derivation: a tooth of the pinion dips under the rim's circle while the nearer corner of its tip does (the corner
 * leads as long as the flank stands steeper to the rim than the tip does, which holds for a pinion outside the rim).
 * Its space on the rim turns with it in the ratio of the teeth.
 *
 * @param pair the meshing gears, the sector's as the gear
 * @param halfAngle on the gear, from the line of centres to the middle of the farthest space with a tooth in it, rad
 */
public record SectorReach(GearPair pair, double halfAngle) {
    /**
     * The reach for a pair and a rim.
     *
     * @param rimRadius radius of the uncut rim beside the sector, mm, at least the gear's tip radius
     * @throws IllegalArgumentException when the rim lies inside the gear's tip circle
     */
    public static SectorReach of(GearPair pair, double rimRadius) {
        if (!(rimRadius >= pair.gear().tipRadius() * (1 - 1e-12))) {
            throw new IllegalArgumentException("the rim lies inside the tip circle of its teeth");
        }
        ToothForm pinion = pair.pinion();
        double a = pair.centreDistance();
        double tip = pinion.tipRadius();
        double cosine = (a * a + tip * tip - rimRadius * rimRadius) / (2 * a * tip);
        double lens = cosine >= 1 ? 0 : Math.acos(Math.max(-1, cosine));
        double half =
                (lens + pinion.halfAngleAt(tip)) * pinion.teeth() / pair.gear().teeth();
        return new SectorReach(pair, half);
    }

    /**
     * Fewest tooth spaces for a travel of the gear, with {@code spare} more at each end. The sector's middle is on the
     * line of centres in the middle of the travel.
     *
     * @param travel turned by the gear from end to end, rad, at least 0
     */
    public int spaces(double travel, int spare) {
        // The first space that is not cut, (n + 1)/2 pitches from the middle, must stay out of reach at both ends.
        double pitches = (travel + 2 * halfAngle) / pair.gear().pitchAngle();
        return (int) Math.max(1, Math.ceil(pitches - 1 - 1e-9)) + 2 * spare;
    }
}
