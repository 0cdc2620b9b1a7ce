// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.tooth.ToothFormTest.EXACT;
import static ringleaf.tooth.ToothFormTest.form;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

class InternalGearTest {
    private static final double DIRECTION = Math.toRadians(70);

    @Test
    void handbookPairs() {
        // Metric gear handbooks, internal gear example, as remembered: m 3, z 16/24, x 0/+0.5; digits computed.
        InternalPair pair = InternalPair.of(form(3, 16, 0), ring(3, 24, 0.5));
        assertThat(Involute.inv(pair.workingAngle())).isCloseTo(0.060401, within(5e-7));
        assertThat(Math.toDegrees(pair.workingAngle())).isCloseTo(31.09362066, within(1e-8));
        assertThat(pair.centreDistance()).isCloseTo(13.1683, within(5e-5));
        assertThat(2 * pair.ring().tipRadius()).isCloseTo(69, within(1e-12));
        assertThat(2 * pair.ring().rootRadius()).isCloseTo(82.5, within(1e-12));
        // That much-quoted pair misses the involute condition by 0.0014; the later x2 = 0.516 meets it.
        assertThat(pair.involuteMargin()).isCloseTo(0.666667 - 0.668093, within(1e-6));
        InternalPair later = InternalPair.of(form(3, 16, 0), ring(3, 24, 0.516));
        assertThat(Involute.inv(later.workingAngle())).isCloseTo(0.0618565441, within(1e-10));
        assertThat(Math.toDegrees(later.workingAngle())).isCloseTo(31.32091717, within(1e-8));
        assertThat(later.centreDistance()).isCloseTo(13.1999522279, within(1e-9));
        assertThat(2 * later.ring().tipRadius()).isCloseTo(69.096, within(1e-12));
        assertThat(later.involuteMargin()).isCloseTo(0.666667 - 0.659370, within(1e-6));
    }

    @Test
    void contactRatiosAndLimits() {
        double[][] ratios = {
            {24, 120, 1.8644573087},
            {20, 80, 1.8896813303},
            {24, 80, 1.9122136324},
            {30, 100, 1.9082048642},
            {30, 60, 1.9980000888},
            {21, 60, 1.9558084379}
        };
        for (double[] row : ratios) {
            InternalPair pair = InternalPair.of(form(1, (int) row[0], 0), ring(1, (int) row[1], 0));
            assertThat(pair.contactRatio()).isCloseTo(row[2], within(1e-10));
            assertThat(pair.involuteMargin()).isPositive();
        }
        double[][] trims = {
            {20, 35, -0.00426},
            {20, 36, -0.00113},
            {20, 37, 0.00165},
            {20, 38, 0.00415},
            {15, 60, 0.04228},
            {12, 120, 0.07247}
        };
        for (double[] row : trims) {
            InternalPair pair = InternalPair.of(form(1, (int) row[0], 0), ring(1, (int) row[1], 0));
            assertThat(pair.trimmingMargin()).isCloseTo(row[2], within(6e-6));
        }
        // Least pinion by the involute condition, as a real number: 23.6778 in 40, 19.1836 in 80 (computed).
        for (int[] row : new int[][] {{40, 23}, {80, 19}, {120, 18}}) {
            InternalForm ring = ring(1, row[0], 0);
            assertThat(InternalPair.of(form(1, row[1], 0), ring).involuteMargin())
                    .isNegative();
            assertThat(InternalPair.of(form(1, row[1] + 1, 0), ring).involuteMargin())
                    .isPositive();
        }
    }

