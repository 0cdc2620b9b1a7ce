// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.part.Words;
import ringleaf.tooth.TeethRatio;
import ringleaf.tooth.ToothForm;

/**
 * Finds teeth and modules for what is known of a pair, the most useful first.
 *
 * <p>What makes one more useful, in this order: it keeps the limits of distance and length; its ratio is the one asked
 * for, or within what may be missed; its smaller gear needs no profile shift against undercut; then, where the module
 * is open, the larger module, because its teeth are stronger and better to make; where there is room, teeth without a
 * common factor; the nearer ratio; fewer teeth.
 */
final class TeethSearch {
    /**
     * Modules that tools and stock gears are made in, mm: the preferred series of ISO 54 and the finer ones of common
     * practice, from memory.
     */
    static final double[] MODULES = {
        0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20
    };

    /** Gears have no fewer teeth of their own choice; common practice, no source. */
    private static final int FEWEST_OWN = 12;

    private static final int MOST_OWN = 240;
    static final double LARGEST = (double) MOST_OWN / FEWEST_OWN;
    /** Solved teeth obey the limits of those that are given. */
    static final int MOST_TEETH = (int) GearFields.TEETH.numeric().most();

    static final double FINEST = GearFields.MODULE.numeric().least();
    static final double COARSEST = GearFields.MODULE.numeric().most();
    private static final double USUAL_MODULE = 1;
    private static final int STEPS_UP = 5;
    /** Ratios nearer than this share count as the same. */
    private static final double HAIR = 1e-9;
    /** Sums of profile shifts by which a given distance may be reached, in modules; common practice, no source. */
    private static final double LEAST_SHIFT_SUM = -0.4;

    private static final double MOST_SHIFT_SUM = 1.3;

    /** Teeth by which one may have fewer than the least without undercut; common practice, no source. */
    static final double BARELY = 0.2;

    private final PairAsk ask;

    /** The next larger modules of the series, as they would be typed, the nearest first. */
    static List<String> above(double module) {
        List<String> larger = new ArrayList<>();
        for (double each : MODULES) {
            if (each > module + HAIR) {
                larger.add(Words.number(each, 2));
            }
        }
        return larger.subList(0, Math.min(STEPS_UP, larger.size()));
    }

    TeethSearch(PairAsk ask) {
        this.ask = ask;
    }

    /** All candidates, the best first; none when too little is known or nothing can be. */
    List<PairCandidate> candidates() {
        List<PairCandidate> found = all();
        found.removeIf(each -> !isMade(each));
        found.sort(this::compare);
        return found;
    }

    /** What is asked for, where it takes more teeth, or finer or coarser ones, than a gear may have that is spelt out. */
    Optional<PairCandidate> beyond() {
        return all().stream().filter(each -> !isMade(each)).findFirst();
    }

    private List<PairCandidate> all() {
        List<PairCandidate> all = new ArrayList<>();
        for (double module : modules()) {
            for (TeethRatio teeth : teeth(module)) {
                if (!ask.internal() || teeth.driven() > teeth.driver()) {
                    all.add(candidate(teeth, module));
                }
            }
        }
        return all;
    }

    private static boolean isMade(PairCandidate one) {
        return hasTeeth(one.teeth()) && hasModule(one.module());
    }

    static boolean hasTeeth(TeethRatio teeth) {
        return Math.max(teeth.driver(), teeth.driven()) <= MOST_TEETH
                && Math.min(teeth.driver(), teeth.driven()) >= ToothForm.FEWEST_TEETH;
    }

    static boolean hasModule(double module) {
        return module >= FINEST && module <= COARSEST;
    }

    /** What is missing, when {@link #candidates()} finds nothing. */
    String missing() {
        if (ask.ratio().isEmpty()
                && (ask.driverTeeth().isEmpty() || ask.drivenTeeth().isEmpty())) {
            return "two of ratio, the teeth of both gears, and module with centre distance must be known";
        }
        return "no two gears of " + FEWEST_OWN + " to " + MOST_OWN + " teeth come near the ratio "
                + Words.number(ask.ratio().orElse(1), 4);
    }

    private double[] modules() {
        if (ask.module().isPresent()) {
            return new double[] {ask.module().getAsDouble()};
        }
        boolean limited =
                ask.centreDistance().mostOr(Double.NaN) > 0 || ask.overall().isPresent();
        if (!limited) {
            return new double[] {USUAL_MODULE};
        }
        if (ask.centreDistance().isExact()
                && ask.driverTeeth().isPresent()
                && ask.drivenTeeth().isPresent()) {
            return exactModules();
        }
        return MODULES;
    }

    /** Modules of the series that reach a given distance with the given teeth, or the one that does without shift. */
    private double[] exactModules() {
        int sum = sum(ask.driverTeeth().getAsInt(), ask.drivenTeeth().getAsInt());
        double distance = ask.centreDistance().mostOr(0);
        double[] fitting = new double[MODULES.length];
        int n = 0;
        for (double module : MODULES) {
            double shift = (distance - module * sum / 2) / module;
            if (shift >= LEAST_SHIFT_SUM && shift <= MOST_SHIFT_SUM) {
                fitting[n++] = module;
            }
        }
        return n > 0 ? java.util.Arrays.copyOf(fitting, n) : new double[] {2 * distance / Math.max(1, sum)};
    }

