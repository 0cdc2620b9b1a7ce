package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.leaf.DrivePin;
import ringleaf.mechanism.Material;
import ringleaf.part.Member;
import ringleaf.part.Requirement;
import ringleaf.spec.shared.Servo;

/** What the outlines and the motion of an aperture must hold to, for a judge that does not know apertures. */
final class ApertureRequirements {
    /** Kept between any two members that have no figure of their own, mm; common practice, no source. */
    static final double APART = 0.1;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final List<Member> members;
    private final int last;
    private final List<Requirement> all = new ArrayList<>();

    ApertureRequirements(ApertureDesign design, List<Member> members, int last) {
        this.design = design;
        this.spec = design.spec();
        this.members = members;
        this.last = last;
    }

    List<Requirement> all() {
        Clearances c = spec.clearances();
        Rim rim = design.rim();
        Region view = Region.disc(Point.ORIGIN, spec.clearRadius());
        all.add(new Requirement.KeepsClear("opens-fully", view, List.of(0)));
        all.add(new Requirement.OpensTo(
                "closes-to", Point.ORIGIN, last, 2 * spec.leastRadius(), ApertureChecks.OPENING_TOLERANCE));
        all.add(new Requirement.Covered("light-tight", "lap", spec.lap()));
        Region room = Region.disc(Point.ORIGIN, rim.cavity());
        all.add(new Requirement.StaysInside("wall-clearance", indices("blade"), room, c.blade()));
        for (Region area : spec.bezel().keepOuts()) {
            all.add(new Requirement.KeepsClear("keep-out", area, List.of()));
        }
        joints();
        all.add(new Requirement.StaysApart("clearance", APART, pairs()));
        all.add(new Requirement.LeastWeb("minimum-web", "drive-ring", spec.ring().leastWeb()));
        all.add(new Requirement.LeastWeb("minimum-web", "blade", spec.holeEdge()));
        for (String plate : List.of("base-plate", "spacer-ring", "retainer", "cover")) {
            if (!indices(plate).isEmpty()) {
                Material made = plate.equals("cover") ? Stack.coverMaking(spec) : spec.plate();
                all.add(new Requirement.LeastWeb("minimum-web", plate, made.leastWeb()));
            }
        }
        design.mount().ifPresent(this::servoWebs);
        all.add(new Requirement.GuidedRim(
                "support-arc",
                "support-gap",
                index("drive-ring"),
                index("spacer-ring"),
                Point.ORIGIN,
                rim.rim(),
                rim.wall(),
                Math.PI,
                Math.toRadians(120)));
        all.add(new Requirement.LeavesFit(
                "cavity-depth", spec.thickness() + spec.blade().burr(), c.bladePlay()));
        if (spec.depth().isPresent()) {
            all.add(new Requirement.FitsDepth("depth", plates(), spec.depth().getAsDouble()));
        }
        return all;
    }

    /** Where the servo's own holes stand nearer than the process likes, the servo decides. */
    private void servoWebs(ServoMount mount) {
        Servo servo = design.pinionPlan().orElseThrow().servo();
        if (mount.hasPlate()) {
            double between = (servo.holesAlong() - servo.bodyLength() - servo.holeDiameter() - ServoMount.ROOM) / 2;
            double web = Math.min(spec.plate().leastWeb(), between);
            all.add(new Requirement.LeastWeb("minimum-web", "servo-plate", web));
        }
        double web = spec.gear().leastWeb();
        double horn = web;
        if (mount.horn()) {
            double centre = servo.splineDiameter() / 2 + ServoMount.ROOM;
            horn = Math.min(web, servo.hornScrewCircle() / 2 - servo.hornScrewHole() / 2 - centre);
        }
        boolean stepUp = !indices("servo-gear").isEmpty();
        all.add(new Requirement.LeastWeb("minimum-web", "pinion", (stepUp ? web : horn)));
        if (stepUp) {
            all.add(new Requirement.LeastWeb("minimum-web", "servo-gear", horn));
            all.add(new Requirement.LeastWeb("minimum-web", "step-wheel", web));
        }
    }

