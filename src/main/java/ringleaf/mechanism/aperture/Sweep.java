package ringleaf.mechanism.aperture;

/**
 * The whole travel in states evenly spaced in ring angle, the first open and the last closed, judged by closed forms
 * and the fold. All arrays have one entry a state and are the caller's to read, not to change.
 */
public final class Sweep {
    /** Leaks below this are reported as none, mm². */
    public static final double LEAST_LEAK = 1e-6;

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

    private Sweep(SlotLaw law, double closed, double clearRadius, int states, Play play, double ear) {
        this.law = law;
        this.clearRadius = clearRadius;
        Band band = law.band();
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
        FoldedCover cover = new FoldedCover(band, 0);
        PlayedCover played = new PlayedCover();
        int deepest = 0;
        int deepestAt = 0;
        for (int i = 0; i < states; i++) {
            double t = i == states - 1 ? travel : travel * i / (states - 1);
            double b = i == states - 1 ? closed : law.bladeAngle(t, closed);
            bladeAngle[i] = b;
            ringAngle[i] = t;
            openingRadius[i] = band.inscribedRadius(b);
            openingArea[i] = band.openingArea(b);
            cover.at(band, b);
            double area = cover.leakArea(clearRadius);
            leak[i] = area < LEAST_LEAK ? 0 : area;
            pressure[i] = law.pressure(b);
            played.at(band, law.pin(), play, b, pressure[i], clearRadius);
            // The cap on what is reported must not hide a lap that outweighs a large loss.
            double cap = FoldedCover.LAP_CAP + played.mostLoss();
            double whole = leak[i] > 0 ? 0 : cover.lapWhenTight(clearRadius, cap);
            lap[i] = Math.min(FoldedCover.LAP_CAP, whole);
            lapAfterPlay[i] = played.afterPlay(whole);
            loss[i] = played.loss;
            pinRadius[i] = band.pinRadius(law.pin(), b);
            reach[i] = band.reach(b, law.pin(), ear);
            int deep = cover.layers(deepest);
            if (deep > deepest) {
                deepest = deep;
                deepestAt = i;
            }
        }
        layers = deepest;
        layersAt = deepestAt;
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
        return new Sweep(law, closed, clearRadius, states, play, ear);
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
