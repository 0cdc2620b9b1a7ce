// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.draw.format.Formats;
import ringleaf.geom.Contour;
import ringleaf.geom.Tolerance;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.report.DesignJson;
import ringleaf.report.FileSet;
import ringleaf.report.MechanismReport;
import ringleaf.report.MotionCsv;
import ringleaf.report.PartFiles;
import ringleaf.report.PartsCsv;
import ringleaf.report.ViewFiles;
import ringleaf.tooth.Forms;
import ringleaf.tooth.GearOutline;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;
import ringleaf.verify.Verdict;

/** The stages of a run, warm, each on its own. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class RunBenchmark {
    private Design harbourLight;
    private Assembly buildOnly;

    @Setup
    public void design() throws IOException {
        harbourLight = Specs.preset("harbour-light");
        Assembly a = harbourLight.assembly();
        // Nothing is asked of the states that are placed along with it.
        buildOnly = new Assembly(
                a.name(), a.members(), a.motion(), a.leaves(), List.of(), a.callouts(), a.steps(), a.views());
    }

    /** Reads, solves, sweeps and outlines the smallest spec. */
    @Benchmark
    public Design smallestSpec() {
        return Specs.design(Specs.SMALLEST);
    }

    /** Judges the outlines of harbour-light through its motion, on two threads. */
    @Benchmark
    public Verdict judge() {
        return Judge.judge(harbourLight.assembly(), Options.DEFAULT);
    }

    /** Goes through the build order of harbour-light alone, pairs included that a run leaves to another check. */
    @Benchmark
    public Verdict buildOrder() {
        return Judge.judge(buildOnly, Options.DEFAULT);
    }

    /** Makes all files of harbour-light in memory. */
    @Benchmark
    public FileSet files() {
        FileSet files = new FileSet();
        Map<String, List<String>> paths =
                PartFiles.add(harbourLight, new PartFiles.Wanted(Formats.outlines(), Map.of()), files);
        ViewFiles.add(harbourLight, "Harbour light", files);
        files.add("motion/light.csv", MotionCsv.write(harbourLight.motion()));
        files.add("parts.csv", PartsCsv.write(List.of(harbourLight)));
        MechanismReport report = new MechanismReport(harbourLight, harbourLight.findings(), paths);
        files.add(
                "design.json",
                DesignJson.write(
                        "",
                        "Harbour light",
                        List.of(report),
                        List.of(),
                        files.files().keySet()));
        return files;
    }

    /** The outline of a gear with 24 teeth of module 1, within 0.5 µm of the true flank. */
    @Benchmark
    public Contour gearOutline() {
        return GearOutline.of(Forms.of(1, 24), Tolerance.CURVE).external();
    }
}
