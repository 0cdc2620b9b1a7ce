// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import ringleaf.part.ShownUnit;
import ringleaf.part.Stand;
import ringleaf.part.Words;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/** Where a mechanism stands, in words. */
public final class StandWords {
    /** Of directions. */
    private static final int DECIMALS = 4;

    private StandWords() {}

    /** {@code on the ground at (120, 0, 0) mm}, and how its axes point where it is turned. */
    public static String of(Stand stand, ShownUnit unit) {
        Vector at = stand.pose().shift();
        String words = "on " + (stand.isOnGround() ? "the ground" : stand.carrier()) + " at (" + unit.number(at.x())
                + ", " + unit.number(at.y()) + ", " + unit.number(at.z()) + ") " + unit.spelling();
        Turn turn = stand.pose().turn();
        return turn.equals(Turn.NONE)
                ? words
                : words + ", its x along " + direction(turn.apply(Vector.X)) + " and its axis along "
                        + direction(turn.apply(Vector.Z));
    }

    private static String direction(Vector v) {
        return "(" + Words.number(v.x(), DECIMALS) + ", " + Words.number(v.y(), DECIMALS) + ", "
                + Words.number(v.z(), DECIMALS) + ")";
    }
}
