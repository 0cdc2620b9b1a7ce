// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ringleaf.coupon.CouponParts;
import ringleaf.coupon.CouponPlan;
import ringleaf.coupon.Measured;
import ringleaf.coupon.SheetReader;
import ringleaf.geom.Region;
import ringleaf.outline.OutlineFile;
import ringleaf.part.Part;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** The coupon made, its filled sheet read, and a bezel read. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CouponBenchmark {
    private final Catalogues catalogues = new Catalogues(SharedFiles.NONE, new Problems());
    private SpecSource sheet;
    private SpecSource bezel;
    private MakingProcess laser;

    @Setup
    public void read() throws IOException {
        laser = catalogues.processes().require("co2-laser");
        sheet = source("golden/coupon-read/coupon.yaml");
        bezel = source("outlines/bezel-loose.dxf");
    }

    private static SpecSource source(String name) throws IOException {
        return SpecSource.of(name, Files.readString(Path.of("src/test/resources/" + name)));
    }

    @Benchmark
    public Part piece() {
        return CouponParts.of(CouponPlan.of(laser, catalogues.stock().require("acrylic-3")));
    }

    @Benchmark
    public Part printedPieceWithRaisedLettering() {
        MakingProcess printer = catalogues.processes().require("filament-print");
        return CouponParts.of(CouponPlan.of(printer, catalogues.stock().require("pla")));
    }

    @Benchmark
    public Optional<Measured> filledSheet() {
        Problems problems = new Problems();
        return Measured.of(SheetReader.read(sheet, problems).orElseThrow(), laser, problems);
    }

    @Benchmark
    public List<Region> bezelOfLoosePieces() {
        Problems problems = new Problems();
        OutlineFile.Reading reading = new OutlineFile.Reading(Optional.empty(), List.of("cut"), 0, 0, 0);
        return OutlineFile.regions(bezel, reading, new OutlineFile.Asked(bezel.whole(), bezel.whole()), problems);
    }
}
