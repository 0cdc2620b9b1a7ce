// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Shapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** The drive ring: slots for the drive pins, a round rim, and the teeth or the arm that turn it. */
final class RingPart {
    /** Radius of the scallop in the rim that shows which way up the ring belongs, mm. */
    private static final double ALIGNMENT = 0.6;

    /** Place of its middle between the sector's end and the notch. */
    private static final double ALIGNMENT_SHARE = 0.4;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final Rim rim;
    private final Teeth teeth;
    private final SlotOutline slot;

    RingPart(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
        this.rim = design.rim();
        this.teeth = design.pinionPlan().map(Teeth::of).orElse(null);
        this.slot = SlotOutline.of(design);
    }

    Part part() {
        List<Contour> holes = new ArrayList<>();
        holes.add(Contour.circle(Point.ORIGIN, rim.opening()));
        holes.addAll(new ApertureJoints(design, spec.blades()).slots().cuts());
        List<Path> marks = new ArrayList<>();
        if (design.drive() instanceof HandPlan plan) {
            plan.eye(rim, spec.ring().leastWeb()).ifPresent(holes::add);
            double from = rim.outer() + 0.5;
            marks.add(Path.of(new Line(Point.polar(from, plan.at()), Point.polar(from + plan.reach() / 3, plan.at()))));
        } else {
            marks.add(meshMark());
        }
        Region region = new Region(outline(), holes);
        Layer layer =
                Layer.of(region, design.stack().ringBottom(), design.stack().ringTop());
        String note = "drops onto the pins; scallop in the rim: this face up";
        return new Part("drive-ring", Family.RING, 1, spec.ring().source(), List.of(layer), marks, note)
                .withWorking(working());
    }

    /** The rim that turns in the wall, teeth and slots; the stop notch's floor and the arm's end stay free. */
    private List<Region> working() {
        if (design.drive() instanceof HandPlan) {
            return List.of(Region.ring(Point.ORIGIN, rim.opening() + 0.1, rim.outer() + 0.5));
        }
        double from = StopNotch.from(design);
        double to = StopNotch.to(design);
        double sides = 0.3 / rim.floor();
        Contour around =
                Shapes.annulusSector(Point.ORIGIN, rim.opening() + 0.1, rim.rim() + 1, to - sides, from + sides);
        // slots slide wherever they are, those behind the notch as well
        double behind = (rim.slotOuter() + rim.floor()) / 2;
        Contour slots = Shapes.annulusSector(Point.ORIGIN, rim.opening() + 0.1, behind, from, to);
        return List.of(Region.of(around), Region.of(slots));
    }

    /** The plain rim is the first piece of either outline. */
    private Contour outline() {
        if (design.drive() instanceof HandPlan plan) {
            Contour blank = plan.ringOutline(rim);
            return new RimCuts((Arc) blank.segments().get(0))
                    .scallop(alignmentDirection(), ALIGNMENT)
                    .in(blank);
        }
        PinionPlan plan = (PinionPlan) design.drive();
        Contour blank = teeth.sector().sectorRim(rim.rim(), plan.spaces(), plan.sectorCentre());
        return new RimCuts((Arc) blank.segments().get(0))
                .scallop(alignmentDirection(), ALIGNMENT)
                .notch(StopNotch.from(design), StopNotch.to(design), rim.floor())
                .in(blank);
    }

    /** A place on the plain rim that is no mirror image of itself. */
    private double alignmentDirection() {
        if (design.drive() instanceof HandPlan plan) {
            return plan.at() + Math.toRadians(150);
        }
        PinionPlan plan = (PinionPlan) design.drive();
        double sectorEnd =
                plan.sectorCentre() + (plan.spaces() + 1) * plan.sector().pitchAngle() / 2;
        double notch = StopNotch.from(design);
        double gap = notch - sectorEnd;
        return sectorEnd + ALIGNMENT_SHARE * gap;
    }

    /** Angle that a rim of this radius (mm) needs between teeth and notch, so that the scallop meets neither. */
    static double besideNotch(double radius) {
        return 2 * Math.asin(Math.min(1, ALIGNMENT / (2 * radius))) / ALIGNMENT_SHARE;
    }

    /** Outlines of sector and pinion; null for a ring turned by hand. */
    Teeth teeth() {
        return teeth;
    }

    double deviation() {
        return Math.max(slot.deviation(), teeth == null ? 0 : teeth.deviation());
    }

    /** A line at the space that the marked tooth of the pinion meets in the open pose. */
    private Path meshMark() {
        PinionPlan plan = (PinionPlan) design.drive();
        double outer = rim.floor() - 0.3;
        double inner = Math.max(rim.slotOuter() + 0.3, outer - 2);
        return Path.of(new Line(Point.polar(inner, plan.at()), Point.polar(outer, plan.at())));
    }
}
