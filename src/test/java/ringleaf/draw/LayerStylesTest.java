// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Layers that may stand in one file are told apart by colour, in SVG and in DXF. */
class LayerStylesTest {
    @Test
    void everyLayerOfAFileHasItsOwnColour() {
        List<LayerStyle> styles = new ArrayList<>(List.of(LayerStyles.CUT, LayerStyles.MARK, LayerStyles.GUIDE));
        for (int i = 1; i <= 24; i++) {
            styles.add(LayerStyles.level(i));
        }
        assertDistinct(styles);
    }

    @Test
    void everyProcessHasItsOwnColourAndNoneThatOfAMark() {
        List<LayerStyle> styles = new ArrayList<>(List.of(LayerStyles.MARK, LayerStyles.GUIDE));
        for (int i = 0; i < 32; i++) {
            styles.add(LayerStyles.process(i));
        }
        assertDistinct(styles);
    }

    private static void assertDistinct(List<LayerStyle> styles) {
        assertThat(styles.stream().map(LayerStyle::number)).doesNotHaveDuplicates();
        assertThat(styles.stream().map(LayerStyle::rgb)).doesNotHaveDuplicates();
        // dark enough to be seen on white: relative luminance with the weights of ITU-R BT.709
        for (LayerStyle style : styles) {
            double light =
                    0.2126 * (style.rgb() >> 16) + 0.7152 * (style.rgb() >> 8 & 0xFF) + 0.0722 * (style.rgb() & 0xFF);
            assertThat(light).as(style.hex()).isLessThan(0.65 * 255);
        }
    }

    /** Values of the index as the public library ezdxf 0.18 lists them (its table of indexed colours). */
    @Test
    void huesAreThoseOfTheirNumbers() {
        int[][] index = {
            {14, 0x7F0000}, {24, 0x7F1F00}, {124, 0x007F5F}, {134, 0x007F7F}, {154, 0x003F7F}, {244, 0x7F001F}
        };
        int found = 0;
        for (int i = 1; i <= 24; i++) {
            for (int[] entry : index) {
                if (LayerStyles.level(i).number() == entry[0]) {
                    assertThat(LayerStyles.level(i).rgb())
                            .as("number " + entry[0])
                            .isEqualTo(entry[1]);
                    found++;
                }
            }
        }
        assertThat(found).isEqualTo(index.length);
        int[][] lighter = {{12, 0xA50000}, {32, 0xA55200}, {102, 0x00A529}, {52, 0xA5A500}};
        for (int i = 8; i < 32; i++) {
            for (int[] entry : lighter) {
                if (LayerStyles.process(i).number() == entry[0]) {
                    assertThat(LayerStyles.process(i).rgb())
                            .as("number " + entry[0])
                            .isEqualTo(entry[1]);
                }
            }
        }
    }
}
