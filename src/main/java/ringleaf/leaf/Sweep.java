// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/**
 * The whole travel in states evenly spaced in ring angle, the first open and the last closed, judged by closed forms
 * and the fold. All arrays have one entry a state and are the caller's to read, not to change.
 */
public final class Sweep {
    /** Leaks below this are reported as none, mm². */
    public static final double LEAST_LEAK = 1e-6;

    private static final int FIRST_STRIDE = 16;
    /** By so much more than the least a state has to keep to be passed over, mm: above the precision of laps. */
    private static final double HAIR = 1e-6;

    public final SlotLaw law;
    public final double clearRadius;
    /** b, rad, from 0 up. */
    public final double[] bladeAngle;
    /** t, rad, counter-clockwise positive, from 0. */
    public final double[] ringAngle;
    /** Inscribed radius of the opening, not capped by the clear one, mm. */
    public final double[] openingRadius;
    /** mm². */
    public final double[] openingArea;
    /** Uncovered area within the clear radius, mm²; 0 below {@link #LEAST_LEAK}. */
    public final double[] leak;
    /** mm, 0 when it leaks, at most {@link FoldedCover#LAP_CAP}. */
    public final double[] lap;
    /** What play can take from the lap of the two blades that are left with least, mm. */
    public final double[] loss;
    /** Lap less loss for those two, mm, below 0 where play can open a gap; the lap is not capped here. */
    public final double[] lapAfterPlay;
    /** Slot pressure angle, rad, unsigned. */
    public final double[] pressure;
    /** Distance of the drive pin from the axis, mm. */
    public final double[] pinRadius;
    /** Greatest distance of the blade's outline (with ears) from the axis, mm. */
    public final double[] reach;
    /** Most blades over one point in any state. */
    public final int layers;
    /** The first state in which they lie so deep. */
    public final int layersAt;

    private final Play play;
    private final boolean brief;
    private final FoldedCover cover;
    private final PlayedCover played = new PlayedCover();
    private int thinnest = -1;
    private int worst = -1;

    private Sweep(SlotLaw law, double closed, double clearRadius, int states, Play play, double ear, boolean brief) {
        this.law = law;
        this.clearRadius = clearRadius;
        this.play = play;
        this.brief = brief;
        Band band = law.band();
        cover = new FoldedCover(band, 0);
        bladeAngle = new double[states];
        ringAngle = new double[states];
        openingRadius = new double[states];
        openingArea = new double[states];
        leak = new double[states];
        lap = new double[states];
        loss = new double[states];
        lapAfterPlay = new double[states];
        pressure = new double[states];
        pinRadius = new double[states];
        reach = new double[states];
        double travel = law.ringAngle(closed);
        int deepest = 0;
        int deepestAt = 0;
        for (int i = 0; i < states; i++) {
            double t = i == states - 1 ? travel : travel * i / (states - 1);
            double b = i == states - 1 ? closed : law.bladeAngle(t, closed);
            bladeAngle[i] = b;
            ringAngle[i] = t;
            openingRadius[i] = band.inscribedRadius(b);
            openingArea[i] = band.openingArea(b);
            pressure[i] = law.pressure(b);
            pinRadius[i] = band.pinRadius(law.pin(), b);
            reach[i] = band.reach(b, law.pin(), ear);
            cover.at(band, b);
            double area = cover.leakArea(clearRadius);
            leak[i] = area < LEAST_LEAK ? 0 : area;
            int deep = cover.layers(deepest);
            if (deep > deepest) {
                deepest = deep;
                deepestAt = i;
            }
        }
        layers = deepest;
        layersAt = deepestAt;
        // Far-apart states first, so that a brief sweep soon knows about how little lap there is.
        for (int stride = FIRST_STRIDE; stride >= 1; stride /= 2) {
            for (int i = 0; i < states; i += stride) {
                if (stride == FIRST_STRIDE || i / stride % 2 == 1) {
                    lap(i);
                }
            }
        }
    }

    /** The overlap of one state, before and after play. */
    private void lap(int i) {
        Band band = law.band();
        played.at(band, law.pin(), play, bladeAngle[i], pressure[i], clearRadius);
        if (brief && thinnest >= 0 && keepsMore(i)) {
            return;
        }
        cover.at(band, bladeAngle[i]);
        // The cap on what is reported must not hide a lap that outweighs a large loss.
        double cap = FoldedCover.LAP_CAP + played.mostLoss();
        double whole = leak[i] > 0 ? 0 : cover.lapWhenTight(clearRadius, cap);
        lap[i] = Math.min(FoldedCover.LAP_CAP, whole);
        lapAfterPlay[i] = played.afterPlay(whole);
        loss[i] = played.loss;
        thinnest = thinnest < 0 || isLess(lap, i, thinnest) ? i : thinnest;
        worst = worst < 0 || isLess(lapAfterPlay, i, worst) ? i : worst;
    }

    private static boolean isLess(double[] values, int i, int than) {
        return values[i] < values[than] || values[i] == values[than] && i < than;
    }

    /**
     * Whether the state keeps more than the least so far, both before play and, even if it lost as much as opposite
     * blades do, after it; then these bounds are noted as its overlap.
     */
    private boolean keepsMore(int i) {
        double most = played.mostLoss();
        double kept = Math.max(lap[thinnest], lapAfterPlay[worst] + most) + HAIR;
        if (leak[i] > 0 || !played.isTight(kept)) {
            return false;
        }
        lap[i] = Math.min(FoldedCover.LAP_CAP, kept);
        lapAfterPlay[i] = kept - most;
        loss[i] = most;
        return true;
    }

    /**
     * Sweeps the travel and finds only as much of the overlap as its least values need: other states hold a lower bound
     * of {@link #lap} and {@link #lapAfterPlay} that is above the least. All else is as in the whole sweep.
     */
    public static Sweep brief(SlotLaw law, double closed, double clearRadius, int states, Play play, double ear) {
        return new Sweep(law, closed, clearRadius, states, play, ear, true);
    }

    /**
     * Sweeps the travel.
     *
     * @param closed blade angle of the last state, rad, above 0
     * @param clearRadius radius that must be covered outside the opening, mm
     * @param states at least 2
     * @param ear radius of the ears at pivot and drive pin, mm; 0 when there are none
     */
    public static Sweep of(SlotLaw law, double closed, double clearRadius, int states, Play play, double ear) {
        if (!(closed > 0) || states < 2) {
            throw new IllegalArgumentException("no travel to " + closed + " in " + states + " states");
        }
        return new Sweep(law, closed, clearRadius, states, play, ear, false);
    }

    public int states() {
        return bladeAngle.length;
    }

    /** The first state with the least value. */
    public static int leastOf(double[] values) {
        int least = 0;
        for (int i = 1; i < values.length; i++) {
            if (values[i] < values[least]) {
                least = i;
            }
        }
        return least;
    }

    /** The first state with the greatest value. */
    public static int greatestOf(double[] values) {
        int greatest = 0;
        for (int i = 1; i < values.length; i++) {
            if (values[i] > values[greatest]) {
                greatest = i;
            }
        }
        return greatest;
    }
}
