// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.machine.Room;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.SizesOff;
import ringleaf.spec.shared.Belt;

/**
 * Room that belt and pulleys have so that they still run when they are off: the usual, or what the processes ask for. The
 * sizes that count are those that are off in the study of yield; see {@link BeltBuilt}. Lengths in mm.
 *
 * @param pulley how the pulleys are made
 * @param pulleys how many with teeth there are
 */
record BeltRooms(Material pulley, int pulleys) {
    /** How far a belt's width may differ from its name; a belt maker's technical manual, table 5.13, the coarsest. */
    static final double BELT_WIDTH = 0.5;
    /** How far a spacer that is bought or made to length may be off; common practice, no source. */
    static final double SPACER = 0.1;
    /** Stretch by which a belt counts as tight, as a share of its length; common practice, no source. */
    static final double TIGHT = 0.001;

    /** Play of a seated tooth where the process asks for no more, as a share of the pitch, at most; common practice. */
    private static final double USUAL_PLAY = 0.08;
    /** Play in the wider grooves that are tabulated for T belts, as a share of the pitch: 0.127 to 0.134; from memory. */
    private static final double MOST_PLAY = 0.13;
    /** Half the arc of contact of a belt that lies half round, rad. */
    private static final double HALF_WRAP = Math.PI / 2;
    /** A rim that is off either way takes play, so each counts for two. */
    private static final int WAYS = 2;
    /** Room of rims, and between pulleys and plates; common practice, no source. */
    private static final double USUAL = 1;

    /** How far the radius of a circle may be off whose diameter is kept within a figure. */
    static double radius(Material made) {
        return made.repeatability() / 2;
    }

    /** Play of a seated tooth: grooves may be narrower, and a rim that is off spaces teeth wider or narrower. */
    Room play(Optional<Double> given, Belt belt) {
        double usual = Math.min(pulley.slotClearance(), USUAL_PLAY * belt.pitch());
        return Room.of(
                        "backlash",
                        given,
                        usual,
                        -2 * PulleyChecks.GIVES * belt.pitch(),
                        "by which rubber gives",
                        WAYS * pulleys,
                        pulley.repeatability(),
                        2 * HALF_WRAP * radius(pulley))
                .atMost(MOST_PLAY * belt.pitch(), "more leaves too little of the rim between grooves");
    }

    /** Room below the tip of a seated tooth: the rim may be lower, the bottom higher. */
    Room below(Optional<Double> given, double play, Belt belt) {
        return Room.of("clearance", given, play / 2, pulleys, radius(pulley), radius(pulley))
                .atMost(belt.toothHeight(), "that is the tooth's own height");
    }

    /** By how much rims are wider than the belt. */
    Room face(double belt) {
        double face = SizesOff.heightWithin(pulley, belt + USUAL);
        return Room.of("face-width", Optional.empty(), USUAL, pulleys, BELT_WIDTH, face);
    }

    /** Between pulleys and plates, on either side of what stands between them. */
    Room axial(Optional<Double> given, double height) {
        return Room.of("axial", given, USUAL, pulleys, SizesOff.heightWithin(pulley, height) / 2, SPACER / 2);
    }

    /**
     * By how much longer a belt can be drawn tight: its length may be more, its axles nearer; both spans feel that.
     *
     * @param plate what places the axles
     */
    static Room takeUp(double length, Material plate) {
        return Room.of(
                "tension-allowance",
                Optional.empty(),
                DriveSlot.TAKE_UP * length,
                TIGHT * length,
                "to draw it tight",
                1,
                DriveSlot.BELT_TOLERANCE * length,
                2 * plate.repeatability());
    }

    /** By how much shorter a belt can still be put on. */
    static double shorter(double length, Material plate) {
        return Room.of(
                        "installation-allowance",
                        Optional.empty(),
                        0,
                        1,
                        DriveSlot.BELT_TOLERANCE * length,
                        2 * plate.repeatability())
                .mm();
    }
}
