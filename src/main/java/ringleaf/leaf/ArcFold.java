// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import java.util.Arrays;

/**
 * Judges N blades by one of them: on every circle about the axis the arcs of angle that one blade covers are folded
 * modulo 2 pi/N. The circle is covered when the folded arcs leave no gap. Zones in which one arc alone spans a whole
 * period need no more than that; only in the windows of radius where none does are the crossings with the turned
 * copies looked up, so the cost hardly grows with N.
 *
 * <p>One object is posed again and again; it is not for several threads at once.
 */
public final class ArcFold {
    /** Gaps below this share of a period are rounding (arc cosines near a tangency lose half the digits). */
    private static final double ROUNDING = 1e-9;
    /** Gaps at a zone's rim below this share of a period are rounding too. */
    private static final double RIM = 1e-6;
    /** Search for layers stops splitting below this share of the pivot radius. */
    private static final double SLIVER = 1e-7;
    /** Most evaluations of that search; reached only where two outlines coincide along a whole arc. */
    private static final int LAYER_BUDGET = 4000;

    /** Steps in which growing openings are looked at. */
    public static final int PROBES = 4;
    /** What is to be covered counts as beside the opening when it is narrower than so many times the shrinking. */
    public static final double BESIDE = 3;

    private final BladeZones zones = new BladeZones();
    private final double[] s = new double[8];
    private final double[] e = new double[8];
    private final double[] sLo = new double[8];
    private final double[] eLo = new double[8];
    private final double[] sHi = new double[8];
    private final double[] eHi = new double[8];
    private final double[] window = new double[24];
    private double[] meeting = new double[64];
    /** Rows of arc ends for the search for layers, one a depth of splitting. */
    private final double[][] starts = new double[32][8];

    private final double[][] stops = new double[32][8];
    private final int[] hull = new int[24];
    private int best;
    private int apart;
    private int budget;
    private Band band;
    private double period;
    private double inner;
    private double shift;

    /** Sets the blades as they are to the blade angle {@code b}. */
    ArcFold pose(Band blades, double b) {
        return pose(blades, b, 0);
    }

    /**
     * Sets the blades, shrunk all round by {@code shrink} mm, to the blade angle {@code b}. Shrinking stops short of
     * where the blades are gone, and of where the opening, which grows with it, leaves nothing to cover within
     * {@code clear}: a blade covers nothing by not being asked to.
     */
    ArcFold pose(Band blades, double b, double shrink, double clear) {
        double trivial = clear - blades.inscribedRadius(b);
        double most = Math.min(blades.width() / 2 * (1 - 1e-9), trivial > 0 ? 0.999 * trivial : shrink);
        return pose(blades, b, Math.min(shrink, most));
    }

    /**
     * Whether the blades stay tight while they shrink all round up to {@code shrink} mm. Where most of what is to be
     * covered lies beside the opening, which grows meanwhile, a gap can open and be taken in by it again; there the way
     * is looked at in {@value #PROBES} steps.
     */
    boolean tightUpTo(Band blades, double b, double shrink, double clear) {
        boolean besideOpening = clear - blades.inscribedRadius(b) < BESIDE * shrink;
        for (int i = PROBES; i >= (besideOpening ? 0 : PROBES); i--) {
            if (pose(blades, b, shrink * i / PROBES, clear).worstGap(clear, true) > 0) {
                return false;
            }
        }
        return true;
    }

    private ArcFold pose(Band blades, double b, double shrink) {
        band = blades;
        period = blades.period();
        inner = blades.innerRadius() + shrink;
        shift = Math.abs(blades.shift(b));
        zones.arcs.pose(blades, b, shrink);
        return this;
    }

    BladeArcs arcs() {
        return zones.arcs;
    }

