// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/**
 * Whether play can open a gap. Two blades m steps apart may shift by loss(m) against each other, which grows with m up
 * to N/2; so blades shrunk all round by loss(m)/2 must show no gap that is bounded by two blades m steps apart. The
 * steps come from the fold's gaps. Not for several threads at once.
 */
public final class PlayedCover {
    private static final int BISECTIONS = 16;
    /** Halvings by which the thinnest place is looked for between the losses of neighbours and of opposite blades. */
    private static final int STEPS = 7;
    /** By this share of the width more than the lap the thinnest place shows as a gap. */
    private static final double HAIR = 1e-4;

    private final ArcFold fold = new ArcFold();
    private final BladeArcs arcs = new BladeArcs();
    private Band band;
    private Play play;
    private double b;
    private double clear;
    private double lever;
    private double pressure;
    private double distance;

    /** Steps between the two blades by whose play {@link #holds} last failed. */
    int failing;

    /** Loss of the pair of blades that leaves the least, mm; set by {@link #afterPlay}. */
    double loss;

    /** Poses the blades; {@code angle} is the slot's pressure angle there. */
    PlayedCover at(Band blades, DrivePin pin, Play joints, double bladeAngle, double angle, double clearRadius) {
        band = blades;
        play = joints;
        b = bladeAngle;
        clear = clearRadius;
        pressure = angle;
        lever = pin.length(blades);
        distance = arcs.pose(blades, bladeAngle, 0).farthestFromPivot(clearRadius);
        return this;
    }

    private double loss(int apart) {
        return distance == 0 ? 0 : play.loss(distance, lever, pressure, band.blades(), apart);
    }

    /** The loss of blades that stand opposite, mm; 0 when nothing is covered here. */
    double mostLoss() {
        return loss(band.blades() / 2);
    }

    /** Whether the blades as drawn keep this lap, mm. */
    boolean isTight(double lap) {
        return fold.tightUpTo(band, b, lap / 2, clear);
    }

    /** Whether the blades keep {@code lap}, and what two lose that stand {@code apart} steps apart: one quick look. */
    boolean holdsFor(double lap, int apart) {
        return isTight(Math.max(lap, loss(apart)));
    }

    /** Whether the blades keep {@code lap} as drawn and none of it goes below 0 by play. */
    boolean holds(double lap) {
        int half = band.blades() / 2;
        double most = loss(half);
        if (isTight(Math.max(lap, most))) {
            return true;
        }
        double least = Math.max(lap, loss(1));
        failing = 1;
        if (most <= least || !isTight(least)) {
            return false;
        }
        double tight = least;
        double leaking = most;
        for (int i = 0; i < STEPS; i++) {
            double middle = (tight + leaking) / 2;
            if (isTight(middle)) {
                tight = middle;
            } else {
                leaking = middle;
            }
        }
        failing = Math.max(1, gapApart(leaking));
        if (loss(failing) > tight) {
            return false;
        }
        failing = opening();
        return failing == 0;
    }

    private int gapApart(double lost) {
        return fold.pose(band, b, lost / 2, clear).gapApart(clear);
    }

    /**
     * Steps between blades that a gap shows which they can open by their own play; 0 for none. Down from opposite
     * blades: gaps between blades at most m steps apart are judged by what those lose.
     */
    private int opening() {
        int apart = band.blades() / 2;
        while (apart > 1) {
            int seen = gapApart(loss(apart));
            if (seen >= apart) {
                return apart;
            }
            apart = seen;
        }
        return 0;
    }

    /** Lap less loss for the pair of blades that leaves the least, mm; {@code lap} is the lap as drawn, not capped. */
    double afterPlay(double lap) {
        loss = loss(1);
        double least = lap - loss;
        if (least < 0 || mostLoss() == loss) {
            // Already lost between neighbours; how much more between others is of no use to anyone.
            return least;
        }
        int thinnest = Math.max(1, gapApart(lap + HAIR * band.width()));
        loss = loss(thinnest);
        least = lap - loss;
        int apart = opening();
        if (apart > thinnest) {
            double left = lapOf(apart, lap, loss(apart)) - loss(apart);
            if (left < least) {
                least = left;
                loss = loss(apart);
            }
        }
        return least;
    }

    /** The lap of pairs at least {@code from} steps apart, between the lap of all and one at which they show a gap. */
    private double lapOf(int from, double lap, double open) {
        double tight = lap;
        double gap = open;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (tight + gap) / 2;
            if (gapApart(middle) >= from) {
                gap = middle;
            } else {
                tight = middle;
            }
        }
        return tight;
    }
}
