// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.explore.Axis;
import ringleaf.explore.Columns;
import ringleaf.explore.Exploration;
import ringleaf.explore.Grid;
import ringleaf.explore.Row;
import ringleaf.explore.Variants;
import ringleaf.part.ShownUnit;
import ringleaf.report.ExploreChart;
import ringleaf.report.ExploreCsv;
import ringleaf.report.ExploreText;
import ringleaf.report.FileNames;
import ringleaf.spec.SetOption;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** A run of {@code explore}: every combination of varied fields, solved, checked and compared. */
final class ExploreRun {
    private final Console console;
    private final PrintStream out;
    private final PrintStream err;

    ExploreRun(Console console) {
        this.console = console;
        out = console.out();
        err = console.err();
    }

    /**
     * What is asked beside the spec.
     *
     * @param vary each {@code PATH=VALUES}
     * @param minimise figure to seek, or null for the usual one
     * @param keep best rows that are judged and shown
     * @param take place of the row to write as a spec, or 0
     * @param to file for it, or null for the usual one
     * @param output folder, or null for the usual one
     * @param sure whether a very large number of combinations is meant
     * @param threads that share the work
     */
    record Wish(
            List<String> vary,
            String minimise,
            int keep,
            int take,
            String to,
            String output,
            boolean sure,
            int threads) {}

    int explore(Asked asked, Wish wish) {
        Problems problems = new Problems();
        AskedVariants of = AskedVariants.of(asked, console, problems);
        Optional<Grid> grid = Grid.read(wish.vary(), of.variants(), wish.sure(), problems);
        grid.ifPresent(found -> refuseOverridden(of.sets(), found, problems));
        problems.throwIfAny();
        if (wish.take() > grid.orElseThrow().size()) {
            throw Stop.wrong("--take " + wish.take() + ": there are no more than "
                    + grid.get().size() + " combinations");
        }
        Exploration exploration = new Exploration(of.variants(), grid.get(), asked.states(), wish.threads());
        Optional<SpecDocument> document = document(of.variants(), grid.get());
        String slug = document.map(SpecDocument::slug)
                .orElse(FileNames.of(of.variants().source().name()));
        String shown = wish.output() == null ? "out/" + slug : wish.output();
        OutputFolder folder = new OutputFolder(console.surroundings().place(shown, "the folder of --output"), shown);
        folder.check();
        TakenFile taken = new TakenFile(
                wish.to() == null ? slug + "-" + wish.take() + ".yaml" : wish.to(), console.surroundings());
        if (wish.take() > 0) {
            taken.refuseUnwritable();
        }
        try (Interrupt interrupt = Interrupt.watch()) {
            Optional<Exploration.Result> result = run(exploration, wish, interrupt);
            if (result.isEmpty()) {
                throw Stop.wrong("every one of " + grid.get().size() + " combinations is inconsistent; the first: "
                        + reasons(exploration.refusal()));
            }
            out.print(ExploreText.of(result.get(), document.map(Told::unit).orElse(ShownUnit.MM)));
            refuseFailing(result.get(), wish.take());
            Map<String, byte[]> files = new LinkedHashMap<>();
            files.put("explore.csv", ExploreCsv.write(result.get()));
            files.put("explore.svg", ExploreChart.write(result.get(), slug));
            folder.write(files, any -> List.of());
            ResultText text = new ResultText();
            text.list("written to " + Shown.cut(shown, 300), List.copyOf(files.keySet()));
            out.print(text);
            int exit = end(result.get(), wish.take(), of, taken);
            out.flush();
            err.flush();
            return interrupt.asked() ? Exit.INTERRUPTED : exit;
        }
    }

