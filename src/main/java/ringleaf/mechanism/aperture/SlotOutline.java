package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.ArcFit;
import ringleaf.curve.Shapes;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * The slot of the first blade's drive pin in the ring, with round ends that leave the end clearance.
 *
 * @param contour counter-clockwise
 * @param deviation worst distance of its arcs from the true curve, mm
 */
record SlotOutline(Contour contour, double deviation) {

    static double radius(ApertureSpec spec) {
        return (spec.pinDiameter() + spec.clearances().slot()) / 2;
    }

    static SlotOutline of(ApertureDesign design) {
        double radius = radius(design.spec());
        if (design.isLinear()) {
            return linear(design, radius);
        }
        Rim rim = design.rim();
        double direction = design.drivePoint().angle();
        Contour straight = Shapes.obround(
                Point.polar(rim.slotInner() + radius, direction),
                Point.polar(rim.slotOuter() - radius, direction),
                radius);
        return new SlotOutline(straight, 0);
    }

    /** Both sides follow the pin's path in the ring's frame at the slot's half width, as tangent arcs. */
    private static SlotOutline linear(ApertureDesign design, double radius) {
        double[] ends = PinRange.blade(design, design.spec().clearances().slotEnd());
        ArcFit.Fitted leftFit = ArcFit.fitted(new Side(design, ends[0], ends[1], radius), Tolerance.CURVE);
        ArcFit.Fitted rightFit = ArcFit.fitted(new Side(design, ends[0], ends[1], -radius), Tolerance.CURVE);
        Path left = leftFit.path();
        Path right = rightFit.path();
        List<Segment> pieces = new ArrayList<>(right.segments());
        Point far = middle(design, ends[1]);
        pieces.add(Arc.around(far, right.end(), left.end(), true).withEnds(right.end(), left.end()));
        pieces.addAll(left.reversed().segments());
        Point near = middle(design, ends[0]);
        pieces.add(Arc.around(near, left.start(), right.start(), true).withEnds(left.start(), right.start()));
        double deviation = Math.max(leftFit.deviation(), rightFit.deviation());
        return new SlotOutline(new Contour(pieces).counterClockwise(), deviation);
    }

    private static Point middle(ApertureDesign design, double b) {
        return design.law().pinInRing(b);
    }

    private record Side(ApertureDesign design, double from, double to, double across) implements SmoothCurve {
        @Override
        public Point at(double b) {
            return middle(design, b).plus(tangent(b).left().times(across));
        }

        @Override
        public Point tangent(double b) {
            return design.law().slotTangent(b);
        }
    }
}
