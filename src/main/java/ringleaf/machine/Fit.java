// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.part.Dimension.Origin;
import ringleaf.spec.shared.FitName;

/**
 * How a pin sits in its hole: stated once for all copies of a joint, when the spec is read.
 *
 * @param name of the fit
 * @param nominal diameter of the pin, mm
 * @param room by how much the hole is wider, on the diameter, and where that comes from
 * @param hole its width as a size that can be off
 * @param pin its diameter likewise
 * @param basis where the hole's width comes from, for people; empty where it is what the process allows for the fit
 */
public record Fit(FitName name, double nominal, Room room, Optional<Size> hole, Optional<Size> pin, String basis) {
    /**
     * Of a pin that moves in its hole: room as given, else what the fit is listed with, else what the processes of both
     * ask for.
     *
     * @param field of the room
     * @param listed what the process adds for the fit, mm
     * @param extra kept besides what the law asks for, mm
     * @param what that is, in words that follow its figure
     */
    public static Fit moving(
            FitName name,
            double nominal,
            String field,
            Optional<Double> given,
            double listed,
            double extra,
            String what,
            Size hole,
            Size pin) {
        Room room = Room.of(field, given, listed, extra, what, hole, pin);
        return new Fit(name, nominal, room, Optional.of(hole), Optional.of(pin), "");
    }

    /** Of what is set in and stays, or only passes: the room is known, and nothing moves in it. */
    public static Fit still(FitName name, double nominal, double width, String basis) {
        Room room = new Room("", width - nominal, Origin.DEFAULT, "", 0);
        return new Fit(name, nominal, room, Optional.empty(), Optional.empty(), basis);
    }

    /** Width of the hole, mm. */
    public double width() {
        return nominal + room.mm();
    }

    /** Room all round where the pin stands in the middle, mm. */
    public double around() {
        return room.mm() / 2;
    }

    /** Holes for it. */
    public Feature.Bore bore(String id, List<Point> places) {
        return new Feature.Bore(id, width(), places);
    }

    /** A slot for it in each of the places. */
    public Feature.Slot slot(String id, List<Contour> places) {
        return new Feature.Slot(id, width(), places);
    }

    /** Pins of it. */
    public Feature.Pin pin(String id, List<Point> places) {
        return new Feature.Pin(id, nominal, places);
    }

    /**
     * What is left of the room, on the diameter, when hole and pin are off, mm; below 0 where they no longer go together.
     *
     * @param holeOff how far the hole is wider than drawn, mm
     * @param pinOff how far the pin is thicker, mm
     */
    public double play(double holeOff, double pinOff) {
        return room.mm() + holeOff - pinOff;
    }
}