    private int end(Exploration.Result result, int take, AskedVariants of, TakenFile taken) {
        String stopped = stopped(result);
        err.print(stopped.isEmpty() ? "" : stopped + '\n');
        if (result.rows().isEmpty()) {
            return Exit.FAILED;
        }
        if (!result.rows().get(0).works()) {
            err.print((result.isWhole() ? "no combination works" : "none that was looked at works")
                    + "; `ringleaf explore SPEC --why-not` looks for the nearest change that does\n");
            return Exit.FAILED;
        }
        if (take > 0) {
            // A whole result was held against the place before anything was written.
            Row row = take <= result.rows().size() ? result.rows().get(take - 1) : null;
            if (row == null || !row.works() || !row.judged()) {
                err.print(
                        "--take " + take + ": until it was stopped no design that holds on the geometry stands in that"
                                + " place; nothing is taken\n");
                return Exit.FAILED;
            }
            taken.write(result, take, of);
            out.print("wrote " + taken.shown() + " (place " + take + (result.isWhole() ? "" : " so far")
                    + "); next: ringleaf make " + taken.shown() + "\n");
        }
        return Exit.FINE;
    }

    /** What a stop left out, in words; empty when it was not stopped. */
    private static String stopped(Exploration.Result result) {
        String unjudged = result.unjudged() == 0
                ? ""
                : result.unjudged() + " of " + result.shown().size() + " shown not verified on the geometry";
        if (result.isWhole()) {
            return unjudged.isEmpty() ? "" : "stopped: " + unjudged;
        }
        String of =
                "stopped after " + result.rows().size() + " of " + result.grid().size() + " combinations; ";
        return of
                + (result.rows().isEmpty()
                        ? "nothing was found yet"
                        : "what is printed and written is the best of these, "
                                + (unjudged.isEmpty() ? "verified on the geometry" : unjudged));
    }

    private Optional<Exploration.Result> run(Exploration exploration, Wish wish, Interrupt interrupt) {
        Exploration.Patience patience = new Exploration.Patience() {
            @Override
            public boolean isOver() {
                return interrupt.asked();
            }

            @Override
            public boolean isOutEvenForJudging() {
                return interrupt.askedTwice();
            }
        };
        try (Counter counter = Counter.of("explore", console.surroundings().errIsTerminal(), err)) {
            return exploration.run(
                    new Exploration.Asked(Optional.ofNullable(wish.minimise()), wish.keep(), wish.take()),
                    (done, total) -> counter.show(done, total, "combinations tried"),
                    patience);
        } catch (Columns.UnknownFigure e) {
            throw Stop.wrong("--minimise: " + e.getMessage());
        }
    }

    private static String reasons(List<Problem> problems) {
        List<String> reasons = new ArrayList<>();
        for (Problem problem : problems) {
            reasons.add(problem.message());
        }
        return String.join("; ", reasons);
    }

    /** The first combination that can be read, for what all share. */
    private static Optional<SpecDocument> document(Variants variants, Grid grid) {
        for (int i = 0; i < Math.min(grid.size(), 100); i++) {
            Variants.Variant variant = variants.reader().read(grid.options(i));
            if (variant.document().isPresent()) {
                return variant.document();
            }
        }
        return Optional.empty();
    }

    /** A field that varies takes no notice of what is set for it. */
    private static void refuseOverridden(List<SetOption> sets, Grid grid, Problems problems) {
        for (SetOption set : sets) {
            String path = String.join(".", set.keys());
            path = path.startsWith("mechanisms.") ? path.substring("mechanisms.".length()) : path;
            for (Axis axis : grid.axes()) {
                String varied = axis.path().shown();
                if (path.equals(varied) || path.startsWith(varied + ".")) {
                    problems.at(
                            set.source().whole(),
                            "has no meaning, as --vary puts its own values there",
                            "leave one of them out");
                }
            }
        }
    }

    /** Where a whole result has designs that work, the one to take must be among them, or nothing is written. */
    private static void refuseFailing(Exploration.Result result, int take) {
        int working = 0;
        for (Row row : result.rows()) {
            working += row.works() ? 1 : 0;
        }
        if (take > 0
                && result.isWhole()
                && working > 0
                && !result.rows().get(take - 1).works()) {
            throw Stop.wrong("--take " + take + ": no design that works stands in that place; "
                    + (working == 1 ? "one works" : working + " work"));
        }
    }
}
