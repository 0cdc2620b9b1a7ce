// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageContentTest {
    /** Samples a curve with the writer's handles densely; the bound is its worst distance from the circle. */
    @ParameterizedTest
    @CsvSource({"1, 90", "1, 45", "40, 45", "40, 30", "2500, 45", "2500, 11.25", "0.3, 45"})
    void theBoundIsTheWorstDistanceFromTheCircle(double radius, double degrees) {
        double sweep = Math.toRadians(degrees);
        double handle = 4.0 / 3 * Math.tan(sweep / 4);
        double[][] p = {
            {1, 0},
            {1, handle},
            {Math.cos(sweep) + handle * Math.sin(sweep), Math.sin(sweep) - handle * Math.cos(sweep)},
            {Math.cos(sweep), Math.sin(sweep)}
        };
        double worst = 0;
        for (int i = 0; i <= 2000; i++) {
            double t = i / 2000.0;
            double[] b = {Math.pow(1 - t, 3), 3 * t * (1 - t) * (1 - t), 3 * t * t * (1 - t), t * t * t};
            double x = 0;
            double y = 0;
            for (int k = 0; k < 4; k++) {
                x += b[k] * p[k][0];
                y += b[k] * p[k][1];
            }
            worst = Math.max(worst, Math.abs(Math.hypot(x, y) - 1));
        }
        double bound = PageContent.deviation(radius, sweep) / radius;
        assertThat(worst).isBetween(0.98 * bound - 1e-15, 1.02 * bound + 1e-15);
    }

    @Test
    void piecesAreAtMostFortyFiveDegreesAndKeepTheBound() {
        for (double radius = 0.1; radius < 6000; radius *= 1.7) {
            for (double sweep = -2 * Math.PI; sweep <= 2 * Math.PI; sweep += 0.1) {
                int n = PageContent.curves(radius, sweep);
                assertThat(Math.abs(sweep) / n).isLessThanOrEqualTo(Math.PI / 4 + 1e-9);
                assertThat(PageContent.deviation(radius, sweep / n)).isLessThanOrEqualTo(PageContent.ROUND.length());
            }
        }
        assertThat(PageContent.curves(30, 2 * Math.PI)).isEqualTo(8);
    }

    /** Against the metrics that PDFBox carries for the font. */
    @Test
    void widthsAreThoseOfTheFont() throws Exception {
        PDType1Font font = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
        for (char c = ' '; c <= '~'; c++) {
            String text = String.valueOf(c);
            double own = HelveticaWidths.of(text.getBytes(StandardCharsets.US_ASCII));
            assertThat(own).as(text).isEqualTo(font.getStringWidth(text), within(1e-3));
        }
    }
}
