// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.draw.format.Formats;
import ringleaf.draw.format.SolidFormat;
import ringleaf.geom.Tolerance;
import ringleaf.part.Part;
import ringleaf.report.FileSet;
import ringleaf.report.SolidFiles;

/** Solids of all made parts of a preset, meshes or STEP, in memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SolidsBenchmark {
    @Param({"harbour-light", "semaphore-arm-belt"})
    public String preset;

    private final List<SolidFiles.Item> items = new ArrayList<>();

    @Setup
    public void design() throws IOException {
        for (Part part : Specs.preset(preset).parts()) {
            if (part.isDrawn() && !part.source().isBought()) {
                items.add(new SolidFiles.Item(preset, part));
            }
        }
    }

    @Benchmark
    public FileSet meshes() {
        return made(true);
    }

    @Benchmark
    public FileSet step() {
        return made(false);
    }

    private FileSet made(boolean printed) {
        List<SolidFormat> formats = Formats.only(Formats.ALL, SolidFormat.class).stream()
                .filter(format -> format.isPrinted() == printed)
                .toList();
        FileSet files = new FileSet();
        SolidFiles.add(items, formats, new Tolerance(0.01), preset, "", files);
        return files;
    }
}
