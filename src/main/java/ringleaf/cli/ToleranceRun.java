// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.mechanism.AsBuilt;
import ringleaf.part.Design;
import ringleaf.part.ShownUnit;
import ringleaf.report.FileNames;
import ringleaf.spec.text.Shown;
import ringleaf.tolerance.Drift;
import ringleaf.tolerance.DriftStudy;
import ringleaf.tolerance.Ticker;
import ringleaf.tolerance.ToleranceText;
import ringleaf.tolerance.Yield;
import ringleaf.tolerance.YieldStudy;

/** A run of {@code tolerance}: how far each size may drift, and the share of random builds that hold. */
final class ToleranceRun {
    static final int USUAL_BUILDS = 1000;
    static final int MOST_BUILDS = 1_000_000;

    private final Console console;
    private final Surroundings surroundings;
    private final PrintStream out;
    private final PrintStream err;

    ToleranceRun(Console console) {
        this.console = console;
        surroundings = console.surroundings();
        out = console.out();
        err = console.err();
    }

    /**
     * Looks at every mechanism of the spec.
     *
     * @param output folder for tables, as typed; empty for none
     * @param builds how many, as typed, or null
     * @param seed as typed, or null
     */
    int look(Run run, Optional<String> output, String builds, String seed) {
        String most = "more digits than the assumptions are worth";
        int count = (int) whole("--builds", builds, USUAL_BUILDS, 1, MOST_BUILDS, "a share needs a build", most);
        long start = whole("--seed", seed, 1, 0, Integer.MAX_VALUE, "seeds are not negative", "smaller seeds do");
        OutputFolder folder = null;
        if (output.isPresent()) {
            folder = new OutputFolder(surroundings.place(output.get(), "the folder of --output"), output.get());
            folder.check();
        }
        List<Design> designs = run.design();
        List<Judged> all = run.judge(designs, List.of(), surroundings, err);
        Told told = new Told(run.document(), all, console);
        if (told.failed()) {
            told.findings();
            err.print("a design that does not hold as drawn has no room to drift\n");
            return Exit.FAILED;
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        boolean holds = true;
        for (int i = 0; i < designs.size(); i++) {
            holds &= mechanism(run, i, count, start, files);
        }
        if (folder != null && !files.isEmpty()) {
            folder.write(files, any -> List.of());
            out.print("in " + output.get() + ": " + String.join(", ", files.keySet()) + "\n");
        }
        return holds ? Exit.FINE : Exit.FAILED;
    }

    private boolean mechanism(Run run, int index, int builds, long seed, Map<String, byte[]> files) {
        String name = run.names().get(index);
        Optional<AsBuilt> built = run.planned().get(index).asBuilt();
        if (built.isEmpty()) {
            out.print(name + ": nothing here is known to drift\n");
            return true;
        }
        DriftStudy study = new DriftStudy(built.get());
        List<String> broken = study.brokenAsDrawn();
        if (!broken.isEmpty()) {
            err.print(name + ": as drawn this holds no more once reserves are used up: " + String.join(", ", broken)
                    + "\n");
            return false;
        }
        int threads = Runtime.getRuntime().availableProcessors();
        List<Drift> drifts;
        Yield yield;
        try (Counter counter = Counter.of(name, surroundings.errIsTerminal(), err)) {
            drifts = study.all(threads, ticker(counter, "sizes looked at"));
            yield = new YieldStudy(built.get()).of(builds, seed, threads, ticker(counter, "builds judged"));
        }
        List<String> lines = new ArrayList<>();
        ShownUnit unit = Told.unit(run.document());
        List<String> shares = ToleranceText.yield(yield);
        lines.add(shares.get(0));
        lines.addAll(indented(shares.subList(1, shares.size())));
        lines.addAll(indented(new YieldMends(run, builds, seed, threads).lines(name, index, built.get(), yield)));
        lines.add("how far each size may drift by itself, " + unit.spelling() + "; reserve: the nearer way in multiples"
                + " of what it is made within");
        lines.addAll(indented(ToleranceText.drifts(drifts, unit)));
        lines.add("what stands behind this");
        lines.addAll(indented(built.get().assumptions()));
        lines.addAll(indented(List.of("Deviations are normal about the drawing; what a process keeps a size within"
                + " counts as two standard deviations. Figures of processes are in processes.yaml: put your own"
                + " there.")));
        out.print(name + "\n");
        for (String line : lines) {
            out.print("  " + line + "\n");
        }
        out.flush();
        String path = "tolerance/" + FileNames.of(name);
        files.put(path + "-drift.csv", ToleranceText.driftCsv(drifts).getBytes(StandardCharsets.UTF_8));
        files.put(
                path + "-yield.csv", ToleranceText.yieldCsv(yield, built.get()).getBytes(StandardCharsets.UTF_8));
        return true;
    }

    /** Tells a terminal of every hundredth part, whichever thread has done it. */
    private static Ticker ticker(Counter counter, String what) {
        return (done, of) -> {
            if (done % Math.max(1, of / 100) == 0) {
                synchronized (counter) {
                    counter.show(done, of, what);
                }
            }
        };
    }

    private static List<String> indented(List<String> lines) {
        List<String> all = new ArrayList<>();
        for (String line : lines) {
            all.add("  " + line);
        }
        return all;
    }

    private static long whole(
            String option, String typed, long usual, long least, long most, String whyLeast, String whyMost) {
        if (typed == null) {
            return usual;
        }
        long value = Digits.of(typed);
        if (value < least || value > most) {
            throw Stop.wrong(option + ": " + Shown.quoted(typed) + " is no whole number from " + least + " (" + whyLeast
                    + ") to " + most + " (" + whyMost + ")");
        }
        return value;
    }
}
