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
import ringleaf.machine.Joints;
import ringleaf.machine.Members;
import ringleaf.mechanism.BodyName;
import ringleaf.part.Assembly;
import ringleaf.part.FitRow;
import ringleaf.part.LeafFamily;
import ringleaf.part.Part;

/** Puts the parts in their places and says what they must hold to. Unmirrored. */
final class ApertureAssembly {
    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Bodies bodies;
    private final Members members = new Members();
    private final Joints joints;

    ApertureAssembly(ApertureDesign design, List<Part> parts, Sweep sweep) {
        this.design = design;
        this.spec = design.spec();
        this.bodies = new Bodies(design, sweep);
        for (Part part : parts) {
            if (part.isDrawn()) {
                place(Piece.of(part), part);
            }
        }
        this.joints = ApertureJoints.of(design, members);
    }

    /** Rows of the table of fits. */
    List<FitRow> fits() {
        return joints.rows();
    }

    Assembly assemble() {
        // A blade lies over its neighbour counter-clockwise, whose root it passes: that one is laid before it.
        List<Integer> leaves = new ArrayList<>(members.of(Piece.BLADE));
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
                        members.all(),
                        bodies,
                        Optional.of(family),
                        new ApertureRequirements(design, members, joints, bodies.states() - 1).all(),
                        new ApertureCallouts(design, bodies).all(),
                        new BuildOrder(design, members.all()).steps())
                .withBodies(
                        design.drive() instanceof PinionPlan
                                ? BodyName.numbered("ring", "pinion")
                                : BodyName.numbered("ring"));
    }

    private void place(Piece piece, Part part) {
        switch (piece) {
            // A post of the base rides along as well: round and on the pivot, it stands still while it turns.
            case BLADE, DRIVE_PIN, PIVOT_PIN -> {
                for (int i = 0; i < spec.blades(); i++) {
                    members.add(piece, i, part, Bodies.blade(i), Placement.turn(i * spec.pitch()));
                }
            }
            case STANDOFF, PACKING -> perScrew(piece, part);
            case RING -> members.add(piece, part, Bodies.RING);
            case PINION, STEP_WHEEL, AXLE -> members.add(piece, part, Bodies.PINION);
            case SERVO_GEAR -> members.add(piece, part, Bodies.SERVO_GEAR);
            // One member stands for the whole pack of shims when there are several; they lie on one another.
            default -> members.add(piece, part, Bodies.FIXED);
        }
    }

    /** It is drawn about the first of its screws. */
    private void perScrew(Piece piece, Part part) {
        List<Point> screws = new Fasteners(design).standoffs();
        for (int i = 0; i < screws.size(); i++) {
            members.add(
                    piece, i, part, Bodies.FIXED, new Placement(0, screws.get(i).minus(screws.get(0))));
        }
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
