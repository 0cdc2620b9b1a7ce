package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.part.Design;

/** Every change that is told makes the whole design work, and a nearer one does not. */
class WhyNotTest {
    private static List<Change> changes(int threads, String... sets) {
        return new WhyNot(Explored.variants(Explored.SHUTTER, sets), 31, threads)
                .changes("shutter", (d, t) -> {}, () -> false);
    }

    private static Change of(List<Change> changes, String path) {
        return changes.stream().filter(c -> c.path().equals(path)).findFirst().orElseThrow();
    }

    /** By the ordinary way of designing. */
    private static boolean works(String set, String path, String value) {
        return !Explored.fails(Explored.design(Explored.SHUTTER, set, "shutter." + path + "=" + value).findings());
    }

    @Test
    void aHousingTooSmallIsToldWhatWouldFit() {
        String set = "shutter.outer-diameter={at-most: 72}";
        assertThat(Explored.fails(Explored.design(Explored.SHUTTER, set).findings())).isTrue();
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
        assertThat(changes(1, set)).isEqualTo(changes);
    }

    /** N t / (pi d) = tan 6 degrees, by the stair of the design document, gives the least opening of such blades. */
    @Test
    void bladesThatCannotCloseSoFarAreToldTheLeastOpening() {
        List<Change> changes = changes(2, "shutter.least-opening=0", "shutter.blades=12");
        double least = Double.parseDouble(of(changes, "least-opening").value().split(" ")[0]);
        assertThat(least).isGreaterThanOrEqualTo(12 * 0.1 / (Math.PI * Math.tan(Math.toRadians(6))) - 1e-9);
        assertThat(works("shutter.blades=12", "least-opening", least + "")).isTrue();
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
        String text = Explored.SHUTTER.replace("0.1  # shim", "0.2").replace("title: Lamp",
                "title: Lamp\nfabrication:\n  blade: {stock: brass-0.2}");
        double depth = Explored.dimension(Explored.design(text), "depth") - 0.05;
        Variants variants = Explored.variants(text, "shutter.depth={at-most: " + depth + "}");
        Variants.Variant now = variants.reader().read(List.of());
        assertThat(now.isGood()).isTrue();
        List<Change> changes = new WhyNot(variants, 31, 2).changes("shutter", (d, t) -> {}, () -> false);
        Change sheet = of(changes, "blade-thickness");
        assertThat(sheet.note()).contains("stock");
        assertThat(List.of("0.15 mm", "0.1 mm", "0.05 mm", "0.03 mm")).contains(sheet.value());
    }

    @Test
    void aDesignThatWorksNeedsNoChange() {
        assertThat(changes(2)).isEmpty();
    }
}
