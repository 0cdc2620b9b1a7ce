// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** What is taken can be bought, and is the next size up. */
class SoldTest {
    /** Nominal lengths of ISO 888, from memory, the bracketed ones left out. */
    private static final List<Double> ISO_888 = List.of(
            2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0,
            65.0, 70.0, 80.0, 90.0, 100.0);
    /** Pitches of coarse threads, ISO 261. */
    private static final Map<String, Double> ISO_261 =
            Map.of("M1.6", 0.35, "M2", 0.4, "M2.5", 0.45, "M3", 0.5, "M3.5", 0.6, "M4", 0.7, "M5", 0.8, "M6", 1.0);

    private final Problems problems = new Problems();
    private final Catalogues ready = new Catalogues(SharedFiles.NONE, problems);

    private Catalogues own(String file, String text) {
        return new Catalogues(
                (asked, p) -> asked.equals(file) ? List.of(SpecSource.of("mine/" + file, text)) : List.of(), problems);
    }

    @Test
    void theNextSizeUpIsSoldReachesAndHasNoneBetween() {
        Random random = new Random(13);
        for (String name : ready.screws().names()) {
            Screw screw = ready.screws().get(name).orElseThrow();
            List<Double> lengths = screw.sold().lengths();
            for (int i = 0; i < 200; i++) {
                double need = random.nextDouble() * 110;
                double longest = lengths.get(lengths.size() - 1);
                assertThat(screw.length(need).isPresent()).isEqualTo(need <= longest);
                screw.length(need).ifPresent(taken -> {
                    assertThat(lengths).contains(taken);
                    assertThat(taken).isGreaterThanOrEqualTo(need);
                    assertThat(lengths).noneMatch(other -> other >= need && other < taken);
                });
            }
            for (double length : lengths) {
                assertThat(screw.length(length).orElseThrow()).isEqualTo(length);
                assertThat(screw.length(length + 1e-9).orElseThrow())
                        .as("rounding asks for no longer one")
                        .isEqualTo(length);
            }
        }
    }

    @Test
    void screwsComeInTheLengthsOfTheirStandard() {
        for (String name : ready.screws().names()) {
            Screw screw = ready.screws().get(name).orElseThrow();
            assertThat(screw.pitch()).as(name).isCloseTo(ISO_261.get(name), within(1e-9));
            assertThat(ISO_888).as(name).containsAll(screw.sold().lengths());
            assertThat(screw.sold().lengths()).isSorted().doesNotHaveDuplicates();
            assertThat(screw.order(10)).startsWith(name + " x 10, ISO ");
            assertThat(screw.nutOrder()).isEqualTo(name + " nut, ISO 4032");
            screw.sold().spacer().ifPresent(spacer -> {
                assertThat(spacer.bore()).as("the screw passes").isGreaterThan(screw.thread());
                assertThat(spacer.outside()).isGreaterThan(spacer.bore() + 1);
                assertThat(spacer.lengths()).isSorted().doesNotHaveDuplicates();
            });
        }
    }

    /** ISO 15, from memory. */
    @ParameterizedTest
    @CsvSource({
        "603, 3, 9, 3",
        "623, 3, 10, 4",
        "683, 3, 7, 2",
        "693, 3, 8, 3",
        "693z, 3, 8, 4",
        "624, 4, 13, 5",
        "625, 5, 16, 5",
        "626, 6, 19, 6",
        "608, 8, 22, 7",
        "6700, 10, 15, 3",
        "6800, 10, 19, 5",
        "6200, 10, 30, 9",
        "6202, 15, 35, 11"
    })
    void bearingsHaveTheSizesOfTheirStandard(String name, double bore, double outside, double width) {
        Bearing bearing = ready.bearings().get(name).orElseThrow();
        assertThat(List.of(bearing.bore(), bearing.outside(), bearing.width())).containsExactly(bore, outside, width);
    }

    @Test
    void everyBearingSitsOnARodThatIsSold() {
        for (String name : ready.bearings().names()) {
            double bore = ready.bearings().get(name).orElseThrow().bore();
            boolean odd = List.of(9.0, 17.0, 35.0, 40.0, 45.0, 50.0).contains(bore);
            assertThat(ready.soldRods().of(bore).isPresent()).as(name).isEqualTo(!odd);
        }
    }

    @Test
    void aRodIsFoundByItsDiameterAndToldAsItIsOrdered() {
        Diameters<Rod> rods = ready.soldRods();
        assertThat(rods.of(1).orElseThrow().order()).isEqualTo("1 mm silver steel rod, DIN 175");
        assertThat(rods.of(25.4 / 16).orElseThrow().order()).isEqualTo("1.5875 mm drill rod of 1/16 in, ASTM A681");
        assertThat(rods.of(1.1)).isEmpty();
        assertThat(Sold.beside(rods.all(), 1.1)).isEqualTo("1 and 1.2 mm");
        assertThat(Sold.beside(rods.all(), 0.1)).isEqualTo("0.3 mm");
        assertThat(Sold.beside(List.of(), 1)).isEqualTo("none");
    }

    /** ISO 2338, from memory: a few rows. */
    @ParameterizedTest
    @CsvSource({"1, 4, 10", "1.5, 4, 16", "2, 6, 20", "3, 8, 30", "4, 8, 40", "5, 10, 50", "6, 12, 60"})
    void dowelsComeInTheLengthsOfTheirStandard(double diameter, double shortest, double longest) {
        Dowel dowel = ready.soldDowels().of(diameter).orElseThrow();
        assertThat(dowel.lengths()).isSorted().startsWith(shortest).endsWith(longest);
        assertThat(dowel.within(longest + 5).orElseThrow()).isEqualTo(longest);
        assertThat(dowel.within(shortest - 0.1)).isEmpty();
        assertThat(dowel.within(13).orElse(12)).as("the next one down").isEqualTo(Math.min(12, longest));
        assertThat(dowel.order(longest)).startsWith("dowel pin ").endsWith(", ISO 2338");
    }

    @Test
    void ownRodsAndLengthsCount() {
        Catalogues mine = own("rods.yaml", "rods: {\"1.1\": {goods: brass wire}}");
        assertThat(mine.soldRods().of(1.1).orElseThrow().order()).isEqualTo("1.1 mm brass wire");
        Catalogues shop = own("screws.yaml", "screws: {M2: {lengths: [7, 9]}}");
        assertThat(shop.screws().get("M2").orElseThrow().length(8).orElseThrow())
                .isEqualTo(9);
        assertThat(problems.text()).isEmpty();
    }

    @Test
    void wrongEntriesAreRefusedWithLineAndReason() {
        own("rods.yaml", "rods:\n  thin: {goods: wire}\n").rods().names();
        own("screws.yaml", "screws:\n  M2: {tap-drill: 2.1, lengths: [-3]}\n  M3: {tap-drill: 3}\n")
                .screws()
                .names();
        assertThat(problems.text())
                .contains("mine/rods.yaml:2:3: thin: a rod's name is its diameter in mm")
                .contains(
                        "mine/screws.yaml:2:34: M2.lengths: -3 is below the least of 0.5 mm (nothing shorter is sold)")
                .contains("mine/screws.yaml:3:19: M3.tap-drill: is not below the thread");
    }
}
