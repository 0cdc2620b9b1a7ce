// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.geom.Point;

class BandTest {
    private static final Band WORKED = new Band(37.4, 10.5, Math.toRadians(145), 14);
    private static final DrivePin FAR_END = new DrivePin.FarEnd();

    /** Every printed digit of the worked case; the blade angles are its travel in quarters. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/aperture-worked-case.csv", numLinesToSkip = 2)
    void workedCase(
            double bladeDeg, double inscribed, double corner, double area, double pin, double ring, double pressure) {
        double closed = WORKED.bladeAngle(4);
        double b = closed * Math.rint(4 * Math.toRadians(bladeDeg) / closed) / 4;
        double digit = 0.5001e-4;
        assertThat(Math.toDegrees(b)).isCloseTo(bladeDeg, within(digit));
        assertThat(WORKED.inscribedRadius(b)).isCloseTo(inscribed, within(digit));
        assertThat(WORKED.cornerRadius(b)).isCloseTo(corner, within(digit));
        assertThat(WORKED.openingArea(b)).isCloseTo(area, within(digit));
        assertThat(WORKED.pinRadius(FAR_END, b)).isCloseTo(pin, within(digit));
        assertThat(Math.toDegrees(WORKED.ringAngle(FAR_END, b))).isCloseTo(ring, within(digit));
        assertThat(Math.toDegrees(WORKED.slotPressure(FAR_END, b))).isCloseTo(pressure, within(digit));
    }

    /** The worked case reaches out to 42.65 open and 46.74 closed. */
    @Test
    void reach() {
        assertThat(WORKED.reach(0)).isCloseTo(42.65, within(1e-12));
        assertThat(WORKED.reach(WORKED.bladeAngle(4))).isCloseTo(46.74, within(5e-3));
    }

    /** Closed forms of the pin at the far end that the code does not use: radius, dip, return and open pressure. */
    @ParameterizedTest
    @CsvSource({"100", "120", "145", "160", "172"})
    void pinAtTheFarEnd(double spanDeg) {
        double a = Math.toRadians(spanDeg);
        Band band = new Band(50, 9, a, 12);
        double s = Math.sin(a / 2);
        for (double b = 0; b < 2; b += 0.1) {
            double radius = 50 * Math.sqrt(1 + 4 * s * s - 4 * s * Math.sin(b + a / 2));
            assertThat(band.pinRadius(FAR_END, b)).isCloseTo(radius, within(1e-11));
        }
        assertThat(band.dipAngle(FAR_END)).isCloseTo(Math.PI / 2 - a / 2, within(1e-12));
        assertThat(band.leastPinRadius(FAR_END, 3)).isCloseTo(50 * (2 * s - 1), within(1e-11));
        assertThat(band.pinRadius(FAR_END, band.dipAngle(FAR_END))).isCloseTo(50 * (2 * s - 1), within(1e-11));
        assertThat(band.ringAngle(FAR_END, Math.PI - a)).isCloseTo(2 * Math.PI - 2 * a, within(1e-12));
        assertThat(band.slotPressure(FAR_END, 0)).isCloseTo(Math.PI / 2 - a / 2, within(1e-12));
    }

    @Test
    void ringAngleNeverJumpsAndItsRateIsItsSlope() {
        DrivePin[] pins = {FAR_END, new DrivePin.Lever(5, -0.3), new DrivePin.Lever(5, 2.8), new DrivePin.Lever(45, 2)};
        for (DrivePin pin : pins) {
            assertThat(WORKED.ringAngle(pin, 0)).isZero();
            for (double b = 0; b < 6; b += 0.01) {
                double step = WORKED.ringAngle(pin, b + 0.01) - WORKED.ringAngle(pin, b);
                assertThat(Math.abs(step)).as("%s at %s", pin, b).isLessThan(0.3);
                double slope = (WORKED.ringAngle(pin, b + 1e-5) - WORKED.ringAngle(pin, b - 1e-5)) / 2e-5;
                assertThat(WORKED.ringRate(pin, b)).isCloseTo(slope, within(1e-5));
                Point z = WORKED.pin(pin, b);
                double turned = z.turned(-WORKED.ringAngle(pin, b)).angle()
                        - WORKED.pin(pin, 0).angle();
                assertThat(Math.sin(turned)).isCloseTo(0, within(1e-12));
            }
        }
    }

    @Test
    void openingRadiusAndBladeAngleAreInverse() {
        for (double r = 0; r <= 32; r += 0.5) {
            assertThat(WORKED.inscribedRadius(WORKED.bladeAngle(r))).isCloseTo(r, within(1e-12));
        }
    }

    /** Corner and area against the common part of the discs, integrated in narrow sectors. */
    @ParameterizedTest
    @CsvSource({"3, 0.7", "4, 0.4", "7, 0.75", "14, 0.6", "64, 0.2"})
    void openingIsTheCommonPartOfTheDiscs(int blades, double b) {
        Band band = new Band(32 + 12 / 2, 12, Math.toRadians(150), blades);
        int sectors = 40_000;
        double sum = 0;
        double most = 0;
        for (int i = 0; i < sectors; i++) {
            double angle = band.period() * (i + 0.5) / sectors;
            double r = Double.MAX_VALUE;
            for (int k = 0; k < blades; k++) {
                Point c = band.centre(b).turned(k * band.period());
                double along = c.x() * Math.cos(angle) + c.y() * Math.sin(angle);
                double free = 32.0 * 32 - c.dot(c) + along * along;
                r = Math.min(r, along + Math.sqrt(Math.max(0, free)));
            }
            sum += r * r / 2 * band.period() / sectors;
            most = Math.max(most, r);
        }
        assertThat(band.openingArea(b)).isCloseTo(blades * sum, within(1e-5));
        assertThat(band.cornerRadius(b)).isCloseTo(most, within(2e-3));
    }

    @Test
    void reachAgainstPointsOfTheOutline() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            Band band = new Band(40, 4 + 20 * random.nextDouble(), 0.5 + 4 * random.nextDouble(), 9);
            double b = 1.5 * random.nextDouble();
            double most = 0;
            int n = 4000;
            for (int k = 0; k <= n; k++) {
                Point on = band.centre(b).plus(Point.polar(40, b + band.span() * k / n));
                most = Math.max(most, on.norm() + band.width() / 2);
            }
            String what = "case " + i + " " + band + " at " + b;
            assertThat(band.reach(b)).as(what).isCloseTo(most, within(2e-3));
        }
        DrivePin lever = new DrivePin.Lever(9, 0);
        assertThat(WORKED.reach(0, lever, 2.5)).isCloseTo(37.4 + 9 + 2.5, within(1e-12));
    }

    @Test
    void impossibleBandsAreRefused() {
        assertThatThrownBy(() -> new Band(5, 10, 1, 9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(5, Double.NaN, 1, 9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(5, 1, 0, 9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band(5, 1, 1, 2)).isInstanceOf(IllegalArgumentException.class);
    }
}
