// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Memo;
import ringleaf.mechanism.Trial;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Finding;

/** Explorations against brute force, against the ordinary way of designing, and against facts that must hold. */
class ExplorationTest {

    @Test
    void theRowsAreTheSameWhateverTheNumberOfThreads() {
        String[] vary = {"shutter.blades=8..11", "shutter.lap=0.4,0.6", "shutter.blade-thickness=0.1,0.15"};
        Exploration.Result one = Explored.run(Explored.SHUTTER, null, 2, 1, vary);
        for (int threads : new int[] {2, 7}) {
            Exploration.Result more = Explored.run(Explored.SHUTTER, null, 2, threads, vary);
            assertThat(more.rows()).isEqualTo(one.rows());
            assertThat(more.shown()).isEqualTo(one.shown());
        }
        assertThat(one.rows()).hasSize(16);
    }

    /** Every combination designed in full and judged by its outlines: another way to the same best. */
    @Test
    void theOptimumIsThatOfBruteForceWithTheJudgeOfOutlines() {
        String[] blades = {"7", "8", "9", "12"};
        String[] openings = {"10", "16", "22"};
        double best = Double.MAX_VALUE;
        Map<String, Double> all = new HashMap<>();
        for (String count : blades) {
            for (String opening : openings) {
                Design design = Explored.design(
                        Explored.SHUTTER, "shutter.blades=" + count, "shutter.least-opening=" + opening);
                double outer = Explored.dimension(design, "outer-diameter");
                if (Explored.works(design)) {
                    best = Math.min(best, outer);
                    all.put(count + "/" + opening, outer);
                }
            }
        }
        Exploration.Result result = Explored.run(
                Explored.SHUTTER,
                "outer-diameter",
                12,
                2,
                "shutter.blades=" + String.join(",", blades),
                "shutter.least-opening=" + String.join(",", openings));
        assertThat(Explored.figure(result, result.rows().get(0), "outer-diameter"))
                .isEqualTo(best);
        Map<String, Double> found = new HashMap<>();
        for (Row row : result.rows()) {
            if (row.works()) {
                String key =
                        result.grid().text(row.index(), 0) + "/" + result.grid().text(row.index(), 1);
                found.put(key, Explored.figure(result, row, "outer-diameter"));
                assertThat(row.judged()).isTrue();
            }
        }
        assertThat(found).isEqualTo(all);
    }

    /** A trial is the same design with less around it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "shutter.drive-pin=lever",
                "shutter.drive={servo: micro-180}",
                "shutter.hand=right",
                "shutter.outer-diameter=90",
                "shutter.slot=linear-opening",
                "shutter.least-opening=0"
            })
    void aTrialHasTheFiguresAndFindingsOfTheDesign(String set) {
        String[] sets = set.isEmpty() ? new String[0] : new String[] {set};
        Design design = Explored.design(Explored.SHUTTER, sets);
        Variants.Variant variant =
                Explored.variants(Explored.SHUTTER, sets).reader().read(List.of());
        Trial trial = variant.planned().get(0).trial(61, new Memo(10));
        assertThat(trial.findings()).isEqualTo(design.findings());
        assertThat(trial.choices()).isEqualTo(design.choices());
        List<Dimension> sizes = new ArrayList<>(trial.dimensions());
        sizes.removeIf(d -> d.name().equals("bezel"));
        List<Dimension> all = new ArrayList<>(design.dimensions());
        all.removeIf(d -> d.name().equals("outline-deviation"));
        assertThat(sizes).isEqualTo(all);
        assertThat(trial.parts()).isEqualTo(design.parts());
    }

    /** What closed forms refuse fails in the full design too. */
    @Test
    void theScreenRefusesNothingThatWorks() {
        long seed = 20261125;
        Random random = new Random(seed);
        int refused = 0;
        for (int i = 0; i < 40; i++) {
            String[] sets = {
                "shutter.blades=" + (4 + random.nextInt(40)),
                "shutter.blade-thickness=" + (5 + random.nextInt(60)) / 100.0,
                "shutter.least-opening=" + random.nextInt(30),
                "shutter.outer-diameter={at-most: " + (58 + random.nextInt(30)) + "}",
                "shutter.depth={at-most: " + (8 + random.nextInt(12)) + "}"
            };
            Variants.Variant variant =
                    Explored.variants(Explored.SHUTTER, sets).reader().read(List.of());
            Kind.Planned planned = variant.planned().get(0);
            Optional<Finding> refusal = planned.refusal();
            if (refusal.isPresent()) {
                refused++;
                List<Finding> findings = planned.trial(31, new Memo(10)).findings();
                assertThat(findings.stream().filter(Finding::failed).map(Finding::check))
                        .as("seed %d, case %d: %s", seed, i, String.join(" ", sets))
                        .contains(refusal.get().check());
            }
        }
        assertThat(refused).isBetween(5, 39);
    }

