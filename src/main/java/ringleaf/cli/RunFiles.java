package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.draw.PartDrawing;
import ringleaf.part.Design;
import ringleaf.report.DesignJson;
import ringleaf.report.FileNames;
import ringleaf.report.FileSet;
import ringleaf.report.MechanismReport;
import ringleaf.report.MotionCsv;
import ringleaf.report.PartFiles;
import ringleaf.report.PartsCsv;
import ringleaf.report.ViewFiles;

/**
 * All files of a run, made in memory. Drawings begin on threads of their own as soon as the designs are there, beside
 * the judge: they share nothing but the designs, which nobody changes, and the order of the files is that of the spec.
 */
final class RunFiles {
    /** The file that lists all others, and the last. */
    static final String DESIGN = "design.json";

    private final String title;
    private final List<Drawn> drawn = new ArrayList<>();

    private record Made(FileSet files, Map<String, List<String>> paths) {}

    private record Drawn(Beside<Made> parts, Beside<FileSet> views) {}

    private RunFiles(String title) {
        this.title = title;
    }

    /** Begins to draw what is wanted of every design. */
    static RunFiles start(String title, List<Design> designs, Wanted wanted) {
        RunFiles files = new RunFiles(title);
        for (Design design : designs) {
            files.drawn.add(new Drawn(
                    Beside.start("parts", () -> parts(design, wanted)),
                    Beside.start("views", () -> views(design, title))));
        }
        return files;
    }

    private static Made parts(Design design, Wanted wanted) {
        FileSet files = new FileSet();
        PartFiles.Wanted own =
                new PartFiles.Wanted(wanted.svg(), wanted.dxf(), wanted.version(), PartDrawing.Options.USUAL);
        return new Made(files, PartFiles.add(design, own, files));
    }

    private static FileSet views(Design design, String title) {
        FileSet files = new FileSet();
        ViewFiles.add(design, title, files);
        return files;
    }

    /**
     * The files by path within the output folder, design.json last.
     *
     * @param all the same designs with their findings
     * @param held whether part files are held back
     */
    Map<String, byte[]> all(List<Judged> all, boolean held) {
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
            for (Map.Entry<String, byte[]> view : drawn.get(i).views.result().files().entrySet()) {
                files.add(view.getKey(), view.getValue());
            }
            reports.add(new MechanismReport(design, all.get(i).findings(), paths));
            designs.add(design);
        }
        files.add("parts.csv", PartsCsv.write(designs));
        byte[] json = DesignJson.write(Version.text(), title, reports, files.files().keySet());
        files.add(DESIGN, json);
        return files.files();
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