    /** Largest gap found on a sampled circle within the clear radius and outside the opening, rad; 0 when tight. */
    double worstGap(double clear, boolean firstWillDo) {
        cutForCover(clear);
        // Most leaks are plain to see on a few circles; the clear circle itself shows them soonest.
        for (int z = zones.zones - 1; firstWillDo && z >= 0; z--) {
            double gap = plainGap(z);
            if (gap > 0) {
                return gap;
            }
        }
        double worst = 0;
        for (int z = 0; z < zones.zones; z++) {
            worst = Math.max(worst, zone(z, false));
            if (firstWillDo && worst > 0) {
                return worst;
            }
        }
        return worst;
    }

    /** The widest gap on a zone's greatest circle or on its middle one, rad; a zone seen to be covered is dropped. */
    private double plainGap(int z) {
        int n = zones.count[z];
        if (n <= 0) {
            return n == 0 ? period : 0;
        }
        zones.ends(z, false, sLo, eLo);
        zones.ends(z, true, s, e);
        boolean spans = false;
        for (int i = 0; i < n; i++) {
            spans |= e[i] - s[i] >= period;
            if (Math.min(eLo[i], e[i]) - Math.max(sLo[i], s[i]) >= period) {
                zones.count[z] = -1;
                return 0;
            }
        }
        double gap = spans ? 0 : widestGap(n);
        if (gap <= RIM * period && !spansPeriod(z, (zones.from[z] + zones.to[z]) / 2)) {
            gap = widestGap(n);
        }
        // At a zone's rim arc cosines lose half their digits, so a hair of a gap there proves nothing.
        return gap > RIM * period ? gap : 0;
    }

    private double widestGap(int n) {
        double worst = 0;
        for (int i = 0; i < n; i++) {
            double gap = Double.MAX_VALUE;
            for (int j = 0; j < n && gap > 0; j++) {
                boolean covered = j != i && folded(e[i] - s[j]) < e[j] - s[j];
                gap = covered ? 0 : Math.min(gap, folded(s[j] - e[i]));
            }
            worst = Math.max(worst, gap);
        }
        return worst;
    }

    /** Uncovered area within the clear radius and outside the opening, mm². */
    double leak(double clear) {
        cutForCover(clear);
        double area = 0;
        for (int z = 0; z < zones.zones; z++) {
            area += zone(z, true);
        }
        return area * band.blades();
    }

    private void cutForCover(double clear) {
        double open = inner - shift;
        double corner = 0;
        if (open > 0) {
            double across = shift * Math.sin(period / 2);
            corner = Math.sqrt(inner * inner - across * across) - shift * Math.cos(period / 2);
        }
        zones.cut(band, Math.max(0, open), clear, corner);
    }

    /** Area share (divided by N) or widest gap of one zone. */
    private double zone(int z, boolean area) {
        int n = zones.count[z];
        if (n < 0) {
            return 0;
        }
        double lo = zones.from[z];
        double hi = zones.to[z];
        if (n == 0) {
            return area ? period * (hi - lo) * (hi + lo) / 2 : period;
        }
        int k0 = BladeZones.first(z);
        zones.ends(z, false, sLo, eLo);
        zones.ends(z, true, sHi, eHi);
        for (int i = 0; i < n; i++) {
            if (Math.min(eLo[i], eHi[i]) - Math.max(sLo[i], sHi[i]) >= period) {
                return 0;
            }
        }
        int cuts = 1;
        window[0] = lo;
        for (int i = 0; i < n && cuts < window.length - 3; i++) {
            int k = k0 + i;
            cuts = zones.meet(zones.endOn[k], zones.startOn[k], period, lo, hi, window, cuts);
        }
        window[cuts++] = hi;
        Arrays.sort(window, 0, cuts);
        double sum = 0;
        for (int w = 0; w + 1 < cuts; w++) {
            if (!spansPeriod(z, (window[w] + window[w + 1]) / 2)) {
                double found = thinWindow(z, window[w], window[w + 1], area);
                sum = area ? sum + found : Math.max(sum, found);
            }
        }
        return sum;
    }

    private boolean spansPeriod(int z, double rho) {
        zones.ends(z, rho, s, e);
        for (int i = 0; i < zones.count[z]; i++) {
            if (e[i] - s[i] >= period) {
                return true;
            }
        }
        return false;
    }

