// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import com.sun.management.OperatingSystemMXBean;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.format.Formats;
import ringleaf.draw.format.SolidFormat;
import ringleaf.fabricate.Bill;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.SheetSet;
import ringleaf.mechanism.Kind;
import ringleaf.part.Design;
import ringleaf.spec.text.SpecRefused;

/**
 * One spec, designed, judged, cut, meshed and drawn in memory, without a search for what would mend it.
 *
 * @param said empty where all went well, else how it was refused or what broke
 * @param broke whether that was an exception or a number that is none
 * @param failed whether a check failed
 * @param seconds of processor time that it took
 */
record Swept(String said, boolean broke, boolean failed, double seconds) {
    private static final int STATES = 7;

    static Swept of(Path folder, String spec, List<String> sets, boolean drawn) {
        double start = processor();
        String said = "";
        boolean broke = false;
        boolean failed = false;
        try {
            Run run = run(folder, spec, sets);
            failed = made(run, folder, drawn);
        } catch (SpecRefused | Stop e) {
            said = e.getMessage();
            broke = said.contains("NaN") || said.contains("Infinity");
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            said = cause + " " + place(cause);
            broke = true;
        }
        return new Swept(said, broke, failed, processor() - start);
    }

    /** Processor time of all threads, s: what others do on the machine is none of it. */
    private static double processor() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    static Run run(Path folder, String spec, List<String> sets) {
        Asked asked = new Asked(spec, sets, STATES, false, Optional.empty());
        return Run.read(asked, new Surroundings(folder, false, false), InputStream.nullInputStream());
    }

    private static boolean made(Run run, Path folder, boolean drawn) {
        List<Design> designs = new ArrayList<>();
        for (Kind.Planned each : run.planned()) {
            Design design = each.design(STATES);
            designs.add(
                    Bill.of(design, run.document().fabrication(), run.document().catalogues()));
        }
        List<Preparation> prepared = run.prepare(designs);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        List<Judged> all = run.judge(designs, prepared, new Surroundings(folder, false, false), nowhere);
        boolean failed = all.stream().anyMatch(Judged::failed);
        Map<String, String> options =
                Map.of(Syntax.FORMATS, "svg,dxf,stl,3mf,pdf", SolidFormat.PARTS.name(), SolidsAsked.ALL);
        Wanted wanted = Wanted.of(Formats.ALL, options::get);
        if (!drawn) {
            wanted = Wanted.of(Formats.ALL, o -> o.equals(Syntax.FORMATS) ? "svg" : null);
        }
        Solids solids = wanted.solids().isPresent()
                ? Solids.of(designs, wanted.solids().get(), run.document().catalogues())
                : null;
        RunFiles files = RunFiles.start(run.document(), designs, run.stands(designs), prepared, wanted, solids);
        if (drawn) {
            Wanted pages = wanted;
            files.with(Beside.start(() -> PagePlans.files(run.document(), designs, prepared, pages)));
        }
        List<SheetSet> sheets = run.sheets(new Surroundings(folder, false, false), nowhere);
        Map<String, byte[]> made = files.all(
                all, false, sheets, wanted, Cautions.of(all, run.document().catalogues()), run.judgedClearances());
        String json = new String(made.get(RunFiles.DESIGN), StandardCharsets.UTF_8);
        if (json.contains("NaN") || json.contains("Infinity")) {
            int at = Math.max(json.indexOf("NaN"), json.indexOf("Infinity"));
            throw new IllegalStateException("no number: " + json.substring(Math.max(0, at - 120), at + 8));
        }
        return failed;
    }

    private static String place(Throwable cause) {
        List<String> places = new ArrayList<>();
        for (StackTraceElement at : cause.getStackTrace()) {
            if (at.getClassName().startsWith("ringleaf.") && places.size() < 6) {
                String type = at.getClassName().substring(at.getClassName().lastIndexOf('.') + 1);
                places.add(type + "." + at.getMethodName() + ":" + at.getLineNumber());
            }
        }
        return String.join(" < ", places);
    }
}
