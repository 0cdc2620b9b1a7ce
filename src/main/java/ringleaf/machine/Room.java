// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.Optional;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Words;

/**
 * Room between two parts that meet, and where it comes from: given; else the usual one; else, where the processes of
 * the parts are coarser than that, what {@link RoomLaw} asks for.
 *
 * @param name of its field
 * @param mm how much
 * @param origin given; solved where the processes ask for more than is usual; else the usual
 * @param how the law's figures in words, also where they ask for less than is usual
 * @param asked what the processes ask for, mm, also where it is not taken
 */
public record Room(String name, double mm, Origin origin, String how, double asked) {
    private static final double SAME = 1e-9;

    /** By the law alone. */
    public static Room of(String name, Optional<Double> given, double usual, int copies, double... within) {
        return of(name, given, usual, 0, "", copies, within);
    }

    /**
     * By the law, and something that is known.
     *
     * @param extra kept besides what the law asks for, mm; below 0 where something else gives way
     * @param what that is, in words that follow its figure
     * @param copies joints of this sort in one mechanism
     * @param within what the processes keep the sizes within that count, mm
     */
    public static Room of(
            String name,
            Optional<Double> given,
            double usual,
            double extra,
            String what,
            int copies,
            double... within) {
        double asked = RoomLaw.room(copies, within) + extra;
        boolean more = asked > usual + SAME;
        String law = RoomLaw.words(copies, within);
        String how =
                extra == 0 ? law : law + (extra > 0 ? ", and " : ", less ") + Words.mm(Math.abs(extra)) + " " + what;
        double mm = given.isPresent() ? given.get() : more ? asked : usual;
        return new Room(name, mm, given.isPresent() ? Origin.GIVEN : more ? Origin.SOLVED : Origin.DEFAULT, how, asked);
    }

    /**
     * Of a pin in its hole, whose two sizes are those that count.
     *
     * @param extra kept besides what the law asks for, mm
     * @param what that is, in words that follow its figure
     */
    static Room of(String name, Optional<Double> given, double usual, double extra, String what, Size hole, Size pin) {
        int copies = Math.max(hole.copies(), pin.copies());
        return of(name, given, usual, extra, what, copies, hole.within(), pin.within());
    }

    /** The same, or so much where it is more by itself; what is given stays. */
    public Room atMost(double most, String why) {
        if (origin != Origin.SOLVED || mm <= most + SAME) {
            return this;
        }
        return new Room(
                name,
                most,
                origin,
                how + ", " + Words.mm(asked) + "; held at " + Words.mm(most) + ", as " + why,
                asked);
    }

    /** The same of another size. */
    public Room of(double other) {
        return new Room(name, other, origin, how, asked);
    }

    /** How much and why. */
    public String words() {
        return switch (origin) {
            case GIVEN -> Words.mm(mm) + " as given; " + how;
            case DEFAULT -> Words.mm(mm) + " as usual; " + how;
            default -> Words.mm(mm) + "; " + how;
        };
    }
}
