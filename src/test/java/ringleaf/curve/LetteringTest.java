// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Point;

class LetteringTest {
    private static Box box(String text, double angle) {
        List<Path> strokes = Lettering.strokes(text, Point.ORIGIN, 6, angle);
        Box box = strokes.get(0).box();
        for (Path stroke : strokes) {
            box = box.union(stroke.box());
        }
        return box;
    }

    @Test
    void capitalsAreAsHighAsAskedAndTextsAsWideAsSaid() {
        for (String text : List.of("H", "8x \u23003.4", "R12.5 level 2", "14x on 76.4\u00B0", "\u00B10.05")) {
            Box box = box(text, 0);
            assertThat(box.minX()).as(text).isEqualTo(0, within(1e-9));
            assertThat(box.maxX()).as(text).isEqualTo(Lettering.width(text, 6), within(1e-9));
            assertThat(box.maxY()).as(text).isEqualTo(6, within(1e-9));
        }
        assertThat(box("g", 0).minY()).isEqualTo(-2, within(1e-9));
    }

    @Test
    void uprightTextReadsUpwards() {
        Box box = box("100 mm", Math.PI / 2);
        assertThat(box.maxY()).isEqualTo(Lettering.width("100 mm", 6), within(1e-9));
        assertThat(box.minX()).isEqualTo(-6, within(1e-9));
    }

    @Test
    void accentsStandOverTheirLettersAndUnknownSignsAreBoxes() {
        assertThat(Lettering.width("Gr\u00F6\u00DFe", 6)).isGreaterThan(Lettering.width("Gr", 6));
        assertThat(Lettering.width("\u00E9", 6)).isEqualTo(Lettering.width("e", 6));
        assertThat(box("\u00E9", 0).maxY()).isGreaterThan(6);
        assertThat(Lettering.strokes("\u706F", Point.ORIGIN, 6, 0)).hasSize(1);
        assertThat(Lettering.strokes("", Point.ORIGIN, 6, 0)).isEmpty();
        assertThat(Lettering.width("", 6)).isZero();
    }

    /** Every sign that dimensions and names use is drawn, and no two are alike. */
    @Test
    void printableSignsDiffer() {
        List<String> seen = new ArrayList<>();
        for (char c = '!'; c <= '~'; c++) {
            String strokes =
                    Lettering.strokes(String.valueOf(c), Point.ORIGIN, 6, 0).toString();
            assertThat(seen.contains(strokes)).as("sign " + c).isFalse();
            seen.add(strokes);
        }
    }
}
