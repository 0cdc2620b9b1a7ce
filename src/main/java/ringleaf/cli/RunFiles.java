package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
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

/** All files of a run, made in memory; design.json is the last. */
final class RunFiles {
    /** The file that lists all others. */
    static final String DESIGN = "design.json";

    private RunFiles() {}

    /**
     * The files by path within the output folder.
     *
     * @param wanted part files; null when they are held back
     */
    static Map<String, byte[]> of(String title, List<Judged> all, Wanted wanted) {
        FileSet files = new FileSet();
        List<MechanismReport> reports = new ArrayList<>();
        List<Design> designs = new ArrayList<>();
        for (Judged judged : all) {
            Design design = judged.design();
            Map<String, List<String>> paths = wanted == null ? Map.of() : parts(design, wanted, files);
            reports.add(new MechanismReport(design, judged.findings(), paths));
            designs.add(design);
            files.add("motion/" + FileNames.of(design.name()) + ".csv", MotionCsv.write(design.motion()));
            ViewFiles.add(design, title, files);
        }
        files.add("parts.csv", PartsCsv.write(designs));
        byte[] json = DesignJson.write(Version.text(), title, reports, files.files().keySet());
        files.add(DESIGN, json);
        return files.files();
    }

    private record Made(FileSet files, Map<String, List<String>> paths) {}

    /** SVG on a thread of its own beside DXF: they share nothing but the design, which nobody changes. */
    private static Map<String, List<String>> parts(Design design, Wanted wanted, FileSet files) {
        Beside<Made> svg = Beside.start("svg", () -> made(design, wanted, wanted.svg(), false));
        Made dxf = made(design, wanted, false, wanted.dxf());
        Map<String, List<String>> paths = new LinkedHashMap<>();
        add(svg.result(), files, paths);
        add(dxf, files, paths);
        return paths;
    }

    private static Made made(Design design, Wanted wanted, boolean svg, boolean dxf) {
        FileSet files = new FileSet();
        if (!svg && !dxf) {
            return new Made(files, Map.of());
        }
        PartFiles.Wanted own = new PartFiles.Wanted(svg, dxf, wanted.version(), PartDrawing.Options.USUAL);
        return new Made(files, PartFiles.add(design, own, files));
    }

    private static void add(Made made, FileSet files, Map<String, List<String>> paths) {
        for (Map.Entry<String, List<String>> part : made.paths.entrySet()) {
            List<String> own = paths.computeIfAbsent(part.getKey(), name -> new ArrayList<>());
            for (String path : part.getValue()) {
                own.add(files.add(path, made.files.files().get(path)));
            }
        }
    }

    /** A result that is worked out on another thread meanwhile. */
    static final class Beside<T> {
        private final Thread thread;
        private T result;
        private Throwable failure;

        private Beside(String name, Supplier<T> work) {
            thread = new Thread(() -> run(work), name);
            thread.setDaemon(true);
        }

        static <T> Beside<T> start(String name, Supplier<T> work) {
            Beside<T> beside = new Beside<>(name, work);
            beside.thread.start();
            return beside;
        }

        private void run(Supplier<T> work) {
            try {
                result = work.get();
            } catch (RuntimeException | Error e) {
                failure = e;
            }
        }

        /** The result, once it is there; what went wrong on the other thread goes on here. */
        T result() {
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted", e);
            }
            if (failure instanceof Error error) {
                throw error;
            } else if (failure != null) {
                throw (RuntimeException) failure;
            }
            return result;
        }
    }
}
