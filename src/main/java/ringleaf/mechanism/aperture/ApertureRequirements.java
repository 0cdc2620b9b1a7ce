// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.leaf.DrivePin;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.Material;
import ringleaf.part.Requirement;

/** What the outlines and the motion of an aperture must hold to, for a judge that does not know apertures. */
final class ApertureRequirements {
    /** Kept between any two members that have no figure of their own, mm; common practice, no source. */
    static final double APART = 0.1;
    /** What holds a pin or a pinion along the axis lies over it by anything, mm². */
    private static final double PIN_FLOOR = 1e-3;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Members members;
    private final Joints joints;
    private final int last;
    private final List<Requirement> all = new ArrayList<>();

    ApertureRequirements(ApertureDesign design, Members members, Joints joints, int last) {
        this.design = design;
        this.spec = design.spec();
        this.members = members;
        this.joints = joints;
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
        all.add(new Requirement.StaysInside("wall-clearance", members.of(Piece.BLADE), room, c.blade()));
        for (Region area : spec.bezel().keepOuts()) {
            all.add(new Requirement.KeepsClear("keep-out", area, List.of()));
        }
        joints();
        all.add(new Requirement.StaysApart("clearance", APART, pairs()));
        all.add(new Requirement.LeastWeb(
                "minimum-web", Piece.RING.label(), spec.ring().leastWeb()));
        all.add(new Requirement.LeastWeb("minimum-web", Piece.BLADE.label(), spec.holeEdge()));
        for (Piece plate : List.of(Piece.BASE, Piece.SPACER, Piece.RETAINER, Piece.COVER)) {
            if (members.has(plate)) {
                Material made = plate == Piece.COVER ? Stack.coverMaking(spec) : spec.plate();
                all.add(new Requirement.LeastWeb("minimum-web", plate.label(), made.leastWeb()));
            }
        }
        design.mount().ifPresent(this::servoWebs);
        all.add(new Requirement.GuidedRim(
                "support-arc",
                "support-gap",
                members.one(Piece.RING),
                members.one(Piece.SPACER),
                Point.ORIGIN,
                rim.rim(),
                rim.wall(),
                Math.PI,
                Math.toRadians(120)));
        all.add(new Requirement.LeavesFit(
                "cavity-depth", spec.thickness() + spec.blade().burr(), c.bladePlay()));
        heights();
        all.add(new Requirement.Stops(
                "stops",
                members.one(Piece.RING),
                members.one(Piece.SPACER),
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
        int retainer = members.one(Piece.RETAINER);
        int ring = members.one(Piece.RING);
        int base = members.one(Piece.BASE);
        int spacer = members.one(Piece.SPACER);
        List<Requirement.Resting> rests = new ArrayList<>();
        List<Requirement.Above> above = new ArrayList<>();
        List<Requirement.Engaged> engaged = new ArrayList<>();
        List<Integer> shims = members.of(Piece.SHIM);
        // Half of the way round is enough to lie on: windows and pockets take their parts of it.
        double seat = band(design.rim().rim(), spec.ledge()) / 2;
        double wall = band(design.rim().outer(), Rim.housingWeb(spec)) / 2;
        rests.add(new Requirement.Resting(spacer, base, wall));
        rests.add(new Requirement.Resting(ring, spacer, seat));
        above.add(new Requirement.Above(retainer, ring, c.ringAxial(), seat));
        for (int cover : members.of(Piece.COVER)) {
            rests.add(new Requirement.Resting(base, cover, wall));
        }
        if (shims.isEmpty()) {
            rests.add(new Requirement.Resting(retainer, spacer, wall));
        }
        double hold = Math.min(spec.pinDiameter(), spec.plate().thickness());
        int drive = members.one(Piece.DRIVE_PIN);
        above.add(new Requirement.Above(retainer, drive, c.driveEnd(), 0));
        engaged.add(new Requirement.Engaged(drive, ring, hold / 2));
        if (!posts) {
            List<Integer> pins = members.of(Piece.PIVOT_PIN);
            int pivot = (pins.isEmpty() ? members.of(Piece.BLADE) : pins).get(0);
            int floor = !members.has(Piece.COVER) ? base : members.one(Piece.COVER);
            above.add(new Requirement.Above(pivot, floor, c.pivotEnd(), PIN_FLOOR));
            engaged.add(new Requirement.Engaged(pivot, base, hold));
        }
        for (int pinion : members.of(Piece.PINION)) {
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

    private void servoWebs(ServoMount mount) {
        if (mount.hasPlate()) {
            all.add(new Requirement.LeastWeb(
                    "minimum-web", Piece.SERVO_PLATE.label(), spec.plate().leastWeb()));
        }
        for (Piece gear : List.of(Piece.PINION, Piece.SERVO_GEAR, Piece.STEP_WHEEL)) {
            if (members.has(gear)) {
                all.add(new Requirement.LeastWeb(
                        "minimum-web", gear.label(), spec.gear().leastWeb()));
            }
        }
    }

    private void joints() {
        all.addAll(joints.requirements());
        if (design.pin() instanceof DrivePin.Lever) {
            List<Requirement.Stud> studs = new ArrayList<>();
            for (int i = 0; i < spec.blades(); i++) {
                Point drive = Placement.turn(i * spec.pitch()).apply(design.drivePoint());
                studs.add(new Requirement.Stud(members.of(Piece.BLADE).get(i), drive, spec.pinDiameter() / 2));
            }
            all.add(new Requirement.StudsClear(
                    "pin-clearance",
                    studs,
                    members.of(Piece.BLADE),
                    spec.clearances().blade()));
        }
    }

    /** Pairs that are meant to run closer than the rest, or that run with a clearance of their own. */
    private List<Requirement.Pair> pairs() {
        Clearances c = spec.clearances();
        List<Requirement.Pair> pairs = new ArrayList<>();
        int ring = members.one(Piece.RING);
        int spacer = members.one(Piece.SPACER);
        // At either end of the travel the stop may be nearer than the wall.
        double guided = Math.min(design.rim().play(), Clearest.stopAtEnd(design));
        pairs.add(new Requirement.Pair(ring, spacer, guided));
        for (int shim : members.of(Piece.SHIM)) {
            pairs.add(new Requirement.Pair(ring, shim, guided));
        }
        for (int blade : members.of(Piece.BLADE)) {
            pairs.add(new Requirement.Pair(blade, spacer, c.blade()));
        }
        pairs.addAll(joints.pairs());
        pairs.addAll(new DriveRequirements(design, members).pairs());
        return pairs;
    }

    private List<Integer> plates() {
        List<Integer> plates = new ArrayList<>();
        for (Piece name : List.of(Piece.COVER, Piece.BASE, Piece.SPACER, Piece.RETAINER)) {
            plates.addAll(members.of(name));
        }
        return plates;
    }
}
