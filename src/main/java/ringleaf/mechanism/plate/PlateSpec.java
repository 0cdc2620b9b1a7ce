// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ringleaf.curve.Circle;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.machine.Room;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Standoff;
import ringleaf.spec.field.Bound;

/**
 * A plate that was read: its seats in their places; mm.
 *
 * @param name of the mechanism
 * @param seats all, repeated and mirrored, spacers last
 * @param outline {@code hull}, {@code round} or {@code box}
 * @param margin round the seats
 * @param plates one or two
 * @param gap between two
 * @param plate what they are made of
 * @param spacers between them; empty for one plate
 * @param standoffs under boards and by themselves, by the seat they belong to
 * @param beside room between things
 * @param width limits
 * @param height limits
 * @param given paths of the fields that were given
 */
record PlateSpec(
        String name,
        List<Seat> seats,
        String outline,
        double margin,
        int plates,
        double gap,
        Material plate,
        List<Standoff> spacers,
        List<Standoff> standoffs,
        Room beside,
        Bound width,
        Bound height,
        Set<String> given) {
    private static final double CORNER = 3;

    double thickness() {
        return plate.thickness();
    }

    /** Lower face of a plate. */
    double lower(boolean rear) {
        return rear ? -gap - thickness() : 0;
    }

    double upper(boolean rear) {
        return lower(rear) + thickness();
    }

    /** Seats that a plate has. */
    List<Seat> on(boolean rear) {
        return seats.stream().filter(seat -> seat.isOn(rear)).toList();
    }

    /** The edge of both plates. */
    Contour edge() {
        List<Circle> discs = new ArrayList<>();
        for (Seat seat : seats) {
            for (Circle disc : seat.material(plate)) {
                discs.add(new Circle(disc.centre(), disc.radius() + margin));
            }
        }
        return switch (outline) {
            case "round" ->
                Contour.circle(
                        Point.ORIGIN,
                        discs.stream()
                                .mapToDouble(d -> d.centre().norm() + d.radius())
                                .max()
                                .orElseThrow());
            case "box" -> {
                Box box = Shapes.hull(discs).box();
                yield Shapes.roundedRectangle(box, Math.min(CORNER, Math.min(box.width(), box.height()) / 2));
            }
            default -> Shapes.hull(discs);
        };
    }

    /** A plate with all its cuts; those that run into one another are one. */
    Region region(boolean rear) {
        List<Region> cuts = new ArrayList<>();
        for (Seat seat : on(rear)) {
            seat.cuts(plate).forEach(cut -> cuts.add(Region.of(cut)));
        }
        if (cuts.isEmpty()) {
            return Region.of(edge());
        }
        return new Region(
                edge(), Overlay.union(cuts).stream().map(Region::outer).toList());
    }
}
