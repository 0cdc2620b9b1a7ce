package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Circle;
import ringleaf.curve.Distances;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.body.Bore;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.spec.shared.Servo;

/**
 * The plates that hold axles and servo. The servo stands behind the base with its long side away from the driven
 * pulley; where the centre distance moves, everything of the driver has slots along the line of centres.
 */
final class DrivePlates {
    /** Room round the servo's body, horn and output, mm; common practice, no source. */
    private static final double ROOM = 0.5;

    private static final double BODY_CORNER = 1;
    /** Axle where a bore is none, mm. */
    private static final double USUAL_AXLE = 3;

    private final DrivePlan plan;
    private final DriveSpec spec;
    private final double thickness;
    private final Point way;
    private final List<Point> screws;

    DrivePlates(DrivePlan plan) {
        this.plan = plan;
        this.spec = plan.spec();
        this.thickness = spec.plate().thickness();
        this.way = Point.polar(1, spec.at());
        this.screws = placeScrews();
    }

    double standoffRadius() {
        return spec.screw().hole() / 2 + 1.5;
    }

    List<Point> screws() {
        return screws;
    }

    /** Packing between the servo's ears and the base so that the driver turns at its height, mm. */
    double packing() {
        return spec.servo().isPresent()
                ? Math.max(0, spec.servo().get().hornHeight() - thickness - plan.foot())
                : 0;
    }

    /** Height of the front plate's lower face. */
    double frontBottom() {
        return plan.top() + spec.axialRoom();
    }

