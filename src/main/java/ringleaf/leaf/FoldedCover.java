// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import ringleaf.geom.Point;

/**
 * What N blades cover in one pose, found exactly from one blade's outline by folding (see {@link ArcFold}). All
 * answers are for blades of no thickness exactly as drawn. Not for several threads at once.
 */
public final class FoldedCover {
    /** Laps are reported up to this, mm. */
    public static final double LAP_CAP = 4;
    /** How nearly a lap is found, as a share of the pivot radius; assumed, compared with polygons in the tests. */
    private static final double LAP_PRECISION = 2e-9;

    private static final int MOST_STEPS = 80;

    private final ArcFold fold;
    private Band band;
    private double b;

    /** The blades at the blade angle {@code b}, rad, 0 when open. */
    public FoldedCover(Band band, double b) {
        this.fold = new ArcFold();
        at(band, b);
    }

    /** Poses this object anew, which saves making another; gives itself. */
    public FoldedCover at(Band blades, double bladeAngle) {
        band = blades;
        b = bladeAngle;
        return this;
    }

    /**
     * Area inside the clear radius and outside the opening that no blade covers, mm². The error is that of rounding,
     * about 1e-13 of the pivot radius squared.
     */
    public double leakArea(double clearRadius) {
        return fold.pose(band, b).leak(clearRadius);
    }

    /**
     * Whether the clear disc less the opening stays covered by blades shrunk all round by {@code shrink} mm. The
     * opening grows with it, and is looked at just before it fills the clear disc when it would. Gaps under 1e-9 of a
     * period are rounding and do not count.
     */
    public boolean isTight(double clearRadius, double shrink) {
        return fold.pose(band, b, shrink, clearRadius).worstGap(clearRadius, true) == 0;
    }

    /** Whether the lap is at least {@code lap} mm; cheaper than finding the lap. */
    public boolean keepsLap(double clearRadius, double lap) {
        return fold.tightUpTo(band, b, lap / 2, clearRadius);
    }

    /**
     * The least overlap, mm: blades shrunk all round by half of it are still light-tight. 0 when they leak as they
     * are, at most the cap, and that too where the shrunk blades leave nothing to cover.
     */
    public double lap(double clearRadius, double cap) {
        return isTight(clearRadius, 0) ? lapWhenTight(clearRadius, cap) : 0;
    }

    /**
     * The lap of blades known not to leak. Near its root the widest gap grows in proportion to the shrinking, so
     * secants through two leaking sizes close in on it from above, with bisection as the fall-back.
     */
    double lapWhenTight(double clearRadius, double cap) {
        double trivial = clearRadius - band.inscribedRadius(b);
        if (trivial <= 0) {
            return cap;
        }
        // Blades shrunk by more than this are gone, or the opening that grows with them fills the clear disc.
        double leaking = Math.min(cap / 2, Math.min(band.width() / 2, 0.999 * trivial));
        double gap = 0;
        // Beside a growing opening a gap can open and vanish again: look for the first.
        for (int i = trivial < ArcFold.BESIDE * leaking ? 1 : ArcFold.PROBES; i <= ArcFold.PROBES && gap == 0; i++) {
            double probe = leaking * i / ArcFold.PROBES;
            gap = gap(clearRadius, probe);
            leaking = gap > 0 ? probe : leaking;
        }
        if (gap == 0) {
            return cap;
        }
        double tight = 0;
        double precision = LAP_PRECISION * band.pivotRadius();
        double guess = leaking / 2;
        double nudge = 0;
        for (int i = 0; i < MOST_STEPS && leaking - tight > precision; i++) {
            double found = gap(clearRadius, guess);
            if (found == 0) {
                tight = guess;
                double middle = (tight + leaking) / 2;
                // Just below a root that secants have shown, feel upwards in growing steps.
                guess = nudge > 0 ? Math.min(guess + nudge, middle) : middle;
                nudge *= 16;
                continue;
            }
            double slope = (gap - found) / (leaking - guess);
            leaking = guess;
            gap = found;
            double zero = leaking - gap / slope;
            boolean useful = slope > 0 && zero > tight;
            guess = useful ? Math.max(zero - precision / 4, (3 * tight + zero) / 4) : (tight + leaking) / 2;
            nudge = useful ? precision / 2 : 0;
        }
        return 2 * tight;
    }

    private double gap(double clearRadius, double shrink) {
        return fold.pose(band, b, shrink, clearRadius).worstGap(clearRadius, false);
    }

    /** Largest number of blades over one point of the plane; nothing below {@code known} is looked for. */
    public int layers(int known) {
        return fold.pose(band, b).layers(known);
    }

    /** How many blades lie over the point, edges included. */
    public int bladesOver(Point point) {
        BladeArcs arcs = fold.pose(band, b).arcs();
        int over = 0;
        for (int k = 0; k < band.blades(); k++) {
            Point turned = point.turned(-k * band.period());
            if (arcs.covers(turned.x(), turned.y())) {
                over++;
            }
        }
        return over;
    }
}
