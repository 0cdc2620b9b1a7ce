// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.leaf.Band;
import ringleaf.leaf.Sweep;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Assembly;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Part;

/** Puts the parts in their places and says what they must hold to. Unmirrored. */
final class ApertureAssembly {
    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final List<Part> parts;
    private final Bodies bodies;
    private final List<Member> members = new ArrayList<>();

    private ApertureAssembly(ApertureDesign design, List<Part> parts, Sweep sweep) {
        this.design = design;
        this.spec = design.spec();
        this.parts = parts;
        this.bodies = new Bodies(design, sweep);
    }

    static Assembly of(ApertureDesign design, List<Part> parts, Sweep sweep) {
        return new ApertureAssembly(design, parts, sweep).assemble();
    }

    private Assembly assemble() {
        for (Part part : parts) {
            if (part.isDrawn()) {
                place(part);
            }
        }
        // A blade lies over its neighbour counter-clockwise, whose root it passes: that one is laid before it.
        List<Integer> leaves = indices("blade");
        Collections.reverse(leaves);
        Stack stack = design.stack();
        LeafFamily family = new LeafFamily(
                "blade",
                leaves,
                stack.baseTop(),
                stack.ringBottom(),
                Region.disc(Point.ORIGIN, spec.clearRadius()),
                shrunk -> opening(bodies.bladeAngle(shrunk.state()), shrunk.by()));
        return new Assembly(
                        spec.name(),
                        members,
                        bodies,
                        Optional.of(family),
                        new ApertureRequirements(design, members, bodies.states() - 1).all(),
                        new ApertureCallouts(design, bodies).all(),
                        new BuildOrder(design, members).steps())
                .withBodies(
                        design.drive() instanceof PinionPlan
                                ? BodyName.numbered("ring", "pinion")
                                : BodyName.numbered("ring"));
    }

    private void place(Part part) {
        switch (part.name()) {
            // A post of the base rides along as well: round and on the pivot, it stands still while it turns.
            case "blade", "drive-pin", "pivot-pin" -> perBlade(part);
            case "drive-ring" -> members.add(new Member(part.name(), part, Bodies.RING, Placement.IDENTITY));
            case "pinion", "step-wheel", "axle" ->
                members.add(new Member(part.name(), part, Bodies.PINION, Placement.IDENTITY));
            case "servo-gear" -> members.add(new Member(part.name(), part, Bodies.SERVO_GEAR, Placement.IDENTITY));
            case "spacer-shim" -> shims(part);
            case Fasteners.STANDOFF, Fasteners.PACKING -> perScrew(part);
            default -> members.add(new Member(part.name(), part, Bodies.FIXED, Placement.IDENTITY));
        }
    }

    /** One member stands for the whole pack of shims when there are several; they lie on one another. */
    private void shims(Part part) {
        members.add(new Member(part.name(), part, Bodies.FIXED, Placement.IDENTITY));
    }

    /** It is drawn about the first of its screws. */
    private void perScrew(Part part) {
        List<Point> screws = new Fasteners(design).standoffs();
        for (int i = 0; i < screws.size(); i++) {
            Placement home = new Placement(0, screws.get(i).minus(screws.get(0)));
            members.add(new Member(part.name() + " " + (i + 1), part, Bodies.FIXED, home));
        }
    }

    private void perBlade(Part part) {
        for (int i = 0; i < spec.blades(); i++) {
            Placement home = Placement.turn(i * spec.pitch());
            members.add(new Member(part.name() + " " + (i + 1), part, Bodies.blade(i), home));
        }
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

    /**
     * The opening that the blades' inner edges bound, each moved out by {@code shrink}: N arcs, or a dot of no
     * consequence where nothing is left open.
     */
    private Region opening(double b, double shrink) {
        Band whole = design.band();
        // A blade that is shrunk to nothing ends as its own centre line.
        double width = Math.max(whole.width() - 2 * shrink, 1e-9);
        Band band = new Band(whole.pivotRadius(), width, whole.span(), whole.blades());
        double corner = band.cornerRadius(b);
        if (!(corner > 1e-6)) {
            return Region.disc(Point.ORIGIN, 1e-6);
        }
        double d = band.shift(b);
        if (d < 1e-9) {
            return Region.disc(Point.ORIGIN, band.innerRadius());
        }
        // Seen from the axis the first blade's circle has its centre in this direction; the arc faces away from it.
        double centre = band.centre(b).angle();
        double half = spec.pitch() / 2;
        List<Segment> arcs = new ArrayList<>();
        Point first = Point.polar(corner, centre + Math.PI - half);
        Point from = first;
        for (int i = 0; i < spec.blades(); i++) {
            double turn = i * spec.pitch();
            Point to = i == spec.blades() - 1 ? first : Point.polar(corner, centre + Math.PI + half + turn);
            Arc arc = Arc.around(Point.polar(d, centre + turn), from, to, true);
            arcs.add(arc);
            from = to;
        }
        return Region.of(new Contour(arcs));
    }
}
