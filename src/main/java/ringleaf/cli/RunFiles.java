package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.PartDrawing;
import ringleaf.draw.view.MovingView;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.Prepared;
import ringleaf.fabricate.SheetSet;
import ringleaf.part.Design;
import ringleaf.report.DesignJson;
import ringleaf.report.FileNames;
import ringleaf.report.FileSet;
import ringleaf.report.MechanismReport;
import ringleaf.report.MotionCsv;
import ringleaf.report.PartFiles;
import ringleaf.report.PartsCsv;
import ringleaf.report.SheetFiles;
import ringleaf.report.ViewFiles;
import ringleaf.report.page.MechanismPage;
import ringleaf.report.page.ReportPage;

/**
 * All files of a run, made in memory. Drawings begin on threads of their own as soon as the designs are there, beside
 * the judge: they share nothing but the designs, which nobody changes, and the order of the files is that of the spec.
 */
final class RunFiles {
    /** The file that lists all others, and the last. */
    static final String DESIGN = "design.json";

    private final String title;
    private final List<Preparation> prepared;
    private final List<Drawn> drawn = new ArrayList<>();

    private record Made(FileSet files, Map<String, List<String>> paths) {}

    private record Shown(FileSet views, MechanismPage page) {}

    private record Drawn(Beside<Made> parts, Beside<Shown> shown) {}

    private RunFiles(String title, List<Preparation> prepared) {
        this.title = title;
        this.prepared = prepared;
    }

    /** Begins to draw what is wanted of every design. */
    static RunFiles start(String title, List<Design> designs, List<Preparation> prepared, Wanted wanted) {
        RunFiles files = new RunFiles(title, prepared);
        for (int i = 0; i < designs.size(); i++) {
            Design design = designs.get(i);
            Preparation own = prepared.isEmpty() ? null : prepared.get(i);
            int number = i;
            files.drawn.add(new Drawn(
                    Beside.start("parts", () -> parts(design, own, wanted)),
                    Beside.start("views", () -> shown(number, design, title))));
        }
        return files;
    }

    private static Made parts(Design design, Preparation prepared, Wanted wanted) {
        FileSet files = new FileSet();
        PartFiles.Wanted own =
                new PartFiles.Wanted(wanted.svg(), wanted.dxf(), wanted.version(), PartDrawing.Options.USUAL);
        if (prepared != null) {
            return new Made(files, PartFiles.add(design.name(), MachineLines.items(design, prepared), own, files));
        }
        return new Made(files, PartFiles.add(design, own, files));
    }

    private static Shown shown(int number, Design design, String title) {
        FileSet files = new FileSet();
        MovingView view = MovingView.of(design.assembly());
        ViewFiles.add(design, view, title, files);
        return new Shown(files, MechanismPage.of(number, design, view));
    }

    /**
     * The files by path within the output folder, design.json last.
     *
     * @param all the same designs with their findings
     * @param held whether part and sheet files are held back
     * @param sheets on which parts are laid out
     * @param cautions for the page, a line each
     */
    Map<String, byte[]> all(
            List<Judged> all, boolean held, List<SheetSet> sheets, Wanted wanted, List<String> cautions) {
        FileSet files = new FileSet();
        List<MechanismReport> reports = new ArrayList<>();
        List<Design> designs = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Design design = all.get(i).design();
            Map<String, List<String>> paths = new LinkedHashMap<>();
            if (!held) {
                add(drawn.get(i).parts.result(), files, paths);
            }
            files.add("motion/" + FileNames.of(design.name()) + ".csv", MotionCsv.write(design.motion()));
            for (Map.Entry<String, byte[]> view : drawn.get(i).shown.result().views.files().entrySet()) {
                files.add(view.getKey(), view.getValue());
            }
            reports.add(report(i, all.get(i), paths));
            designs.add(design);
        }
        files.add("parts.csv", PartsCsv.write(designs));
        if (!held && !sheets.isEmpty()) {
            PartFiles.Wanted own =
                    new PartFiles.Wanted(wanted.svg(), wanted.dxf(), wanted.version(), PartDrawing.Options.USUAL);
            SheetFiles.add(SheetPlans.of(title, sheets), own, files);
        }
        List<MechanismPage> pages = new ArrayList<>();
        for (Drawn each : drawn) {
            pages.add(each.shown.result().page);
        }
        files.add(
                ReportPage.FILE,
                ReportPage.write(Version.text(), title, pages, reports, cautions, Optional.empty()));
        byte[] json = DesignJson.write(Version.text(), title, reports, files.files().keySet());
        files.add(DESIGN, json);
        return files.files();
    }

    private MechanismReport report(int i, Judged judged, Map<String, List<String>> paths) {
        if (prepared.isEmpty()) {
            return new MechanismReport(judged.design(), judged.findings(), paths);
        }
        Map<String, Double> kerfs = new LinkedHashMap<>();
        for (Map.Entry<String, Prepared> part : prepared.get(i).parts().entrySet()) {
            if (part.getValue().kerf() > 0) {
                kerfs.put(part.getKey(), part.getValue().kerf());
            }
        }
        return new MechanismReport(
                judged.design(), judged.findings(), paths, prepared.get(i).fits(), kerfs);
    }

    private static void add(Made made, FileSet files, Map<String, List<String>> paths) {
        Map<String, String> placed = new LinkedHashMap<>();
        for (Map.Entry<String, byte[]> file : made.files.files().entrySet()) {
            placed.put(file.getKey(), files.add(file.getKey(), file.getValue()));
        }
        for (Map.Entry<String, List<String>> part : made.paths.entrySet()) {
            List<String> own = new ArrayList<>();
            for (String path : part.getValue()) {
                own.add(placed.get(path));
            }
            paths.put(part.getKey(), own);
        }
    }
}
