// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The readers themselves against the published conversions, so that they may judge the writers. */
class ReaderFormulaTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/svg-arcs.csv", numLinesToSkip = 2)
    void endPointsToCentre(
            double x1,
            double y1,
            double r,
            int large,
            int sweepFlag,
            double x2,
            double y2,
            double radius,
            double cx,
            double cy,
            double sweepDeg) {
        ReadPiece arc = SvgReader.arc(x1, y1, r, large == 1, sweepFlag == 1, x2, y2);
        assertThat(arc.radius()).isEqualTo(radius, within(1e-9));
        assertThat(arc.cx()).isEqualTo(cx, within(1e-9));
        assertThat(-arc.cy()).isEqualTo(cy, within(1e-9));
        assertThat(-Math.toDegrees(arc.sweep())).isEqualTo(sweepDeg, within(1e-9));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/dxf-bulges.csv", numLinesToSkip = 2)
    void bulgeToArc(
            double x0,
            double y0,
            double x1,
            double y1,
            double bulge,
            double radius,
            double cx,
            double cy,
            double sweepDeg) {
        ReadPiece arc = ReadPiece.bulge(x0, y0, x1, y1, bulge);
        assertThat(arc.radius()).isEqualTo(radius, within(1e-9));
        assertThat(arc.cx()).isEqualTo(cx, within(1e-9));
        assertThat(arc.cy()).isEqualTo(cy, within(1e-9));
        assertThat(Math.toDegrees(arc.sweep())).isEqualTo(sweepDeg, within(1e-9));
    }
}