    private void joints() {
        Clearances c = spec.clearances();
        double pin = spec.pinDiameter() / 2;
        double running = c.bore() / 2;
        double sliding = Math.min(c.slot() / 2, c.slotEnd());
        int base = index("base-plate");
        int ring = index("drive-ring");
        boolean posts = spec.pinStyle() == PinStyle.BASE_POSTS;
        PlateParts plates = new PlateParts(design);
        Contour slot = SlotOutline.of(design).contour();
        List<Integer> blades = indices("blade");
        List<Requirement.Fit> pivots = new ArrayList<>();
        List<Requirement.Fit> drives = new ArrayList<>();
        for (int i = 0; i < spec.blades(); i++) {
            Placement turn = Placement.turn(i * spec.pitch());
            Point pivot = turn.apply(design.pivot());
            double hole = posts ? (spec.pinDiameter() + c.bore()) / 2 : plates.boreRadius();
            Contour bore = Contour.circle(pivot, hole);
            int pinMember = posts ? base : blades.get(i);
            int holeMember = posts ? blades.get(i) : base;
            pivots.add(new Requirement.Fit(pinMember, pivot, pin, holeMember, bore));
            Point drive = turn.apply(design.drivePoint());
            drives.add(new Requirement.Fit(blades.get(i), drive, pin, ring, slot.placed(turn)));
        }
        all.add(new Requirement.PinInHole("pin-clearance", pivots, running));
        all.add(new Requirement.PinInHole("pin-in-slot", drives, sliding));
        if (design.pin() instanceof DrivePin.Lever) {
            List<Requirement.Stud> studs = new ArrayList<>();
            for (Requirement.Fit drive : drives) {
                studs.add(new Requirement.Stud(drive.pinMember(), drive.pin(), pin));
            }
            all.add(new Requirement.StudsClear("pin-clearance", studs, blades, c.blade()));
        }
    }

    /** Pairs that are meant to run closer than the rest, or that run with a clearance of their own. */
    private List<Requirement.Pair> pairs() {
        Clearances c = spec.clearances();
        List<Requirement.Pair> pairs = new ArrayList<>();
        int ring = index("drive-ring");
        int spacer = index("spacer-ring");
        int base = index("base-plate");
        // At either end of the travel the stop may be nearer than the wall.
        double guided = Math.min(design.rim().play(), Clearest.stopAtEnd(design));
        pairs.add(new Requirement.Pair(ring, spacer, guided));
        for (int shim : indices("spacer-shim")) {
            pairs.add(new Requirement.Pair(ring, shim, guided));
        }
        double bore = c.bore() / 2;
        double slot = Math.min(c.slot() / 2, c.slotEnd());
        List<Integer> blades = indices("blade");
        for (int blade : blades) {
            pairs.add(new Requirement.Pair(blade, spacer, c.blade()));
        }
        List<Integer> pivots = indices("pivot-pin");
        boolean posts = spec.pinStyle() == PinStyle.BASE_POSTS;
        for (int i = 0; i < spec.blades(); i++) {
            int pin = pivots.isEmpty() ? blades.get(i) : pivots.get(i);
            pairs.add(new Requirement.Pair(pin, base, posts ? 0 : bore));
        }
        for (int pin : indices("drive-pin")) {
            pairs.add(new Requirement.Pair(pin, ring, slot));
        }
        design.pinionPlan().ifPresent(plan -> driven(plan, pairs));
        return pairs;
    }

    private void driven(PinionPlan plan, List<Requirement.Pair> pairs) {
        int pinion = index("pinion");
        int ring = index("drive-ring");
        pairs.add(new Requirement.Pair(pinion, ring, plan.pair().normalBacklash() / 2));
        pairs.add(new Requirement.Pair(pinion, index("spacer-ring"), spec.clearances().pinion()));
        if (plan.stepUp().isPresent()) {
            StepUp step = plan.stepUp().get();
            double mesh = step.pair().normalBacklash() / 2;
            pairs.add(new Requirement.Pair(index("servo-gear"), index("step-wheel"), mesh));
            double turning = step.axleRoom() / 2;
            for (String plate : List.of("base-plate", "cover", "retainer")) {
                for (int member : indices(plate)) {
                    pairs.add(new Requirement.Pair(index("axle"), member, turning));
                }
            }
        }
    }

    private List<Integer> plates() {
        List<Integer> plates = new ArrayList<>();
        for (String name : List.of("cover", "base-plate", "spacer-ring", "retainer")) {
            plates.addAll(indices(name));
        }
        return plates;
    }

    private int index(String part) {
        return indices(part).get(0);
    }

    private List<Integer> indices(String part) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).part().name().equals(part)) {
                found.add(i);
            }
        }
        return found;
    }
}
