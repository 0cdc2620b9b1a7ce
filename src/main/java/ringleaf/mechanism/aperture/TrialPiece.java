// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.curve.Fillet;
import ringleaf.curve.Flattening;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Angles;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.leaf.Sweep;
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.machine.Role;
import ringleaf.mechanism.Bolt;
import ringleaf.mechanism.Material;
import ringleaf.part.Assembly;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.FitRow;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Requirement;
import ringleaf.part.Words;

/**
 * The fewest parts that prove pins, slope and friction: a few neighbouring blades, and of base and ring the wedges that
 * hold their bores and slots. The wedges run on to the axis, where a screw and a washer as high as the cavity take the
 * place of wall and ledge: so the ring's piece turns about the true axis at its true height, and each piece lies in a
 * hand. Bores and slots are those of the real parts; what else falls into a wedge is filled. Unmirrored.
 */
final class TrialPiece {
    /** What only a trial piece has. */
    private enum Own implements Role {
        BASE("trial-base"),
        RING("trial-ring"),
        WASHER("trial-washer");

        private final String label;

        Own(String label) {
            this.label = label;
        }

        @Override
        public String label() {
            return label;
        }
    }

    /** What lies on what in any order: blades and what is set into them. */
    private static final List<Piece> LEAF = List.of(Piece.BLADE, Piece.PIVOT_PIN, Piece.DRIVE_PIN);

    static final String BASE = Own.BASE.label;
    static final String RING = Own.RING.label;
    static final String WASHER = Own.WASHER.label;
    /** The check that tells whether it closes as far as the whole. */
    static final String OPENING = "trial-opening";
    /** Least that is left beside bores and slots and round the axis to hold by, mm; common practice, no source. */
    private static final double GRIP = 3;
    /** Corners of a piece that is held in the hand are rounded to this, mm. */
    private static final double CORNER = 1.5;
    /** How far along its wedge an arm reaches. */
    private static final double ARM = 0.6;
    /** Least rim of the washer, mm. */
    private static final double LEAST_RIM = 1;
    /** A wedge that leaves less than this open is the whole round, rad. */
    private static final double WHOLE = 0.35;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final int blades;
    private final List<Part> parts = new ArrayList<>();
    private final Map<Part, Own> own = new IdentityHashMap<>();
    private final Members members;
    private final Joints joints;

    TrialPiece(ApertureDesign design, ApertureParts made, int blades) {
        this.design = design;
        this.spec = design.spec();
        this.blades = blades;
        ApertureJoints stated = new ApertureJoints(design, blades);
        List<Contour> bores = stated.bores().cuts();
        List<Contour> slots = stated.slots().cuts();
        add(Own.BASE, piece(made.named("base-plate"), BASE, bores, design.rim().cavity(), spec.plate()));
        for (Part part : made.parts()) {
            if (part.isDrawn() && LEAF.contains(Piece.of(part))) {
                parts.add(part.withQuantity(blades));
            }
        }
        add(Own.WASHER, washer());
        add(Own.RING, piece(made.named("drive-ring"), RING, slots, design.rim().floor(), spec.ring()));
        double through = design.stack().ringTop();
        Bolt bolt = new Bolt("trial-screw", spec.screw(), through, 2);
        parts.add(bolt.part(1));
        parts.add(bolt.nuts("trial-nut", 1));
        members = placed();
        this.joints = ApertureJoints.ofTrial(design, members, blades, Own.BASE, Own.RING);
    }

    private void add(Own role, Part part) {
        own.put(part, role);
        parts.add(part);
    }

    List<Part> parts() {
        return parts;
    }

    private double axisHole() {
        return spec.screw().hole() / 2;
    }

    /** Radius of what stands round the axis between the pieces, mm. */
    double washerRadius() {
        return axisHole() + Math.max(spec.spacer().leastWeb(), LEAST_RIM);
    }

    private Part washer() {
        Stack stack = design.stack();
        Material making = spec.spacer();
        int sheets = Math.max(1, stack.ledgeSheets());
        double height = (stack.ringBottom() - stack.baseTop()) / sheets;
        Layer layer = Layer.of(
                Region.ring(Point.ORIGIN, axisHole(), washerRadius()), stack.baseTop(), stack.baseTop() + height);
        String note = (sheets > 1 ? "all of them together" : "it") + " keeps the ring the cavity's "
                + Words.mm(stack.cavity()) + " above the base";
        return new Part(WASHER, Family.SPACER, sheets, making.source(), List.of(layer), List.of(), note);
    }