    @Test
    void pinsTouchTheOutline() {
        for (InternalForm form : List.of(ring(1, 40, 0), ring(0.8, 81, 0.3), ring(2, 36, 0.2))) {
            double pin = 1.7 * form.module();
            Contour opening = opening(form);
            LineString line = Flattened.line(opening.segments(), 1e-6);
            double low = form.tipRadius();
            double high = form.rootRadius();
            double space = form.pitchAngle() / 2;
            for (int i = 0; i < 60; i++) {
                double middle = (low + high) / 2;
                if (line.distance(Flattened.jts(Point.polar(middle, space))) > pin / 2) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            double across = form.teeth() % 2 == 0 ? 2 * low : 2 * low * Math.cos(Math.PI / 2 / form.teeth());
            assertThat(across - pin).isCloseTo(PinMeasure.betweenPins(form.filling(), pin), within(0.004));
        }
    }

    @Test
    void outlinesAreSound() {
        for (InternalForm form : List.of(
                ring(1, 40, 0),
                ring(0.8, 81, 0.3),
                ring(2, 36, 0.2),
                InternalForm.of(1, 24, 0, 0, EXACT),
                InternalForm.of(1, 60, -0.4, 0.05, Forms.FORM_D),
                InternalForm.of(1, 30, 0.9, 0, EXACT))) {
            Contour opening = opening(form);
            Polygon polygon = Flattened.polygon(opening, 1e-5);
            assertThat(polygon.isValid()).as(form.toString()).isTrue();
            assertThat(opening.isCounterClockwise()).isTrue();
            assertThat(opening.centroid().norm()).isLessThan(1e-9);
            assertThat(InternalOutline.of(form, Tolerance.CURVE).deviation()).isLessThan(Tolerance.CURVE.length());
            int corners = 0;
            List<Segment> pieces = opening.segments();
            for (int i = 0; i < pieces.size(); i++) {
                Segment next = pieces.get((i + 1) % pieces.size());
                boolean smooth = pieces.get(i).tangentAt(1).distance(next.tangentAt(0)) < 1e-9;
                corners += smooth ? 0 : 1;
            }
            assertThat(corners).as(form.toString()).isEqualTo(2 * form.teeth());
        }
    }

    @Test
    void refusesWhatIsNoRing() {
        assertThatThrownBy(() -> ring(1, 40, 0).withTipRadius(18)).hasMessageContaining("base radius");
        assertThatThrownBy(() -> InternalPair.of(form(1, 40, 0), ring(1, 40, 0)))
                .hasMessageContaining("more teeth");
        assertThatThrownBy(() -> opening(ring(1, 40, 4))).hasMessageContaining("end in a point");
    }

    static List<InternalPair> pairs() {
        return List.of(
                InternalPair.of(form(1, 24, 0), ring(1, 60, 0))
                        .withNormalBacklash(0.05, 0.5)
                        .withCleanTips(),
                InternalPair.of(form(0.8, 20, 0.3), ring(0.8, 81, 0.4))
                        .withNormalBacklash(0.08, 0.2)
                        .withCleanTips(),
                InternalPair.of(form(1, 24, 0), ring(1, 60, 0))
                        .withCentreDistance(17.9)
                        .withCleanTips());
    }

    @Test
    void fullRingTipsWouldTouchTheRoots() {
        InternalPair full = InternalPair.of(form(1, 24, 0), ring(1, 60, 0));
        assertThat(full.involuteMargin()).isPositive();
        assertThat(full.isClean()).isFalse();
        assertThat(full.ringTipLimit())
                .isBetween(full.ring().tipRadius(), full.ring().referenceRadius());
        assertThat(full.withCleanTips().contactRatio()).isLessThan(full.contactRatio());
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void rollsWithTheComputedGap(InternalPair pair) {
        Polygon pinion = Flattened.polygon(GearOutlineTest.gear(pair.pinion()), 1e-5);
        Polygon opening = Flattened.polygon(opening(pair.ring()), 1e-5);
        assertThat(pair.isClean()).isTrue();
        assertThat(pair.withCleanTips()).isEqualTo(pair);
        assertThat(pair.contactRatio()).isGreaterThan(1.3);
        assertThat(pair.involuteMargin()).isPositive();
        assertThat(pair.trochoidMargin()).isPositive();
        assertThat(Math.min(pair.pinionTipClearance(), pair.ringTipClearance())).isGreaterThan(0.1);
        double half = pair.normalBacklash() / 2;
        assertThat(half).isPositive();
        for (int i = 0; i < 8; i++) {
            double turn = pair.ring().pitchAngle() * i / 8;
            Geometry standing = AffineTransformation.rotationInstance(turn).transform(opening);
            double space = pair.ring().pitchAngle() / 2 + turn;
            AffineTransformation place =
                    AffineTransformation.rotationInstance(Forms.pinionPhase(pair, space, DIRECTION));
            Point centre = Point.polar(pair.centreDistance(), DIRECTION);
            place.translate(centre.x(), centre.y());
            Geometry meshed = place.transform(pinion);
            assertThat(meshed.difference(standing).getArea()).isLessThan(1e-9);
            double gap = new IndexedFacetDistance(standing.getBoundary()).distance(meshed.getBoundary());
            assertThat(gap).isCloseTo(half, within(0.001));
        }
    }

    private static InternalForm ring(double module, int teeth, double shift) {
        return InternalForm.of(module, teeth, shift, 0, EXACT);
    }

    private static Contour opening(InternalForm form) {
        return InternalOutline.of(form, Tolerance.CURVE).opening();
    }
}
