// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatsTest {
    @Test
    void everyNameIsThereOnceAndStandsForFormatsOfTheList() {
        Set<String> seen = new HashSet<>();
        for (Format format : Formats.ALL) {
            assertThat(seen.add(format.name())).as(format.name()).isTrue();
            assertThat(format.files()).isNotEmpty();
            assertThat(Formats.ALL).containsAll(format.members());
            for (Format member : format.members()) {
                assertThat(member.options()).as(format.name()).containsAll(format.options());
            }
        }
        assertThat(Formats.outlines()).allMatch(Format::isUsual);
    }

    @ParameterizedTest
    @CsvSource({
        "parts/shutter-blade.svg, true",
        "parts/shutter-blade-2.dxf, true",
        "sheets/co2-laser-acrylic-3-1.dxf, true",
        "solids/shutter-blade.stl, true",
        "solids/fdm-pla.3mf, true",
        "solids/shutter-blade.step, true",
        "paper.pdf, true",
        "drawing.pdf, true",
        "parts/.svg, false",
        "parts/.hidden.svg, false",
        "parts/../a.svg, false",
        "parts/b/a.svg, false",
        "parts/A.svg, false",
        "parts/a.stl, false",
        "other.pdf, false",
        "a/paper.pdf, false",
        "solids/a.svg, false",
    })
    void aFileOfAFormatIsKnownByItsPath(String path, boolean known) {
        assertThat(Formats.write(path)).isEqualTo(known);
    }
}
