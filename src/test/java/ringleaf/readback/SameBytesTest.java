// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import ringleaf.draw.Drawings;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.part.Part;

/** The same part gives the same bytes, twice and in a locale with a decimal comma. */
class SameBytesTest {
    @Test
    void twiceAndElsewhere() {
        List<Part> first = Samples.all(1);
        List<Part> again = Samples.all(1);
        Locale before = Locale.getDefault();
        for (int i = 0; i < first.size(); i++) {
            byte[] svg = SvgWriter.write(Drawings.of(first.get(i)));
            byte[] dxf = DxfWriter.write(Drawings.of(first.get(i)), DxfVersion.AC1015);
            byte[] old = DxfWriter.write(Drawings.of(first.get(i)), DxfVersion.R12);
            try {
                Locale.setDefault(Locale.GERMANY);
                assertThat(SvgWriter.write(Drawings.of(again.get(i)))).isEqualTo(svg);
                assertThat(DxfWriter.write(Drawings.of(again.get(i)), DxfVersion.AC1015))
                        .isEqualTo(dxf);
                assertThat(DxfWriter.write(Drawings.of(again.get(i)), DxfVersion.R12))
                        .isEqualTo(old);
            } finally {
                Locale.setDefault(before);
            }
        }
    }
}
