// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringleaf.geom.Line;
import ringleaf.geom.Point;

/**
 * Where the wheels of a drive stand for a belt of a given length.
 *
 * @param path of the pitch line
 * @param beltTeeth its length in teeth
 * @param distance of driver and driven, mm
 * @param press how far the idler stands beyond where it just touches the straight span, mm; empty without one
 * @param slot what is shifted to put the belt on and to tighten it
 */
record DriveLayout(BeltPath path, int beltTeeth, double distance, OptionalDouble press, DriveSlot slot) {
    /**
     * By how much the pitch line may differ from the belt's length, as a share, where both pulleys stand fast and
     * nothing takes up slack: a twentieth of the belt's own tolerance, so that it counts as having its length.
     */
    static final double SAME_LENGTH = 1e-4;
    /** An idler that does not press in at least so far does not stay in touch, mm; common practice, no source. */
    private static final double LEAST_PRESS = 0.5;
    /** A press or a step of it that makes no difference, mm. */
    private static final double NEXT_TO_NOTHING = 1e-3;

    /** How a drive's wheels stand, as a function of one figure. */
    private interface Arrangement {
        List<Wheel> at(double figure);
    }

    private static double length(List<Wheel> wheels) {
        BeltPath path = BeltPath.of(wheels);
        return path == null ? Double.NaN : path.length();
    }

    /** The wheels with the driver's pitch line lifted out of its grooves and over its flange. */
    private static List<Wheel> lifted(DriveSpec spec, List<Wheel> wheels) {
        PulleySpec driver = spec.driver();
        double over = spec.choice().belt().toothHeight()
                + (driver.flanges() > 0
                        ? driver.flangeDiameter() / 2 - driver.rim().outsideRadius()
                        : 0);
        Wheel d = wheels.get(0);
        List<Wheel> all = new ArrayList<>(wheels);
        all.set(0, new Wheel(d.name(), d.centre(), d.radius() + over, true, d.teeth()));
        return all;
    }

    private static List<Wheel> wheels(DriveSpec spec, double distance) {
        List<Wheel> wheels = new ArrayList<>();
        wheels.add(spec.driverWheel());
        wheels.add(spec.drivenWheel(distance));
        for (DriveSpec.Roller roller : spec.further()) {
            wheels.add(roller.wheel(spec.choice(), roller.centre().orElseThrow()));
        }
        return wheels;
    }

    /**
     * Where the belt has this many teeth, the centre distance following from it, the slots not yet worked out; null
     * when it cannot be.
     *
     * @param from the least distance at which there is a path, as {@link #leastDistance} finds it
     */
    static DriveLayout movable(DriveSpec spec, int teeth, double from) {
        double distance = distance(spec, w -> w, teeth * spec.choice().belt().pitch(), from);
        if (Double.isNaN(distance)) {
            return null;
        }
        BeltPath path = BeltPath.of(wheels(spec, distance));
        return path == null ? null : new DriveLayout(path, teeth, distance, OptionalDouble.empty(), DriveSlot.NONE);
    }

    /** The same where it stands, and only there. */
    DriveLayout withoutSlot() {
        return new DriveLayout(path, beltTeeth, distance, press, DriveSlot.NONE);
    }

    /** The same with the travel that putting on and tightening the belt ask for. */
    DriveLayout withSlot(DriveSpec spec) {
        double length = beltTeeth * spec.choice().belt().pitch();
        DriveSlot found =
                hasIdler() ? idlerSlot(spec, length) : spec.fixed() ? DriveSlot.NONE : driverSlot(spec, length);
        return new DriveLayout(path, beltTeeth, distance, press, found);
    }

    private DriveSlot driverSlot(DriveSpec spec, double length) {
        double from = leastDistance(spec);
        double over = distance(spec, w -> lifted(spec, w), length, from);
        double shorter = distance(spec, w -> w, length - BeltRooms.shorter(length, spec.plate()), from);
        double tight = distance(
                spec, w -> w, length + BeltRooms.takeUp(length, spec.plate()).mm(), from);
        double outward = Double.isNaN(tight) ? 0 : tight - distance;
        Point away = Point.polar(1, spec.at()).times(-1);
        return DriveSlot.of(
                0,
                away,
                Double.isNaN(over) ? Double.POSITIVE_INFINITY : distance - over,
                Double.isNaN(shorter) ? distance - from : distance - shorter,
                0,
                outward,
                length(wheels(spec, distance + outward)) - length,
                back -> Math.min(DriveRoom.around(spec, path, 0, away.times(-back)), servoRoom(spec, back, outward)));
    }

