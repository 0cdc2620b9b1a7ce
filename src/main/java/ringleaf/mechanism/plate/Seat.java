// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Circle;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.mechanism.Material;
import ringleaf.part.Layer;

/**
 * A seat in its place on the plates.
 *
 * @param name of what sits there, e.g. {@code servo} or {@code screw-3}
 * @param form what it is
 * @param place from its own frame to the plate's
 * @param onFront whether the front plate has it
 * @param onRear whether the rear plate has it
 * @param ahead whether what sits there stands before its plate
 */
record Seat(String name, SeatForm form, Placement place, boolean onFront, boolean onRear, boolean ahead) {
    boolean isOn(boolean rear) {
        return rear ? onRear : onFront;
    }

    List<Contour> cuts(Material plate) {
        return form.cuts(plate).stream().map(cut -> cut.placed(place)).toList();
    }

    List<Circle> material(Material plate) {
        return form.material(plate).stream()
                .map(disc -> new Circle(place.apply(disc.centre()), disc.radius()))
                .toList();
    }

    List<Point> screws() {
        return form.fastened()
                .map(f -> f.at().stream().map(place::apply).toList())
                .orElse(List.of());
    }

    /** What sits there at its heights, its plate's lower and upper face at the two given. */
    List<Layer> thing(double lower, double upper) {
        List<Layer> all = new ArrayList<>();
        for (Layer own : form.thing(ahead, upper - lower)) {
            double from = ahead ? upper + own.zFrom() : lower - own.zTo();
            double to = ahead ? upper + own.zTo() : lower - own.zFrom();
            all.add(Layer.of(own.regions().get(0).placed(place), from, to));
        }
        all.sort((a, b) -> Double.compare(a.zFrom(), b.zFrom()));
        return all;
    }

    /** How far it reaches away from its plate on its side. */
    double reach(double thickness) {
        return form.thing(ahead, thickness).stream()
                .mapToDouble(Layer::zTo)
                .max()
                .orElse(0);
    }

    /** How far it reaches through its plate on the other side. */
    double through(double thickness) {
        double lowest = form.thing(ahead, thickness).stream()
                .mapToDouble(Layer::zFrom)
                .min()
                .orElse(0);
        return Math.max(0, -lowest - thickness);
    }
}
