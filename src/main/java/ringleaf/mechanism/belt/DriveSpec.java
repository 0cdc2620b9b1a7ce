// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.geom.Point;
import ringleaf.mechanism.Hardware;
import ringleaf.mechanism.Material;
import ringleaf.spec.field.Bound;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/**
 * A belt drive as it was asked for; mm, rad, N mm.
 *
 * @param name of the mechanism
 * @param choice of the belt
 * @param driver the pulley at the origin
 * @param driven the other
 * @param distance of the two that is asked for
 * @param wanted the same as one figure: the given one, the middle of its limits, or the usual
 * @param at direction from driver to driven
 * @param fixed whether both stand fast
 * @param beltTeeth when the belt is given
 * @param idler that takes the slack where both stand fast
 * @param further wheels after the driven one
 * @param obstacles to keep clear of
 * @param travel of the driven pulley when it is given
 * @param servo that turns the driver
 * @param load at the driven pulley
 * @param reserve of the servo's torque
 * @param plates that hold the axles, 0 to 2
 * @param plate their material
 * @param screw that holds the plates
 * @param spacer how spacers are made
 * @param hardware what is bought by size
 * @param axles how they sit in the plates
 * @param pulleyRoom least room between pulleys
 * @param beltRoom least room of the belt
 * @param axialRoom between pulleys and plates
 */
record DriveSpec(
        String name,
        BeltChoice choice,
        PulleySpec driver,
        PulleySpec driven,
        Bound distance,
        double wanted,
        double at,
        boolean fixed,
        OptionalInt beltTeeth,
        Roller idler,
        List<Roller> further,
        List<Obstacle> obstacles,
        OptionalDouble travel,
        Optional<Servo> servo,
        OptionalDouble load,
        double reserve,
        int plates,
        Material plate,
        Screw screw,
        Material spacer,
        Hardware hardware,
        Axles axles,
        double pulleyRoom,
        double beltRoom,
        double axialRoom) {

    /** Something round that is in the way. */
    record Obstacle(Point centre, double diameter) {}

    /**
     * A wheel besides driver and driven.
     *
     * @param name for people
     * @param inside whether within the loop
     * @param toothed the pulley, when it has teeth
     * @param diameter of a smooth roller
     * @param axle diameter of its axle
     * @param centre its place, where that is given
     * @param along share of the span, where its place is solved
     */
    record Roller(
            String name,
            boolean inside,
            Optional<PulleySpec> toothed,
            double diameter,
            double axle,
            Optional<Point> centre,
            double along) {
        Wheel wheel(BeltChoice choice, Point place) {
            if (toothed.isPresent()) {
                PulleyRim rim = toothed.get().rim();
                return new Wheel(name, place, rim.pitchRadius(), true, rim.teeth());
            }
            double over = inside
                    ? choice.belt().pitchLine() + choice.belt().toothHeight()
                    : choice.belt().back();
            return new Wheel(name, place, diameter / 2 + over, inside, 0);
        }
    }

    /** The same with its further wheels in another order. */
    DriveSpec withFurther(List<Roller> other) {
        return with(distance, wanted, beltTeeth, idler, other);
    }

    /** The same with another centre distance. */
    DriveSpec withDistance(Bound bound, double figure) {
        return with(bound, figure, beltTeeth, idler, further);
    }

    /** The same with another belt. */
    DriveSpec withBelt(OptionalInt teeth) {
        return with(distance, wanted, teeth, idler, further);
    }

    /** The same with the idler elsewhere along its span. */
    DriveSpec withAlong(double along) {
        Roller other = new Roller(
                idler.name(), idler.inside(), idler.toothed(), idler.diameter(), idler.axle(), idler.centre(), along);
        return with(distance, wanted, beltTeeth, other, further);
    }

    private DriveSpec with(Bound bound, double figure, OptionalInt teeth, Roller roller, List<Roller> more) {
        return new DriveSpec(
                name,
                choice,
                driver,
                driven,
                bound,
                figure,
                at,
                fixed,
                teeth,
                roller,
                more,
                obstacles,
                travel,
                servo,
                load,
                reserve,
                plates,
                plate,
                screw,
                spacer,
                hardware,
                axles,
                pulleyRoom,
                beltRoom,
                axialRoom);
    }

    /** Turns of the driver for a turn of the driven pulley. */
    double ratio() {
        return driven.rim().teeth() / (double) driver.rim().teeth();
    }

    /** The pulley of this name where it has teeth; empty for a smooth roller. */
    Optional<PulleySpec> pulley(String wheel) {
        return switch (wheel) {
            case "driver" -> Optional.of(driver);
            case "driven" -> Optional.of(driven);
            default -> roller(wheel).toothed();
        };
    }

    /** The roller of this name; the idler where none of the further wheels has it. */
    Roller roller(String wheel) {
        for (Roller roller : further) {
            if (roller.name().equals(wheel)) {
                return roller;
            }
        }
        return idler;
    }

    /** How far a wheel, its flanges included, reaches from its axis, mm. */
    double reach(Wheel wheel) {
        Optional<PulleySpec> pulley = pulley(wheel.name());
        return pulley.isPresent() ? pulley.get().reach() : roller(wheel.name()).diameter() / 2;
    }

    Point centreOfDriven(double apart) {
        return Point.polar(apart, at);
    }

    Wheel driverWheel() {
        return new Wheel(
                "driver",
                Point.ORIGIN,
                driver.rim().pitchRadius(),
                true,
                driver.rim().teeth());
    }

    Wheel drivenWheel(double apart) {
        return new Wheel(
                "driven",
                centreOfDriven(apart),
                driven.rim().pitchRadius(),
                true,
                driven.rim().teeth());
    }
}