    /** What the slots of a servo leave of the plate over the web, and the least gap: they must not run together. */
    private static double servoRoom(DriveSpec spec, double inward, double outward) {
        return ServoPlace.of(spec, inward, outward)
                .map(servo -> servo.web(spec) - spec.plate().leastWeb() + DriveSlot.LEAST_GAP)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private DriveSlot idlerSlot(DriveSpec spec, double length) {
        Arrangement pressed = pressed(spec);
        double at = press.getAsDouble();
        double over = CentreDistance.solve(p -> length(lifted(spec, pressed.at(p))), NEXT_TO_NOTHING, at, length);
        double shorter = press(pressed, length - BeltRooms.shorter(length, spec.plate()));
        double tight =
                press(pressed, length + BeltRooms.takeUp(length, spec.plate()).mm());
        double outward = (Double.isNaN(tight) ? furthest(pressed, at) : tight) - at;
        Point way = pressing(spec);
        return DriveSlot.of(
                1,
                way,
                Double.isNaN(over) ? Double.POSITIVE_INFINITY : at - over,
                Double.isNaN(shorter) ? at : at - shorter,
                at,
                outward,
                length(pressed.at(at + outward)) - length,
                back -> DriveRoom.around(spec, path, 1, way.times(-back)));
    }

    /** Direction in which the idler presses, square to the span that it was pressed into. */
    private Point pressing(DriveSpec spec) {
        Point out =
                BeltPath.of(wheels(spec, distance)).span(0).tangentAt(0).left().times(-1);
        return spec.idler().inside() ? out : out.times(-1);
    }

    /** How far the idler can press at all, from a place on where it can. */
    private static double furthest(Arrangement pressed, double at) {
        double good = at;
        double step = Math.max(0.5, at / 3);
        for (int i = 0; i < 200 && step > NEXT_TO_NOTHING; i++) {
            if (Double.isNaN(length(pressed.at(good + step)))) {
                step /= 2;
            } else {
                good += step;
            }
        }
        return good;
    }

    /** The pitch line when the slot's wheel stands {@code off} mm towards a tight belt; null when there is none. */
    BeltPath pathAt(double off) {
        if (!slot.moves() || off == 0) {
            return path;
        }
        List<Wheel> wheels = new ArrayList<>(path.wheels());
        Wheel moved = wheels.get(slot.wheel());
        wheels.set(slot.wheel(), moved.at(slot.moved(moved.centre(), off)));
        return BeltPath.of(wheels);
    }

    private interface Change {
        List<Wheel> of(List<Wheel> wheels);
    }

    private static double distance(DriveSpec spec, Change change, double length, double from) {
        if (spec.further().isEmpty()) {
            List<Wheel> two = change.of(wheels(spec, 1));
            return CentreDistance.ofOpenBelt(two.get(0).radius(), two.get(1).radius(), length);
        }
        return CentreDistance.solve(c -> length(change.of(wheels(spec, c))), from, length / 2, length);
    }

    /** The least centre distance, in steps, from which on there is a path round all wheels. */
    static double leastDistance(DriveSpec spec) {
        double from =
                Math.abs(spec.driven().rim().pitchRadius() - spec.driver().rim().pitchRadius()) + 0.1;
        double step = Math.max(0.5, spec.wanted() / 100);
        for (int i = 0; !spec.further().isEmpty() && i < 400 && Double.isNaN(length(wheels(spec, from))); i++) {
            from += step;
        }
        return from;
    }

    /** The length of the pitch line at a distance, without an idler, mm; not a number when there is no path. */
    static double lengthAt(DriveSpec spec, double distance) {
        return length(wheels(spec, distance));
    }

    /** Both pulleys at their distance and the idler where it takes up all slack, without slots; null when it cannot. */
    static DriveLayout fixed(DriveSpec spec, int teeth) {
        double length = teeth * spec.choice().belt().pitch();
        double distance = spec.wanted();
        BeltPath bare = BeltPath.of(wheels(spec, distance));
        if (bare == null || length < bare.length() * (1 - SAME_LENGTH)) {
            return null;
        }
        if (Math.abs(length - bare.length()) <= SAME_LENGTH * length) {
            return new DriveLayout(bare, teeth, distance, OptionalDouble.empty(), DriveSlot.NONE);
        }
        Arrangement pressed = pressed(spec);
        double press = press(pressed, length);
        if (Double.isNaN(press) || press < LEAST_PRESS) {
            return null;
        }
        BeltPath path = BeltPath.of(pressed.at(press));
        return path == null ? null : new DriveLayout(path, teeth, distance, OptionalDouble.of(press), DriveSlot.NONE);
    }

    private static Arrangement pressed(DriveSpec spec) {
        BeltPath bare = BeltPath.of(wheels(spec, spec.wanted()));
        return press -> withIdler(spec, bare, press);
    }

    /** How far the idler must press for the length; its reach ends where the belt would turn by more than it can. */
    private static double press(Arrangement pressed, double length) {
        double from = NEXT_TO_NOTHING;
        double to = from;
        for (int i = 0; i < 60; i++) {
            double next = to + Math.max(0.5, to / 3);
            double reached = length(pressed.at(next));
            for (int k = 0; Double.isNaN(reached) && k < 12; k++) {
                // the belt cannot be turned so far: as far as it can
                next = (to + next) / 2;
                reached = length(pressed.at(next));
            }
            if (Double.isNaN(reached) || next - to < NEXT_TO_NOTHING) {
                return Double.NaN;
            }
            if (reached >= length) {
                return CentreDistance.solve(p -> length(pressed.at(p)), to, next, length);
            }
            to = next;
        }
        return Double.NaN;
    }

    /** The wheels with the idler on the span from driver to driven, pressed in by {@code press} mm. */
    private static List<Wheel> withIdler(DriveSpec spec, BeltPath bare, double press) {
        Line span = bare.span(0);
        Point out = span.tangentAt(0).left().times(-1);
        DriveSpec.Roller idler = spec.idler();
        double radius = idler.wheel(spec.choice(), Point.ORIGIN).radius();
        double off = idler.inside() ? press - radius : radius - press;
        Point centre = span.pointAt(idler.along()).plus(out.times(off));
        List<Wheel> wheels = new ArrayList<>(bare.wheels());
        wheels.add(1, idler.wheel(spec.choice(), centre));
        return wheels;
    }

    boolean hasIdler() {
        return press.isPresent();
    }

    /** Index of the driven pulley among the path's wheels. */
    int driven() {
        return hasIdler() ? 2 : 1;
    }
}
