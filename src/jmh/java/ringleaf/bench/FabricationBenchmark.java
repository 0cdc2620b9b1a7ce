// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import ringleaf.curve.ArcSlot;
import ringleaf.fabricate.BoxPacking;
import ringleaf.fabricate.Kerf;
import ringleaf.fabricate.NestPiece;
import ringleaf.fabricate.Nested;
import ringleaf.fabricate.Nesting;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Part;
import ringleaf.spec.Cutting;
import ringleaf.spec.text.SpecSource;

/** Making ready for the machine, warm: kerf on a large wheel, and sixty mixed parts on sheets. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FabricationBenchmark {
    private static final String RING = """
            mechanisms:
              ring:
                kind: gear
                internal: true
                teeth: 120
                module: 1
                hub-screws: {screw: M3, count: 12}
            """;
    private static final Cutting.SheetSize SHEET = new Cutting.SheetSize(
            400, 300, 2, 3, true, "free", 12, SpecSource.of("benchmark", "").whole());

    private Part ring;
    private List<NestPiece> pieces;
    private Nested nested;

    @Setup
    public void parts() {
        ring = Specs.design(RING).parts().get(0);
        pieces = List.of(
                piece("plate", Region.ring(Point.ORIGIN, 32, 55), 3),
                piece("ring", Region.ring(Point.ORIGIN, 24, 38), 4),
                piece("leaf", leaf(37, 6, 2.4), 16),
                piece("small-leaf", leaf(18, 3.5, 2.2), 12),
                piece("wheel", Region.ring(Point.ORIGIN, 3, 17), 6),
                piece("bar", rectangle(62, 11), 7),
                piece("lid", rectangle(30, 22), 5),
                piece("pinion", Region.ring(Point.ORIGIN, 2, 8), 7));
    }

    private static NestPiece piece(String name, Region outline, int count) {
        return new NestPiece(name, outline, List.of(), List.of(), count, false);
    }

    private static Region leaf(double radius, double half, double sweep) {
        return Region.of(ArcSlot.of(Point.ORIGIN, radius, half, 0.3, 0.3 + sweep));
    }

    private static Region rectangle(double width, double height) {
        return Region.of(Contour.rectangle(new Box(0, 0, width, height)));
    }

    /** Kerf on a ring with 120 teeth inside and twelve screw holes, slits looked for. */
    @Benchmark
    public Kerf.Result kerfOf120Teeth() {
        return Kerf.of(ring, 0.2);
    }

    /** Sixty parts on a sheet of 400 by 300 mm, in twelve orders of laying. */
    @Benchmark
    @Warmup(iterations = 1)
    public Nested nestSixty() {
        nested = Nesting.of(pieces, SHEET, (done, all) -> {});
        return nested;
    }

    @TearDown
    public void tell() {
        if (nested != null) {
            double boxes = nested.area() / BoxPacking.usedArea(pieces, SHEET);
            System.out.printf(
                    Locale.ROOT,
                    "%n60 mixed parts: utilisation %.1f %%, upright boxes in rows %.1f %%%n",
                    100 * nested.utilisation(SHEET.width(), SHEET.height()),
                    100 * boxes);
        }
    }
}
