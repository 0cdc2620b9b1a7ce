// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.TeethRatio;

/** Says why a stage cannot be, at the field that stands against it, with the nearest value that was tried and works. */
final class StageRefusal {
    /** Teeth more in which some that work are looked for. */
    private static final int MORE_TEETH = 60;
    /** Hundredths to either side in which something that works is looked for. */
    private static final int REACH = 120;

    /** Places in a range of distances that are tried. */
    private static final int LOOKS = 24;

    private final Problems problems;
    private final Values driver;
    private final Values driven;
    private final StageReader.Where where;
    private final Predicate<PairAsk> works;

    StageRefusal(Problems problems, Values driver, Values driven, StageReader.Where where, Predicate<PairAsk> works) {
        this.problems = problems;
        this.driver = driver;
        this.driven = driven;
        this.where = where;
        this.works = works;
    }

    /** A ratio beside both numbers of teeth must be theirs; a ring has more teeth than its pinion. */
    void contradictions(PairAsk ask) {
        if (ask.driverTeeth().isEmpty() || ask.drivenTeeth().isEmpty()) {
            return;
        }
        TeethRatio teeth =
                new TeethRatio(ask.driverTeeth().getAsInt(), ask.drivenTeeth().getAsInt());
        OptionalDouble asked = ask.ratio();
        boolean inside = ask.internal() && teeth.driven() <= teeth.driver();
        if (asked.isPresent() && Math.abs(teeth.error(asked.getAsDouble())) > ask.ratioWithin() + 1e-9) {
            String own = teeth.driven() + ":" + teeth.driver();
            problems.at(
                    where.ratio(),
                    Words.number(asked.getAsDouble(), 4) + " contradicts " + teeth.driver() + " and " + teeth.driven()
                            + " teeth, which make " + Words.number(teeth.ratio(), 4),
                    "leave one of them out"
                            + (works.test(ask.withRatio(teeth.ratio())) ? "; the nearest that works is " + own : ""));
        }
        if (inside) {
            int nearest = moreTeeth(teeth.driver(), n -> ask.withTeeth(ask.driverTeeth(), OptionalInt.of((int) n)));
            problems.at(
                    driven.where(GearFields.TEETH),
                    "a ring of " + teeth.driven() + " teeth does not hold a driver of " + teeth.driver(),
                    nearest > 0 ? "the nearest that works is " + nearest : "");
        }
    }

    /** Too little is known, or no teeth come near the ratio. */
    void nothingKnown(PairAsk ask, String missing) {
        String hint = "";
        if (ask.ratio().isEmpty()) {
            hint = works.test(ask.withRatio(5 / 3.0)) ? "e.g. ratio: 5:3" : "";
        } else {
            double nearest = ask.ratio().getAsDouble() > 1 ? TeethSearch.LARGEST : 1 / TeethSearch.LARGEST;
            hint = "a gear-train makes such a ratio in several stages"
                    + (works.test(ask.withRatio(nearest))
                            ? "; the nearest that works for a pair is " + Words.number(nearest, 4)
                            : "");
        }
        problems.at(where.ratio(), missing, hint);
    }

