// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/**
 * Combinations a second, warm, on two threads. {@code alone} varies the least opening, so that every combination is
 * solved and swept by itself; {@code shared} varies what leaves the blades alone (thickness, depth), as grids often do.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
public class ExploreBenchmark {
    private static final int THREADS = 2;
    private static final int COMBINATIONS = 240;
    private static final int SCREENED = 10_000;

    /** Number of blades. */
    @Param({"8", "16", "32"})
    public int blades;

    /** States that each combination is checked at. */
    @Param({"31", "61", "181"})
    public int states;

    /** Where the drive pin sits; {@code any} tries every layout. */
    @Param({"far-end", "any"})
    public String pin;

    private Variants variants;
    private Grid alone;
    private Grid shared;
    private List<Kind.Planned> planned;

    @Setup
    public void read() {
        String text = """
                title: Benchmark
                mechanisms:
                  light:
                    kind: leaf-aperture
                    full-opening: 64
                    least-opening: 20
                    blade-thickness: 0.15
                """;
        text += "    blades: " + blades + "\n" + (pin.equals("any") ? "" : "    drive-pin: " + pin + "\n");
        Problems problems = new Problems();
        SpecSource source = SpecSource.of("benchmark", text);
        Node.Mapping root = new SpecReader(
                        Kinds.REGISTERED.fields(), new Catalogues(SharedFiles.NONE, problems), problems)
                .root(source, List.of())
                .orElseThrow();
        variants = new Variants(Kinds.REGISTERED, source, root, SharedFiles.NONE);
        alone = Grid.read(List.of("light.least-opening=20..31.95..0.05"), variants, false, problems)
                .orElseThrow();
        shared = Grid.read(
                        List.of("light.least-opening=20..31", "light.blade-thickness=0.05..0.24..0.01"),
                        variants,
                        false,
                        problems)
                .orElseThrow();
        problems.throwIfAny();
        if (alone.size() != COMBINATIONS || shared.size() != COMBINATIONS) {
            throw new IllegalStateException(alone.size() + " and " + shared.size() + " combinations");
        }
        planned = new ArrayList<>();
        Variants.Reader reader = variants.reader();
        for (int i = 0; i < alone.size(); i++) {
            planned.add(reader.read(alone.options(i)).planned().get(0));
        }
    }

    private List<Row> rows(Grid grid) {
        Memo memo = new Memo(4000);
        Variants.Variant first = variants.reader().read(grid.options(0));
        Columns columns = new Columns.Finder(grid, first, first, states, memo).find(Optional.empty());
        return new RowWork(variants, grid, columns, states, memo).all(THREADS, (d, t) -> {}, () -> false);
    }

    /** Combinations that have nothing in common. */
    @Benchmark
    @OperationsPerInvocation(COMBINATIONS)
    public List<Row> alone() {
        return rows(alone);
    }

    /** Combinations of which twenty at a time have the same blades. */
    @Benchmark
    @OperationsPerInvocation(COMBINATIONS)
    public List<Row> shared() {
        return rows(shared);
    }

    /** Closed forms alone, on one thread, of specs that were read. */
    @Benchmark
    @OperationsPerInvocation(SCREENED)
    public int screened() {
        int refused = 0;
        for (int i = 0; i < SCREENED; i++) {
            refused += planned.get(i % planned.size()).refusal().isPresent() ? 1 : 0;
        }
        return refused;
    }

    /** The same with reading each combination's values first. */
    @Benchmark
    @OperationsPerInvocation(COMBINATIONS)
    public int readAndScreened() {
        int refused = 0;
        Variants.Reader reader = variants.reader();
        for (int i = 0; i < COMBINATIONS; i++) {
            refused += reader.read(alone.options(i)).planned().get(0).refusal().isPresent() ? 1 : 0;
        }
        return refused;
    }
}
