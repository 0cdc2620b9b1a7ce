// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import ringleaf.curve.ArcSlot;
import ringleaf.curve.JtsShapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.spec.Cutting;
import ringleaf.spec.text.SpecSource;

class NestingTest {
    private static final Tolerance FINE = new Tolerance(1e-3);

    private static Cutting.SheetSize sheet(double width, double height, double gap, String turn, int effort) {
        return new Cutting.SheetSize(
                width,
                height,
                gap,
                3,
                true,
                turn,
                effort,
                SpecSource.of("test", "").whole());
    }

    private static NestPiece piece(String name, Region outline, int count) {
        return new NestPiece(name, outline, List.of(), List.of(), count, count == 1);
    }

    private static Region leaf(double radius, double half, double sweep) {
        return Region.of(ArcSlot.of(Point.ORIGIN, radius, half, 0.3, 0.3 + sweep));
    }

    /** Judged by a public topology library on flattened outlines: apart by the gap, inside the margin, all there. */
    private static void judge(Nested nested, Cutting.SheetSize size, int pieces) {
        int count = 0;
        for (List<Nested.Laid> sheet : nested.sheets()) {
            List<Geometry> shapes = new ArrayList<>();
            for (Nested.Laid laid : sheet) {
                Region placed = laid.piece().outline().placed(laid.placement());
                Box box = placed.box();
                assertThat(box.minX()).isGreaterThanOrEqualTo(size.margin() - 1e-9);
                assertThat(box.minY()).isGreaterThanOrEqualTo(size.margin() - 1e-9);
                assertThat(box.maxX()).isLessThanOrEqualTo(size.width() - size.margin() + 1e-9);
                assertThat(box.maxY()).isLessThanOrEqualTo(size.height() - size.margin() + 1e-9);
                shapes.add(JtsShapes.polygon(placed, FINE));
                count++;
            }
            for (int i = 0; i < shapes.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(shapes.get(i).distance(shapes.get(j)))
                            .as(
                                    "%s and %s",
                                    sheet.get(i).piece().name(),
                                    sheet.get(j).piece().name())
                            .isGreaterThanOrEqualTo(size.gap() - 2 * FINE.length());
                    assertThat(shapes.get(i).intersection(shapes.get(j)).getArea())
                            .isZero();
                }
            }
        }
        assertThat(count).isEqualTo(pieces);
    }

    @Test
    void leavesAndPlatesLieApartInsideAndComplete() {
        List<NestPiece> pieces = List.of(
                piece("leaf", leaf(37, 6, 2.4), 14),
                piece("plate", Region.ring(Point.ORIGIN, 32, 55), 1),
                piece("pinion", Region.ring(Point.ORIGIN, 3, 15), 2));
        Cutting.SheetSize size = sheet(300, 200, 2, "free", 4);
        Nested nested = Nesting.of(pieces, size, (done, all) -> {});
        judge(nested, size, 17);
        assertThat(nested.utilisation(300, 200)).isGreaterThan(nested.area() / BoxPacking.usedArea(pieces, size));
    }

    @Test
    void smallPiecesLieInTheHolesOfLargeOnesAndAreCutFirst() {
        List<NestPiece> pieces = List.of(
                piece("plate", Region.ring(Point.ORIGIN, 40, 48), 1), piece("disc", Region.disc(Point.ORIGIN, 30), 1));
        Cutting.SheetSize size = sheet(104, 104, 2, "free", 2);
        Nested nested = Nesting.of(pieces, size, (done, all) -> {});
        judge(nested, size, 2);
        assertThat(nested.sheets()).hasSize(1);
        assertThat(nested.sheets().get(0).get(0).piece().name()).isEqualTo("disc");
        assertThat(nested.sheets().get(0).get(1).piece().name()).isEqualTo("plate");
    }

    @Test
    void sameInputGivesTheSameResultAndMoreEffortNeverAWorseOne() {
        Random random = new Random(11);
        for (int trial = 0; trial < 3; trial++) {
            List<NestPiece> pieces = new ArrayList<>();
            int all = 0;
            for (int k = 0; k < 4; k++) {
                int count = 1 + random.nextInt(4);
                all += count;
                Region shape = random.nextBoolean()
                        ? leaf(10 + 20 * random.nextDouble(), 2 + 3 * random.nextDouble(), 1 + 2 * random.nextDouble())
                        : Region.of(Contour.rectangle(
                                new Box(0, 0, 5 + 40 * random.nextDouble(), 5 + 20 * random.nextDouble())));
                pieces.add(piece("piece-" + k, shape, count));
            }
            double before = Double.POSITIVE_INFINITY;
            for (int effort : new int[] {1, 3, 8}) {
                Cutting.SheetSize size = sheet(120, 90, 1.5, "free", effort);
                Nested nested = Nesting.of(pieces, size, (done, total) -> {});
                judge(nested, size, all);
                assertThat(Nesting.of(pieces, size, (done, total) -> {})).isEqualTo(nested);
                double used = 1000 * nested.sheets().size() + nested.usedHeight();
                assertThat(used).as("trial %d", trial).isLessThanOrEqualTo(before);
                before = used;
            }
        }
    }

    /** What more orders are worth: where the first order needs two sheets, two dozen find the way to do with one. */
    @Test
    void effortPays() {
        List<NestPiece> pieces = List.of(
                piece("plate", Region.ring(Point.ORIGIN, 24, 38), 2),
                piece("leaf", leaf(30, 5, 2.3), 8),
                piece("wheel", Region.ring(Point.ORIGIN, 2, 13), 4),
                piece("bar", Region.of(Contour.rectangle(new Box(0, 0, 55, 9))), 4));
        Nested first = Nesting.of(pieces, sheet(160, 200, 2, "quarter", 1), (done, all) -> {});
        Nested more = Nesting.of(pieces, sheet(160, 200, 2, "quarter", 24), (done, all) -> {});
        judge(more, sheet(160, 200, 2, "quarter", 24), 18);
        assertThat(first.sheets().size()).isEqualTo(2);
        assertThat(more.sheets().size()).isEqualTo(1);
    }

    @Test
    void turnsOnlyAsAllowed() {
        List<NestPiece> pieces = List.of(piece("bar", Region.of(Contour.rectangle(new Box(0, 0, 60, 10))), 5));
        for (String turn : new String[] {"none", "half", "quarter"}) {
            Cutting.SheetSize size = sheet(150, 100, 1, turn, 3);
            for (List<Nested.Laid> sheet :
                    Nesting.of(pieces, size, (done, all) -> {}).sheets()) {
                for (Nested.Laid laid : sheet) {
                    double step = turn.equals("none") ? 2 * Math.PI : turn.equals("half") ? Math.PI : Math.PI / 2;
                    double turns = laid.placement().angle() / step;
                    assertThat(turns).isCloseTo(Math.rint(turns), within(1e-12));
                }
            }
        }
        NestPiece bar = pieces.get(0);
        assertThat(Nesting.fits(bar, sheet(40, 100, 1, "none", 1))).isFalse();
        assertThat(Nesting.fits(bar, sheet(40, 100, 1, "quarter", 1))).isTrue();
    }

    /** By counts, not by a clock: many orders of many pieces end where enough was looked at. */
    @Test
    void ordersOfManyPiecesEndWhereEnoughWasLookedAt() {
        List<NestPiece> pieces = List.of(
                piece("leaf", leaf(30, 6, 1.2), 60),
                piece("arm", leaf(45, 4, 0.8), 60),
                piece("disc", Region.disc(Point.ORIGIN, 7), 80));
        AtomicInteger orders = new AtomicInteger();
        Nested many = Nesting.of(pieces, sheet(300, 400, 2, "free", 2000), (done, all) -> orders.set(done));
        assertThat(orders.get()).isBetween(12, 1990);
        Nested few = Nesting.of(pieces, sheet(300, 400, 2, "free", 12), (done, all) -> {});
        assertThat(many.sheets().size()).isLessThanOrEqualTo(few.sheets().size());
    }

    /** Few plain plates are where rows of boxes are good: random ones, seed 24, are never laid worse than those. */
    @Test
    void neverLosesAgainstRowsOfBoxes() {
        Random random = new Random(24);
        for (int n = 0; n < 120; n++) {
            List<NestPiece> pieces = new ArrayList<>();
            int kinds = 2 + random.nextInt(3);
            for (int i = 0; i < kinds; i++) {
                double width = 15 + 60 * random.nextDouble();
                double height = 15 + 60 * random.nextDouble();
                Region plate = Region.of(Contour.rectangle(new Box(-3, 2, width - 3, height + 2)));
                Region round = Region.disc(new Point(4, 4), width / 2);
                pieces.add(piece("p" + i, random.nextBoolean() ? plate : round, 1 + random.nextInt(2)));
            }
            Cutting.SheetSize size = sheet(160, 120, 2, "quarter", 1);
            Nested nested = Nesting.of(pieces, size, (done, all) -> {});
            judge(nested, size, pieces.stream().mapToInt(NestPiece::count).sum());
            double used = 160 * ((nested.sheets().size() - 1) * 120 + nested.usedHeight());
            assertThat(used).as("set %d", n).isLessThanOrEqualTo(BoxPacking.usedArea(pieces, size) + 1e-6);
        }
    }
}
