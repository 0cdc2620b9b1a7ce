// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.tolerance.Ticker;
import ringleaf.tolerance.Yield;
import ringleaf.tolerance.YieldStudy;

/** Random builds of an aperture a second, every blade by itself; the cost grows with the square of the blades. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class YieldBenchmark {
    private static final int BUILDS = 100;

    @Param({"8", "14", "28"})
    int blades;

    @Param({"1", "2"})
    int threads;

    private YieldStudy study;

    @Setup
    public void read() {
        String spec = Specs.SMALLEST.replace("blades: 14", "blades: " + blades) + "    drive: {servo: micro-180}\n";
        study = new YieldStudy(Specs.planned(spec).asBuilt().orElseThrow());
    }

    @Benchmark
    @OperationsPerInvocation(BUILDS)
    public Yield builds() {
        return study.of(BUILDS, 1, threads, Ticker.NONE);
    }
}
