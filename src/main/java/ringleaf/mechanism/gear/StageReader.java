package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;
import ringleaf.tooth.TeethRatio;

/** Solves one stage from the fields of its two gears and what is asked of both; refuses what cannot mesh. */
final class StageReader {
    /** Candidates that are tried before a stage is refused. */
    private static final int TRIED = 200;
    /** Candidates that are kept beside the one taken, to be tried when they are to be told. */
    private static final int OTHERS = 12;

    private final Request request;
    private final Material material;
    private final Values driver;
    private final Values driven;
    private final Problems problems;

    StageReader(Request request, Material material, Values driver, Values driven) {
        this.request = request;
        this.material = material;
        this.driver = driver;
        this.driven = driven;
        this.problems = request.problems();
    }

    /**
     * The stage; empty after its problems were reported.
     *
     * @param known places of the asking fields: {@code ratio} and {@code centre}
     */
    Optional<StageSpec> read(PairAsk ask, Place ratio, Place centre, double at, Optional<Servo> servo) {
        int before = problems.count();
        agree(ask, ratio);
        if (problems.count() > before) {
            return Optional.empty();
        }
        TeethSearch search = new TeethSearch(ask);
        List<PairCandidate> candidates = search.candidates();
        if (candidates.isEmpty()) {
            problems.at(ratio, search.missing(), search.hint());
            return Optional.empty();
        }
        StageSpec fallback = null;
        Trouble trouble = new Trouble();
        for (int i = 0; i < Math.min(TRIED, candidates.size()); i++) {
            PairCandidate taken = candidates.get(i);
            if (fallback != null && search.excess(taken) > Mesh.SAME) {
                break;
            }
            Optional<StageSpec> solved = solved(ask, candidates, i, at, servo, trouble);
            if (solved.isPresent() && sound(solved.get())) {
                return Optional.of(largest(solved.get(), at, servo));
            }
            fallback = fallback == null && solved.isPresent() ? solved.get() : fallback;
        }
        if (fallback == null) {
            trouble.tell(ask, candidates.get(0), centre);
        }
        return Optional.ofNullable(fallback);
    }

    /** What stood against the first candidate that did not do. */
    private final class Trouble {
        private String why = "";
        private Problems own = new Problems();

        void teeth(String reason) {
            why = why.isEmpty() && own.isEmpty() ? reason : why;
        }

        void body(Problems found) {
            own = why.isEmpty() && own.isEmpty() ? found : own;
        }

        void tell(PairAsk ask, PairCandidate best, Place centre) {
            if (own.isEmpty()) {
                refuse(ask, best, why, centre);
            }
            for (Problem problem : own.list()) {
                problems.at(problem.place(), problem.reason(), problem.hint());
            }
        }
    }

    /** One candidate solved, with what carries its teeth; what stands against it is noted. */
    private Optional<StageSpec> solved(
            PairAsk ask, List<PairCandidate> candidates, int index, double at, Optional<Servo> servo, Trouble trouble) {
        PairCandidate taken = candidates.get(index);
        try {
            Mesh mesh = new MeshSolver(ask, taken.teeth(), taken.module()).solve();
            if (ask.centreDistance().isExact() && mesh.contactRatio() < 1) {
                throw new Unmeshable("the contact ratio is " + Words.number(mesh.contactRatio(), 3)
                        + ": one pair of teeth parts before the next one meets");
            }
            Problems own = new Problems();
            Request quiet = new Request(
                    request.name(), request.values(), request.fabrication(), request.catalogues(), own);
            WheelSpec first = new WheelReader(quiet, driver, material).read(mesh.driverRim(), servo);
            WheelSpec second = new WheelReader(quiet, driven, material).read(mesh.drivenRim(), Optional.empty());
            if (!own.isEmpty()) {
                trouble.body(own);
                return Optional.empty();
            }
            return Optional.of(new StageSpec(ask, mesh, others(candidates, index), at, first, second));
        } catch (Unmeshable e) {
            trouble.teeth(e.getMessage());
            return Optional.empty();
        }
    }

    /** Whether a stage keeps what was asked of it, and runs; one of given teeth is told with what fails. */
    private static boolean sound(StageSpec stage) {
        return keeps(stage) && (!stage.ask().isOpen() || MeshChecks.runs(stage.mesh()));
    }

    /** Whether a stage keeps the limits of distance and length. */
    private static boolean keeps(StageSpec stage) {
        PairAsk ask = stage.ask();
        return TrainSpec.length(List.of(stage)) <= ask.overall().orElse(Double.POSITIVE_INFINITY) + Mesh.SAME
                && ask.centreDistance().allows(stage.mesh().centreDistance(), Mesh.SAME);
    }