    @Test
    void aLargerLeastOpeningNeverNeedsMoreBladeTravel() {
        Exploration.Result result =
                Explored.run(Explored.SHUTTER, "blade-travel", 1, 2, "shutter.least-opening=8..40..4");
        double before = Double.MAX_VALUE;
        for (int index = 0; index < result.grid().size(); index++) {
            double travel = Explored.figure(result, row(result, index), "blade-travel");
            assertThat(travel).isLessThanOrEqualTo(before + 1e-9);
            before = travel;
        }
    }

    @Test
    void aLargerLapNeverGivesASmallerDiameter() {
        Exploration.Result result = Explored.run(Explored.SHUTTER, "outer-diameter", 1, 2, "shutter.lap=0.2..3.2..0.3");
        double before = 0;
        for (int index = 0; index < result.grid().size(); index++) {
            double outer = Explored.figure(result, row(result, index), "outer-diameter");
            assertThat(outer).isGreaterThanOrEqualTo(before - 1e-9);
            before = outer;
        }
    }

    private static Row row(Exploration.Result result, int index) {
        return result.rows().stream()
                .filter(r -> r.index() == index)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void combinationsThatContradictThemselvesAreRowsWithTheReason() {
        Exploration.Result result =
                Explored.run(Explored.SHUTTER, null, 1, 2, "shutter.full-opening=40,48", "shutter.least-opening=20,44");
        Row against = result.rows().get(result.rows().size() - 1);
        assertThat(against.status()).isEqualTo(Row.Status.CONTRADICTS);
        assertThat(against.limit()).contains("least-opening").contains("not below the full opening");
        assertThat(result.rows().stream().filter(r -> r.status() == Row.Status.CONTRADICTS))
                .hasSize(1);
    }

    @Test
    void undominatedIsWhatItsDefinitionSays() {
        long seed = 4711;
        Random random = new Random(seed);
        for (int round = 0; round < 60; round++) {
            List<double[]> points = new ArrayList<>();
            int most = 1 + random.nextInt(8);
            for (int i = 0; i < 80; i++) {
                double[] point = new double[3];
                for (int k = 0; k < 3; k++) {
                    point[k] = random.nextInt(20) == 0 ? Double.POSITIVE_INFINITY : random.nextInt(most);
                }
                points.add(random.nextInt(10) == 0 ? null : point);
            }
            boolean[] best = Ranking.undominated(points);
            for (int i = 0; i < points.size(); i++) {
                boolean dominated = points.get(i) == null;
                for (double[] other : points) {
                    dominated |= other != null && !dominated && dominates(other, points.get(i));
                }
                assertThat(best[i])
                        .as("seed %d round %d point %d", seed, round, i)
                        .isEqualTo(!dominated);
            }
        }
    }

    private static boolean dominates(double[] one, double[] other) {
        int worse = 0;
        int better = 0;
        for (int k = 0; k < one.length; k++) {
            worse += one[k] > other[k] ? 1 : 0;
            better += one[k] < other[k] ? 1 : 0;
        }
        return worse == 0 && better > 0;
    }

    @Test
    void severalMechanismsVaryTogether() {
        String text = Explored.SHUTTER + """
                  stop:
                    kind: leaf-aperture
                    full-opening: 30
                    least-opening: 10
                    blades: 8
                    blade-thickness: 0.1
                    drive-pin: far-end
                  wheel:
                    kind: gear
                    teeth: 24
                """;
        Exploration.Result result = Explored.run(text, "parts", 1, 2, "shutter.blades=8,9", "stop.blades=7,8");
        assertThat(result.columns().mechanisms()).containsExactly("shutter", "stop");
        String stop = text.replaceFirst("(?s)  shutter:.*?far-end\n", "");
        for (Row row : result.rows()) {
            String shutters = "shutter.blades=" + result.grid().text(row.index(), 0);
            String stops = "stop.blades=" + result.grid().text(row.index(), 1);
            int pieces = pieces(Explored.design(Explored.SHUTTER, shutters)) + pieces(Explored.design(stop, stops));
            assertThat(row.figures()[0]).isEqualTo(pieces);
        }
    }

    private static int pieces(Design design) {
        return design.parts().stream().mapToInt(p -> p.quantity()).sum();
    }

    @Test
    void kindsWithoutATrialOfTheirOwnAreDesignedInFull() {
        String text = """
                mechanisms:
                  pair:
                    kind: gear-pair
                    ratio: 2
                    module: 1
                """;
        Exploration.Result result = Explored.run(text, "centre-distance", 2, 2, "pair.module=1,1.25");
        assertThat(result.rows()).allMatch(Row::works);
        double ratio = result.rows().get(1).figures()[0] / result.rows().get(0).figures()[0];
        assertThat(ratio).isGreaterThan(1);
        assertThat(result.rows().get(0).limit()).isNotEmpty();
    }

    /** Ends after so many combinations, and right then or never for judging too. */
    private static Exploration.Result stopped(int after, boolean atOnce, int take) {
        Variants variants = Explored.variants(Explored.SHUTTER);
        Grid grid = Explored.grid(variants, "shutter.blades=6..40");
        AtomicInteger asked = new AtomicInteger();
        Exploration.Patience patience = new Exploration.Patience() {
            @Override
            public boolean isOver() {
                return asked.incrementAndGet() > after;
            }

            @Override
            public boolean isOutEvenForJudging() {
                return atOnce;
            }
        };
        return new Exploration(variants, grid, 31, 1)
                .run(new Exploration.Asked(Optional.empty(), 3, take), (d, t) -> {}, patience)
                .orElseThrow();
    }

    @Test
    void whoeverStopsItGetsTheBestSoFarAndItIsJudged() {
        Exploration.Result result = stopped(20, false, 0);
        assertThat(result.isWhole()).isFalse();
        assertThat(result.rows()).hasSizeBetween(5, 30);
        assertThat(result.shown()).isNotEmpty().allMatch(Row::works).allMatch(Row::judged);
        assertThat(result.unjudged()).isZero();
    }

    @Test
    void whoeverStopsItTwiceIsToldThatNothingWasJudgedButWhatIsTaken() {
        Exploration.Result result = stopped(20, true, 0);
        assertThat(result.shown()).isNotEmpty().allMatch(Row::works).noneMatch(Row::judged);
        assertThat(result.unjudged()).isEqualTo(result.shown().size());
        Exploration.Result taken = stopped(20, true, 2);
        assertThat(taken.rows().get(1).judged()).isTrue();
        assertThat(taken.rows().get(0).judged()).isFalse();
        Exploration.Result early = stopped(0, true, 2);
        assertThat(early.rows()).isEmpty();
        assertThat(early.shown()).isEmpty();
    }

    /** Outlines added up by hand: what is cut from sheet, every copy, at the speed of its process. */
    @Test
    void cuttingIsTheOutlinesOfAllSheetPartsAtTheSpeedOfTheirProcess() {
        Exploration.Result length = Explored.run(Explored.SHUTTER, "cutting-length", 1, 1, "shutter.lap=0.6");
        Exploration.Result time = Explored.run(Explored.SHUTTER, "cutting-time", 1, 1, "shutter.lap=0.6");
        Design design = Explored.design(Explored.SHUTTER);
        double blade = 0;
        for (var part : design.parts()) {
            if (part.name().equals("blade")) {
                blade = part.layers().get(0).regions().get(0).perimeter();
            }
        }
        // Only the blades and the cover are of sheet by default, both by fibre laser at 10 mm/s.
        assertThat(length.rows().get(0).figures()[0]).isGreaterThanOrEqualTo(10 * blade - 1e-9);
        assertThat(time.rows().get(0).figures()[0])
                .isCloseTo(length.rows().get(0).figures()[0] / 10, within(1e-9));
    }
}
