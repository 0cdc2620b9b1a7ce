// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths as people read them; 1 in is 25.4 mm by definition (international yard and pound agreement, 1959). */
class ShownUnitTest {

    @ParameterizedTest
    @CsvSource({
        "MM,39.3933,39.39 mm",
        "MM,64,64 mm",
        "MM,34.925,34.925 mm",
        "MM,0.0249,0.025 mm",
        "MM,0.00049,0.00049 mm",
        "MM,-0.2037,-0.2 mm",
        "MM,0,0 mm",
        "MM,1e-12,0 mm",
        "CM,39.3933,3.939 cm",
        "IN,25.4,1 in",
        "IN,64,2.5195 in",
        "IN,34.925,1.375 in",
        "IN,0.254,0.01 in",
        "IN,0.0254,0.001 in",
        "THOU,0.3048,12 thou",
        "THOU,3.175,125 thou",
        "IN,9.525,0.375 in",
        "IN,3.96875,0.15625 in"
    })
    void lengthsAreToldToWhatCanBeMeasured(ShownUnit unit, double mm, String told) {
        assertThat(unit.figure(mm, "mm")).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "1.64706,1,1.647",
        "115,1,115",
        "14,1,14",
        "12345,1,12345",
        "33.7262,deg,33.73°",
        "180,deg,180°",
        "0.002,deg,0.002°",
        "4.0647,Nmm,4.065 Nmm",
        "441.299,Nmm,441.3 Nmm",
        "645.16,mm2,1 in²",
        "0.00041,1,0.00041"
    })
    void whatIsNoLengthHasFourFigures(double value, String unit, String told) {
        assertThat(ShownUnit.IN.figure(value, unit)).isEqualTo(told);
    }

    @Test
    void aModuleStaysInMillimetres() {
        assertThat(ShownUnit.IN.size(new Dimension("module", 0.8, "mm", Dimension.Origin.GIVEN, "")))
                .isEqualTo("0.8 mm");
        assertThat(ShownUnit.MM.size(new Dimension("stage-1-module", 25.4 / 24, "mm", Dimension.Origin.GIVEN, "")))
                .as("a diametral pitch is no round module")
                .isEqualTo("1.058 mm");
        assertThat(ShownUnit.IN.size(new Dimension("depth", 25.4, "mm", Dimension.Origin.GIVEN, "")))
                .isEqualTo("1 in");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "needs 25.4 mm more | needs 1 in more",
                "processes keep 0.254, 0.508 and 2.54 mm | processes keep 0.01, 0.02 and 0.1 in",
                "makes 0.254 to 254 mm | makes 0.01 to 10 in",
                "far end: housing Ø254; lever: none | far end: housing Ø10 in; lever: none",
                "Ø254 mm | Ø10 in",
                "module 0.8 mm, bore 2.54 mm | module 0.8 mm, bore 0.1 in",
                "state 88, opening 42.164 mm | state 88, opening 1.66 in",
                "at 13 of 181 states, 25.4 mm | at 13 of 181 states, 1 in",
                "leaks 645.16 mm² | leaks 1 in²",
                "147.1 Nmm, 434 N/mm², 8.5 g/mm³ | 147.1 Nmm, 434 N/mm², 8.5 g/mm³",
                "acrylic-3 mm M2 | acrylic-3 mm M2",
                "-2.54 mm | -0.1 in"
            })
    void lengthsInSentencesFollow(String sentence, String told) {
        assertThat(ShownUnit.IN.text(sentence)).isEqualTo(told);
        assertThat(ShownUnit.MM.text(sentence)).isEqualTo(sentence);
    }

    @Test
    void finerWhereThatIsWhatMatters() {
        assertThat(ShownUnit.MM.figure(0.64493, "mm", 0)).isEqualTo("0.64 mm");
        assertThat(ShownUnit.MM.figure(0.64493, "mm", 1)).isEqualTo("0.645 mm");
        assertThat(ShownUnit.IN.figure(0.64493, "mm", 1)).isEqualTo("0.0254 in");
        assertThat(ShownUnit.MM.figure(Double.NaN, "mm")).isEqualTo("none");
    }
}
