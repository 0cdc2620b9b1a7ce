package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.explore.Axis;
import ringleaf.explore.Change;
import ringleaf.explore.Columns;
import ringleaf.explore.Exploration;
import ringleaf.explore.Grid;
import ringleaf.explore.Row;
import ringleaf.explore.TakenSpec;
import ringleaf.explore.Variants;
import ringleaf.explore.WhyNot;
import ringleaf.mechanism.Kinds;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.report.ExploreChart;
import ringleaf.report.ExploreCsv;
import ringleaf.report.ExploreText;
import ringleaf.report.FileNames;
import ringleaf.report.FindingsText;
import ringleaf.spec.SetOption;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** A run of {@code explore}: every combination of varied fields, solved, checked and compared. */
final class ExploreRun {
    private final InputStream in;
    private final PrintStream out;
    private final PrintStream err;
    private final Surroundings surroundings;

    ExploreRun(Console console) {
        in = console.in();
        out = console.out();
        err = console.err();
        surroundings = console.surroundings();
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
        List<SetOption> sets = new ArrayList<>();
        for (String set : asked.sets()) {
            SetOption.parse(set, problems).ifPresent(sets::add);
        }
        Variants variants = variants(asked, sets, problems);
        Optional<Grid> grid = Grid.read(wish.vary(), variants, wish.sure(), problems);
        grid.ifPresent(found -> refuseOverridden(sets, found, problems));
        problems.throwIfAny();
        if (wish.take() > grid.orElseThrow().size()) {
            throw Stop.wrong("--take " + wish.take() + ": there are no more than " + grid.get().size()
                    + " combinations");
        }
        Exploration exploration = new Exploration(variants, grid.get(), asked.states(), wish.threads());
        String slug = slug(variants, grid.get());
        String shown = wish.output() == null ? "out/" + slug : wish.output();
        OutputFolder folder = new OutputFolder(surroundings.place(shown, "the folder of --output"), shown);
        folder.check();
        String taken = wish.to() == null ? slug + "-" + wish.take() + ".yaml" : wish.to();
        if (wish.take() > 0) {
            refuseUnwritable(taken);
        }
        try (Interrupt interrupt = Interrupt.watch()) {
            Optional<Exploration.Result> result = run(exploration, wish, interrupt);
            if (result.isEmpty()) {
                throw Stop.wrong("every one of " + grid.get().size() + " combinations contradicts itself; the first: "
                        + reasons(exploration.refusal()));
            }
            out.print(ExploreText.of(result.get()));
            refuseFailing(result.get(), wish.take());
            Map<String, byte[]> files = new LinkedHashMap<>();
            files.put("explore.csv", ExploreCsv.write(result.get()));
            files.put("explore.svg", ExploreChart.write(result.get(), slug));
            folder.write(files, List.of());
            ResultText text = new ResultText();
            text.list("written to " + Shown.cut(shown, 300), List.copyOf(files.keySet()));
            out.print(text);
            int exit = end(result.get(), wish, variants, sets, taken);
            out.flush();
            err.flush();
            return exit;
        }
    }

    int whyNot(Asked asked, int threads) {
        Problems problems = new Problems();
        List<SetOption> sets = new ArrayList<>();
        for (String set : asked.sets()) {
            SetOption.parse(set, problems).ifPresent(sets::add);
        }
        Variants variants = variants(asked, sets, problems);
        Variants.Variant variant = variants.reader().read(List.of());
        for (Problem problem : variant.problems()) {
            problems.at(problem.place(), problem.reason(), problem.hint());
        }
        problems.throwIfAny();
        boolean failed = false;
        try (Interrupt interrupt = Interrupt.watch()) {
            WhyNot whyNot = new WhyNot(variants, asked.states(), threads);
            for (int i = 0; i < variant.planned().size(); i++) {
                String name = variant.document().orElseThrow().mechanisms().get(i).name();
                Design design = variant.planned().get(i).design(asked.states());
                ResultText text = new ResultText();
                if (!new Judged(design, design.findings()).failed()) {
                    text.list(name, List.of("every closed-form check holds"));
                } else {
                    failed = true;
                    text.list(name + " fails", failures(design));
                    List<Change> changes = changes(whyNot, name, interrupt);
                    List<String> lines = new ArrayList<>();
                    for (Change change : changes) {
                        lines.add(change.words(true));
                    }
                    text.list(interrupt.asked() ? "what would fit, as far as it was looked for" : "what would fit",
                            lines.isEmpty() ? List.of("no single change does; the checks above say what is missing")
                                    : lines);
                }
                out.print(text);
            }
            if (failed) {
                out.print("each alone, every check solved again; per cent of the value, of 1 mm or 10° where it is 0,"
                        + " and another named way counts as 50 %\n");
            }
            out.flush();
            err.flush();
        }
        return failed ? Exit.FAILED : Exit.FINE;
    }

