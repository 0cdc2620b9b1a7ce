// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Design;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** A pulley and the search over stocked belts, warm, the spec already read. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class BeltBenchmark {
    private static final int STATES = 13;
    private static final String PULLEY = """
            mechanisms:
              pulley:
                kind: pulley
                belt: T2.5
                teeth: 20
            """;

    private Request pulleyRequest;
    private DriveSpec drive;

    @Setup
    public void read() throws IOException {
        pulleyRequest = request(PULLEY);
        drive = new DriveReader(request(Files.readString(Path.of("presets", "semaphore-arm-belt.yaml"))))
                .read()
                .spec();
    }

    private static Request request(String text) {
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        SpecDocument document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("benchmark", text), List.of())
                .orElseThrow();
        MechanismSpec one = document.mechanisms().get(0);
        return new Request(one.name(), one.values(), document.fabrication(), catalogues, problems);
    }

    /** A 20-tooth pulley from its values: generated groove, parts, rolling belt, checks. */
    @Benchmark
    public Design pulley() {
        Kind.Planned planned = new Pulley().read(pulleyRequest);
        return planned.design(STATES);
    }

    /** The stocked belt and the idler's place for pulleys on fixed axes. */
    @Benchmark
    public BeltSearch stockSearch() {
        return BeltSearch.of(drive);
    }
}