    /** The same teeth with the largest module that keeps the limits, which shifted teeth may do where others do not. */
    private StageSpec largest(StageSpec stage, double at, Optional<Servo> servo) {
        PairAsk ask = stage.ask();
        boolean limited = ask.overall().isPresent() || !ask.centreDistance().isExact() && ask.centreDistance().atMost().isPresent();
        if (ask.module().isPresent() || !limited) {
            return stage;
        }
        StageSpec best = stage;
        for (double module : TeethSearch.MODULES) {
            if (module > best.mesh().module() + Mesh.SAME) {
                PairCandidate larger = new TeethSearch(ask).candidate(best.teeth(), module);
                Optional<StageSpec> solved = solved(ask, List.of(larger), 0, at, servo, new Trouble());
                if (solved.isEmpty() || !sound(solved.get())) {
                    return best;
                }
                best = solved.get().withOthers(stage.others());
            }
        }
        return best;
    }

    /** Other candidates, the next best first; one of a larger module goes before those, with each pair of teeth once. */
    private static List<PairCandidate> others(List<PairCandidate> all, int taken) {
        List<PairCandidate> others = new ArrayList<>();
        for (int pass = 0; pass < 2; pass++) {
            for (PairCandidate one : all) {
                boolean seen = one.teeth().equals(all.get(taken).teeth());
                for (PairCandidate other : others) {
                    seen |= other.teeth().equals(one.teeth());
                }
                boolean larger = one.module() > all.get(taken).module();
                if (!seen && (pass == 1 || larger && others.isEmpty()) && others.size() < OTHERS) {
                    others.add(one);
                }
            }
        }
        return others;
    }

    /** A ratio beside both numbers of teeth must be theirs; a ring has more teeth than its pinion. */
    private void agree(PairAsk ask, Place ratio) {
        OptionalInt z1 = ask.driverTeeth();
        OptionalInt z2 = ask.drivenTeeth();
        if (z1.isEmpty() || z2.isEmpty()) {
            return;
        }
        TeethRatio teeth = new TeethRatio(z1.getAsInt(), z2.getAsInt());
        OptionalDouble asked = ask.ratio();
        if (asked.isPresent() && Math.abs(teeth.error(asked.getAsDouble())) > ask.ratioWithin() + 1e-9) {
            problems.at(
                    ratio,
                    Words.number(asked.getAsDouble(), 4) + " contradicts " + teeth.driver() + " and " + teeth.driven()
                            + " teeth, which make " + Words.number(teeth.ratio(), 4),
                    "leave one of them out; the nearest that works is " + teeth.driven() + ":" + teeth.driver());
        }
        if (ask.internal() && teeth.driven() <= teeth.driver()) {
            problems.at(
                    driven.where(GearFields.TEETH),
                    "a ring of " + teeth.driven() + " teeth does not hold a driver of " + teeth.driver(),
                    "the nearest that works is more than " + teeth.driver() + ", as a rule " + (teeth.driver() + 10)
                            + " or more");
        }
    }

    private void refuse(PairAsk ask, PairCandidate best, String why, Place centre) {
        MeshSolver solver = new MeshSolver(ask, best.teeth(), best.module());
        String who = best.teeth().driver() + " and " + best.teeth().driven() + " teeth of module "
                + Words.number(best.module(), 4);
        if (ask.centreDistance().isExact()) {
            double asked = ask.centreDistance().mostOr(0);
            double[] range = solver.range();
            String reach = range.length == 0
                    ? "other teeth or another module"
                    : "the nearest that works is "
                            + Words.number(asked < range[0] ? up(range[0]) : down(range[1]), 2) + "mm";
            String limits = range.length == 0
                    ? ""
                    : "; they mesh from " + Words.number(up(range[0]), 2) + " to "
                            + Words.number(down(range[1]), 2) + " mm";
            problems.at(centre, Words.mm(asked) + " is out of reach of " + who + " (" + why + ")" + limits, reach);
            return;
        }
        boolean first = ask.driverShift().isPresent();
        boolean second = ask.drivenShift().isPresent();
        Values blamed = second && !first ? driven : driver;
        Field<?> field = first || second ? GearFields.PROFILE_SHIFT : GearFields.TEETH;
        problems.at(blamed.where(field), who + " cannot be: " + why, hint(ask, best, first || second));
    }

    private static String hint(PairAsk ask, PairCandidate best, boolean shifted) {
        if (shifted) {
            return "leave profile-shift out and it is chosen; the least without undercut is "
                    + Words.number(ask.rack().leastShift(best.teeth().driver()), 3) + " for the driver and "
                    + Words.number(ask.rack().leastShift(best.teeth().driven()), 3) + " for the driven gear";
        }
        return "more teeth work, " + (int) Math.ceil(ask.rack().leastTeeth()) + " without any profile shift";
    }

    private static double up(double value) {
        return Math.ceil(100 * value) / 100;
    }

    private static double down(double value) {
        return Math.floor(100 * value) / 100;
    }
}
