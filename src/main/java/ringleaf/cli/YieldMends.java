// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.explore.Variants;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Words;
import ringleaf.spec.Fabrication;
import ringleaf.spec.SetOption;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Problems;
import ringleaf.tolerance.DriftStudy;
import ringleaf.tolerance.Ticker;
import ringleaf.tolerance.Yield;
import ringleaf.tolerance.YieldStudy;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/**
 * Single changes of a spec with which enough of its builds hold: those that relieve what gives way most often, and finer
 * processes. Each is read as it would be typed, designed, judged and built as often as the spec itself.
 */
final class YieldMends {
    /** Share of builds that a design by default clearances is to hold in. */
    static final double ENOUGH = 0.95;
    /** Builds that are enough to see whether a change helps; what helps is proved with all. */
    private static final int BRIEF = 400;
    /** What a brief look may miss the share by and still be looked at closely. */
    private static final double NEARLY = 0.015;

    private static final int STATES = 31;
    private static final int MOST_TOLD = 3;
    private static final int MOST_TRIED = 40;
    /** Sheet that stands in for what is printed with no thickness of its own, mm. */
    private static final double USUAL_SHEET = 3;

    private static final int STOCKS_OF_PROCESS = 2;

    private final Variants.Reader reader;
    private final Catalogues catalogues;
    private final Fabrication fabrication;
    private final int builds;
    private final long seed;
    private final int threads;
    private final List<Mend> found = new ArrayList<>();
    private Optional<Mend> best = Optional.empty();
    /** Everything that was tried, as typed. */
    private final Set<String> tried = new HashSet<>();

    /** Looks with as many builds as the spec itself was judged by. */
    YieldMends(Run run, int builds, long seed, int threads) {
        this.reader = run.variants().reader();
        this.catalogues = run.document().catalogues();
        this.fabrication = run.document().fabrication();
        this.builds = builds;
        this.seed = seed;
        this.threads = threads;
    }

    /**
     * A change.
     *
     * @param typed what to put after {@code --set}
     * @param share of builds that hold then
     */
    record Mend(String typed, double share) {
        private String words() {
            return "--set '" + typed + "' (" + Words.number(100 * share, 1) + " %)";
        }
    }

    /** What is told of a yield that is too small: which requirement, what it has, and what would mend it. */
    List<String> lines(String mechanism, int index, AsBuilt built, Yield yield) {
        List<String> lines = new ArrayList<>();
        if (yield.share() >= ENOUGH || yield.failures().isEmpty()) {
            return lines;
        }
        AsBuilt.Limit limit = limit(built, yield.failures().get(0).check());
        if (!limit.room().isEmpty()) {
            lines.add(limit.check() + " (" + limit.holds() + ") has " + limit.room());
        }
        for (Yield.Failure failure : yield.failures()) {
            relieve(mechanism, index, limit(built, failure.check()));
        }
        finer(index, built.families());
        if (!found.isEmpty()) {
            lines.add("with any one of these it holds in " + Words.number(100 * ENOUGH, 0)
                    + " of 100 or more, each tried:");
            for (Mend mend : found) {
                lines.add("  " + mend.words());
            }
        } else {
            lines.add("no single change that was tried brings it to " + Words.number(100 * ENOUGH, 0) + " of 100"
                    + best.filter(m -> m.share() > yield.share())
                            .map(m -> "; best of them: " + m.words())
                            .orElse(""));
        }
        return lines;
    }

    private static AsBuilt.Limit limit(AsBuilt built, String check) {
        for (AsBuilt.Limit limit : built.limits()) {
            if (limit.check().equals(check)) {
                return limit;
            }
        }
        throw new IllegalArgumentException(check);
    }

    /** The nearest value of each field that relieves a limit and does. */
    private void relieve(String mechanism, int index, AsBuilt.Limit limit) {
        for (AsBuilt.Relief relief : limit.reliefs()) {
            String field = mechanism + "." + relief.field() + "=";
            for (String value : relief.values()) {
                if (mends(field) || attempt(field + value, index)) {
                    break;
                }
            }
        }
    }