    /** What is asked for takes teeth that no gear may have: blamed is the ratio, else the distance. */
    void beyond(PairAsk ask, PairCandidate wanted) {
        TeethRatio teeth = wanted.teeth();
        int sum = ask.internal() ? teeth.driven() - teeth.driver() : teeth.driven() + teeth.driver();
        if (TeethSearch.hasTeeth(teeth)) {
            boolean coarse = wanted.module() > TeethSearch.COARSEST;
            double module = coarse ? TeethSearch.COARSEST : TeethSearch.FINEST;
            double nearest = module * sum / 2;
            boolean good = works.test(ask.withCentreDistance(Bound.of(nearest)));
            problems.at(
                    where.centre(),
                    Words.mm(ask.centreDistance().mostOr(0)) + " with " + teeth.driver() + " and " + teeth.driven()
                            + " teeth takes a module of " + Words.number(wanted.module(), 4) + ", and "
                            + Words.number(module, 4) + " is the " + (coarse ? "coarsest" : "finest"),
                    good ? "the nearest that works is " + Words.number(nearest, 2) + "mm" : "");
            return;
        }
        if (ask.ratio().isPresent()) {
            double nearest = nearestRatio(ask, teeth);
            problems.at(
                    where.ratio(),
                    Words.number(ask.ratio().getAsDouble(), 4) + " takes " + teeth.driver() + " and " + teeth.driven()
                            + " teeth, and " + TeethSearch.MOST_TEETH + " are the most of one gear",
                    "a gear-train makes such a ratio in several stages"
                            + (nearest > 0 ? "; the nearest that works is " + Words.number(nearest, 4) : ""));
            return;
        }
        double at = ask.centreDistance().mostOr(0);
        double module = coarser(ask);
        problems.at(
                where.centre(),
                Words.mm(at) + " with module " + Words.number(wanted.module(), 4) + " takes " + teeth.driver() + " and "
                        + teeth.driven() + " teeth, and " + TeethSearch.MOST_TEETH + " are the most of one gear",
                module > 0 ? "the nearest module that works is " + Words.number(module, 4) : "");
    }

    /** The ratio of the most teeth that one gear may have to those that are given; 0 where it does not work. */
    private double nearestRatio(PairAsk ask, TeethRatio teeth) {
        double most = TeethSearch.MOST_TEETH;
        double nearest = ask.driverTeeth().isPresent() ? most / teeth.driver() : teeth.driven() / most;
        return works.test(ask.withRatio(nearest)) ? nearest : 0;
    }

    /** The best candidate cannot be: blamed is what was given and alone stands against it. */
    void cannotBe(PairAsk ask, PairCandidate best, String why) {
        String who = best.teeth().driver() + " and " + best.teeth().driven() + " teeth of module "
                + Words.number(best.module(), 4);
        if (ask.backlash().isPresent() && works.test(ask.withBacklash(0))) {
            double most = largestBacklash(ask);
            problems.at(
                    where.backlash(),
                    Words.mm(ask.backlash().getAsDouble()) + " is more than " + who + " can lose: " + why,
                    "the nearest that works is " + Words.number(most, 2) + "mm");
        } else if (ask.centreDistance().isExact()) {
            distance(ask, best, who, why);
        } else if (ask.driverShift().isPresent() || ask.drivenShift().isPresent()) {
            shift(ask, who, why);
        } else if (ask.module().isPresent() && ask.backlash().isEmpty() && canBe(ask.withBacklash(0), best)) {
            double nearest = coarser(ask);
            problems.at(
                    where.module(),
                    "teeth of module " + Words.number(best.module(), 4) + " are too fine for the process: " + why,
                    nearest > 0 ? "the nearest that works is " + Words.number(nearest, 4) : "");
        } else {
            int nearest =
                    moreTeeth(best.teeth().driver(), n -> ask.withTeeth(OptionalInt.of((int) n), ask.drivenTeeth()));
            problems.at(
                    driver.where(GearFields.TEETH),
                    who + " cannot be: " + why,
                    nearest > 0 ? "the nearest that works is " + nearest : "");
        }
    }

    /** Whether teeth can be at all, however well they run. */
    private static boolean canBe(PairAsk ask, PairCandidate best) {
        try {
            new MeshSolver(ask, best.teeth(), best.module()).solve();
            return true;
        } catch (Unmeshable e) {
            return false;
        }
    }

    /** The next module of the series that works; 0 where none does. */
    private double coarser(PairAsk ask) {
        for (double module : TeethSearch.MODULES) {
            if (module > ask.module().orElse(0) && works.test(ask.withModule(module))) {
                return module;
            }
        }
        return 0;
    }

