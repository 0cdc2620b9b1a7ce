// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.part.Joint;
import ringleaf.part.Joint.Shape;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Servo;

/** Bores, axles, seats and screw holes of a belt drive, with the fits they are meant to have. */
final class DriveJoints {
    private final DrivePlan plan;
    private final DriveSpec spec;
    private final DrivePlates plates;
    private final List<Joint> joints = new ArrayList<>();

    private DriveJoints(DrivePlan plan, DrivePlates plates) {
        this.plan = plan;
        this.spec = plan.spec();
        this.plates = plates;
    }

    static List<Joint> of(DrivePlan plan, DrivePlates plates) {
        DriveJoints all = new DriveJoints(plan, plates);
        if (plan.spec().plates() > 0) {
            all.plate("base-plate", true);
        }
        if (plan.spec().plates() > 1) {
            all.plate("front-plate", false);
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            Optional<PulleySpec> pulley = plan.pulley(i);
            if (pulley.isPresent()) {
                all.joints.addAll(plan.stack(pulley.get()).joints());
            } else {
                all.roller(wheels.get(i).name());
            }
        }
        if (plan.spec().plates() > 0) {
            all.bought();
        }
        return all.joints;
    }

    private void roller(String name) {
        Material material = spec.driver().material();
        double axle = plan.roller(name).axle();
        add("bore", name, Shape.HOLE, FitName.RUNNING, axle, axle + material.runningClearance(), 1, "");
    }

    private void plate(String name, boolean base) {
        joints.add(new Joint(
                "screw-hole",
                name,
                Shape.HOLE,
                FitName.THREAD_CLEARANCE.label(),
                spec.screw().thread(),
                spec.screw().hole(),
                plates.screws().size(),
                spec.screw().holeBasis()));
        Axles axles = spec.axles();
        double driven = plates.axle(plan.layout().driven());
        if (axles.seat().isPresent()) {
            Axles.Seat seat = axles.seat().get();
            add("bearing-seat", name, Shape.SEAT, seat.fit(), seat.bearing().outside(), seat.diameter(), 1, "");
        } else {
            axle("driven-axle-hole", name, driven, false);
        }
        if (spec.servo().isEmpty()) {
            axle("driver-axle-hole", name, plates.axle(0), plan.slot().wheel() == 0);
        } else if (base) {
            Servo servo = spec.servo().get();
            double hole = servo.holeDiameter();
            add(
                    "servo-ear-hole",
                    name,
                    plan.slot().wheel() == 0 ? Shape.SLOT : Shape.HOLE,
                    FitName.THREAD_CLEARANCE,
                    hole,
                    hole,
                    servo.holesAcross() > 0 ? 4 : 2,
                    "as in the ears of servo " + servo.name());
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 1; i < wheels.size(); i++) {
            if (i != plan.layout().driven()) {
                String wheel = wheels.get(i).name();
                axle(
                        wheel + "-axle-hole",
                        name,
                        plates.axle(i),
                        i == plan.slot().wheel());
            }
        }
    }

    private void axle(String name, String part, double diameter, boolean slot) {
        Axles axles = spec.axles();
        add(name, part, slot ? Shape.SLOT : Shape.HOLE, axles.fit(), diameter, 2 * axles.hole(diameter), 1, "");
    }

    /** What turns in the plates: a bearing in each, and a rod for every wheel but one that sits on a servo. */
    private void bought() {
        spec.axles().seat().ifPresent(seat -> {
            double outside = seat.bearing().outside();
            String name = DriveFasteners.BEARING;
            add(name, name, Shape.RING, seat.fit(), outside, outside, spec.plates(), "");
        });
        for (int i : DriveFasteners.axled(plan)) {
            String name = DriveFasteners.axle(plan.path().wheels().get(i));
            double axle = plates.axle(i);
            add(name, name, Shape.SHAFT, spec.axles().fit(), axle, axle, 1, "");
        }
    }

    private void add(
            String name, String part, Shape shape, FitName fit, double nominal, double size, int count, String basis) {
        joints.add(new Joint(name, part, shape, fit.label(), nominal, size, count, basis));
    }
}
