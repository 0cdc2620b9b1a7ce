// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import ringleaf.machine.Room;
import ringleaf.mechanism.Hardware;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.body.Body;
import ringleaf.mechanism.body.Bore;
import ringleaf.spec.field.Bound;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;
import ringleaf.tooth.BasicRack;

/**
 * What is asked of a rack and its pinion; lengths in mm, angles in rad, torque in N mm, forces in N. What is absent is
 * solved.
 *
 * @param name of the mechanism
 * @param stroke way of the rack
 * @param length of the bar
 * @param module of the teeth
 * @param rack the basic rack
 * @param teeth of the pinion
 * @param shift of the pinion's profile
 * @param backlash along the rack
 * @param gear what rack and pinion are made of
 * @param width of the teeth
 * @param plate what both plates are made of
 * @param spacer what stands between them
 * @param body of the pinion
 * @param servo on the pinion; absent where it sits on an axle
 * @param torque at the pinion
 * @param force asked of the rack
 * @param pin diameter of the guide pins
 * @param pinFit by which they sit in the rack
 * @param pinAllowance what the rack's process adds to their holes for it
 * @param eye hole at the rack's end
 * @param rooms clearances
 * @param screw through the plates
 * @param hardware what is bought by size
 * @param spare teeth beyond the mesh
 * @param depth limits
 * @param overall limits along the travel
 * @param marks whether tooth and space are marked
 * @param given paths of the fields that were given
 */
record RackSpec(
        String name,
        OptionalDouble stroke,
        OptionalDouble length,
        OptionalDouble module,
        BasicRack rack,
        OptionalInt teeth,
        OptionalDouble shift,
        OptionalDouble backlash,
        Material gear,
        double width,
        Material plate,
        Material spacer,
        Body body,
        Optional<Servo> servo,
        OptionalDouble torque,
        OptionalDouble force,
        OptionalDouble pin,
        FitName pinFit,
        double pinAllowance,
        OptionalDouble eye,
        RackRooms rooms,
        Screw screw,
        Hardware hardware,
        int spare,
        Bound depth,
        Bound overall,
        boolean marks,
        Set<String> given) {

    /** Torque that works at the pinion: as given, or half of what stalls the servo; common practice, no source. */
    OptionalDouble working() {
        if (torque.isPresent() || servo.isEmpty()) {
            return torque;
        }
        return OptionalDouble.of(servo.get().torque() / 2);
    }

    /** Play along the rack, and where it comes from. */
    Room backlashRoom() {
        Optional<Double> own = backlash.isPresent() ? Optional.of(backlash.getAsDouble()) : Optional.empty();
        return rooms.backlash(own, rack);
    }

    /** Whether the pinion is screwed to the servo's horn; else it sits on the output itself. */
    boolean isOnHorn() {
        return body.bore() instanceof Bore.Horn;
    }

    /** Diameter of the pinion's axle, mm; 0 where a servo holds it. */
    double axle() {
        return servo.isPresent() ? 0 : body.axle().axle();
    }

    /** The same with another module. */
    RackSpec withModule(double other) {
        return new RackSpec(
                name,
                stroke,
                length,
                OptionalDouble.of(other),
                rack,
                teeth,
                shift,
                backlash,
                gear,
                width,
                plate,
                spacer,
                body,
                servo,
                torque,
                force,
                pin,
                pinFit,
                pinAllowance,
                eye,
                rooms,
                screw,
                hardware,
                spare,
                depth,
                overall,
                marks,
                given);
    }
}
