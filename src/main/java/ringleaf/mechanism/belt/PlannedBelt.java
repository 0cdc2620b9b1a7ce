// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.RatioLaw;
import ringleaf.mechanism.ServoLaw;
import ringleaf.mechanism.Trial;
import ringleaf.part.Design;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;

/** A belt drive that was read, and what can be asked of it. */
record PlannedBelt(DrivePlan plan, Values values) implements Kind.Planned {
    @Override
    public Design design(int states) {
        return BeltDrive.design(plan, values, states);
    }

    @Override
    public Trial trial(int states, Memo memo) {
        return BeltDrive.trial(
                plan,
                values,
                values.given(DriveFields.RATIO)
                        .map(asked -> List.of(Trial.ratioError(plan.spec().ratio(), asked)))
                        .orElse(List.of()));
    }

    @Override
    public Optional<ServoLaw> servoLaw() {
        return plan.spec().servo().map(this::law);
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(BeltBuilt.of(plan));
    }

    @Override
    public String servoHint() {
        return "servo: micro-180";
    }

    /** Lost is the play of the belt's teeth in both pulleys, a way of the belt on the driver's pitch circle. */
    private ServoLaw law(Servo servo) {
        PulleyRim driver = plan.spec().driver().rim();
        double way =
                driver.rolled().play() + plan.spec().driven().rim().rolled().play();
        return new RatioLaw(
                plan.driverTravel(),
                plan.spec().ratio(),
                servo,
                way / driver.pitchRadius(),
                "teeth of the belt in both pulleys " + Words.mm(way));
    }
}
