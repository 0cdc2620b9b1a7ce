// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import ringleaf.groove.BeltTooth;
import ringleaf.machine.Room;
import ringleaf.part.Words;
import ringleaf.spec.shared.Belt;

/**
 * A belt and how it is to sit in its grooves, mm.
 *
 * @param belt of the catalogue or the user's own
 * @param width of the belt
 * @param face width of the toothed rims that is asked for
 * @param generated whether grooves are generated; else they are trapezoids
 * @param play of a seated tooth along the pitch line, in all
 * @param below a seated tooth's tip
 */
record BeltChoice(Belt belt, double width, double face, boolean generated, Room play, Room below) {
    /** Play of a seated tooth along the pitch line, in all. */
    double backlash() {
        return play.mm();
    }

    /** Room below a seated tooth's tip. */
    double clearance() {
        return below.mm();
    }

    /** The belt's tooth, its land so far inside the pitch line. */
    BeltTooth tooth(double land) {
        if (belt.round()) {
            return BeltTooth.round(
                    belt.pitch(), land, belt.toothWidth(), belt.toothHeight(), belt.flank(), belt.rootRadius());
        }
        return new BeltTooth(
                belt.pitch(),
                land,
                belt.toothWidth(),
                belt.toothHeight(),
                belt.flank(),
                belt.tipRadius(),
                belt.rootRadius());
    }

    /** The same with other play and room of a seated tooth. */
    BeltChoice withRoom(double otherPlay, double otherBelow) {
        return new BeltChoice(belt, width, face, generated, play.of(otherPlay), below.of(otherBelow));
    }

    /** The belt as one asks for it in a shop: some names do not say the pitch. */
    String beltWords() {
        return belt.name() + " (pitch " + Words.mm(belt.pitch()) + ")";
    }

    /** Where the groove's form comes from, for people. */
    String grooveWords() {
        if (!generated) {
            return "trapezoid as tabulated (" + belt.standard() + ", values of the catalogue)";
        }
        String from = "generated from the belt's tooth section as it enters and leaves the groove";
        return belt.makersGroove()
                ? from + "; the groove of this belt is a maker's own form and no open source gives it"
                : from;
    }
}
