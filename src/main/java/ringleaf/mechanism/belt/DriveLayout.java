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
 * @param inward room that is wanted to put the belt on: of the centre distance, or of the idler back from its place
 * @param outward room that is wanted to tighten it
 */
record DriveLayout(
        BeltPath path, int beltTeeth, double distance, OptionalDouble press, double inward, double outward) {
    /** Share of the belt's length that tightening and the belt's own tolerance take up; common practice, no source. */
    static final double TAKE_UP = 0.007;
    /** Slack below which there is nothing for an idler to take up, as a share of the length. */
    private static final double NO_SLACK = 1e-4;
    /** An idler that does not press in at least so far does not stay in touch, mm; common practice, no source. */
    private static final double LEAST_PRESS = 0.5;

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
                + (driver.flanges() > 0 ? driver.flangeDiameter() / 2 - driver.rim().outsideRadius() : 0);
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
        return path == null ? null : new DriveLayout(path, teeth, distance, OptionalDouble.empty(), 0, 0);
    }

    /** The same with the room that putting on and tightening the belt want. */
    DriveLayout withSlots(DriveSpec spec) {
        double length = beltTeeth * spec.choice().belt().pitch();
        if (hasIdler()) {
            Arrangement pressed = pressed(spec);
            double at = press.getAsDouble();
            double slack = CentreDistance.solve(p -> length(lifted(spec, pressed.at(p))), 1e-3, at, length);
            double tight = press(pressed, length * (1 + TAKE_UP));
            return new DriveLayout(
                    path, beltTeeth, distance, press, Double.isNaN(slack) ? at : at - slack,
                    Double.isNaN(tight) ? 0 : tight - at);
        }
        if (spec.fixed()) {
            return this;
        }
        double from = leastDistance(spec);
        double in = distance(spec, w -> lifted(spec, w), length, from);
        double out = distance(spec, w -> w, length * (1 + TAKE_UP), from);
        double inward = Double.isNaN(in) ? distance - spec.driver().rim().outsideRadius() : distance - in;
        return new DriveLayout(path, beltTeeth, distance, press, inward, Double.isNaN(out) ? 0 : out - distance);
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
        double from = Math.abs(spec.driven().rim().pitchRadius() - spec.driver().rim().pitchRadius()) + 0.1;
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
        if (bare == null || length < bare.length() * (1 - NO_SLACK)) {
            return null;
        }
        if (Math.abs(length - bare.length()) <= NO_SLACK * length) {
            return new DriveLayout(bare, teeth, distance, OptionalDouble.empty(), 0, 0);
        }
        Arrangement pressed = pressed(spec);
        double press = press(pressed, length);
        if (Double.isNaN(press) || press < LEAST_PRESS) {
            return null;
        }
        BeltPath path = BeltPath.of(pressed.at(press));
        return path == null ? null : new DriveLayout(path, teeth, distance, OptionalDouble.of(press), 0, 0);
    }

    private static Arrangement pressed(DriveSpec spec) {
        BeltPath bare = BeltPath.of(wheels(spec, spec.wanted()));
        return press -> withIdler(spec, bare, press);
    }

    /** How far the idler must press for the length; its reach ends where the belt would turn by more than it can. */
    private static double press(Arrangement pressed, double length) {
        double from = 1e-3;
        double to = from;
        for (int i = 0; i < 60; i++) {
            double next = to + Math.max(0.5, to / 3);
            double reached = length(pressed.at(next));
            for (int k = 0; Double.isNaN(reached) && k < 12; k++) {
                // the belt cannot be turned so far: as far as it can
                next = (to + next) / 2;
                reached = length(pressed.at(next));
            }
            if (Double.isNaN(reached) || next - to < 1e-3) {
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
