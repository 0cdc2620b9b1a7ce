// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import ringleaf.draw.format.Formats;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.SheetSet;
import ringleaf.part.Design;
import ringleaf.part.ShownUnit;
import ringleaf.report.Wrap;
import ringleaf.report.page.ReportPage;
import ringleaf.spec.text.Shown;

/** {@code make}: designs, checks and writes everything. */
final class MakeCommand implements Command {
    static final String TRIAL_BLADES = "--trial-blades";
    static final String ANYWAY = "--anyway";

    @Override
    public String name() {
        return "make";
    }

    @Override
    public CommandSpec syntax() {
        CommandSpec make = Syntax.command(
                name(),
                "Designs, checks and writes everything. Says first whether it may be cut, and why.",
                "Examples:%n"
                        + "  ringleaf make harbour-light%n"
                        + "  ringleaf make my.yaml -o cut --set shutter.blades=16 --formats dxf --dxf r12%n"
                        + "%n`ringleaf help leaf-aperture` lists every field of a spec with its default.%n"
                        + Syntax.STREAMS);
        Syntax.spec(make);
        make.addOption(Syntax.option(
                "DIR",
                "the output folder; files of the same names there are replaced"
                        + " (default: out/ and the title's name)",
                Syntax.OUTPUT_SHORT,
                Syntax.OUTPUT));
        Syntax.judging(make);
        Syntax.details(make);
        Syntax.formats(make, Formats.ALL);
        make.addOption(Syntax.option(
                "N", "only a trial piece of N blades, to try pins, slope and friction on scrap", TRIAL_BLADES));
        make.addOption(Syntax.flag("writes part files although a check failed (still exit 1)", ANYWAY));
        return make;
    }

    @Override
    public int run(ParseResult given, Console console) {
        Wanted wanted = Wanted.of(Formats.ALL, option -> given.matchedOptionValue(option, null));
        Run run = Run.read(Asked.of(given), console.surroundings(), console.in());
        return make(
                run,
                Optional.ofNullable(given.matchedOptionValue(Syntax.OUTPUT, null)),
                wanted,
                given.matchedOptionValue(TRIAL_BLADES, null),
                given.hasMatchedOption(ANYWAY),
                given.hasMatchedOption(Syntax.DETAILS),
                console);
    }

    /**
     * Makes everything.
     *
     * @param output folder as typed; the default is {@code out/} and the title's name, {@code -trial} after it for
     *     a trial piece
     * @param blades number of blades of a trial piece as typed, or null for the whole
     * @param anyway whether part files are written although a check failed
     * @param details whether all is told
     */
    private static int make(
            Run run,
            Optional<String> output,
            Wanted wanted,
            String blades,
            boolean anyway,
            boolean details,
            Console console) {
        Surroundings surroundings = console.surroundings();
        PrintStream err = console.err();
        String shown = output.orElse("out/" + run.document().slug() + (blades == null ? "" : "-trial"));
        OutputFolder folder = new OutputFolder(surroundings.place(shown, "the folder of --output"), shown);
        folder.check();
        List<Design> designs = blades == null ? run.design() : run.trialPieces(blades);
        List<Preparation> prepared = run.prepare(designs);
        Solids solids = wanted.solids().isPresent()
                ? Solids.of(designs, wanted.solids().get(), run.document().catalogues())
                : null;
        RunFiles drawn = RunFiles.start(run.document(), designs, run.stands(designs), prepared, wanted, solids);
        if (!wanted.pages().isEmpty()) {
            drawn.with(Beside.start(() -> PagePlans.files(run.document(), designs, prepared, wanted)));
        }
        List<Judged> all = run.judge(designs, prepared, surroundings, err);
        Told told = new Told(run.document(), all, console);
        boolean held = told.failed() && !anyway;
        List<SheetSet> sheets = held ? List.of() : run.sheets(surroundings, err);
        List<String> cautions = Cautions.of(all, run.document().catalogues());
        Map<String, byte[]> files = drawn.all(all, held, sheets, wanted, cautions, run.judgedClearances());
        folder.write(files, EarlierRun::files);

        told.briefly();
        ResultText text = new ResultText(Told.unit(run.document()));
        if (blades != null) {
            text.list("no trial piece of", run.untried());
        }
        if (solids != null) {
            List<String> leftOut = new ArrayList<>(solids.leftOut());
            leftOut.addAll(drawn.withoutSolid());
            text.list("no solid of", leftOut);
        }
        text.list("written to " + Shown.cut(shown, 300), List.of(String.join(", ", folders(files))));
        console.out().print(text);
        console.out().flush();
        if (told.failed()) {
            err.print(
                    held
                            ? "part files are held back because a check failed; --anyway writes them\n"
                            : "part files are written although a check failed, as --anyway says\n");
            err.flush();
        }
        if (details) {
            told.inDetail();
        }
        // A trial piece is made to be put together at once, as its few steps say.
        console.out().print(rest(designs, cautions, Told.unit(run.document()), details || blades != null));
        return told.failed() ? Exit.FAILED : Exit.FINE;
    }

    /** Order of assembly and cautions in full, or where they stand. */
    private static String rest(List<Design> designs, List<String> cautions, ShownUnit unit, boolean details) {
        ResultText text = new ResultText(unit);
        if (details) {
            for (Design design : designs) {
                text.buildOrder(design, designs.size() > 1);
            }
            return text.list("cautions", cautions).toString();
        }
        String more = "all sizes, checks and the order of assembly: report.html, or --details";
        return (cautions.isEmpty() ? "" : Wrap.of("", Cautions.brief(cautions), 2)) + Wrap.of("", more, 2);
    }

    /** A word for each folder, after the files at the top by name. */
    private static List<String> folders(Map<String, byte[]> files) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String path : files.keySet()) {
            counts.merge(path.substring(0, path.indexOf('/') + 1), 1, Integer::sum);
        }
        List<String> words = new ArrayList<>();
        for (String path : files.keySet()) {
            if (path.equals(ReportPage.FILE)) {
                words.add(0, path);
            } else if (path.indexOf('/') < 0) {
                words.add(path);
            }
        }
        for (Map.Entry<String, Integer> each : counts.entrySet()) {
            int count = each.getValue();
            if (!each.getKey().isEmpty()) {
                words.add(each.getKey() + " (" + count + (count == 1 ? " file)" : " files)"));
            }
        }
        return words;
    }
}
