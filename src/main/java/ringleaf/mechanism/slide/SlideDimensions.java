// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.ArrayList;
import java.util.List;
import ringleaf.machine.Room;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;

/** Resolved sizes of a slide, with where they come from. */
final class SlideDimensions {
    private final SlideLayout layout;
    private final SlideSpec spec;
    private final List<Dimension> all = new ArrayList<>();

    SlideDimensions(SlideLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
    }

    List<Choice> choices() {
        boolean given = spec.given().contains("bearing");
        return List.of(
                new Choice(
                        "bearing",
                        layout.bearing().name(),
                        given ? Origin.GIVEN : Origin.SOLVED,
                        given ? "" : "the smallest with which every check holds"),
                new Choice(
                        "servo",
                        spec.servo().name(),
                        spec.given().contains("drive.servo") ? Origin.GIVEN : Origin.DEFAULT,
                        ""));
    }

    List<Dimension> all() {
        mm("stroke", "stroke", spec.stroke(), "");
        add("drive.swing", "swing", Math.toDegrees(layout.swing()), "deg", "the first with which every check holds");
        mm("", "arm-length", layout.arm(), "half the stroke over the sine of half the swing");
        mm("drive.link-length", "link-length", layout.link(), "as short as horn and carriage let it");
        mm("", "rod-diameter", layout.bearing().rod(), "that of the bearings");
        mm("", "rod-length", layout.overall(), "through both end plates");
        mm("rod-spacing", "rod-spacing", layout.rodSpacing(), "bearings, webs and the holes between them");
        mm("bearing-spread", "bearing-spread", layout.carriage(), "both bearings, or as far as it takes to run freely");
        mm("", "link-below-rods", layout.pushOffset(), "carriage, room and what turns below it");
        mm("", "horn-below-rods", -layout.axisHeight(), "likewise");
        mm("overall-length", "overall-length", layout.overall(), "stroke, carriage, stops and servo");
        mm("overall-height", "overall-height", layout.height(), "rods, link and servo");
        mm("pin-diameter", "pin-diameter", spec.pin(), "");
        mm("plate-thickness", "plate-thickness", layout.thickness(), "that of the stock");
        for (Room room : List.of(spec.stop(), spec.beside(), spec.pivot().room())) {
            all.add(new Dimension("clearances-" + room.name(), room.mm(), "mm", room.origin(), room.how()));
        }
        add("", "torque", layout.torque(), "Nmm", "push by virtual work, with friction beside the rods");
        add("", "rod-sag", layout.sag(), "mm", "half the load in the middle of a rod");
        return all;
    }

    private void mm(String field, String name, double value, String how) {
        add(field, name, value, "mm", how);
    }

    private void add(String field, String name, double value, String unit, String how) {
        boolean limited = field.equals("overall-length") && !spec.length().isExact()
                || field.equals("overall-height") && !spec.height().isExact();
        Origin origin = spec.given().contains(field) && !limited
                ? Origin.GIVEN
                : how.isEmpty() ? Origin.DEFAULT : Origin.SOLVED;
        all.add(new Dimension(name, value, unit, origin, origin == Origin.GIVEN ? "" : how));
    }
}
