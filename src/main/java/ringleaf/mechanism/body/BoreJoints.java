// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Joint;
import ringleaf.part.Joint.Shape;
import ringleaf.spec.shared.FitName;

/** The features of a bore that fit something. */
final class BoreJoints {
    private final String part;
    private final AxleFit axle;
    private final List<Joint> joints = new ArrayList<>();

    private BoreJoints(String part, AxleFit axle) {
        this.part = part;
        this.axle = axle;
    }

    static List<Joint> of(String part, Bore bore, AxleFit axle) {
        BoreJoints all = new BoreJoints(part, axle);
        all.add(bore);
        return all.joints;
    }

    private void add(Bore bore) {
        if (bore instanceof Bore.Round round) {
            add("bore", Shape.HOLE, axle.nominal(), round.diameter());
        } else if (bore instanceof Bore.Seat seat) {
            add("bearing-seat", Shape.SEAT, axle.nominal(), seat.diameter());
        } else if (bore instanceof Bore.Flatted flatted) {
            add("bore", Shape.HOLE, axle.nominal(), flatted.diameter());
            double play = flatted.diameter() - axle.nominal();
            add("bore-across-flat", Shape.SLOT, flatted.across() - play, flatted.across());
        } else if (bore instanceof Bore.Keyed keyed) {
            add("bore", Shape.HOLE, axle.nominal(), keyed.diameter());
            double play = keyed.diameter() - axle.nominal();
            add("keyway", Shape.SLOT, keyed.width() - play, keyed.width());
        } else if (bore instanceof Bore.Square square) {
            add("bore", Shape.SLOT, axle.nominal(), square.side());
        } else if (bore instanceof Bore.Horn horn) {
            double hole = horn.servo().hornScrewHole();
            joints.add(new Joint(
                    "horn-screw-hole",
                    part,
                    Shape.HOLE,
                    FitName.THREAD_CLEARANCE.label(),
                    hole,
                    hole,
                    horn.screws(),
                    "as in the horn of servo " + horn.servo().name()));
        }
    }

    private void add(String name, Shape shape, double nominal, double size) {
        joints.add(new Joint(name, part, shape, axle.fit().label(), nominal, size, 1, axle.basis()));
    }
}
