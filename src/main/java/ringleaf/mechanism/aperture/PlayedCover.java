package ringleaf.mechanism.aperture;

/**
 * Whether play can open a gap. Two blades m steps apart may shift by loss(m) against each other, which grows with m up
 * to N/2; so blades shrunk all round by loss(m)/2 must show no gap that is bounded by two blades m steps apart. The
 * steps are looked at in classes 1, 2, 3-4, 5-8, ... each with the loss of its last, which is on the safe side. Not
 * for several threads at once.
 */
final class PlayedCover {
    private static final int BISECTIONS = 16;

    private final ArcFold fold = new ArcFold();
    private final BladeArcs arcs = new BladeArcs();
    private Band band;
    private Play play;
    private double b;
    private double clear;
    private double lever;
    private double pressure;
    private double distance;

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

    private boolean isTight(double lap) {
        return fold.pose(band, b, lap / 2, clear).worstGap(clear, true) == 0;
    }

    /** Whether the blades keep {@code lap} as drawn and none of it goes below 0 by play. */
    boolean holds(double lap) {
        int half = band.blades() / 2;
        double most = loss(half);
        if (isTight(Math.max(lap, most))) {
            return true;
        }
        double least = Math.max(lap, loss(1));
        if (most <= least || !isTight(least)) {
            return false;
        }
        for (int from = 2, to = 2; from <= half; from = to + 1, to = Math.min(half, 2 * to)) {
            if (opens(loss(to), from)) {
                return false;
            }
        }
        return true;
    }

    /** Whether blades that lose this much show a gap between two that stand at least {@code from} steps apart. */
    private boolean opens(double lost, int from) {
        return fold.pose(band, b, lost / 2, clear).gapApart(clear) >= from;
    }

    /** Lap less loss for the pair of blades that leaves the least, mm; {@code lap} is the lap as drawn, not capped. */
    double afterPlay(double lap) {
        loss = loss(1);
        double least = lap - loss;
        if (least < 0) {
            // Already lost between neighbours; how much more between others is of no use to anyone.
            return least;
        }
        int half = band.blades() / 2;
        for (int from = 2, to = 2; from <= half; from = to + 1, to = Math.min(half, 2 * to)) {
            double lost = loss(to);
            // Where pairs so far apart bound no gap within what they lose, they leave at least nothing.
            if (lap < lost + least && opens(lost + least, from)) {
                double left = lapOf(from, lap, lost + least) - lost;
                if (left < least) {
                    least = left;
                    loss = lost;
                }
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
            if (opens(middle, from)) {
                gap = middle;
            } else {
                tight = middle;
            }
        }
        return tight;
    }
}
