// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Offset;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;

/**
 * A stand on which the base is laid, with a collar through its opening. In the open pose the inner edges of all blades
 * lie on one circle; the collar fills it, so that no blade can turn inwards while the others are laid and the ring goes
 * on, and every drive pin stands where its slot comes down. It goes on through ring and retainer, and is drawn out of
 * the finished housing from behind. Drawn in the mechanism's frame.
 */
final class StackingJig {
    static final String NAME = "stacking-jig";
    /** Width of the foot beyond the collar, of the collar's wall, and room to what stands behind the base, mm. */
    private static final double FOOT = 14;

    private static final double WALL = 9;
    private static final double ROOM = 2;
    private static final double LEAST_FOOT = 3;
    private static final double LEAST_HEIGHT = 6;
    private static final double LEAST_HOLE = 5;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final JigSpec jig;
    private final List<Part> parts;

    /** The stand for these parts, unmirrored. */
    StackingJig(ApertureDesign design, JigSpec jig, List<Part> parts) {
        this.design = design;
        this.spec = design.spec();
        this.jig = jig;
        this.parts = parts;
    }

    /** Radius of the collar, mm: a running fit in whatever is narrowest. */
    double collar() {
        double narrowest = Math.min(design.rim().opening(), design.band().innerRadius());
        return narrowest - jig.making().runningClearance() / 2;
    }

    /** How far a drive pin can stray from its place while its blade leans on the collar, mm. */
    double stray() {
        double room = design.band().innerRadius() - collar();
        double turn = 2 * Math.asin(Math.min(1, room / (2 * design.band().pivotRadius())));
        return design.pin().length(design.band()) * turn;
    }

    Part part() {
        double collar = collar();
        double hole = collar - WALL;
        boolean hollow = hole >= LEAST_HOLE;
        double head = Math.max(spec.screw().headDiameter(), spec.screw().nutAcross()) / 2 + 1;
        double reach = Math.max(
                collar + LEAST_FOOT,
                Math.min(design.rim().opening() + FOOT, design.rim().screws() - head));
        List<Region> behind = behind();
        double bottom = design.stack().coverBottom();
        double foot = bottom - Math.max(LEAST_HEIGHT, bottom - lowest() + ROOM);
        Region disc = hollow ? Region.ring(Point.ORIGIN, hole, reach) : Region.disc(Point.ORIGIN, reach);
        Region stand = largest(Overlay.difference(List.of(disc), behind));
        Region up = hollow ? Region.ring(Point.ORIGIN, hole, collar) : Region.disc(Point.ORIGIN, collar);
        Layer collarLayer = Layer.of(up, bottom, design.stack().retainerBottom());
        String note = "base over the collar, blades round it; holds each drive pin within " + Words.mm(stray())
                + " of its place; drawn out behind when the screws are in";
        return new Part(
                NAME,
                Family.JIG,
                1,
                jig.making().source(),
                List.of(Layer.of(stand, foot, bottom), collarLayer),
                List.of(),
                note);
    }

    /** Outlines of all that hangs behind base and cover, with room round it. */
    private List<Region> behind() {
        List<Region> behind = new ArrayList<>();
        for (Part part : parts) {
            for (Layer layer : part.layers()) {
                if (layer.zFrom() < design.stack().coverBottom() - 1e-9
                        && !part.name().equals("cover")) {
                    for (Region region : layer.regions()) {
                        behind.add(Offset.of(Region.of(region.outer()), ROOM).get(0));
                    }
                }
            }
        }
        Fasteners fasteners = new Fasteners(design);
        fasteners.standoff().ifPresent(standoff -> {
            for (Point screw : fasteners.standoffs()) {
                behind.add(Region.disc(screw, standoff.outerRadius() + ROOM));
            }
        });
        design.pinionPlan().ifPresent(plan -> {
            Contour ears = Shapes.hull(ServoMount.ears(plan, ROOM));
            behind.add(Region.of(ears));
        });
        return behind;
    }

    private double lowest() {
        double lowest = design.stack().coverBottom();
        for (Part part : parts) {
            lowest = part.isDrawn() ? Math.min(lowest, part.zFrom()) : lowest;
        }
        if (design.pinionPlan().isPresent()) {
            ServoMount mount = design.mount().orElseThrow();
            lowest = Math.min(
                    lowest, mount.earFace() - design.pinionPlan().get().servo().bodyBelow());
        }
        return lowest;
    }

    private static Region largest(List<Region> regions) {
        Region largest = regions.get(0);
        for (Region region : regions) {
            largest = region.area() > largest.area() ? region : largest;
        }
        return largest;
    }
}