    private List<Change> changes(WhyNot whyNot, String name, Interrupt interrupt) {
        try (Counter counter = Counter.of(name, surroundings.errIsTerminal(), err)) {
            return whyNot.changes(name, (done, total) -> counter.show(done, total, "fields tried"), interrupt::asked);
        }
    }

    private static List<String> failures(Design design) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : design.findings()) {
            if (finding.failed()) {
                lines.add(FindingsText.line(finding));
            }
        }
        return lines;
    }

    private int end(Exploration.Result result, Wish wish, Variants variants, List<SetOption> sets, String taken) {
        if (!result.isWhole()) {
            err.print("stopped after " + result.rows().size() + " of " + result.grid().size()
                    + " combinations; what is printed and written is the best of these, outlines not judged\n");
        }
        boolean works = !result.rows().isEmpty() && result.rows().get(0).works();
        if (!works) {
            err.print("no combination works; `ringleaf explore SPEC --why-not` looks for the nearest change that"
                    + " does\n");
            return Exit.FAILED;
        }
        if (wish.take() > 0 && result.isWhole()) {
            take(result, wish.take(), variants, sets, taken);
        }
        return Exit.FINE;
    }

    private Optional<Exploration.Result> run(Exploration exploration, Wish wish, Interrupt interrupt) {
        try (Counter counter = Counter.of("explore", surroundings.errIsTerminal(), err)) {
            int keep = Math.max(wish.keep(), wish.take());
            return exploration.run(
                    Optional.ofNullable(wish.minimise()),
                    keep,
                    (done, total) -> counter.show(done, total, "combinations tried"),
                    interrupt::asked);
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

    /** The spec's tree with the options laid over it; what is wrong with it by itself is told at once. */
    private Variants variants(Asked asked, List<SetOption> sets, Problems problems) {
        SharedFiles shared = OwnCatalogues.of(asked.spec(), asked.shared(), surroundings);
        Optional<SpecSource> source = new SpecFinder(surroundings, in).find(asked.spec(), problems);
        Optional<Node.Mapping> root = source.isPresent()
                ? new SpecReader(Kinds.fields(), new Catalogues(shared, problems), problems).root(source.get(), sets)
                : Optional.empty();
        problems.throwIfAny();
        return new Variants(source.orElseThrow(), root.orElseThrow(), shared);
    }

    private static String slug(Variants variants, Grid grid) {
        for (int i = 0; i < Math.min(grid.size(), 100); i++) {
            Variants.Variant variant = variants.reader().read(grid.options(i));
            if (variant.document().isPresent()) {
                return variant.document().get().slug();
            }
        }
        return FileNames.of(variants.source().name());
    }

    /** A field that varies takes no notice of what is set for it. */
    private static void refuseOverridden(List<SetOption> sets, Grid grid, Problems problems) {
        for (SetOption set : sets) {
            String path = String.join(".", set.keys());
            path = path.startsWith("mechanisms.") ? path.substring("mechanisms.".length()) : path;
            for (Axis axis : grid.axes()) {
                String varied = axis.path().shown();
                if (path.equals(varied) || path.startsWith(varied + ".")) {
                    problems.at(set.source().whole(), "has no meaning, as --vary puts its own values there",
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
        if (take > 0 && result.isWhole() && working > 0 && !result.rows().get(take - 1).works()) {
            throw Stop.wrong("--take " + take + ": no design that works stands in that place; "
                    + (working == 1 ? "one works" : working + " work"));
        }
    }

    /** Before the work, not after it. */
    private void refuseUnwritable(String taken) {
        Path path = surroundings.place(taken, "the file of --to");
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            throw existing(taken);
        }
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw Stop.trouble("cannot write " + Shown.cut(taken, 300) + ": there is no such folder");
        }
    }

    private static Stop existing(String taken) {
        return Stop.trouble("cannot write " + Shown.cut(taken, 300) + ": it exists already, and is left as it is");
    }

    private void take(
            Exploration.Result result, int take, Variants variants, List<SetOption> sets, String taken) {
        Row row = result.rows().get(take - 1);
        List<SetOption> options = result.grid().options(row.index());
        Node.Mapping meant = variants.root();
        Problems problems = new Problems();
        for (SetOption option : options) {
            meant = option.over(meant, problems);
        }
        List<SetOption> all = new ArrayList<>(sets);
        all.addAll(options);
        Optional<String> text = TakenSpec.of(variants.source(), all, meant);
        if (text.isEmpty()) {
            throw Stop.trouble("the values have no place of their own in the text of the spec (it uses aliases, or"
                    + " writes a map where a value is to stand); give them with --set instead");
        }
        write(taken, text.get());
        out.print("wrote " + taken + " (place " + take + "); next: ringleaf make " + taken + "\n");
    }

    private void write(String shown, String text) {
        Path path = surroundings.place(shown, "the file of --to");
        boolean made = false;
        try {
            Files.createFile(path);
            made = true;
            Files.write(path, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw existing(shown);
        } catch (IOException e) {
            if (made) {
                path.toFile().delete();
            }
            throw Trouble.writing(shown, e);
        }
    }
}
