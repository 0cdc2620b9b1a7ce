// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Joint;
import ringleaf.part.Joint.Shape;
import ringleaf.spec.shared.FitName;

/** Pins, slots, holes and bores of a rack, with their fits. */
final class RackJoints {
    private RackJoints() {}

    static List<Joint> of(RackLayout layout, RackPlates plates) {
        RackSpec spec = layout.spec();
        List<Joint> joints = new ArrayList<>();
        double pin = layout.pin();
        joints.add(
                new Joint("pin-hole", RackParts.RACK, Shape.HOLE, spec.pinFit().label(), pin, layout.pinHole(), 2, ""));
        joints.add(new Joint(RackParts.PIN, RackParts.PIN, Shape.SHAFT, FitName.SLIDING.label(), pin, pin, 2, ""));
        joints.addAll(spec.body().joints(RackParts.PINION));
        for (String plate : List.of(RackParts.BASE, RackParts.FRONT)) {
            joints.add(new Joint(
                    "slot",
                    plate,
                    Shape.SLOT,
                    FitName.SLIDING.label(),
                    pin,
                    layout.slotWidth(),
                    layout.hasTwoSlots() ? 2 : 1,
                    spec.rooms().slot().how()));
            joints.add(new Joint(
                    "screw-hole",
                    plate,
                    Shape.HOLE,
                    FitName.THREAD_CLEARANCE.label(),
                    spec.screw().thread(),
                    spec.screw().hole(),
                    plates.screws().size(),
                    spec.screw().holeBasis()));
            if (spec.axle() > 0) {
                joints.add(new Joint(
                        "axle-hole",
                        plate,
                        Shape.HOLE,
                        FitName.RUNNING.label(),
                        spec.axle(),
                        2 * plates.axleHole(),
                        1,
                        ""));
            }
        }
        if (spec.axle() > 0) {
            joints.add(new Joint(
                    RackParts.AXLE,
                    RackParts.AXLE,
                    Shape.SHAFT,
                    FitName.RUNNING.label(),
                    spec.axle(),
                    spec.axle(),
                    1,
                    ""));
        }
        spec.servo()
                .ifPresent(servo -> joints.add(new Joint(
                        "servo-ear-hole",
                        RackParts.BASE,
                        Shape.HOLE,
                        FitName.THREAD_CLEARANCE.label(),
                        servo.holeDiameter(),
                        servo.holeDiameter(),
                        servo.holesAcross() > 0 ? 4 : 2,
                        "as in the ears of servo " + servo.name())));
        return joints;
    }
}
