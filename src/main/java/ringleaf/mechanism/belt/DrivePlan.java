// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.mechanism.Bolt;
import ringleaf.mechanism.body.Bore;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.spec.shared.Servo;

/**
 * A belt drive with everything decided, and what follows from it. Heights in mm, 0 the front face of the base plate.
 *
 * @param spec what was asked for
 * @param search the belt that was found
 */
record DrivePlan(DriveSpec spec, BeltSearch search) {
    /** Part of the torque that comes through a belt; common practice, no source. */
    static final double EFFICIENCY = 0.95;
    /** Static tension as a share of the effective pull, so that no span goes slack; common practice, no source. */
    static final double PRETENSION = 1;

    DriveLayout layout() {
        return search.best();
    }

    BeltPath path() {
        return layout().path();
    }

    /** Height of the lowest face of what turns: screws' heads go under it, and a servo's horn between base and driver. */
    double foot() {
        boolean horn = spec.plates() > 0
                && spec.servo().isPresent()
                && spec.driver().body().bore() instanceof Bore.Horn;
        double least = Math.max(spec.axialRoom(), DriveFasteners.headRoom(this));
        return horn ? Math.max(least, ServoPlace.HORN + ServoOutline.ROOM) : least;
    }

    /** Wheels that are pulleys with teeth, by their index in the path; empty for smooth rollers. */
    Optional<PulleySpec> pulley(int wheel) {
        return spec.pulley(path().wheels().get(wheel).name());
    }

    DriveSpec.Roller roller(String name) {
        return spec.roller(name);
    }

    /** How far a wheel, its flanges included, reaches from its axis. */
    double reach(int wheel) {
        return spec.reach(path().wheels().get(wheel));
    }

    /** What moves in its slot, and how far. */
    DriveSlot slot() {
        return layout().slot();
    }

    /** Lower side of the belt; all rims stand so that the belt runs in one plane. */
    double beltBottom() {
        double face = Math.max(faceBottom(spec.driver()), faceBottom(spec.driven()));
        return face + (spec.choice().face() - spec.choice().width()) / 2;
    }

    private double faceBottom(PulleySpec pulley) {
        return new PulleyStack(pulley, foot()).faceBottom();
    }

    double beltTop() {
        return beltBottom() + spec.choice().width();
    }

    /** The stack of a pulley, lifted so that its face is level with the others'. */
    PulleyStack stack(PulleySpec pulley) {
        double level = Math.max(faceBottom(spec.driver()), faceBottom(spec.driven()));
        return new PulleyStack(pulley, foot() + level - faceBottom(pulley));
    }

    /** Highest face of what turns, the ends of the screws that join pulleys included. */
    double top() {
        double top = 0;
        for (int i = 0; i < path().wheels().size(); i++) {
            Optional<PulleySpec> pulley = pulley(i);
            if (pulley.isPresent()) {
                PulleyStack stack = stack(pulley.get());
                double ends = DriveFasteners.joining(pulley.get(), stack)
                        .map(Bolt::tail)
                        .orElse(0.0);
                top = Math.max(top, Math.max(stack.top(), stack.joinedTop() + ends));
            }
        }
        return top;
    }

    /** Direction of the first groove of a pulley, so that the belt's teeth seat in all of them at once, rad. */
    double phase(int wheel) {
        double pitch = spec.choice().belt().pitch();
        double first = path().middle(0);
        double place = first + Math.rint((path().middle(wheel) - first) / pitch) * pitch;
        return path().direction(wheel, place);
    }

    /** The least distance from the pitch line to a rim, so that the band as drawn overlaps none. */
    double land() {
        double least = spec.choice().belt().pitchLine();
        for (int i = 0; i < path().wheels().size(); i++) {
            Optional<PulleySpec> pulley = pulley(i);
            if (pulley.isPresent()) {
                least = Math.min(least, pulley.get().rim().tooth().land());
            }
        }
        return least;
    }

    /** Turn of the driven pulley from start to end, rad. */
    double travel() {
        if (spec.travel().isPresent()) {
            return spec.travel().getAsDouble();
        }
        return spec.servo().isPresent() ? spec.servo().get().travel() / spec.ratio() : Math.PI / 2;
    }

    /** Turn of the driver from start to end, rad. */
    double driverTravel() {
        return travel() * spec.ratio();
    }

    /** Greatest torque at the driver: the servo's at stall, else what the load asks; 0 when neither is known, N mm. */
    double driverTorque() {
        Optional<Servo> servo = spec.servo();
        if (servo.isPresent()) {
            return servo.get().torque();
        }
        return spec.load().isPresent() ? spec.load().getAsDouble() / spec.ratio() / EFFICIENCY : 0;
    }

    /** Pull by which the tight span exceeds the slack one, N. */
    double effectivePull() {
        return driverTorque() / spec.driver().rim().pitchRadius();
    }

    double pretension() {
        return PRETENSION * effectivePull();
    }
}
