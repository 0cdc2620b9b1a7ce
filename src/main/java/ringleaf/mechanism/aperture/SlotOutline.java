// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.ArcFit;
import ringleaf.curve.Shapes;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.leaf.PinRange;

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

    /**
     * Both sides follow the pin's path in the ring's frame at the slot's half width, as tangent arcs, and run straight
     * on at both ends.
     */
    private static SlotOutline linear(ApertureDesign design, double radius) {
        double closed = design.closed();
        double[] runOut = runOut(design);
        ArcFit.Fitted leftFit = ArcFit.fitted(new Side(design, closed, radius), Tolerance.CURVE);
        ArcFit.Fitted rightFit = ArcFit.fitted(new Side(design, closed, -radius), Tolerance.CURVE);
        Path left = leftFit.path();
        Path right = rightFit.path();
        Point back = design.law().slotTangent(0).times(-runOut[0]);
        Point on = design.law().slotTangent(closed).times(runOut[1]);
        Point rightStart = right.start().plus(back);
        Point rightEnd = right.end().plus(on);
        Point leftStart = left.start().plus(back);
        Point leftEnd = left.end().plus(on);
        List<Segment> pieces = new ArrayList<>();
        pieces.add(new Line(rightStart, right.start()));
        pieces.addAll(right.segments());
        pieces.add(new Line(right.end(), rightEnd));
        pieces.add(Arc.around(middle(design, closed).plus(on), rightEnd, leftEnd, true));
        pieces.add(new Line(leftEnd, left.end()));
        pieces.addAll(left.reversed().segments());
        pieces.add(new Line(left.start(), leftStart));
        pieces.add(Arc.around(middle(design, 0).plus(back), leftStart, rightStart, true));
        double deviation = Math.max(leftFit.deviation(), rightFit.deviation());
        return new SlotOutline(new Contour(pieces).counterClockwise(), deviation);
    }

    /**
     * How far a curved slot runs straight on past the pin's place in the open pose and past that in the closed one, mm:
     * what the stops let through, to first order, and the end clearance.
     */
    static double[] runOut(ApertureDesign design) {
        double[] between =
                PinRange.blade(design.law(), design.closed(), design.rim().overTravel());
        double clearance = design.spec().clearances().slotEnd();
        return new double[] {
            -between[0] * PinRange.speed(design.law(), 0) + clearance,
            (between[1] - design.closed()) * PinRange.speed(design.law(), design.closed()) + clearance
        };
    }

    private static Point middle(ApertureDesign design, double b) {
        return design.law().pinInRing(b);
    }

    private record Side(ApertureDesign design, double to, double across) implements SmoothCurve {
        @Override
        public double from() {
            return 0;
        }

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
