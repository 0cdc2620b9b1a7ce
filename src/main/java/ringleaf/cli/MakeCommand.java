package ringleaf.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.SheetSet;
import ringleaf.part.Design;
import ringleaf.spec.text.Shown;

/** {@code make}: designs, checks and writes everything. */
final class MakeCommand {
    private final Surroundings surroundings;
    private final PrintStream out;
    private final PrintStream err;

    MakeCommand(Surroundings surroundings, PrintStream out, PrintStream err) {
        this.surroundings = surroundings;
        this.out = out;
        this.err = err;
    }

    /**
     * Makes everything.
     *
     * @param output folder as typed; the default is {@code out/} and the title's name
     * @param anyway whether part files are written although a check failed
     */
    int make(Run run, Optional<String> output, Wanted wanted, boolean anyway) {
        String shown = output.orElse("out/" + run.document().slug());
        Path path = surroundings.place(shown, "the folder of --output");
        OutputFolder folder = new OutputFolder(path, shown);
        folder.check();
        List<Design> designs = run.design();
        List<Preparation> prepared = run.prepare(designs);
        RunFiles drawn = RunFiles.start(run.document().title(), designs, prepared, wanted);
        Beside<List<String>> earlier = Beside.start("earlier-run", () -> EarlierRun.files(path));
        List<Judged> all = run.judge(designs, prepared, surroundings, err);
        boolean failed = false;
        for (Judged judged : all) {
            failed |= judged.failed();
        }
        boolean held = failed && !anyway;
        List<SheetSet> sheets = held ? List.of() : run.sheets(surroundings, err);
        List<String> cautions = Cautions.of(all, run.document().catalogues());
        Map<String, byte[]> files = drawn.all(all, held, sheets, wanted, cautions);
        folder.write(files, earlier.result());

        ResultText text = new ResultText();
        for (Judged judged : all) {
            text.design(judged.design());
        }
        out.print(text);
        out.flush();
        FindingsOut.print(all, surroundings.colour(), err);
        if (held) {
            err.print("part files are held back because a check failed; --anyway writes them\n");
        }
        text = new ResultText();
        for (Design design : designs) {
            text.buildOrder(design, all.size() > 1);
        }
        text.list("cautions", cautions);
        text.list("written to " + Shown.cut(shown, 300), folders(files));
        out.print(text);
        return failed ? Exit.FAILED : Exit.FINE;
    }

    /** A line for each folder, and the files at the top by name. */
    private static List<String> folders(Map<String, byte[]> files) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String path : files.keySet()) {
            counts.merge(path.substring(0, path.indexOf('/') + 1), 1, Integer::sum);
        }
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, Integer> each : counts.entrySet()) {
            int count = each.getValue();
            if (!each.getKey().isEmpty()) {
                lines.add(each.getKey() + " (" + count + (count == 1 ? " file)" : " files)"));
            }
        }
        for (String path : files.keySet()) {
            if (path.indexOf('/') < 0) {
                lines.add(path);
            }
        }
        return lines;
    }
}
