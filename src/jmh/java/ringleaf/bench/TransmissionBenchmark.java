// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.part.Design;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;
import ringleaf.verify.Verdict;

/** Gears and belts, warm: whole designs from the text of a spec, and the proof that teeth roll. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TransmissionBenchmark {
    private static final String PAIR = """
            mechanisms:
              pair:
                kind: gear-pair
                driver: {teeth: 24}
                driven: {teeth: 40}
                module: 1
            """;
    private static final String PULLEY = """
            mechanisms:
              pulley:
                kind: pulley
                belt: T2.5
                teeth: 20
            """;

    private Design pair;
    private String belt;

    @Setup
    public void design() throws IOException {
        pair = Specs.design(PAIR);
        belt = Specs.text("semaphore-arm-belt");
    }

    /** Both gears of a pair turned together through a pitch, and everything else that the pair requires. */
    @Benchmark
    public Verdict rolledPair() {
        return Judge.judge(pair.assembly(), Options.DEFAULT);
    }

    /** A 20-tooth pulley with grooves generated from the belt's tooth. */
    @Benchmark
    public Design pulley() {
        return Specs.design(PULLEY);
    }

    /** A drive of two pulleys and an idler: search over the stocked lengths, grooves, plates. */
    @Benchmark
    public Design beltDrive() {
        return Specs.design(belt);
    }
}