    private double largestBacklash(PairAsk ask) {
        int low = 0;
        int high = (int) Math.ceil(100 * ask.backlash().orElse(0));
        while (high > low + 1) {
            int middle = (low + high) / 2;
            if (works.test(ask.withBacklash(middle / 100.0))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low / 100.0;
    }

    private void distance(PairAsk ask, PairCandidate best, String who, String why) {
        double asked = ask.centreDistance().mostOr(0);
        double[] range = new MeshSolver(ask, best.teeth(), best.module()).range();
        double least = range.length == 0 ? Double.NaN : end(ask, Math.ceil(100 * range[0]), Math.floor(100 * range[1]));
        double most = range.length == 0 ? Double.NaN : end(ask, Math.floor(100 * range[1]), Math.ceil(100 * range[0]));
        boolean any = !Double.isNaN(least) && !Double.isNaN(most) && least <= most;
        problems.at(
                where.centre(),
                Words.mm(asked) + " is out of reach of " + who + " (" + why + ")"
                        + (any
                                ? "; they mesh from " + Words.number(least, 2) + " to " + Words.number(most, 2) + " mm"
                                : ""),
                any ? "the nearest that works is " + Words.number(asked < least ? least : most, 2) + "mm" : "");
    }

    /** The hundredth nearest to an end of a range, towards the other end, that works; not a number where none does. */
    private double end(PairAsk ask, double from, double to) {
        double fails = from;
        for (int i = 0; i <= LOOKS; i++) {
            double tried = Math.rint(from + (to - from) * i / LOOKS);
            if (!isGood(ask, tried)) {
                fails = tried;
                continue;
            }
            double good = tried;
            while (Math.abs(good - fails) > 1) {
                double middle = Math.rint((good + fails) / 2);
                if (isGood(ask, middle)) {
                    good = middle;
                } else {
                    fails = middle;
                }
            }
            return good / 100;
        }
        return Double.NaN;
    }

    private boolean isGood(PairAsk ask, double hundredths) {
        return works.test(ask.withCentreDistance(Bound.of(hundredths / 100)));
    }

    private void shift(PairAsk ask, String who, String why) {
        boolean first = ask.driverShift().isPresent();
        double given =
                first ? ask.driverShift().getAsDouble() : ask.drivenShift().orElse(0);
        double nearest = nearestShift(
                given,
                x -> first
                        ? ask.withShifts(OptionalDouble.of(x), ask.drivenShift())
                        : ask.withShifts(ask.driverShift(), OptionalDouble.of(x)));
        boolean other = Double.isNaN(nearest) && first && ask.drivenShift().isPresent();
        double second = other
                ? nearestShift(
                        ask.drivenShift().getAsDouble(), x -> ask.withShifts(ask.driverShift(), OptionalDouble.of(x)))
                : Double.NaN;
        boolean blamesDriver = first && Double.isNaN(second);
        double value = blamesDriver || !other ? nearest : second;
        boolean open = works.test(ask.withShifts(OptionalDouble.empty(), OptionalDouble.empty()));
        String hint = (Double.isNaN(value) ? "" : "the nearest that works is " + Words.number(value, 2))
                + (open ? (Double.isNaN(value) ? "" : "; ") + "left out it is chosen" : "");
        if (hint.isEmpty()) {
            int teeth = moreTeeth(
                    ask.driverTeeth().orElse(0), n -> ask.withTeeth(OptionalInt.of((int) n), ask.drivenTeeth())
                            .withShifts(OptionalDouble.empty(), OptionalDouble.empty()));
            hint = teeth > 0 ? "without it driver.teeth: " + teeth + " works" : "";
        }
        problems.at(
                (blamesDriver ? driver : driven).where(GearFields.PROFILE_SHIFT),
                who + " cannot be with it: " + why,
                hint);
    }

    private double nearestShift(double shift, DoubleFunction<PairAsk> typed) {
        double middle = Math.rint(100 * shift);
        for (int i = 0; i <= REACH; i++) {
            for (int way = -1; way <= 1; way += 2) {
                double tried = (middle + way * i) / 100;
                boolean inRange = tried >= SingleReader.LEAST_SHIFT && tried <= SingleReader.MOST_SHIFT;
                if (inRange && works.test(typed.apply(tried))) {
                    return tried;
                }
            }
        }
        return Double.NaN;
    }

    private int moreTeeth(int from, DoubleFunction<PairAsk> typed) {
        for (int teeth = from + 1; teeth <= from + MORE_TEETH; teeth++) {
            if (works.test(typed.apply(teeth))) {
                return teeth;
            }
        }
        return 0;
    }
}
