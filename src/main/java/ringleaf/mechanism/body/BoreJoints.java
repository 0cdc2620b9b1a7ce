// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.machine.Feature;
import ringleaf.machine.Fit;
import ringleaf.machine.Joint;
import ringleaf.machine.Joint.Held;
import ringleaf.machine.Role;
import ringleaf.spec.shared.FitName;

/** The joints of a bore: with an axle, with the bearing that sits in it, or with a servo's horn. */
final class BoreJoints {
    private final Role part;
    private final Role on;
    private final AxleFit axle;
    private final Placement home;
    private final List<Joint> joints = new ArrayList<>();

    private BoreJoints(Role part, Role on, AxleFit axle, Placement home) {
        this.part = part;
        this.on = on;
        this.axle = axle;
        this.home = home;
    }

    static List<Joint> of(Role part, Role on, Bore bore, AxleFit axle, Placement home) {
        BoreJoints all = new BoreJoints(part, on, axle, home);
        all.add(bore);
        return all.joints;
    }

    private void add(Bore bore) {
        if (bore instanceof Bore.Round round) {
            round(round.diameter());
        } else if (bore instanceof Bore.Seat seat) {
            Fit fit = Fit.still(axle.fit(), axle.nominal(), seat.diameter(), axle.basis());
            Feature.Ring ring = new Feature.Ring("bearing", axle.nominal(), axis());
            set(Bought.BEARING, ring, new Feature.Seat("bearing-seat", seat.diameter(), axis()), fit);
        } else if (bore instanceof Bore.Flatted flatted) {
            held(flatted.diameter());
            across("bore-across-flat", flatted.across(), flatted.diameter() - axle.nominal(), bore);
        } else if (bore instanceof Bore.Keyed keyed) {
            held(keyed.diameter());
            across("keyway", keyed.width(), keyed.diameter() - axle.nominal(), bore);
        } else if (bore instanceof Bore.Square square) {
            across("bore", square.side(), square.side() - axle.nominal(), bore);
        } else if (bore instanceof Bore.Horn horn) {
            double hole = horn.servo().hornScrewHole();
            String basis = "as in the horn of servo " + horn.servo().name();
            List<Point> at = horn.screwPlaces().stream().map(home::apply).toList();
            Fit fit = Fit.still(FitName.THREAD_CLEARANCE, hole, hole, basis);
            joints.add(new Joint.Screwed(
                    "screw-holes",
                    new Held<>(Bought.SERVO, fit.pin("horn-screw", at)),
                    new Held<>(part, fit.bore("horn-screw-hole", at)),
                    fit,
                    true));
        }
    }

    /** It turns on its axle where it has running room, and else holds it. */
    private void round(double diameter) {
        if (axle.fit() != FitName.RUNNING) {
            held(diameter);
            return;
        }
        Fit fit = fit(diameter);
        joints.add(new Joint.Revolute(
                "pin-clearance",
                new Held<>(on, fit.pin(on.label(), axis())),
                new Held<>(part, fit.bore("bore", axis())),
                fit));
    }

    private void held(double diameter) {
        Fit fit = fit(diameter);
        set(on, fit.pin(on.label(), axis()), fit.bore("bore", axis()), fit);
    }

    private void across(String name, double size, double play, Bore bore) {
        List<Contour> cuts = bore.cuts().stream().map(c -> c.placed(home)).toList();
        Fit fit = Fit.still(axle.fit(), size - play, size, axle.basis());
        // the flat, the key or the square is no size by which an axle is bought
        set(Bought.AXLE, new Feature.Pin(name, size - play, axis()), new Feature.Slot(name, size, cuts), fit);
    }

    private Fit fit(double diameter) {
        return Fit.still(axle.fit(), axle.nominal(), diameter, axle.basis());
    }

    private List<Point> axis() {
        return List.of(home.apply(Point.ORIGIN));
    }

    private void set(Role pin, Feature.Peg what, Feature.Hole in, Fit fit) {
        joints.add(new Joint.Fixed(new Held<>(pin, what), new Held<>(part, in), fit));
    }
}
