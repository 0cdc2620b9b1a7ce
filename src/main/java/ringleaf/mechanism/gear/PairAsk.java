// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.machine.Room;
import ringleaf.spec.field.Bound;
import ringleaf.tooth.BasicRack;

/**
 * What is known of a pair before it is solved; what is absent is open. Lengths in mm.
 *
 * @param ratio driver's turns to one of the driven gear
 * @param ratioWithin share by which the ratio may miss
 * @param driverTeeth given
 * @param drivenTeeth given
 * @param module given
 * @param centreDistance asked for
 * @param overall greatest length over both gears
 * @param internal whether the driven gear is a ring
 * @param rack of both
 * @param driverShift profile shift given
 * @param drivenShift profile shift given
 * @param backlash along the rolling circles, given
 * @param room what the process asks for
 * @param fullTips whether tips stay at full height
 * @param web least material between two cuts
 * @param ringDiameter of a ring, given
 */
record PairAsk(
        OptionalDouble ratio,
        double ratioWithin,
        OptionalInt driverTeeth,
        OptionalInt drivenTeeth,
        OptionalDouble module,
        Bound centreDistance,
        OptionalDouble overall,
        boolean internal,
        BasicRack rack,
        OptionalDouble driverShift,
        OptionalDouble drivenShift,
        OptionalDouble backlash,
        MeshRoom room,
        boolean fullTips,
        double web,
        OptionalDouble ringDiameter) {
    double backlash(double chosenModule) {
        return backlashRoom(chosenModule).mm();
    }

    Room backlashRoom(double chosenModule) {
        return room.backlash(backlash, chosenModule, rack.pressureAngle());
    }

    /** Whether the designer chooses teeth or module. */
    boolean isOpen() {
        return driverTeeth.isEmpty() || drivenTeeth.isEmpty() || module.isEmpty();
    }

    PairAsk withCentreDistance(Bound other) {
        return with(ratio, driverTeeth, drivenTeeth, other, driverShift, drivenShift, backlash);
    }

    PairAsk withShifts(OptionalDouble driver, OptionalDouble driven) {
        return with(ratio, driverTeeth, drivenTeeth, centreDistance, driver, driven, backlash);
    }

    PairAsk withBacklash(double other) {
        OptionalDouble given = OptionalDouble.of(other);
        return with(ratio, driverTeeth, drivenTeeth, centreDistance, driverShift, drivenShift, given);
    }

    PairAsk withRatio(double other) {
        OptionalDouble given = OptionalDouble.of(other);
        return with(given, driverTeeth, drivenTeeth, centreDistance, driverShift, drivenShift, backlash);
    }

    PairAsk withTeeth(OptionalInt driver, OptionalInt driven) {
        return with(ratio, driver, driven, centreDistance, driverShift, drivenShift, backlash);
    }

    PairAsk withModule(double other) {
        return new PairAsk(
                ratio,
                ratioWithin,
                driverTeeth,
                drivenTeeth,
                OptionalDouble.of(other),
                centreDistance,
                overall,
                internal,
                rack,
                driverShift,
                drivenShift,
                backlash,
                room,
                fullTips,
                web,
                ringDiameter);
    }

    private PairAsk with(
            OptionalDouble otherRatio,
            OptionalInt otherDriver,
            OptionalInt otherDriven,
            Bound otherDistance,
            OptionalDouble otherDriverShift,
            OptionalDouble otherDrivenShift,
            OptionalDouble otherBacklash) {
        return new PairAsk(
                otherRatio,
                ratioWithin,
                otherDriver,
                otherDriven,
                module,
                otherDistance,
                overall,
                internal,
                rack,
                otherDriverShift,
                otherDrivenShift,
                otherBacklash,
                room,
                fullTips,
                web,
                ringDiameter);
    }
}
