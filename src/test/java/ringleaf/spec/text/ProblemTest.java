// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemTest {

    @Test
    void isPrintedAsTheContractShowsIt() {
        SpecSource source = SpecSource.of("harbour-light.yaml", "\n".repeat(13) + "  blades: 2\n");
        Problems problems = new Problems();
        problems.at(
                source.at(14, 11).named("blades"),
                "2 is below the least of 3 (two blades cannot close a round opening)");
        assertThat(problems.text())
                .isEqualTo("harbour-light.yaml:14:11: blades: 2 is below the least of 3 "
                        + "(two blades cannot close a round opening)\n"
                        + "  14 |   blades: 2\n"
                        + "     |           ^\n");
    }

    @Test
    void cutsLongLinesAroundThePlaceAndKeepsTheMarkUnderIt() {
        String line = "x".repeat(500) + "HERE" + "y".repeat(500);
        SpecSource source = SpecSource.of("a.yaml", line);
        String[] lines = new Problem(source.at(1, 501), "wrong", "").text().split("\n");
        assertThat(lines[1].length()).isLessThan(120);
        assertThat(lines[1].charAt(lines[2].indexOf('^'))).isEqualTo('H');
        assertThat(lines[1]).startsWith("  1 | …x").endsWith("y…");
    }

    @Test
    void showsWhatWouldOtherwiseMoveTheCursorOrHide() {
        SpecSource source = SpecSource.of("a\u001b[2J.yaml", "k:\t\u202Ev\u200B");
        String text = new Problem(source.at(1, 4).named("k\u0007"), "wrong", "").text();
        assertThat(text).contains("␛[2J").contains("␉�v�").contains("k␇");
        for (int i = 0; i < text.length(); i++) {
            assertThat(text.charAt(i) == '\n' || !Shown.isHidden(text.charAt(i)))
                    .isTrue();
        }
    }

    @Test
    void problemsComeInTheOrderOfTheText() {
        SpecSource source = SpecSource.of("a.yaml", "1\n2\n3");
        SpecSource option = SpecSource.ofOption("--set a=1", "a=1");
        Problems problems = new Problems();
        problems.at(source.at(3, 1), "third");
        problems.at(option.at(7, 7), "option");
        problems.at(source.at(1, 2), "second");
        problems.at(source.at(1, 1), "first");
        problems.at(source.at(1, 1), "first");
        assertThat(problems.list()).extracting(Problem::reason).containsExactly("first", "second", "third", "option");
        assertThat(problems.text()).endsWith("--set a=1: option\n");
    }

    @Test
    void countsWhatItDoesNotPrint() {
        SpecSource source = SpecSource.of("a.yaml", "x");
        Problems problems = new Problems();
        for (int i = 1; i <= 60; i++) {
            problems.at(source.at(1, i), "wrong");
        }
        assertThat(problems.text()).endsWith("and 10 more\n");
    }

    @Test
    void findsTheNearestName() {
        List<String> known = List.of("outer-diameter", "blades", "blade-width", "lap");
        assertThat(Nearest.of("outer-diametr", known)).contains("outer-diameter");
        assertThat(Nearest.of("outer_diameter", known)).contains("outer-diameter");
        assertThat(Nearest.of("OuterDiameter", known)).contains("outer-diameter");
        assertThat(Nearest.of("baldes", known)).contains("blades");
        assertThat(Nearest.of("lpa", known)).contains("lap");
        assertThat(Nearest.of("colour", known)).isEmpty();
        assertThat(Nearest.hint("colour", known)).isEqualTo("known: outer-diameter, blades, blade-width, lap");
        assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
        assertThat(Nearest.distance("ab", "ba")).isEqualTo(1);
    }
}
