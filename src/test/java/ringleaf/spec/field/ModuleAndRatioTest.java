// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Modules in mm or as diametral pitch; ratios with a colon. */
class ModuleAndRatioTest {
    private static final Field<Double> MODULE = Field.module("module")
            .help("size of the teeth")
            .atLeast(0.2, "finer teeth are not cut")
            .atMost(20, "coarser teeth are not cut");
    private static final Field<Double> RATIO =
            Field.ratio("ratio").help("turns").atLeast(0.01, "too small").atMost(100, "too large");

    private final Problems problems = new Problems();

    private Double read(Field<Double> field, String text, LengthUnit units) {
        Place place =
                SpecSource.of("test.yaml", field.name() + ": " + text).whole().named(field.name());
        return field.type().read(new Node.Scalar(place, text, true), place, new Reading(units, problems));
    }

    @ParameterizedTest
    @CsvSource({"24dp,1.0583333333333333", "'24 dp',1.0583333333333333", "25.4dp,1", "127dp,0.2", "0.8,0.8", "1.5mm,1.5"
    })
    void modules(String text, double module) {
        // A bare module is in mm even where the document is in inches.
        assertThat(read(MODULE, text, LengthUnit.IN)).isCloseTo(module, within(1e-12));
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"2000dp,127dp", "1dp,1.27dp"})
    void pitchesOutOfRangeSayTheNearest(String text, String nearest) {
        Field<Double> field = text.equals("1dp") ? MODULE.atMost(20, "coarser teeth are not cut") : MODULE;
        assertThat(read(field, text, LengthUnit.MM)).isEqualTo(text.equals("2000dp") ? 0.2 : 20);
        assertThat(problems.text()).contains("the nearest that works is");
        if (text.equals("2000dp")) {
            assertThat(problems.text()).contains(nearest);
        } else {
            assertThat(problems.text()).contains("2dp");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"dp", "0dp", "-3dp", "24dpi", "x24dp", "1e999dp", "nandp", "24dpdp"})
    void noPitches(String text) {
        assertThat(read(MODULE, text, LengthUnit.MM)).isNull();
        assertThat(problems.isEmpty()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "5:3,1.6666666666666667",
        "'5 : 3',1.6666666666666667",
        "5/3,1.6666666666666667",
        "1.25,1.25",
        "1:4,0.25"
    })
    void ratios(String text, double ratio) {
        assertThat(read(RATIO, text, LengthUnit.MM)).isCloseTo(ratio, within(1e-15));
        assertThat(problems.isEmpty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"5:", ":3", "a:b", "5:0", "5:3:2", "nan:1", "1:inf", "5,3"})
    void noRatios(String text) {
        assertThat(read(RATIO, text, LengthUnit.MM)).isNull();
        assertThat(problems.isEmpty()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"1000:1,100", "-5:3,0.01"})
    void ratiosOutOfRangeAreToldAndReadAsTheNearest(String text, double nearest) {
        assertThat(read(RATIO, text, LengthUnit.MM)).isEqualTo(nearest);
        assertThat(problems.count()).isEqualTo(1);
        assertThat(problems.gaps()).isZero();
    }

    @Test
    void schemasTellTheSpellings() {
        Map<String, Object> module = MODULE.schema(true);
        assertThat(module.get("anyOf").toString()).contains("dp");
        assertThat(RATIO.schema(true).get("anyOf").toString()).contains(":");
    }
}