    /** A window of radius in which no single arc spans a period: looks at every range between two crossings. */
    private double thinWindow(int z, double lo, double hi, boolean area) {
        int n = zones.count[z];
        int k0 = BladeZones.first(z);
        zones.ends(z, lo, sLo, eLo);
        zones.ends(z, hi, sHi, eHi);
        int m = 0;
        meeting[m++] = lo;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                m = crossings(zones.endOn[k0 + i], zones.startOn[k0 + j], eLo[i], eHi[i], sLo[j], sHi[j], lo, hi, m);
                if (area && j < i) {
                    m = crossings(zones.endOn[k0 + i], zones.endOn[k0 + j], eLo[i], eHi[i], eLo[j], eHi[j], lo, hi, m);
                    m = crossings(
                            zones.startOn[k0 + i], zones.startOn[k0 + j], sLo[i], sHi[i], sLo[j], sHi[j], lo, hi, m);
                }
            }
        }
        meeting[m++] = hi;
        Arrays.sort(meeting, 0, m);
        double sum = 0;
        for (int i = 0; i + 1 < m; i++) {
            double found = gaps(z, meeting[i], meeting[i + 1], area);
            sum = area ? sum + found : Math.max(sum, found);
        }
        return sum;
    }

    private int crossings(
            int on1, int on2, double aLo, double aHi, double bLo, double bHi, double lo, double hi, int found) {
        double least = (Math.min(aLo, aHi) - Math.max(bLo, bHi)) / period;
        double most = (Math.max(aLo, aHi) - Math.min(bLo, bHi)) / period;
        int m = found;
        for (int k = (int) Math.ceil(least - ROUNDING); k <= most + ROUNDING; k++) {
            if (m + 4 > meeting.length) {
                meeting = Arrays.copyOf(meeting, 2 * meeting.length);
            }
            m = zones.meet(on1, on2, k * period, lo, hi, meeting, m);
        }
        return m;
    }

    /** The gaps of a range of radii without crossings: the sum of their areas, or the widest in its middle. */
    private double gaps(int z, double lo, double hi, boolean area) {
        zones.ends(z, (lo + hi) / 2, s, e);
        int n = zones.count[z];
        if (!area) {
            double widest = widestGap(n);
            if (widest <= ROUNDING * period) {
                return 0;
            }
            noteApart(z, n);
            return widest;
        }
        int k0 = BladeZones.first(z);
        double sum = 0;
        for (int i = 0; i < n; i++) {
            int next = -1;
            double gap = Double.MAX_VALUE;
            for (int j = 0; j < n && gap > 0; j++) {
                if (j != i && folded(e[i] - s[j]) < e[j] - s[j]) {
                    gap = 0;
                } else {
                    double wait = folded(s[j] - e[i]);
                    if (wait < gap) {
                        gap = wait;
                        next = j;
                    }
                }
            }
            if (gap > ROUNDING * period) {
                sum += gapArea(k0, i, next, gap, lo, hi);
            }
        }
        return sum;
    }

    /** Keeps how many steps apart the two blades stand that bound a gap, the most over all gaps. */
    private void noteApart(int z, int n) {
        int all = band.blades();
        for (int i = 0; i < n; i++) {
            double gap = Double.MAX_VALUE;
            int next = i;
            for (int j = 0; j < n && gap > 0; j++) {
                boolean covered = j != i && folded(e[i] - s[j]) < e[j] - s[j];
                double wait = covered ? 0 : folded(s[j] - e[i]);
                if (wait < gap) {
                    gap = wait;
                    next = j;
                }
            }
            if (gap > ROUNDING * period) {
                int steps = (int) Math.rint((e[i] + gap - s[next]) / period);
                // The opening ends at the inner edge of the next blade.
                steps -= zones.endOn[BladeZones.first(z) + i] == BladeZones.OPENING ? 1 : 0;
                int around = Math.floorMod(steps, all);
                apart = Math.max(apart, Math.min(around, all - around));
            }
        }
    }

    /**
     * The most steps of 2 pi/N by which two blades stand apart that bound one gap; 0 when there is none or when no
     * blade is left on the circles that leak.
     */
    int gapApart(double clear) {
        apart = 0;
        worstGap(clear, false);
        return apart;
    }

    private double gapArea(int k0, int i, int next, double gap, double lo, double hi) {
        double turns = Math.rint((e[i] + gap - s[next]) / period) * period;
        double base = zones.startBase[k0 + next] + turns - zones.endBase[k0 + i];
        int startOn = zones.startOn[k0 + next];
        int endOn = zones.endOn[k0 + i];
        return base * (hi - lo) * (hi + lo) / 2
                + BladeZones.startSign(startOn) * zones.turnIntegral(startOn, lo, hi)
                + BladeZones.startSign(endOn) * zones.turnIntegral(endOn, lo, hi);
    }

    private double folded(double angle) {
        return angle - Math.floor(angle / period) * period;
    }

    /**
     * Largest number of blades over one point of the plane, but at least {@code known}: branch and bound over the
     * radii. On a range of radii no more blades can meet than the hulls of its arcs say; what its middle shows is
     * reached. Exact but for slivers thinner than 1e-7 of the pivot radius.
     */
    int layers(int known) {
        zones.cut(band, 0, zones.arcs.greatest(), 0);
        best = known;
        budget = LAYER_BUDGET;
        for (int z = 0; z < zones.zones; z++) {
            if (zones.count[z] < 0) {
                return band.blades();
            }
            zones.ends(z, false, starts[0], stops[0]);
            zones.ends(z, true, starts[1], stops[1]);
            hull[z] = hullLayers(z, 0, 1);
            if (hull[z] > best) {
                zones.ends(z, (zones.from[z] + zones.to[z]) / 2, s, e);
                best = Math.max(best, most(zones.count[z], 0));
            }
        }
        for (int z = 0; z < zones.zones; z++) {
            if (hull[z] > best) {
                zones.ends(z, false, starts[0], stops[0]);
                zones.ends(z, true, starts[1], stops[1]);
                search(z, zones.from[z], zones.to[z], 0, 1, 2);
            }
        }
        return best;
    }

    /** Searches the radii from lo to hi, whose ends of arcs stand in the rows {@code low} and {@code high}. */
    private void search(int z, double lo, double hi, int low, int high, int free) {
        if (budget-- <= 0 || hullLayers(z, low, high) <= best) {
            return;
        }
        double mid = (lo + hi) / 2;
        int n = zones.count[z];
        zones.ends(z, mid, starts[free], stops[free]);
        System.arraycopy(starts[free], 0, s, 0, n);
        System.arraycopy(stops[free], 0, e, 0, n);
        best = Math.max(best, most(n, 0));
        if (hi - lo > SLIVER * band.pivotRadius() && free + 1 < starts.length) {
            search(z, lo, mid, low, free, free + 1);
            search(z, mid, hi, free, high, free + 1);
        }
    }

    private int hullLayers(int z, int low, int high) {
        int n = zones.count[z];
        for (int i = 0; i < n; i++) {
            s[i] = Math.min(starts[low][i], starts[high][i]);
            e[i] = Math.max(stops[low][i], stops[high][i]);
        }
        return most(n, ROUNDING * period);
    }

    /** Largest number of folded arcs over one angle; a most is always reached where an arc starts. */
    private int most(int n, double slack) {
        int whole = 0;
        int rest = 0;
        for (int i = 0; i < n; i++) {
            whole += (int) Math.floor((e[i] - s[i]) / period);
            int here = 0;
            for (int j = 0; j < n; j++) {
                double length = e[j] - s[j];
                double part = length - Math.floor(length / period) * period;
                if (folded(s[i] - s[j] + slack) < part + 2 * slack) {
                    here++;
                }
            }
            rest = Math.max(rest, here);
        }
        return whole + rest;
    }
}
