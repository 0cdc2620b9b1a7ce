// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.mechanism.Memo;
import ringleaf.part.Design;

/** Every change that is told makes the whole design work, and a nearer one does not. */
class WhyNotTest {
    private static List<Change> changes(int threads, String... sets) {
        return new WhyNot(Explored.variants(Explored.SHUTTER, sets), 31, threads)
                .changes("shutter", WhyNot.Effort.FULL, (d, t) -> {}, () -> false)
                .single();
    }

    private static Change of(List<Change> changes, String path) {
        return changes.stream().filter(c -> c.path().equals(path)).findFirst().orElseThrow();
    }

    /** By the ordinary way of designing. */
    private static boolean works(String set, String path, String value) {
        return !Explored.fails(Explored.design(Explored.SHUTTER, set, "shutter." + path + "=" + value)
                .findings());
    }

    @Test
    void aHousingTooSmallIsToldWhatWouldFit() {
        String set = "shutter.outer-diameter={at-most: 72}";
        assertThat(Explored.fails(Explored.design(Explored.SHUTTER, set).findings()))
                .isTrue();
        List<Change> changes = changes(2, set);
        assertThat(changes).isNotEmpty();
        double before = 0;
        for (Change change : changes) {
            assertThat(change.share()).isGreaterThanOrEqualTo(before);
            before = change.share();
            String first = change.value().split(" or ")[0];
            assertThat(works(set, change.path(), first)).as(change.words(true)).isTrue();
        }
        Change outer = of(changes, "outer-diameter.at-most");
        double needed = Double.parseDouble(outer.value().split(" ")[0]);
        Design free = Explored.design(Explored.SHUTTER);
        assertThat(needed).isCloseTo(Explored.dimension(free, "outer-diameter"), within(0.1 + 1e-9));
        assertThat(works(set, "outer-diameter.at-most", (needed - 0.1) + "")).isFalse();
        assertThat(outer.share()).isCloseTo((needed - 72) / 72, within(1e-9));
        assertThat(changes(1, set).stream().map(c -> c.words(true)))
                .isEqualTo(changes.stream().map(c -> c.words(true)).toList());
    }

    /** N t / (pi d) = tan 6 degrees, by the stair of the design document, gives the least opening of such blades. */
    @Test
    void bladesThatCannotCloseSoFarAreToldTheLeastOpening() {
        List<Change> changes = changes(2, "shutter.least-opening=0", "shutter.blades=12");
        double least = Double.parseDouble(of(changes, "least-opening").value().split(" ")[0]);
        assertThat(least).isGreaterThanOrEqualTo(12 * 0.1 / (Math.PI * Math.tan(Math.toRadians(6))) - 1e-9);
        assertThat(works("shutter.blades=12", "least-opening", least + "")).isTrue();
    }

    /** From nothing it can be far to an opening whose blades fit into the housing. */
    @Test
    void aLeastOpeningOfNothingIsFollowedFarEnough() {
        List<Change> changes = changes(2, "shutter.least-opening=0", "shutter.outer-diameter={at-most: 72}");
        double least = Double.parseDouble(of(changes, "least-opening").value().split(" ")[0]);
        assertThat(least).isBetween(20.0, 47.0);
    }

    /** A 24-tooth pinion must turn further than any 180 degree servo; a compound pair or more teeth make it. */
    @Test
    void aServoThatDoesNotReachIsToldOtherWays() {
        List<Change> changes = changes(
                2,
                "shutter.full-opening=64",
                "shutter.least-opening=20",
                "shutter.blades=14",
                "shutter.drive={pinion-teeth: 24, module: 0.8}");
        assertThat(of(changes, "drive.by").value()).isEqualTo("step-up");
        assertThat(of(changes, "drive.pinion-teeth").share()).isGreaterThan(0);
    }

    /** A sheet of the catalogue has its own thickness; another is told with the stock it needs. */
    @Test
    void thinnerSheetIsToldInAThicknessThatIsSold() {
        String text = Explored.SHUTTER
                .replace("0.1  # shim", "0.2")
                .replace("title: Lamp", "title: Lamp\nfabrication:\n  blade: {stock: brass-0.2}");
        double depth = Explored.dimension(Explored.design(text), "depth") - 0.05;
        Variants variants = Explored.variants(text, "shutter.depth={at-most: " + depth + "}");
        Variants.Variant now = variants.reader().read(List.of());
        assertThat(now.isGood()).isTrue();
        List<Change> changes = new WhyNot(variants, 31, 2)
                .changes("shutter", WhyNot.Effort.FULL, (d, t) -> {}, () -> false)
                .single();
        Change sheet = of(changes, "fabrication.blade.stock");
        assertThat(List.of("brass-0.15", "brass-0.1")).containsAll(sheet.values());
        assertThat(sheet.words(false))
                .contains("with blade-thickness: " + sheet.values().get(0).substring(6) + "mm");
    }

