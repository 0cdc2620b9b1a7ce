package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Circle;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.Material;
import ringleaf.part.Finding;
import ringleaf.spec.shared.Servo;

/**
 * How pinion and servo sit: the servo stands behind the base, its output towards +z, its long side along the rim; its
 * ears lie against the back of a servo plate on standoffs, or against packing on the base when there is no room for
 * one. Heights in mm in the mechanism's frame.
 *
 * @param horn whether the pinion is screwed to the servo's horn; else it is bored for the output itself
 * @param pinionBottom lower face of the pinion
 * @param pinionTop upper face
 * @param pinionSheets sheets that make up the pinion, 0 when built up in one piece
 * @param servoGearBottom lower face of the gear on the servo's output: the pinion, or behind the base that of a step-up
 * @param servoGearTop its upper face
 * @param earFace height of the ears' upper face
 * @param caseTop height of the servo's case
 * @param plateThickness of the servo plate, 0 where the servo sits on the base
 * @param standoff length of the standoffs between base and servo plate, or of the packing under the ears
 * @param throughRadius radius of the hole in base, cover and ledge through which horn, output or axle turn
 */
record ServoMount(
        boolean horn,
        double pinionBottom,
        double pinionTop,
        int pinionSheets,
        double servoGearBottom,
        double servoGearTop,
        double earFace,
        double caseTop,
        double plateThickness,
        double standoff,
        double throughRadius) {

    /** Room round the servo's body, horn and output, mm; common practice, no source. */
    static final double ROOM = 0.5;

    /** Between the back of the base and the gears of a step-up, mm. */
    static final double BEHIND = 0.4;

    /** Of the window, mm: small enough that a body with sharp corners goes in. */
    private static final double BODY_CORNER = 0.5;

    static ServoMount of(ApertureSpec spec, Stack stack, PinionPlan plan) {
        Servo servo = plan.servo();
        Material gear = spec.gear();
        double top = stack.retainerBottom() - spec.clearances().pinionAxial();
        double need = stack.ringTop() - stack.ringBottom() + spec.clearances().ringAxial();
        double room = top - stack.baseTop() - spec.clearances().pinionAxial();
        int sheets = gear.sheet() ? Math.max(1, (int) Math.ceil(need / gear.thickness() - 1e-9)) : 0;
        if (sheets > 1 && sheets * gear.thickness() > room) {
            // Rather a little of the ring's play uncovered than a pinion that stands in the base.
            sheets = Math.max(1, (int) (room / gear.thickness() + 1e-9));
        }
        double width = sheets > 0 ? sheets * gear.thickness() : need;
        double screwEdge = servo.hornScrewCircle() / 2 + servo.hornScrewHole() / 2 + gear.leastWeb();
        double within = servo.hornScrewCircle() / 2 - servo.hornScrewHole() / 2 - hub(servo);
        // A gear too small for a horn's screws, or horns too small for its webs: it is bored for the output itself.
        boolean horn = plan.servoGear().rootRadius() >= Math.max(screwEdge, servo.hornDiameter() / 2)
                && within >= gear.leastWeb() - Finding.ROUNDING;
        boolean stepUp = plan.stepUp().isPresent();
        if (horn && !stepUp) {
            // A wider pinion carries the horn, and the servo with it, out of the back of the base.
            double wider = Math.min(top - servo.hornHeight() - stack.coverBottom(), room);
            if (wider > width + 1e-9 && sheets == 0) {
                width = wider;
            } else if (wider > width + 1e-9) {
                int most = (int) (room / gear.thickness() + 1e-9);
                sheets = Math.max(sheets, Math.min((int) Math.ceil(wider / gear.thickness() - 1e-9), most));
                width = sheets * gear.thickness();
            }
        }
        double bottom = top - width;
        double gearTop = stepUp ? stack.coverBottom() - BEHIND : top;
        double gearBottom = gearTop - width;
        double earFace = (horn ? gearBottom : gearTop) - servo.hornHeight();
        double caseTop = earFace + servo.caseHeight();
        double plate = spec.plate().thickness();
        double gap = stack.coverBottom() - earFace;
        boolean hasPlate = gap >= plate;
        double through = (horn ? servo.hornDiameter() / 2 : servo.splineDiameter()) + ROOM;
        if (stepUp) {
            through = (plan.stepUp().get().axle() + plan.stepUp().get().axleRoom()) / 2;
        }
        return new ServoMount(
                horn,
                bottom,
                top,
                sheets,
                gearBottom,
                gearTop,
                earFace,
                caseTop,
                hasPlate ? plate : 0,
                hasPlate ? gap - plate : gap,
                through);
    }

    boolean hasPlate() {
        return plateThickness > 0;
    }

    double pinionWidth() {
        return pinionTop - pinionBottom;
    }

    /** Whether the servo's case stands higher than {@code z}, so that it needs a cut-out there. */
    boolean caseReaches(double z) {
        return caseTop > z + 1e-9;
    }

    /** From the servo's own frame (output at the origin, body towards +x) to its place. */
    static Placement place(PinionPlan plan) {
        return new Placement(plan.at() + Math.PI / 2, plan.servoCentre());
    }

    /** Radius of the hole in a gear on a horn through which the output's own screw is reached, mm. */
    static double hub(Servo servo) {
        return servo.splineDiameter() / 2 + ROOM;
    }

    /**
     * The window for the body and the holes for the screws of the ears. Where too little would stand between the two,
     * the window is opened to the holes: the screws lie in slots then and clamp the ears with washers and nuts, and the
     * window holds the body in its place.
     *
     * @param web least material that stands by itself, mm
     */
    static List<Contour> seat(PinionPlan plan, double web) {
        List<Contour> seat = new ArrayList<>();
        List<Contour> holes = new ArrayList<>();
        List<Region> window = new ArrayList<>(List.of(Region.of(body(plan))));
        double radius = plan.servo().holeDiameter() / 2;
        Point middle = bodyMiddle(plan);
        Point along = Point.polar(1, place(plan).angle());
        for (Point ear : earHoles(plan)) {
            holes.add(Contour.circle(ear, radius));
            double in = along.dot(middle.minus(ear));
            window.add(Region.of(Shapes.hull(ear, radius, ear.plus(along.times(in / 2)), radius)));
        }
        boolean slotted = isSlotted(plan.servo(), web);
        seat.add(slotted ? Overlay.union(window).get(0).outer() : body(plan));
        seat.addAll(slotted ? List.of() : holes);
        return seat;
    }

    /** Whether the window is opened to the holes of the ears. */
    static boolean isSlotted(Servo servo, double web) {
        double between = (servo.holesAlong() - servo.bodyLength() - servo.holeDiameter() - ROOM) / 2;
        return between < web - Finding.ROUNDING;
    }

    private static Point bodyMiddle(PinionPlan plan) {
        Servo s = plan.servo();
        return place(plan).apply(new Point(s.bodyLength() / 2 - s.axisOffset(), 0));
    }

    /** The cut-out for the body, with room all round. */
    static Contour body(PinionPlan plan) {
        Servo s = plan.servo();
        Box box = new Box(-s.axisOffset(), -s.bodyWidth() / 2, s.bodyLength() - s.axisOffset(), s.bodyWidth() / 2);
        return Shapes.roundedRectangle(box.grown(ROOM / 2), BODY_CORNER).placed(place(plan));
    }

    /** Distance of a point from the servo, body and ears as one rectangle with room all round, mm; 0 inside. */
    static double distance(PinionPlan plan, Point point) {
        Servo s = plan.servo();
        Point p = place(plan).inverse().apply(point);
        double middle = s.bodyLength() / 2 - s.axisOffset();
        double dx = Math.max(0, Math.abs(p.x() - middle) - (s.earLength() + ROOM) / 2);
        double dy = Math.max(0, Math.abs(p.y()) - (s.bodyWidth() + ROOM) / 2);
        return Math.hypot(dx, dy);
    }

    /** The corners of the servo's body. */
    static List<Point> bodyCorners(PinionPlan plan) {
        Servo s = plan.servo();
        List<Point> corners = new ArrayList<>();
        for (double x : new double[] {-s.axisOffset(), s.bodyLength() - s.axisOffset()}) {
            for (int side = -1; side <= 1; side += 2) {
                corners.add(place(plan).apply(new Point(x, side * s.bodyWidth() / 2)));
            }
        }
        return corners;
    }

    /** Centres of the holes in the servo's ears. */
    static List<Point> earHoles(PinionPlan plan) {
        Servo s = plan.servo();
        double middle = s.bodyLength() / 2 - s.axisOffset();
        List<Point> holes = new ArrayList<>();
        for (int end = -1; end <= 1; end += 2) {
            double x = middle + end * s.holesAlong() / 2;
            if (s.holesAcross() > 0) {
                holes.add(new Point(x, -s.holesAcross() / 2));
                holes.add(new Point(x, s.holesAcross() / 2));
            } else {
                holes.add(new Point(x, 0));
            }
        }
        Placement place = place(plan);
        for (int i = 0; i < holes.size(); i++) {
            holes.set(i, place.apply(holes.get(i)));
        }
        return holes;
    }

    /** Discs round which the servo plate is drawn: its screws and the corners of the ears. */
    static List<Circle> pads(PinionPlan plan, List<Point> screws, double pad, double web) {
        List<Circle> discs = new ArrayList<>();
        for (Point screw : screws) {
            discs.add(new Circle(screw, pad));
        }
        discs.addAll(ears(plan, web + ROOM));
        return discs;
    }

    /** Discs of this radius about the corners of the ears. */
    static List<Circle> ears(PinionPlan plan, double radius) {
        Servo s = plan.servo();
        double middle = s.bodyLength() / 2 - s.axisOffset();
        Placement place = place(plan);
        List<Circle> discs = new ArrayList<>();
        for (int end = -1; end <= 1; end += 2) {
            for (int side = -1; side <= 1; side += 2) {
                Point corner = new Point(middle + end * s.earLength() / 2, side * s.bodyWidth() / 2);
                discs.add(new Circle(place.apply(corner), radius));
            }
        }
        return discs;
    }
}
