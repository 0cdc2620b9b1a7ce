// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Contour;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Tips relieved and rounded. */
class TipFinishTest {
    private static final ToothForm FORM = Forms.of(1, 24);

    @Test
    void reliefThinsTheTipByTwiceItsDepthAndLeavesTheFlankBelow() {
        TipFinish finish = new TipFinish(0.03, 0.5, 0);
        GearOutline outline = GearOutline.of(FORM, Tolerance.CURVE, finish);
        Contour plain = GearOutline.of(FORM, Tolerance.CURVE).external();
        Contour relieved = outline.external();
        // Normal to the flank at the tip: along the tip circle it is 1/cos of the pressure angle there.
        double slant = Math.cos(FORM.pressureAngleAt(FORM.tipRadius()));
        assertThat(tipLand(plain) - tipLand(relieved)).isCloseTo(2 * 0.03 / slant, within(0.003));
        assertThat(outline.deviation()).isLessThan(0.0006);
        assertThat(relieved.area()).isLessThan(plain.area());
        // Lost area, both flanks of all teeth: a third of depth times the relieved length.
        double roll = InvoluteCurve.rollAt(FORM.baseRadius(), FORM.tipRadius());
        double start = InvoluteCurve.rollAt(FORM.baseRadius(), FORM.tipRadius() - 0.5);
        double length = FORM.baseRadius() * (roll * roll - start * start) / 2;
        double lost = (plain.area() - relieved.area()) / 48;
        assertThat(lost).isCloseTo(0.03 * length / 3, within(0.3 * 0.03 * length / 3));
    }

    private static double tipLand(Contour contour) {
        return contour.segments().get(0).length();
    }

    @Test
    void everyJointOfARelievedFlankIsSmooth() {
        Contour contour = GearOutline.of(FORM, Tolerance.CURVE, new TipFinish(0.03, 0.5, 0))
                .external();
        List<Segment> pieces = contour.segments();
        for (int i = 1; i < pieces.size(); i++) {
            Segment before = pieces.get(i - 1);
            Segment after = pieces.get(i);
            if (Math.abs(after.start().norm() - FORM.tipRadius()) > 1e-9) {
                assertThat(before.tangentAt(1).cross(after.tangentAt(0))).isCloseTo(0, within(1e-6));
            }
        }
    }

    @Test
    void roundingTouchesTipCircleAndFlank() {
        Contour sharp = GearOutline.of(FORM, Tolerance.CURVE).external();
        Contour round =
                GearOutline.of(FORM, Tolerance.CURVE, new TipFinish(0, 0, 0.1)).external();
        assertThat(round.area()).isLessThan(sharp.area());
        assertThat(round.box().maxX()).isCloseTo(FORM.tipRadius(), within(1e-9));
        int rounded = 0;
        List<Segment> pieces = round.segments();
        for (int i = 0; i < pieces.size(); i++) {
            Segment piece = pieces.get(i);
            if (Math.abs(Math.abs(piece.curvature()) - 10) < 1e-9) {
                rounded++;
                Segment after = pieces.get((i + 1) % pieces.size());
                assertThat(piece.tangentAt(1).cross(after.tangentAt(0))).isCloseTo(0, within(1e-9));
            }
        }
        assertThat(rounded).isEqualTo(48);
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThatThrownBy(() -> GearOutline.of(FORM, Tolerance.CURVE, new TipFinish(0, 0, 1))
                        .external())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("does not fit");
        assertThatThrownBy(() -> GearOutline.of(FORM, Tolerance.CURVE, new TipFinish(0.03, 2.2, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("below the involute");
        assertThatThrownBy(() -> new TipFinish(0.1, 0.05, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