    /** Drawn from the foot up: base, standoffs, front plate. */
    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        if (spec.plates() == 0) {
            return parts;
        }
        parts.add(plate("base-plate", outline(true), baseCuts(), -thickness));
        if (spec.plates() > 1) {
            parts.add(standoff());
            parts.add(plate("front-plate", outline(false), frontCuts(), frontBottom()));
        }
        return parts;
    }

    private Part plate(String name, Contour outline, List<Region> cuts, double bottom) {
        List<Region> left = Overlay.difference(List.of(Region.of(outline)), cuts);
        Layer layer = new Layer(left, bottom, bottom + thickness);
        return new Part(name, "plate", 1, spec.plate().source(), List.of(layer), List.of(), "");
    }

    private Part standoff() {
        double length = frontBottom();
        List<Region> rings = new ArrayList<>();
        for (Point screw : screws) {
            rings.add(Region.ring(screw, spec.screw().hole() / 2, standoffRadius()));
        }
        return new Part(
                "standoff", "spacer", screws.size(),
                new Part.Source("bought", "tube " + ringleaf.part.Words.mm(length) + " long, bore for "
                        + spec.screw().name()),
                List.of(new Layer(rings, 0, length)), List.of(), "");
    }

    private List<Region> baseCuts() {
        List<Region> cuts = common();
        Optional<Servo> servo = spec.servo();
        if (servo.isEmpty()) {
            cuts.add(driverSlot(axleRadius(spec.driver())));
            return cuts;
        }
        Servo s = servo.get();
        boolean horn = spec.driver().body().bore() instanceof Bore.Horn;
        cuts.add(driverSlot((horn ? s.hornDiameter() / 2 : s.splineDiameter() / 2) + ROOM));
        if (s.caseHeight() > packing()) {
            Box box = new Box(-s.axisOffset() - out(), -s.bodyWidth() / 2, s.bodyLength() - s.axisOffset() + in(),
                    s.bodyWidth() / 2);
            cuts.add(Region.of(Shapes.roundedRectangle(box.grown(ROOM / 2), BODY_CORNER).placed(servoPlace())));
        }
        for (Point hole : earHoles(s)) {
            cuts.add(Region.of(Shapes.obround(
                    hole.plus(way.times(in())), hole.minus(way.times(out())), s.holeDiameter() / 2)));
        }
        return cuts;
    }

    private List<Region> frontCuts() {
        List<Region> cuts = common();
        double radius = spec.servo().isPresent()
                ? spec.servo().get().splineDiameter() / 2 + ROOM
                : axleRadius(spec.driver());
        cuts.add(driverSlot(radius));
        return cuts;
    }

    /** Screws, the driven pulley's axle and those of rollers. */
    private List<Region> common() {
        List<Region> cuts = new ArrayList<>();
        for (Point screw : screws) {
            cuts.add(Region.disc(screw, spec.screw().hole() / 2));
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 1; i < wheels.size(); i++) {
            Wheel wheel = wheels.get(i);
            if (i == plan.layout().driven()) {
                cuts.add(Region.disc(wheel.centre(), axleRadius(spec.driven())));
            } else {
                double radius = spec.axles().hole(plan.roller(wheel.name()).axle());
                cuts.add(wheel.name().equals("idler") ? idlerSlot(wheel, radius) : Region.disc(wheel.centre(), radius));
            }
        }
        return cuts;
    }

    /** The idler's slot: back to where the belt goes on, and on to where it is tight. */
    private Region idlerSlot(Wheel idler, double radius) {
        Point press = pressing();
        return Region.of(Shapes.obround(
                idler.centre().minus(press.times(plan.layout().inward())),
                idler.centre().plus(press.times(plan.layout().outward())),
                radius));
    }

    /** Direction in which the idler presses. */
    Point pressing() {
        Wheel idler = plan.path().wheels().get(1);
        DriveSpec.Roller roller = plan.roller(idler.name());
        // square to the span that it was pressed into
        BeltPath bare = BeltPath.of(List.of(spec.driverWheel(), spec.drivenWheel(plan.layout().distance())));
        Point out = bare.span(0).tangentAt(0).left().times(-1);
        return roller.inside() ? out : out.times(-1);
    }

    private double in() {
        return spec.fixed() ? 0 : plan.layout().inward();
    }

    private double out() {
        return spec.fixed() ? 0 : plan.layout().outward();
    }

    /**
     * A hole for the driver, or a slot where it moves: towards the driven pulley to put the belt on, away to
     * tighten.
     */
    private Region driverSlot(double radius) {
        return Region.of(Shapes.obround(way.times(in()), way.times(-out()), radius));
    }

    /** Radius of the hole in a plate for a pulley's axle, or for the bearing that holds it. */
    private double axleRadius(PulleySpec pulley) {
        return pulley == spec.driven() ? spec.axles().drivenHole(axle(pulley)) : spec.axles().hole(axle(pulley));
    }

    /** Diameter of the axle that a pulley's bore takes. */
    static double axle(PulleySpec pulley) {
        double axle = pulley.body().axle().axle();
        return axle > 0 ? axle : USUAL_AXLE;
    }

    /** From the servo's own frame (output at the origin, body towards +x) to its place. */
    private Placement servoPlace() {
        return new Placement(spec.at() + Math.PI, Point.ORIGIN);
    }

    private List<Point> earHoles(Servo s) {
        List<Point> holes = new ArrayList<>();
        double middle = s.bodyLength() / 2 - s.axisOffset();
        for (int end = -1; end <= 1; end += 2) {
            double x = middle + end * s.holesAlong() / 2;
            if (s.holesAcross() > 0) {
                holes.add(servoPlace().apply(new Point(x, -s.holesAcross() / 2)));
                holes.add(servoPlace().apply(new Point(x, s.holesAcross() / 2)));
            } else {
                holes.add(servoPlace().apply(new Point(x, 0)));
            }
        }
        return holes;
    }

    private Contour outline(boolean base) {
        List<Circle> discs = new ArrayList<>();
        double pad = Math.max(standoffRadius(), spec.screw().hole() / 2)
                + Math.max(1, spec.plate().leastWeb() / 2);
        for (Point screw : screws) {
            discs.add(new Circle(screw, pad));
        }
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            double axle = i == 0 || i == plan.layout().driven()
                    ? axleRadius(i == 0 ? spec.driver() : spec.driven())
                    : plan.roller(wheels.get(i).name()).axle() / 2;
            discs.add(new Circle(wheels.get(i).centre(), axle + 3 * spec.plate().leastWeb()));
            if (wheels.get(i).name().equals("idler")) {
                Point press = pressing();
                Point back = wheels.get(i).centre().minus(press.times(plan.layout().inward()));
                discs.add(new Circle(back, axle + 3 * spec.plate().leastWeb()));
            }
        }
        if (base && spec.servo().isPresent()) {
            Servo s = spec.servo().get();
            double middle = s.bodyLength() / 2 - s.axisOffset();
            for (int end = -1; end <= 1; end += 2) {
                for (int side = -1; side <= 1; side += 2) {
                    Point corner = new Point(middle + end * (s.earLength() / 2 + in() + out()),
                            side * s.bodyWidth() / 2);
                    discs.add(new Circle(servoPlace().apply(corner), 2));
                }
            }
        }
        return Shapes.hull(discs);
    }

    /** Two screws beside each of driver and driven pulley, as near as belt, pulleys and servo let them. */
    private List<Point> placeScrews() {
        List<Point> found = new ArrayList<>();
        if (spec.plates() == 0) {
            return found;
        }
        int[] ends = {0, plan.layout().driven()};
        for (int wheel : ends) {
            for (int side = -1; side <= 1; side += 2) {
                double off = plan.reach(wheel) + standoffRadius();
                Point at = beside(wheel, side, off);
                for (int i = 0; i < 2000 && !isFree(at); i++) {
                    off += 0.25;
                    at = beside(wheel, side, off);
                }
                found.add(at);
            }
        }
        return found;
    }

    private Point beside(int wheel, int side, double off) {
        double back = wheel == 0 ? -0.3 : 0.3;
        Point direction = way.left().times(side).plus(way.times(back)).unit();
        return plan.path().wheels().get(wheel).centre().plus(direction.times(off));
    }

    private boolean isFree(Point at) {
        double radius = standoffRadius() + spec.beltRoom();
        List<Wheel> wheels = plan.path().wheels();
        for (int i = 0; i < wheels.size(); i++) {
            double moves = i == 0 ? in() + out() : wheels.get(i).name().equals("idler") ? plan.layout().inward() : 0;
            if (at.distance(wheels.get(i).centre()) < plan.reach(i) + radius + moves) {
                return false;
            }
        }
        Region disc = Region.disc(at, standoffRadius());
        if (Distances.between(disc, plan.belt()).distance() < spec.beltRoom()) {
            return false;
        }
        if (spec.servo().isEmpty()) {
            return true;
        }
        Servo s = spec.servo().get();
        Point p = servoPlace().inverse().apply(at);
        double middle = s.bodyLength() / 2 - s.axisOffset();
        double dx = Math.max(0, Math.abs(p.x() - middle) - s.earLength() / 2 - in() - out());
        double dy = Math.max(0, Math.abs(p.y()) - s.bodyWidth() / 2);
        return Math.hypot(dx, dy) > spec.screw().headDiameter() / 2 + ROOM;
    }
}