    private int sum(int driver, int driven) {
        return ask.internal() ? driven - driver : driver + driven;
    }

    private List<TeethRatio> teeth(double module) {
        if (ask.driverTeeth().isPresent() && ask.drivenTeeth().isPresent()) {
            return List.of(new TeethRatio(
                    ask.driverTeeth().getAsInt(), ask.drivenTeeth().getAsInt()));
        }
        if (ask.ratio().isPresent()) {
            return byRatio(ask.ratio().getAsDouble());
        }
        boolean one = ask.driverTeeth().isPresent() || ask.drivenTeeth().isPresent();
        if (!one || !ask.centreDistance().isExact() || ask.module().isEmpty()) {
            return List.of();
        }
        int sum = (int) Math.rint(2 * ask.centreDistance().mostOr(0) / module);
        int driver = ask.driverTeeth().orElse(0);
        int driven = ask.drivenTeeth().orElse(0);
        if (ask.driverTeeth().isPresent()) {
            driven = ask.internal() ? driver + sum : sum - driver;
        } else {
            driver = ask.internal() ? driven - sum : sum - driven;
        }
        return driver >= 4 && driven >= 4 ? List.of(new TeethRatio(driver, driven)) : List.of();
    }

    private List<TeethRatio> byRatio(double ratio) {
        if (ask.driverTeeth().isPresent()) {
            int driver = ask.driverTeeth().getAsInt();
            return List.of(new TeethRatio(driver, Math.max(4, (int) Math.rint(driver * ratio))));
        }
        if (ask.drivenTeeth().isPresent()) {
            int driven = ask.drivenTeeth().getAsInt();
            return List.of(new TeethRatio(Math.max(4, (int) Math.rint(driven / ratio)), driven));
        }
        return TeethRatio.near(ratio, ask.ratioWithin(), FEWEST_OWN, MOST_OWN);
    }

    PairCandidate candidate(TeethRatio teeth, double module) {
        int sum = sum(teeth.driver(), teeth.driven());
        double distance = ask.centreDistance().isExact() ? ask.centreDistance().mostOr(0) : module * sum / 2;
        double length = ask.internal()
                ? 2
                        * WheelReader.ringRadius(
                                module * (teeth.driven() / 2.0 + ask.rack().dedendum()), module, ask)
                : distance
                        + module
                                * ((teeth.driver() + teeth.driven()) / 2.0
                                        + 2 * ask.rack().addendum());
        return new PairCandidate(teeth, module, distance, length);
    }

    private int compare(PairCandidate a, PairCandidate b) {
        int byRoom = Double.compare(excess(a), excess(b));
        if (byRoom != 0) {
            return byRoom;
        }
        int byMiss = Double.compare(miss(a), miss(b));
        if (byMiss != 0) {
            return byMiss;
        }
        int byCut = Integer.compare(fewTeeth(a), fewTeeth(b));
        if (byCut != 0) {
            return byCut;
        }
        int bySize = Double.compare(b.module(), a.module());
        if (bySize != 0) {
            return bySize;
        }
        int byHunt = Boolean.compare(b.teeth().isHunting(), a.teeth().isHunting());
        if (byHunt != 0 && ask.ratioWithin() > 0) {
            return byHunt;
        }
        int byShift = Double.compare(shiftNeed(a), shiftNeed(b));
        return byShift != 0
                ? byShift
                : Integer.compare(a.teeth().driver(), b.teeth().driver());
    }

    /** By how much limits of distance and length are broken by unshifted teeth, mm. */
    double excess(PairCandidate c) {
        double over = 0;
        if (!ask.centreDistance().isExact()) {
            over = Math.max(0, c.distance() - ask.centreDistance().mostOr(c.distance()) - Mesh.SAME)
                    + Math.max(0, ask.centreDistance().leastOr(0) - c.distance() - Mesh.SAME);
        } else {
            double shift = shiftNeed(c);
            over = shift > MOST_SHIFT_SUM - LEAST_SHIFT_SUM ? shift * c.module() : 0;
        }
        if (ask.overall().isPresent()) {
            over += Math.max(0, c.length() - ask.overall().getAsDouble() - Mesh.SAME);
        }
        return over;
    }

    /** How far a given distance is from the one that needs no awkward shift, in modules. */
    private double shiftNeed(PairCandidate c) {
        if (!ask.centreDistance().isExact()) {
            return 0;
        }
        double shift =
                (c.distance() - c.module() * sum(c.teeth().driver(), c.teeth().driven()) / 2) / c.module();
        if (ask.internal()) {
            return Math.abs(shift);
        }
        return shift > MOST_SHIFT_SUM ? 10 * shift : shift < LEAST_SHIFT_SUM ? -10 * shift : Math.abs(shift);
    }

    /** By how much the ratio misses more than it may. */
    private double miss(PairCandidate c) {
        if (ask.ratio().isEmpty()) {
            return 0;
        }
        return Math.max(0, Math.abs(c.teeth().error(ask.ratio().getAsDouble())) - ask.ratioWithin() - HAIR);
    }

    /** Teeth that the smaller external gear has too few of to do without a shift. */
    private int fewTeeth(PairCandidate c) {
        int small = ask.internal()
                ? c.teeth().driver()
                : Math.min(c.teeth().driver(), c.teeth().driven());
        int least = (int) Math.ceil(ask.rack().leastTeeth() - BARELY);
        return Math.max(0, least - small);
    }
}
