// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.mechanism.Request;
import ringleaf.mechanism.TipRoom;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.tooth.BasicRack;

/** What turns the ring, from the spec's {@code drive}; without one it is an arm for a hand. */
final class DriveReader {
    /** Backlash that two teeth can give up between them, in modules. */
    private static final double MOST_BACKLASH = 0.8;

    /** Room at the tips that teeth can give up, in modules. */
    static final double MOST_TIP_ROOM = 1.2;

    private static final List<Field<?>> OF_PINION = List.of(
            ApertureFields.MODULE,
            ApertureFields.PRESSURE_ANGLE,
            ApertureFields.PINION_TEETH,
            ApertureFields.SPARE_TEETH,
            ApertureFields.BACKLASH,
            ApertureFields.TIP_CLEARANCE,
            ApertureFields.SERVO);
    private static final List<Field<?>> OF_HAND =
            List.of(ApertureFields.ARM_WIDTH, ApertureFields.ARM_REACH, ApertureFields.SCALE_FACTOR);

    private final Request request;
    private final double fullOpening;
    private final double tipRoom;

    /**
     * @param fullOpening mm
     * @param tipRoom least room from tips to roots that ring and processes ask for, mm
     */
    DriveReader(Request request, double fullOpening, double tipRoom) {
        this.request = request;
        this.tipRoom = tipRoom;
        this.fullOpening = fullOpening;
    }

    DriveSpec read(double usualModule) {
        Optional<Values> given = request.values().given(ApertureFields.DRIVE);
        if (given.isEmpty()) {
            double width = usualArm();
            return new DriveSpec.Hand(ApertureFields.AT.defaultValue(), width, 2.5 * width, OptionalDouble.empty());
        }
        Values drive = given.get();
        String by = drive.get(ApertureFields.BY).orElse("pinion");
        if (by.equals("hand")) {
            refuse(drive, OF_PINION, "hand", "by: pinion");
            return hand(drive);
        }
        refuse(drive, OF_HAND, "a pinion", "by: hand");
        return pinion(drive, usualModule, by.equals("step-up"));
    }

    private DriveSpec hand(Values drive) {
        double width = drive.get(ApertureFields.ARM_WIDTH).orElse(usualArm());
        if (width > fullOpening) {
            request.problems()
                    .at(
                            drive.where(ApertureFields.ARM_WIDTH),
                            Words.mm(width) + " is more than the full opening of " + Words.mm(fullOpening)
                                    + " (the ring is hardly wider, and its arm would be all of it)",
                            "the nearest that works is " + Words.mm(fullOpening));
        }
        Optional<Double> factor = drive.get(ApertureFields.SCALE_FACTOR);
        return new DriveSpec.Hand(
                drive.require(ApertureFields.AT),
                width,
                drive.get(ApertureFields.ARM_REACH).orElse(2.5 * width),
                factor.isPresent() ? OptionalDouble.of(factor.get()) : OptionalDouble.empty());
    }

    private DriveSpec pinion(Values drive, double usualModule, boolean stepUp) {
        Optional<Integer> teeth = drive.get(ApertureFields.PINION_TEETH);
        Optional<Double> backlash = drive.get(ApertureFields.BACKLASH);
        Optional<Double> tips = drive.get(ApertureFields.TIP_CLEARANCE);
        BasicRack rack = BasicRack.ofAngle(drive.require(ApertureFields.PRESSURE_ANGLE));
        double module = drive.get(ApertureFields.MODULE).orElse(0.0);
        if (module == 0) {
            module = TipRoom.module(usualModule, rack, tips.orElse(tipRoom));
        }
        if (tips.isPresent() && tips.get() > MOST_TIP_ROOM * module) {
            request.problems()
                    .at(
                            drive.where(ApertureFields.TIP_CLEARANCE),
                            Words.mm(tips.get()) + " would leave nothing of teeth of module " + Words.number(module, 3)
                                    + " (they are 2.25 modules high)",
                            "at most " + Words.mm(MOST_TIP_ROOM * module));
        }
        if (backlash.isPresent() && backlash.get() > MOST_BACKLASH * module) {
            request.problems()
                    .at(
                            drive.where(ApertureFields.BACKLASH),
                            Words.mm(backlash.get()) + " is more than teeth of module " + Words.number(module, 3)
                                    + " can lose (they are about 1.57 modules wide)",
                            "at most " + Words.mm(MOST_BACKLASH * module));
        }
        Place place = drive.where(ApertureFields.SERVO);
        Named named =
                drive.get(ApertureFields.SERVO).orElse(new Named(Optional.of(Servo.STAND_IN), Optional.empty(), place));
        return new DriveSpec.Pinion(
                drive.require(ApertureFields.AT),
                module,
                drive.require(ApertureFields.PRESSURE_ANGLE),
                teeth.isPresent() ? OptionalInt.of(teeth.get()) : OptionalInt.empty(),
                drive.require(ApertureFields.SPARE_TEETH),
                backlash.isPresent() ? OptionalDouble.of(backlash.get()) : OptionalDouble.empty(),
                tips.isPresent() ? OptionalDouble.of(tips.get()) : OptionalDouble.empty(),
                stepUp,
                request.catalogues().servo(named).orElse(null));
    }

    private void refuse(Values drive, List<Field<?>> fields, String by, String instead) {
        for (Field<?> field : fields) {
            if (drive.isGiven(field)) {
                request.problems()
                        .at(
                                drive.where(field),
                                "has no meaning for a ring turned by " + by,
                                "leave it out, or " + instead);
            }
        }
    }

    private double usualArm() {
        return Math.max(4, Math.min(12, fullOpening / 12));
    }
}