    private boolean mends(String field) {
        for (Mend mend : found) {
            if (mend.typed().startsWith(field)) {
                return true;
            }
        }
        return false;
    }

    /** Finer ways to make each family, those that are least finer first. */
    private void finer(int index, List<String> families) {
        for (String family : families) {
            var making = fabrication.of(family, USUAL_SHEET);
            List<MakingProcess> finer = new ArrayList<>();
            for (String name : catalogues.processes().names()) {
                MakingProcess process = catalogues.processes().require(name);
                if (process.repeatability() < making.process().repeatability() - 1e-9) {
                    finer.add(process);
                }
            }
            finer.sort((a, b) -> Double.compare(b.repeatability(), a.repeatability()));
            for (MakingProcess process : finer) {
                for (String stock : stocks(process, making.stock())) {
                    if (attempt(
                            "fabrication." + family + "={process: " + process.name() + ", stock: " + stock + "}",
                            index)) {
                        break;
                    }
                }
            }
        }
    }

    /** Stocks for another process: the same, then what has its thickness, or none. */
    private List<String> stocks(MakingProcess process, Stock now) {
        List<String> names = new ArrayList<>();
        double thickness = now.thickness().orElse(USUAL_SHEET);
        if (now.isMadeBy(process.name())) {
            names.add(now.name());
        }
        for (String name : catalogues.stock().names()) {
            Stock stock = catalogues.stock().require(name);
            boolean fits = stock.thickness().isEmpty()
                    ? process.makesLayers()
                    : Math.abs(stock.thickness().getAsDouble() - thickness) < 1e-9;
            if (fits && stock.isMadeBy(process.name()) && !names.contains(name)) {
                names.add(name);
            }
        }
        return names.subList(0, Math.min(STOCKS_OF_PROCESS, names.size()));
    }

    /** Whether enough builds hold with this typed. */
    private boolean attempt(String typed, int index) {
        if (tried.size() >= MOST_TRIED || found.size() >= MOST_TOLD || !tried.add(typed)) {
            return false;
        }
        Problems problems = new Problems();
        Optional<SetOption> option = SetOption.parse(typed, problems);
        if (option.isEmpty()) {
            return false;
        }
        Variants.Variant variant = reader.read(List.of(option.get()));
        if (!variant.isGood()) {
            return false;
        }
        Kind.Planned planned = variant.planned().get(index);
        Optional<AsBuilt> built = planned.asBuilt();
        if (built.isEmpty() || !holdsAsDrawn(planned, built.get())) {
            return false;
        }
        Mend brief = new Mend(typed, share(built.get(), Math.min(BRIEF, builds)));
        if (brief.share() < ENOUGH - NEARLY) {
            best = best.filter(m -> m.share() >= brief.share()).or(() -> Optional.of(brief));
            return false;
        }
        Mend whole = new Mend(typed, share(built.get(), builds));
        if (whole.share() < ENOUGH || !isJudgedGood(planned)) {
            return false;
        }
        found.add(whole);
        return true;
    }

    private double share(AsBuilt built, int count) {
        return new YieldStudy(built).of(count, seed, threads, Ticker.NONE).share();
    }

    private static boolean holdsAsDrawn(Kind.Planned planned, AsBuilt built) {
        for (Finding finding : planned.design(STATES).findings()) {
            if (finding.failed()) {
                return false;
            }
        }
        return new DriftStudy(built).brokenAsDrawn().isEmpty();
    }

    private static boolean isJudgedGood(Kind.Planned planned) {
        Design design = planned.design(STATES);
        for (Finding finding : Judge.judge(design.assembly(), Options.DEFAULT).findings()) {
            if (finding.failed()) {
                return false;
            }
        }
        return true;
    }
}
