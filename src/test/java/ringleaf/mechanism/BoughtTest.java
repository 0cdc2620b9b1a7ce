// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.geom.Point;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Screws, spacers and pins by the sizes in which they are sold. */
class BoughtTest {
    private final Problems problems = new Problems();
    private final Catalogues ready = new Catalogues(SharedFiles.NONE, problems);
    private final Hardware hardware = new Hardware(ready);

    private Screw screw(String name) {
        return ready.screws().get(name).orElseThrow();
    }

    private Material making(String process, String stock, double thickness) {
        Stock made = ready.stock().get(stock).orElseThrow();
        return Material.of(ready.processes().get(process).orElseThrow(), made, thickness);
    }

    /** Head, two plates of 3 mm, nut of 1.6 mm and a turn of 0.4 mm: 8 mm, which is sold; a hair more takes 10 mm. */
    @Test
    void aBoltIsTheShortestThatHoldsAllThreadsOfItsNut() {
        Bolt bolt = Bolt.of("screw", screw("M2"), 6);
        assertThat(bolt.need()).isCloseTo(8, within(1e-9));
        assertThat(bolt.part(4).source().stock()).isEqualTo("M2 x 8, ISO 4762");
        assertThat(bolt.nuts("nut", 4).source().stock()).isEqualTo("M2 nut, ISO 4032");
        assertThat(bolt.reaches().status()).isEqualTo(Finding.Status.PASS);
        assertThat(bolt.reaches().measured()).isCloseTo(0.4, within(1e-9));
        Bolt longer = Bolt.of("screw", screw("M2"), 6.01);
        assertThat(longer.length()).isEqualTo(10);
        assertThat(longer.tail()).isCloseTo(3.99, within(1e-9));
        Bolt locked = new Bolt("trial-screw", screw("M2"), 6, 2);
        assertThat(locked.length()).isEqualTo(10);
        assertThat(locked.nuts("trial-nut", 1).quantity()).isEqualTo(2);
    }

    @Test
    void aBoltThatIsNotSoldLongEnoughFails() {
        Bolt bolt = Bolt.of("screw", screw("M3"), 48);
        Finding found = bolt.reaches();
        assertThat(found.status()).isEqualTo(Finding.Status.FAIL);
        assertThat(found.measured()).as("50 mm less plates and nut").isCloseTo(-0.4, within(1e-9));
        assertThat(found.limit()).isCloseTo(0.5, within(1e-9));
        assertThat(Spoken.of(found)).contains("M3 x 50, ISO 4762").contains("not sold longer");
    }

    @Test
    void aBoltThatStandsAgainstWhatIsBehindItFails() {
        Bolt bolt = Bolt.of("screw", screw("M2"), 6.5);
        assertThat(bolt.tail()).isCloseTo(3.5, within(1e-9));
        assertThat(bolt.clears("servo-plate", 4, 0.2).status()).isEqualTo(Finding.Status.PASS);
        assertThat(bolt.clears("servo-plate", 3.6, 0.2).status()).isEqualTo(Finding.Status.FAIL);
        assertThat(bolt.clears("servo-plate", 3.5, 0).status())
                .as("what only touches")
                .isEqualTo(Finding.Status.FAIL);
    }

    @Test
    void aScrewWithoutKnownLengthsIsToldByTheLeastThatDoes() {
        Catalogues mine = new Catalogues(
                (file, p) -> file.equals("screws.yaml")
                        ? List.of(SpecSource.of(
                                "mine/screws.yaml",
                                "screws: {no-2: {thread: 2.18, clearance-fine: 2.4, clearance-medium: 2.6,"
                                        + " clearance-coarse: 2.9, tap-drill: 1.73, head-diameter: 3.6,"
                                        + " head-height: 2.2, nut-across: 4.8, nut-height: 1.7}}"))
                        : List.of(),
                problems);
        Bolt bolt = Bolt.of("screw", mine.screws().get("no-2").orElseThrow(), 6);
        assertThat(problems.text()).isEmpty();
        assertThat(bolt.part(2).source().stock()).isEqualTo("no-2, at least 8.15 mm long");
        assertThat(bolt.nuts("nut", 2).source().stock()).isEqualTo("no-2 nut");
        assertThat(bolt.reaches().status()).isEqualTo(Finding.Status.PASS);
    }

    @Test
    void aSpacerIsBoughtPrintedOrToldToBeNeither() {
        Material printed = making("filament-print", "petg", 3);
        Material sheet = making("co2-laser", "acrylic-3", 3);
        Standoff sold = Standoff.from("standoff", 11.4, screw("M3"), sheet);
        assertThat(sold.length()).isEqualTo(12);
        assertThat(sold.part(Point.ORIGIN, 0, 4).source().stock()).isEqualTo("round spacer for M3, 6 x 12 mm long");
        assertThat(sold.outerRadius()).isEqualTo(3);
        assertThat(sold.isHad().status()).isEqualTo(Finding.Status.PASS);
        Standoff made = new Standoff("standoff", 6.24, screw("M2"), printed);
        Part part = made.part(new Point(20, 0), -7, 4);
        assertThat(part.source().process()).isEqualTo("filament-print");
        assertThat(part.zFrom()).isEqualTo(-7);
        assertThat(part.zTo()).isCloseTo(-0.76, within(1e-9));
        assertThat(made.isHad().status()).isEqualTo(Finding.Status.PASS);
        Standoff neither = new Standoff("standoff", 6.24, screw("M2"), sheet);
        assertThat(neither.isHad().status()).isEqualTo(Finding.Status.WARN);
        assertThat(Spoken.of(neither.isHad())).contains("6.24 mm").contains("6 and 8 mm");
        assertThat(neither.part(Point.ORIGIN, 0, 4).isDrawn()).isFalse();
    }

    @Test
    void pinsAndAxlesAreCutFromRodThatIsSold() {
        CutRod pin = hardware.rod("drive-pin", 1);
        assertThat(pin.source(2.66).stock()).isEqualTo("1 mm silver steel rod, DIN 175, cut to 2.66 mm");
        assertThat(pin.isSold().status()).isEqualTo(Finding.Status.PASS);
        CutRod odd = hardware.rod("drive-pin", 1.1);
        assertThat(odd.isSold().status()).isEqualTo(Finding.Status.WARN);
        assertThat(Spoken.of(odd.isSold())).contains("1 and 1.2 mm are");
        assertThat(odd.source(2).stock()).isEqualTo("1.1 mm rod, cut to 2 mm");
    }

    @Test
    void theThickestScrewIsTakenWhoseHeadNeitherSlipsThroughNorStandsAgainstAnything() {
        assertThat(hardware.screwThrough(2, 10).orElseThrow().name()).isEqualTo("M2");
        assertThat(hardware.screwThrough(4.4, 10).orElseThrow().name()).isEqualTo("M4");
        assertThat(hardware.screwThrough(4.4, 3.48).orElseThrow().name())
                .as("the head of M4 is 4 mm")
                .isEqualTo("M3");
        assertThat(hardware.screwThrough(4.4, 2.1))
                .as("what is flat enough slips through")
                .isEmpty();
        assertThat(hardware.screwThrough(1, 10)).isEmpty();
    }
}
