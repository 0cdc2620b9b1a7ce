// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import ringleaf.machine.Room;
import ringleaf.part.Choice;
import ringleaf.part.Dimension;
import ringleaf.part.Dimension.Origin;

/** Resolved sizes of a rack and its pinion, with where they come from. */
final class RackDimensions {
    private final RackLayout layout;
    private final RackSpec spec;
    private final RackPlates plates;
    private final List<Dimension> all = new ArrayList<>();

    RackDimensions(RackLayout layout, RackPlates plates) {
        this.layout = layout;
        this.spec = layout.spec();
        this.plates = plates;
    }

    List<Choice> choices() {
        boolean servo = spec.servo().isPresent();
        return List.of(
                new Choice("drive", servo ? "servo" : "axle", servo ? Origin.GIVEN : Origin.DEFAULT, ""),
                new Choice(
                        "slots",
                        layout.hasTwoSlots() ? "two" : "one",
                        Origin.SOLVED,
                        layout.hasTwoSlots()
                                ? "each guide pin has its own"
                                : "the stroke is longer than the pins are apart"));
    }

    List<Dimension> all() {
        mm(
                "stroke",
                layout.stroke(),
                spec.length().isPresent()
                        ? "what rack-length and the servo's travel leave"
                        : "what the servo's travel comes to");
        mm("rack-length", layout.length(), "stroke, mesh, spare teeth and guide pins");
        number("rack-teeth", layout.rackTeeth(), "stroke and mesh");
        mm("module", layout.module(), "the first usual one with which every check holds");
        all.add(new Dimension(
                "pressure-angle",
                Math.toDegrees(spec.rack().pressureAngle()),
                "deg",
                origin("pressure-angle", Origin.DEFAULT),
                ""));
        number(
                "pinion.teeth",
                "pinion-teeth",
                layout.pinion().teeth(),
                "the fewest that hold the bore and reach the stroke");
        number("pinion.profile-shift", "pinion-profile-shift", layout.pinion().shift(), "the least without undercut");
        room("backlash", layout.backlash(), spec.backlashRoom());
        room("tip-clearance", layout.tipClearance(), spec.rooms().tips(layout.module(), spec.rack()));
        mm("mounting-distance", layout.pair().mountingDistance(), "pinion's axis to the rack's datum line");
        all.add(new Dimension(
                "pinion-travel",
                Math.toDegrees(layout.travel()),
                "deg",
                Origin.SOLVED,
                "stroke over the reference radius"));
        mm("guide.pin-diameter", "pin-diameter", layout.pin(), "the first sold dowel with which every check holds");
        mm("pin-spacing", 2 * layout.pinAt(), "as far apart as the bar's ends let them");
        mm("pin-row-depth", layout.pinDepth(), "below the datum line: roots, webs and the servo's horn");
        mm("slot-width", layout.slotWidth(), "pin and its clearance");
        mm("rack-height", layout.pair().rackAddendum() + layout.back(), "teeth, pins and webs");
        for (Room room :
                List.of(spec.rooms().stop(), spec.rooms().axial(), spec.rooms().slot())) {
            room("clearances-" + room.name(), room.mm(), room);
        }
        mm("overall-length", plates.overallLength(), "plates, and the rack out of them");
        mm("overall-width", plates.top() - plates.bottom(), "plates across the travel");
        mm("width", spec.width(), "that of the stock");
        mm("plate-thickness", plates.thickness(), "that of the stock");
        mm("spacer-length", plates.between(), "rack with its play");
        if (plates.packing() > 0) {
            mm("servo-spacer-length", plates.packing(), "brings the servo's horn to the rack's height");
        }
        mm("depth", plates.depth(), "both plates and what is between");
        if (spec.working().isPresent()) {
            all.add(new Dimension(
                    "rack-force",
                    layout.rackForce(),
                    "N",
                    Origin.SOLVED,
                    "torque over the reference radius, less the friction of the guide"));
        }
        return all;
    }

    /** With the figure that only drawing gives. */
    List<Dimension> withDeviation(double deviation) {
        all();
        mm("outline-deviation", deviation, "worst distance of any smooth curve's arcs from the curve");
        return all;
    }

    private void room(String name, double value, Room room) {
        all.add(new Dimension(name, value, "mm", room.origin(), room.how()));
    }

    private void mm(String name, double value, String how) {
        mm(name, name, value, how);
    }

    private void mm(String field, String name, double value, String how) {
        Origin origin = origin(field, Origin.SOLVED);
        all.add(new Dimension(name, value, "mm", origin, origin == Origin.GIVEN ? "" : how));
    }

    private void number(String name, double value, String how) {
        number(name, name, value, how);
    }

    private void number(String field, String name, double value, String how) {
        Origin origin = origin(field, Origin.SOLVED);
        all.add(new Dimension(name, value, "1", origin, origin == Origin.GIVEN ? "" : how));
    }

    private Origin origin(String field, Origin otherwise) {
        // a limit is no size
        boolean limited = field.equals("depth") && !spec.depth().isExact()
                || field.equals("overall-length") && !spec.overall().isExact();
        return spec.given().contains(field) && !limited ? Origin.GIVEN : otherwise;
    }
}