    /** Every whole number of the field's range tried by the ordinary way: the nearest each way is what is told. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shutter.depth={at-most: 8.5} | blades | 5 | 12",
                "shutter.outer-diameter={at-most: 78} | blades | 8 | 14",
                "shutter.drive={pinion-teeth: 24, module: 0.8} | drive.pinion-teeth | 20 | 30"
            })
    void wholeNumbersAreThoseOfBruteForce(String set, String path, int least, int most) {
        Variants.Variant now = Explored.variants(Explored.SHUTTER, set).reader().read(List.of());
        Attempts attempts =
                new Attempts(Explored.variants(Explored.SHUTTER, set).reader(), "shutter", 31, new Memo(500));
        List<Integer> works = new ArrayList<>();
        for (int value = least; value <= most; value++) {
            List<String> keys = new ArrayList<>(List.of("mechanisms", "shutter"));
            keys.addAll(List.of(path.split("\\.")));
            if (attempts.holds(31, new Attempts.Setting(keys, value + ""))) {
                works.add(value);
            }
        }
        assertThat(now.isGood()).isTrue();
        List<Change> changes = changes(2, set);
        int at = path.equals("blades") ? 10 : 24;
        Optional<Integer> below = works.stream().filter(v -> v < at).max(Integer::compare);
        Optional<Integer> above = works.stream().filter(v -> v > at).min(Integer::compare);
        List<String> told = changes.stream()
                .filter(c -> c.path().equals(path))
                .map(Change::value)
                .toList();
        List<String> all = new ArrayList<>();
        below.ifPresent(v -> all.add(v + ""));
        above.ifPresent(v -> all.add(v + ""));
        assertThat(told.stream().filter(v -> Integer.parseInt(v) <= most && Integer.parseInt(v) >= least))
                .containsExactlyInAnyOrderElementsOf(all);
        assertThat(works).doesNotContain(at);
    }

    /** Whoever wants the nearest one gets the first of all. */
    @Test
    void theNearestFewAreTheFirstOfAll() {
        String set = "shutter.outer-diameter={at-most: 72}";
        List<Change> all = changes(2, set);
        WhyNot whyNot = new WhyNot(Explored.variants(Explored.SHUTTER, set), 31, 2);
        WhyNot.Effort effort = new WhyNot.Effort(1, 10_000, false);
        List<Change> first =
                whyNot.changes("shutter", effort, (d, t) -> {}, () -> false).single();
        assertThat(first).hasSize(1);
        assertThat(first.get(0).words(true)).isEqualTo(all.get(0).words(true));
    }

    /** Both limits are missed, so that neither alone can help, nor anything else that is given. */
    @Test
    void whereNoSingleChangeHelpsTheSmallestPairIsTold() {
        String text = "mechanisms:\n  it: {kind: leaf-aperture, full-opening: 48, least-opening: 16, blades: 10, "
                + "blade-thickness: 0.1, drive-pin: far-end, outer-diameter: {at-most: 77}, depth: {at-most: 8}}\n";
        Design asItIs = Explored.design(text);
        assertThat(Explored.fails(asItIs.findings())).isTrue();
        WhyNot.Found found =
                new WhyNot(Explored.variants(text), 31, 2).changes("it", WhyNot.Effort.FULL, (d, t) -> {}, () -> false);
        assertThat(found.single()).isEmpty();
        assertThat(found.pairs()).isNotEmpty();
        double before = 0;
        for (ChangePair pair : found.pairs()) {
            assertThat(pair.share()).isGreaterThanOrEqualTo(before);
            before = pair.share();
            String one = "it." + pair.one().path() + "=" + pair.one().values().get(0);
            String other =
                    "it." + pair.other().path() + "=" + pair.other().values().get(0);
            assertThat(Explored.works(Explored.design(text, one, other)))
                    .as(pair.words())
                    .isTrue();
            assertThat(Explored.fails(Explored.design(text, one).findings()))
                    .as(pair.words())
                    .isTrue();
            assertThat(Explored.fails(Explored.design(text, other).findings()))
                    .as(pair.words())
                    .isTrue();
        }
        // The limits themselves: each by what the design as it is comes to, on a grid of a tenth.
        ChangePair limits = found.pairs().stream()
                .filter(p -> p.words().contains("depth.at-most") && p.words().contains("outer-diameter.at-most"))
                .findFirst()
                .orElseThrow();
        for (Change change : List.of(limits.one(), limits.other())) {
            double told = Double.parseDouble(change.value().split(" ")[0]);
            double needed = Explored.dimension(asItIs, change.path().split("\\.")[0]);
            assertThat(told).isBetween(needed - 1e-9, needed + 0.1 + 1e-9);
        }
        assertThat(new WhyNot(Explored.variants(text), 31, 1)
                        .changes("it", WhyNot.Effort.FULL, (d, t) -> {}, () -> false).pairs().stream()
                                .map(ChangePair::words))
                .isEqualTo(found.pairs().stream().map(ChangePair::words).toList());
    }

    /** Gears have no closed-form screen and no blades, and are told what would fit all the same. */
    @Test
    void aPairOfGearsWithoutRoomIsToldWhatWouldFit() {
        String text = "mechanisms:\n  it: {kind: gear-pair, driver: {teeth: 12}, driven: {teeth: 20}, module: 1, "
                + "overall-length: {at-most: 32}}\n";
        WhyNot.Found found = new WhyNot(Explored.variants(text), 31, 2)
                .changes("it", new WhyNot.Effort(3, 100, false), (d, t) -> {}, () -> false);
        assertThat(found.single()).isNotEmpty();
        for (Change change : found.single()) {
            String set = "it." + change.path() + "=" + change.values().get(0);
            assertThat(Explored.works(Explored.design(text, set)))
                    .as(change.words(true))
                    .isTrue();
        }
    }

    @Test
    void aDesignThatWorksNeedsNoChange() {
        assertThat(changes(2)).isEmpty();
    }
}
