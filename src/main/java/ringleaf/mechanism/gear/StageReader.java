// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;

/** Solves one stage from the fields of its two gears and what is asked of both; refuses what cannot mesh. */
final class StageReader {
    /** Candidates that are tried before a stage is refused. */
    private static final int TRIED = 200;
    /** Candidates that are tried for what is proposed. */
    private static final int PROPOSED = 12;
    /** Candidates that are kept beside the one taken, to be tried when they are to be told. */
    private static final int OTHERS = 12;

    private final Request request;
    private final Material material;
    private final Values driver;
    private final Values driven;
    private final Problems problems;

    /** Where the fields stand that ask for a stage. */
    record Where(Place ratio, Place centre, Place backlash, Place module) {}

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
     * @param where the fields stand that ask for it
     */
    Optional<StageSpec> read(PairAsk ask, Where where, double at, Optional<Servo> servo) {
        int before = problems.count();
        StageRefusal refusal = new StageRefusal(problems, driver, driven, where, other -> works(other, at, servo));
        refusal.contradictions(ask);
        if (problems.count() > before) {
            return Optional.empty();
        }
        TeethSearch search = new TeethSearch(ask);
        List<PairCandidate> candidates = search.candidates();
        if (candidates.isEmpty()) {
            if (search.beyond().isPresent()) {
                refusal.beyond(ask, search.beyond().get());
            } else {
                refusal.nothingKnown(ask, search.missing());
            }
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
            trouble.tell(ask, candidates.get(0), refusal);
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

        void tell(PairAsk ask, PairCandidate best, StageRefusal refusal) {
            if (own.isEmpty()) {
                refusal.cannotBe(ask, best, why);
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
            Request quiet =
                    new Request(request.name(), request.values(), request.fabrication(), request.catalogues(), own);
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
    private boolean sound(StageSpec stage) {
        return keeps(stage) && (!stage.ask().isOpen() || runs(stage.mesh()));
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
        Bound centres = ask.centreDistance();
        boolean limited = ask.overall().isPresent()
                || !centres.isExact() && centres.atMost().isPresent();
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

    /** Other candidates, each pair of teeth once: one of a larger module, then the next best. */
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

    /** Whether a mesh runs with what the process leaves of its teeth. */
    private boolean runs(Mesh mesh) {
        PrintedTeeth printed = PrintedTeeth.of(material);
        return MeshChecks.runs(mesh) && (!printed.matters() || printed.contactRatio(mesh) >= 1);
    }

    /** Whether some teeth do for what is asked, and run. */
    private boolean works(PairAsk ask, double at, Optional<Servo> servo) {
        List<PairCandidate> candidates = new TeethSearch(ask).candidates();
        for (int i = 0; i < Math.min(PROPOSED, candidates.size()); i++) {
            Optional<StageSpec> solved = solved(ask, candidates, i, at, servo, new Trouble());
            if (solved.isPresent() && keeps(solved.get()) && runs(solved.get().mesh())) {
                return true;
            }
        }
        return false;
    }
}
