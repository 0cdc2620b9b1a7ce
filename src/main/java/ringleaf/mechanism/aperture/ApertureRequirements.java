// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.leaf.DrivePin;
import ringleaf.mechanism.Material;
import ringleaf.part.Member;
import ringleaf.part.Requirement;

/** What the outlines and the motion of an aperture must hold to, for a judge that does not know apertures. */
final class ApertureRequirements {
    /** Kept between any two members that have no figure of their own, mm; common practice, no source. */
    static final double APART = 0.1;
    /** What holds a pin or a pinion along the axis lies over it by anything, mm². */
    private static final double PIN_FLOOR = 1e-3;

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
        all.add(new Requirement.LeastWeb(
                "minimum-web", "drive-ring", spec.ring().leastWeb()));
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
        heights();
        screws();
        all.add(new Requirement.Stops(
                "stops",
                index("drive-ring"),
                index("spacer-ring"),
                Point.ORIGIN,
                design.travel() > 0,
                rim.overTravel()));
        all.addAll(new DriveRequirements(design, members).all());
        sizes();
        return all;
    }

    /** What the design tells of its size, or is allowed of it, on the plates themselves. */
    private void sizes() {
        if (spec.depth().isPresent()) {
            all.add(new Requirement.FitsDepth("depth", plates(), spec.depth().getAsDouble()));
        }
        if (spec.bezel().housing().isPresent()) {
            return;
        }
        Rim rim = design.rim();
        double most = spec.outer().hasMost() ? spec.outer().most() : 2 * rim.outer();
        Optional<Requirement.Lobe> lobe =
                design.pinionPlan().map(plan -> new Requirement.Lobe(plan.at(), plan.lobeHalfAngle(rim)));
        all.add(new Requirement.FitsRound("outer-diameter", plates(), most, lobe));
        all.add(new Requirement.FitsWidth(
                "envelope-width",
                plates(),
                Point.polar(1, design.drive().blockedCentre()),
                design.drive().envelopeWidth(rim)));
    }

    /** What the heights come to: what lies on what, what keeps room over what, and how deep pins stand in their holes. */
    private void heights() {
        Clearances c = spec.clearances();
        boolean posts = spec.pinStyle() == PinStyle.BASE_POSTS;
        int retainer = index("retainer");
        int ring = index("drive-ring");
        int base = index("base-plate");
        int spacer = index("spacer-ring");
        List<Requirement.Resting> rests = new ArrayList<>();
        List<Requirement.Above> above = new ArrayList<>();
        List<Requirement.Engaged> engaged = new ArrayList<>();
        List<Integer> shims = indices("spacer-shim");
        // Half of the way round is enough to lie on: windows and pockets take their parts of it.
        double seat = band(design.rim().rim(), spec.ledge()) / 2;
        double wall = band(design.rim().outer(), Rim.housingWeb(spec)) / 2;
        rests.add(new Requirement.Resting(spacer, base, wall));
        rests.add(new Requirement.Resting(ring, spacer, seat));
        above.add(new Requirement.Above(retainer, ring, c.ringAxial(), seat));
        for (int cover : indices("cover")) {
            rests.add(new Requirement.Resting(base, cover, wall));
        }
        if (shims.isEmpty()) {
            rests.add(new Requirement.Resting(retainer, spacer, wall));
        }
        double hold = Math.min(spec.pinDiameter(), spec.plate().thickness());
        int drive = indices("drive-pin").get(0);
        above.add(new Requirement.Above(retainer, drive, c.driveEnd(), 0));
        engaged.add(new Requirement.Engaged(drive, ring, hold / 2));
        if (!posts) {
            List<Integer> pins = indices("pivot-pin");
            int pivot = (pins.isEmpty() ? indices("blade") : pins).get(0);
            int floor = indices("cover").isEmpty() ? base : index("cover");
            above.add(new Requirement.Above(pivot, floor, c.pivotEnd(), PIN_FLOOR));
            engaged.add(new Requirement.Engaged(pivot, base, hold));
        }
        for (int pinion : indices("pinion")) {
            above.add(new Requirement.Above(retainer, pinion, c.pinionAxial(), PIN_FLOOR));
            above.add(new Requirement.Above(pinion, base, APART, 0));
        }
        all.add(new Requirement.Rests("stack-closed", rests));
        all.add(new Requirement.StaysAbove("axial-clearance", above));
        all.add(new Requirement.Engages("pin-engagement", engaged));
    }

    /** Area of a band inside a circle, mm². */
    private static double band(double radius, double width) {
        return Math.PI * (radius * radius - (radius - width) * (radius - width));
    }

    /** Each screw of the housing through each plate that it holds. */
    private void screws() {
        Housing housing = design.housing();
        int base = index("base-plate");
        double thread = spec.screw().thread() / 2;
        List<Requirement.Fit> fits = new ArrayList<>();
        for (int plate : plates()) {
            for (Point screw : housing.screws()) {
                Contour hole = Contour.circle(screw, housing.screwHole());
                fits.add(new Requirement.Fit(base, screw, thread, plate, hole));
            }
        }
        for (int plate : indices("servo-plate")) {
            for (Point screw : housing.servoScrews()) {
                Contour hole = Contour.circle(screw, housing.screwHole());
                fits.add(new Requirement.Fit(base, screw, thread, plate, hole));
            }
        }
        all.add(new Requirement.PinInHole("screw-holes", fits, housing.screwHole() - thread, !housing.own()));
    }

    private void servoWebs(ServoMount mount) {
        if (mount.hasPlate()) {
            all.add(new Requirement.LeastWeb(
                    "minimum-web", "servo-plate", spec.plate().leastWeb()));
        }
        for (String gear : List.of("pinion", "servo-gear", "step-wheel")) {
            if (!indices(gear).isEmpty()) {
                all.add(new Requirement.LeastWeb(
                        "minimum-web", gear, spec.gear().leastWeb()));
            }
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
        all.add(new Requirement.PinInHole("pin-clearance", pivots, running, true));
        all.add(new Requirement.PinInHole("pin-in-slot", drives, sliding, true));
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
            pairs.add(posts ? Requirement.Pair.touching(pin, base) : new Requirement.Pair(pin, base, bore));
        }
        for (int pin : indices("drive-pin")) {
            pairs.add(new Requirement.Pair(pin, ring, slot));
        }
        pairs.addAll(new DriveRequirements(design, members).pairs());
        return pairs;
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
        return indices(members, part);
    }

    /** Members that are this part. */
    static List<Integer> indices(List<Member> members, String part) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).part().name().equals(part)) {
                found.add(i);
            }
        }
        return found;
    }
}
