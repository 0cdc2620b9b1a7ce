// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import ringleaf.fabricate.SheetSet;
import ringleaf.fabricate.Sheets;

/** The presets' parts on sheets of 300 by 300 mm; tells how much of each becomes parts, beside boxes in rows. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 2)
public class PresetSheetsBenchmark {
    @Param({"harbour-light", "cold-frame-vent", "field-camera-stop", "lens-turntable-gears", "semaphore-arm-belt"})
    public String preset;

    private Sheets sheets;
    private List<SheetSet> sets;

    @Setup
    public void prepare() throws IOException {
        sheets = Specs.sheets(Specs.text(preset), "fabrication.sheet={width: 300mm, height: 300mm}");
    }

    @Benchmark
    public List<SheetSet> lay() {
        sets = sheets.laid((done, all) -> {});
        return sets;
    }

    @TearDown
    public void tell() {
        for (SheetSet set : sets) {
            System.out.printf(
                    Locale.ROOT,
                    "%n%s, %s: %d parts on %d sheets, utilisation %.1f %%, upright boxes in rows %.1f %%%n",
                    preset,
                    set.stock().name(),
                    set.pieces(),
                    set.nested().sheets().size(),
                    100 * set.utilisation(),
                    100 * set.boxUtilisation());
        }
    }
}