    /** The wedge of a real part that holds these of its holes. */
    private Part piece(Part whole, String name, List<Contour> kept, double radius, Material making) {
        Region wedge = wedge(kept, radius, grip(making));
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : whole.layers()) {
            Region real = layer.regions().get(0);
            Region filled = new Region(real.outer(), among(real.holes(), kept));
            Region piece = Overlay.intersection(List.of(filled), List.of(wedge)).get(0);
            layers.add(Layer.of(piece, layer.zFrom(), layer.zTo()));
        }
        String note = "piece of the " + whole.name() + " with " + blades + (name.equals(BASE) ? " bores" : " slots")
                + " and a hole at the axis";
        return new Part(name, whole.family(), 1, whole.source(), layers, List.of(), note);
    }

    /** Least that is left round holes to hold the piece by, mm. */
    private static double grip(Material making) {
        return Math.max(making.leastWeb(), GRIP);
    }

    /** Those of the holes that are kept, as the real part has them. */
    private static List<Contour> among(List<Contour> holes, List<Contour> kept) {
        List<Contour> found = new ArrayList<>();
        for (Contour hole : holes) {
            Point centre = hole.centroid();
            for (Contour one : kept) {
                if (one.centroid().distance(centre) < 1e-6) {
                    found.add(hole);
                }
            }
        }
        return found;
    }

    /** A wedge about the axis that leaves {@code web} beside all holes and round the one at its tip. */
    private Region wedge(List<Contour> holes, double radius, double web) {
        double first = holes.get(0).centroid().angle();
        double from = 0;
        double to = 0;
        for (Contour hole : holes) {
            double at = holes.indexOf(hole) * spec.pitch();
            for (Point p : Flattening.points(hole, Tolerance.JUDGE)) {
                double direction = at + Angles.signed(p.angle() - first - at);
                double room = Math.asin(Math.min(1, web / p.norm()));
                from = Math.min(from, direction - room);
                to = Math.max(to, direction + room);
            }
        }
        List<Contour> axis = List.of(Contour.circle(Point.ORIGIN, axisHole()));
        if (to - from > Angles.TURN - WHOLE) {
            return new Region(Contour.circle(Point.ORIGIN, radius), axis);
        }
        Region sector = Region.of(Shapes.discSector(Point.ORIGIN, radius, first + from, first + to));
        Contour joined = Overlay.union(List.of(sector, arm(radius, web, first + (from + to) / 2, (to - from) / 2)))
                .get(0)
                .outer();
        return new Region(Fillet.rounded(joined, CORNER, corner -> true), axis);
    }

    /** The hub about the axis, and from it to the middle of a wedge an arm as wide as the hub, so that no tip breaks. */
    private Region arm(double radius, double web, double direction, double half) {
        double hub = axisHole() + web;
        double along = ARM * radius;
        double wide = Math.min(along * Math.sin(Math.min(half, Math.PI / 2)), (1 - ARM) * radius);
        return Region.of(Shapes.hull(Point.ORIGIN, hub, Point.polar(along, direction), Math.max(wide, hub / 2)));
    }

    /** Whether the washer stops the blades before they are closed. */
    List<Finding> findings() {
        Finding.Draft draft = Finding.of(OPENING)
                .about(WASHER, "blade")
                .orWarn()
                .atMost(2 * (washerRadius() + spec.clearances().blade()), 2 * spec.leastRadius(), "mm");
        return draft.isHeld()
                ? List.of()
                : List.of(draft.inWords(
                        "opening that the washer at the axis leaves the blades; the whole mechanism has none"
                                + " and closes further"));
    }

    /** Members in the order in which they are laid: the last blade lies lowest, as in the whole. */
    private Members placed() {
        Members placed = new Members();
        for (Part part : parts) {
            if (!part.isDrawn()) {
                continue;
            }
            if (own.containsKey(part)) {
                placed.add(own.get(part), part, own.get(part) == Own.RING ? Bodies.RING : Bodies.FIXED);
                continue;
            }
            for (int i = blades - 1; i >= 0; i--) {
                placed.add(Piece.of(part), i, part, Bodies.blade(i), Placement.turn(i * spec.pitch()));
            }
        }
        return placed;
    }

    /** Rows of the table of fits. */
    List<FitRow> fits() {
        return joints.rows();
    }

    Assembly assembly(Sweep sweep) {
        return new Assembly(
                spec.name(),
                members.all(),
                new Bodies(design, sweep),
                Optional.empty(),
                requirements(),
                List.of(),
                new TrialSteps(design, blades, findings().isEmpty()).steps());
    }

    private List<Requirement> requirements() {
        List<Requirement> all = new ArrayList<>();
        all.add(new Requirement.StaysApart("clearance", ApertureRequirements.APART, pairs()));
        all.add(new Requirement.LeastWeb("minimum-web", BASE, spec.plate().leastWeb()));
        all.add(new Requirement.LeastWeb("minimum-web", RING, spec.ring().leastWeb()));
        all.add(new Requirement.LeastWeb("minimum-web", WASHER, spec.spacer().leastWeb()));
        all.addAll(joints.requirements());
        return all;
    }

    /** Blades lie over one another, so they and their pins are not held against each other; pins run in their holes. */
    private List<Requirement.Pair> pairs() {
        List<Integer> leaves = new ArrayList<>();
        LEAF.forEach(piece -> leaves.addAll(members.of(piece)));
        List<Requirement.Pair> pairs = new ArrayList<>(joints.pairs());
        for (int i = 0; i < leaves.size(); i++) {
            for (int k = 0; k < i; k++) {
                pairs.add(new Requirement.Pair(leaves.get(k), leaves.get(i), Double.NEGATIVE_INFINITY));
            }
            if (!findings().isEmpty()) {
                pairs.add(new Requirement.Pair(leaves.get(i), members.one(Own.WASHER), Double.NEGATIVE_INFINITY));
            }
        }
        return pairs;
    }
}
