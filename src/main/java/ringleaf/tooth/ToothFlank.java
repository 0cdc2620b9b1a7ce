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
        double least = half - involute.at(involute.to()).angle();
        for (int i = 0; i <= samples; i++) {
            double normal = root.from() + (root.to() - root.from()) * i / samples;
            least = Math.min(least, half - root.at(normal).angle());
        }
        return least;
    }
}
