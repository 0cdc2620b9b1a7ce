package ringleaf.mechanism.aperture;

import ringleaf.mechanism.RoomLaw;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Words;

/**
 * A clearance and where it comes from.
 *
 * @param name of its field
 * @param mm how much
 * @param origin given; solved where the processes ask for more than is usual; else the usual
 * @param extra kept besides what the law of room asks for, mm
 * @param copies joints of this sort
 * @param within what the processes keep the sizes within that count, mm
 */
public record Room(String name, double mm, Origin origin, double extra, int copies, double... within) {
    String how() {
        String law = RoomLaw.words(copies, within);
        return extra == 0 ? law : law + ", and " + Words.mm(extra) + " for the pin's tilt";
    }

    /** What the processes ask for, mm. */
    double needed() {
        return RoomLaw.room(copies, within) + extra;
    }
}
