// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.spec.text.Problems;

/** What may stand behind {@code --vary}, and what may not. */
class AxisTest {
    private static final String INCHES = Explored.SHUTTER
            .replace("title: Lamp", "units: in\ntitle: Lamp")
            .replace("48 ", "2 ")
            .replace("16\n", "0.6\n")
            .replace("0.1 ", "0.004 ");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shutter.blades=8..11 | 8 9 10 11",
                "mechanisms.shutter.blades=8..12..2 | 8 10 12",
                "shutter.blades=8..12,20 | 8 9 10 11 12 20",
                "shutter.lap=0.1..0.5..0.1 | 0.1 0.2 0.3 0.4 0.5",
                "shutter.lap=0.1..0.45..0.1 | 0.1 0.2 0.3 0.4",
                "shutter.full-opening=2in..3in*5 | 2in 2.25in 2.5in 2.75in 3in",
                "shutter.full-opening=1 1/2 in..2in..1/4in | 1.5in 1.75in 2in",
                "shutter.full-opening=50..2in*2 | 50 50.8",
                "shutter.drive-pin=far-end,lever | far-end lever",
                "shutter.drive.at=-90..90..90 | -90 0 90",
                "shutter.clearances.bore=0.05,4thou | 0.05 4thou",
                "fabrication.blade.stock=brass-0.1,steel-0.1 | brass-0.1 steel-0.1"
            })
    void valuesAndRanges(String typed, String values) {
        Axis axis =
                Explored.grid(Explored.variants(Explored.SHUTTER), typed).axes().get(0);
        assertThat(String.join(" ", axis.texts())).isEqualTo(values);
    }

    @Test
    void limitsAreVariedWithinTheirField() {
        Variants variants = Explored.variants(Explored.SHUTTER);
        Axis maps = Explored.grid(variants, "shutter.depth={at-most: 9},{at-most: 10}")
                .axes()
                .get(0);
        assertThat(maps.texts()).containsExactly("{at-most: 9}", "{at-most: 10}");
        Axis limits = Explored.grid(variants, "shutter.depth.at-most=9..10..0.5")
                .axes()
                .get(0);
        assertThat(limits.texts()).containsExactly("9", "9.5", "10");
        assertThat(limits.numbers()).containsExactly(9.0, 9.5, 10.0);
    }

    @Test
    void bareNumbersAreInTheDocumentsUnits() {
        Axis axis = Explored.grid(Explored.variants(INCHES), "shutter.full-opening=2..2.5..0.25,60mm")
                .axes()
                .get(0);
        assertThat(axis.texts()).containsExactly("2", "2.25", "2.5", "60mm");
        assertThat(axis.numbers()).containsExactly(50.8, 57.15, 63.5, 60.0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shutter.blades | not of the form",
                "shutter.blades= | 0 combinations",
                "shutter.blads=8..9 | did you mean blades?",
                "blades=8..9 | did you mean shutter.blades?",
                "lamp.blades=8..9 | there is no mechanism lamp in the spec; what can vary are the fields of shutter and of fabrication, e.g. shutter.FIELD",
                "shutter.drive.modul=1,2 | did you mean module?",
                "shutter.blades=24..8 | reversed",
                "shutter.blades=a..b | not numeric",
                "shutter.blades=8.. | not numeric: an end is missing",
                "shutter.blades=8..24..0 | step that is not above 0",
                "shutter.blades=8..24..0.5 | takes whole numbers",
                "shutter.blades=8..24*4 | takes whole numbers",
                "shutter.lap=0.1..0.25 | does not come out even",
                "shutter.lap=0.1..0.2*1 | no whole number from 2 up",
                "shutter.blades=8,,9 | empty value",
                "shutter.blades=8,8 | names a value twice",
                "shutter.blades=2..9 | below the least of 3",
                "shutter.blades=8..90 | above the most of 64",
                "shutter.drive-pin=far..end | not numeric",
                "shutter.drive-pin=middle | is not one of",
                "shutter.lap.more=1 | has no more",
                "shutter.lap=1..2..0.000001 | comes to 1000001 combinations in all",
                "fabrication.blad.stock=brass-0.1 | did you mean blade?",
                "fabrication.blade.stock=gold | there is no stock gold",
                "shutter.=1 | empty key",
                "title=a,b | the title names the output folder",
                "units=mm,in | it says what bare numbers mean",
                "shutter.kind=gear,leaf-aperture | designs of different kinds have no figures in common",
                "shutter=3 | the path names no field; what can vary below it: full-opening, ",
                "mechanisms=3 | the path names no mechanism; what can vary are the fields of shutter",
                "shutter.depth.at-mst=3 | did you mean at-most?",
                "shutter.blades=8...10 | three dots",
                "shutter.blades=8-24 | a range has two dots: 8..24",
                "shutter.lap=0,4..0,6 | decimals take a point: 0.4..0.6",
                "shutter.full-opening=1..9e99 | comes to more than 1000000000000000 combinations"
            })
    void whatIsRefused(String typed, String reason) {
        Problems problems = new Problems();
        assertThat(Grid.read(List.of(typed), Explored.variants(Explored.SHUTTER), false, problems))
                .isEmpty();
        assertThat(problems.text()).contains(reason).contains("--vary");
    }

    /** The line below the message points at what is wrong. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shutter.blads=8..9 | blads",
                "shuter.blades=8..9 | shuter",
                "fabrication.blad.stock=brass-0.1 | blad.",
                "shutter.lap=0.1..0.2..0.1,0.4..0.3 | 0.4..0.3",
                "shutter.blades=8, 9,x | x",
                "shutter.depth={at-most: 9},12..8 | 12..8",
                "shutter.drive-pin=far-end,levr | levr"
            })
    void theMistakeIsPointedAt(String typed, String at) {
        Problems problems = new Problems();
        assertThat(Grid.read(List.of(typed), Explored.variants(Explored.SHUTTER), false, problems))
                .isEmpty();
        String[] lines = problems.text().split("\n");
        assertThat(lines).hasSize(3);
        assertThat(lines[1]).isEqualTo("  | " + typed);
        assertThat(lines[2]).isEqualTo("  | " + " ".repeat(typed.lastIndexOf(at)) + "^");
    }

    @Test
    void manyCombinationsAreAskedForTwice() {
        Variants variants = Explored.variants(Explored.SHUTTER);
        List<String> many = List.of("shutter.lap=0..1..0.001", "shutter.blade-width=5..10..0.05");
        Problems problems = new Problems();
        assertThat(Grid.read(many, variants, false, problems)).isEmpty();
        assertThat(problems.text()).contains("101101 combinations").contains("--yes");
        assertThat(Grid.read(many, variants, true, new Problems()).orElseThrow().size())
                .isEqualTo(101101);
        Problems more = new Problems();
        List<String> endless = List.of("shutter.lap=0..1..0.000001", "shutter.blade-width=5..10..0.000001");
        assertThat(Grid.read(endless, variants, true, more)).isEmpty();
        assertThat(more.text()).contains("5000006000001 combinations").contains("2000000 are the most");
    }

    @Test
    void aFieldVariesOnceOnly() {
        Problems problems = new Problems();
        Variants variants = Explored.variants(Explored.SHUTTER);
        List<String> twice = List.of("shutter.depth={at-most: 9}", "shutter.depth.at-most=9..12");
        assertThat(Grid.read(twice, variants, false, problems)).isEmpty();
        assertThat(problems.text()).contains("varies what shutter.depth varies");
    }
}
