// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import ringleaf.geom.Point;

/**
 * The exact flank of a tooth space on its counter-clockwise side: root curve, joint, involute, tip; in the frame of
 * the space. The other side is its mirror image in the x axis.
 *
 * @param form what is cut
 * @param root root curve from the root circle to the joint
 * @param involute from the joint to the tip circle
 * @param undercut whether the two cross in a corner instead of touching
 */
record ToothFlank(ToothForm form, RootCurve root, InvoluteCurve involute, boolean undercut) {
    /** A root that is cut deeper closes by no more than this share of its width. */
    private static final double MOST_CLOSED = 0.7;

    private static final int FOOT_SAMPLES = 64;

    /**
     * The flank up to the form's tip circle.
     *
     * @throws IllegalArgumentException when the tip circle leaves no involute: the message says what would do
     */
    static ToothFlank of(ToothForm form) {
        RootCurve root = RootCurve.of(form);
        double base = form.baseRadius();
        double baseAngle = Math.PI / form.teeth() - form.baseHalfAngle();
        double tip = InvoluteCurve.rollAt(base, form.tipRadius());
        boolean undercut = form.isUndercut();
        double start;
        if (undercut) {
            double end = crossing(root, base, baseAngle);
            root = root.endingAt(end);
            start = InvoluteCurve.rollAt(base, root.at(end).norm());
        } else {
            start = Math.max(0, form.straightEnd() / base);
        }
        if (!(form.tipRadius() > base) || !(tip > start)) {
            throw new IllegalArgumentException("tip radius " + form.tipRadius()
                    + " mm leaves no involute: it starts at radius " + base * Math.hypot(1, start) + " mm");
        }
        return new ToothFlank(form, root, new InvoluteCurve(base, baseAngle, start, tip), undercut);
    }

    /**
     * By how much the root curve lies inward of the generated one where the space is cut deeper, as a vector. It goes
     * straight on from the end of the involute, so that no corner is left there; along the middle of the space where
     * that would close the root, or where an undercut leaves a corner anyhow. The bottom is then an arc about a point
     * on the space's middle, and lies as much deeper as the rack says. Derived.
     */
    Point deeper() {
        double depth = form.rack().deeper() * form.module();
        double half = root.rootHalfAngle();
        double slant = undercut ? 0 : involute.tangent(involute.from()).angle();
        double along = depth / (Math.cos(slant) + Math.sin(slant) * Math.tan(half / 2));
        boolean closes = along * Math.sin(slant) > MOST_CLOSED * root.rootRadius() * Math.sin(half);
        return closes ? new Point(depth, 0) : Point.polar(along, slant);
    }

    /** Where root curve and involute meet. */
    Point joint() {
        return involute.at(involute.from());
    }

    /**
     * The normal angle at which an undercutting root curve crosses the involute. Both are followed by their polar
     * angle at the same radius: on the base circle the root curve lies inside the tooth, at its end outside.
     */
    private static double crossing(RootCurve root, double base, double baseAngle) {
        BrentSolver solver = new BrentSolver(1e-14, 1e-15);
        // A faint undercut parts the curves by less than rounding: they meet where the root leaves the base circle.
        if (root.at(root.to()).norm() <= base) {
            return root.to();
        }
        double onBase = solver.solve(200, n -> root.at(n).norm() - base, root.from(), root.to());
        if (overlap(root, base, baseAngle, onBase) <= 0 || overlap(root, base, baseAngle, root.to()) >= 0) {
            return onBase;
        }
        return solver.solve(200, n -> overlap(root, base, baseAngle, n), onBase, root.to());
    }

    private static double overlap(RootCurve root, double base, double baseAngle, double normal) {
        Point point = root.at(normal);
        double roll = InvoluteCurve.rollAt(base, point.norm());
        return point.angle() - baseAngle - (roll - Math.atan(roll));
    }

    /**
     * Least half angle that is left of the tooth between its two flanks, from root to tip, rad; 0 or less when the
     * two roots have cut the tooth off. Found on {@code samples} points of the root curve and at the tip.
     */
    double leastHalfAngle(int samples) {
        double half = Math.PI / form.teeth();
        Point inward = deeper();
        double least = half - involute.at(involute.to()).angle();
        for (int i = 0; i <= samples; i++) {
            double normal = root.from() + (root.to() - root.from()) * i / samples;
            least = Math.min(least, half - root.at(normal).minus(inward).angle());
        }
        return least;
    }

    /** Least thickness of the tooth on its root curve, mm. */
    double footThickness() {
        Point inward = deeper();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= FOOT_SAMPLES; i++) {
            Point p = root.at(root.from() + (root.to() - root.from()) * i / FOOT_SAMPLES)
                    .minus(inward);
            least = Math.min(least, 2 * p.norm() * Math.sin(Math.PI / form.teeth() - p.angle()));
        }
        return least;
    }
}
