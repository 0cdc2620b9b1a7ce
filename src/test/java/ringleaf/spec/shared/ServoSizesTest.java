// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** What is bought and what machines leave is held against itself when it is read. */
class ServoSizesTest {
    private static Catalogues with(String file, String text, Problems problems) {
        return new Catalogues(
                (asked, own) -> asked.equals(file) ? List.of(SpecSource.of("mine/" + file, text)) : List.of(),
                problems);
    }

    /** Each beside the sizes of micro-180, of which this one alone is changed: 22.8 x 12.3, ears 32.3, holes 27.8. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "body-length: 40 | no ear stands out; left open, ear-length is as that of micro-180",
                "body-length: 27 | puts the holes of the ears into the body; left open, holes-along, hole-diameter are as",
                "hole-diameter: 100 | holes-along of 27.8 mm puts the holes of the ears into the body",
                "hole-diameter: 5.1 | into the body",
                "ear-length: 29 | over their ends",
                "holes-along: 31 | over their ends",
                "holes-across: 11 | over the sides of the ears",
                "holes-across: 1.5 | run into one another",
                "axis-offset: 23 | puts the axis beyond the body's other end",
                "horn-diameter: 4 | on which the horn sits",
                "horn-screw-circle: 19 | over its edge",
                "horn-screw-circle: 5.5 | into the spline",
                "horn-screw-hole: 10 | horn-screw-circle of 14 mm puts the holes",
                "body-width: 0 | is below the least of 2 mm",
                "pulse-to: 500 | would never turn"
            })
    void aServoThatContradictsItselfIsRefused(String size, String message) {
        Problems problems = new Problems();
        Catalogues own = with("servos.yaml", "servos: {mine: {travel: 180, " + size + "}}", problems);
        assertThat(own.servos().get("mine")).isEmpty();
        assertThat(problems.text()).contains(message).contains("mine/servos.yaml:1:");
    }

    @Test
    void readyServosAgreeAndWhatIsLeftOpenIsTold() {
        Problems problems = new Problems();
        Catalogues own = with("servos.yaml", "servos: {mine: {travel: 170, torque: 2kgcm}}", problems);
        own.servos().names().forEach(name -> assertThat(own.servos().get(name)).isPresent());
        assertThat(problems.text()).isEmpty();
        assertThat(own.servos().require("micro-120").words()).isEqualTo("micro-120, travel 120°");
        assertThat(own.servos().require("mine").words())
                .startsWith("mine, travel 170°; not measured, but as the class micro-180: body-length, body-width,")
                .doesNotContain("torque");
    }

    @Test
    void aBearingHasRoomForBallsAndAProcessLeavesSomething() {
        Problems problems = new Problems();
        String thin = "bearings: {mine: {bore: 8, outside: 8.4, width: 4}}";
        assertThat(with("bearings.yaml", thin, problems).bearings().get("mine")).isEmpty();
        assertThat(problems.text()).contains("leaves no room for two rings").contains("the least that works is 9 mm");
        Problems others = new Problems();
        with("processes.yaml", "processes: {co2-laser: {least-web: 0, least-hole: 0}}", others)
                .processes()
                .get("co2-laser");
        assertThat(others.text()).contains("a web of nothing holds nothing").contains("a hole of nothing is none");
    }

    /** Each beside the sizes of M3, of which this one alone is changed: holes 3.2, 3.4, 3.6, head 5.5, nut 5.5. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "clearance-fine: 2.9 | clearance-fine: 2.9 mm is not above the thread of 3 mm: the screw would not pass",
                "clearance-medium: 3.1 | clearance-medium: 3.1 mm is below the clearance-fine",
                "clearance-coarse: 3.3 | clearance-coarse: 3.3 mm is below the clearance-medium",
                "head-diameter: 3.5 | the head would fall through its own hole",
                "nut-across: 3.2 | the nut would fall through the hole",
                "tap-drill: 1.2 | is below half of the thread",
                "tap-drill: 3 | is not below the thread",
                "spacer-bore: 2.5 | the screw would not pass",
                "spacer-outside: 3 | the spacer would have no wall"
            })
    void aScrewThatContradictsItselfIsRefused(String size, String message) {
        Problems problems = new Problems();
        Catalogues own = with("screws.yaml", "screws: {M3: {" + size + "}}", problems);
        assertThat(own.screws().get("M3")).isEmpty();
        assertThat(problems.text()).contains(message).contains("mine/screws.yaml:1:");
    }

    @Test
    void readyScrewsAndStockAgreeAndHalfASpacerIsNone() {
        Problems problems = new Problems();
        Catalogues ready = with("none", "", problems);
        ready.screws().names().forEach(name -> assertThat(ready.screws().get(name))
                .isPresent());
        ready.stock().names().forEach(name -> assertThat(ready.stock().get(name))
                .isPresent());
        assertThat(problems.text()).isEmpty();
        String half = "screws: {mine: {thread: 3, clearance-fine: 3.2, clearance-medium: 3.4, clearance-coarse: 3.6,"
                + " tap-drill: 2.5, head-diameter: 5.5, head-height: 3, nut-across: 5.5, nut-height: 2.4, spacer-bore: 3.2}}";
        assertThat(with("screws.yaml", half, problems).screws().get("mine")).isEmpty();
        assertThat(problems.text()).contains("stands without spacer-outside").contains("stands without spacer-lengths");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "yield-stress: 1MPa | nothing that is cut is so brittle",
                "stiffness: 110MPa | a blade that stretches so far is no blade",
                "flatness: 0.2 | 0.2 mm is as much as the sheet of 0.15 mm itself"
            })
    void stockThatContradictsItselfIsRefused(String value, String message) {
        Problems problems = new Problems();
        Catalogues own = with("stock.yaml", "stock: {brass-0.15: {" + value + "}}", problems);
        assertThat(own.stock().get("brass-0.15")).isEmpty();
        assertThat(problems.text()).contains(message);
    }
}
