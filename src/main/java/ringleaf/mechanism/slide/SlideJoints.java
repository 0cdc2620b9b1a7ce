// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.List;
import ringleaf.geom.Point;
import ringleaf.machine.Feature;
import ringleaf.machine.Fit;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Held;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.machine.Role;

/** The joints of a slide: rods in the end plates, bearings in the carriage, the link on its two pins. */
final class SlideJoints {
    private SlideJoints() {}

    static Joints of(SlideLayout layout, Members members) {
        SlideSpec spec = layout.spec();
        List<Point> axis = List.of(Point.ORIGIN);
        double half = layout.rodSpacing() / 2;
        List<Point> both = List.of(new Point(-half, 0), new Point(half, 0));
        Fit rod = Fit.still(spec.rodFit(), layout.bearing().rod(), layout.rodSeat(), "");
        Fit bearing = Fit.still(spec.bearingFit(), layout.bearing().outside(), layout.bearingSeat(), "");
        List<Point> horn = List.of(layout.hornPin(layout.startAngle()));
        List<Point> carriage = List.of(layout.carriagePin());
        return new Joints(
                List.of(
                        fixed(SlideRole.ROD, rod.pin("rod", axis), SlideRole.END, rod.bore("rod-seat", both), rod),
                        fixed(
                                SlideRole.BEARING,
                                bearing.pin("bearing", axis),
                                SlideRole.CARRIAGE,
                                bearing.bore("bearing-seat", both),
                                bearing),
                        set(spec, SlideRole.CARRIAGE_PIN, SlideRole.BRIDGE, carriage),
                        set(spec, SlideRole.HORN_PIN, SlideRole.ARM, horn),
                        turning(spec, SlideRole.HORN_PIN, "horn-bore", horn),
                        turning(spec, SlideRole.CARRIAGE_PIN, "carriage-bore", carriage)),
                members);
    }

    private static Joint fixed(Role pin, Feature.Pin what, Role hole, Feature.Bore in, Fit fit) {
        return new Joint.Fixed(new Held<>(pin, what), new Held<>(hole, in), fit);
    }

    private static Joint set(SlideSpec spec, SlideRole pin, SlideRole hole, List<Point> at) {
        return fixed(pin, spec.pinSet().pin("link-pin", at), hole, spec.pinSet().bore("pin-hole", at), spec.pinSet());
    }

    private static Joint turning(SlideSpec spec, SlideRole pin, String bore, List<Point> at) {
        return new Joint.Revolute(
                "pin-clearance",
                new Held<>(pin, spec.pivot().pin("link-pin", at)),
                new Held<>(SlideRole.LINK, spec.pivot().bore(bore, at)),
                spec.pivot());
    }
}
