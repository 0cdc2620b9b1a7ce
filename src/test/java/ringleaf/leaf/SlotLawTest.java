// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.geom.Point;

class SlotLawTest {
    private static final Band WORKED = new Band(37.4, 10.5, Math.toRadians(145), 14);
    private static final double CLOSED = WORKED.bladeAngle(4);

    /**
     * Ring travel of an outward lever centred on the travel. First estimates were 4.0, 5.7 and 7.4 degrees, which is 4 to
     * 6 % under what the formula t = arg z gives for the worked case; these are the formula's.
     */
    @ParameterizedTest
    @CsvSource({"4, 4.1946", "6, 6.0177", "8, 7.6873"})
    void leverTurnsTheRingLittle(double length, double travelDeg) {
        SlotLaw law = new SlotLaw.Radial(WORKED, new DrivePin.Lever(length, -CLOSED / 2));
        // The triangle axis, pivot, pin at the ends of the travel, by itself.
        double across = length * Math.sin(CLOSED / 2);
        double out = 37.4 + length * Math.cos(CLOSED / 2);
        assertThat(law.ringAngle(CLOSED)).isCloseTo(2 * Math.atan2(across, out), within(1e-12));
        assertThat(Math.toDegrees(law.ringAngle(CLOSED))).isCloseTo(travelDeg, within(1e-4));
        assertThat(worst(law)).as("about 20 degrees").isLessThan(Math.toRadians(20.5));
        SlotLaw inward = new SlotLaw.Radial(WORKED, new DrivePin.Lever(length, Math.PI - CLOSED / 2));
        assertThat(inward.ringAngle(CLOSED)).as("turns the other way").isNegative();
    }

    private static double worst(SlotLaw law) {
        double worst = 0;
        for (int i = 0; i <= 100; i++) {
            worst = Math.max(worst, law.pressure(CLOSED * i / 100));
        }
        return worst;
    }

    @Test
    void radialSlotsPointAtTheAxisAndTheInverseHolds() {
        for (DrivePin pin : new DrivePin[] {new DrivePin.FarEnd(), new DrivePin.Lever(3.5, Math.PI - CLOSED / 2)}) {
            SlotLaw law = new SlotLaw.Radial(WORKED, pin);
            double open = law.pinInRing(0).angle();
            for (int i = 0; i <= 50; i++) {
                double t = law.ringAngle(CLOSED) * i / 50;
                double b = law.bladeAngle(t, CLOSED);
                assertThat(law.ringAngle(b)).isCloseTo(t, within(1e-13));
                assertThat(law.pinInRing(b).angle()).isCloseTo(open, within(1e-12));
            }
            assertThat(law.bladeAngle(0, CLOSED)).isZero();
            assertThat(law.bladeAngle(law.ringAngle(CLOSED), CLOSED)).isEqualTo(CLOSED);
        }
    }

    /** The general pressure angle, put together from the slot's tangent, gives the radial slot's own form. */
    @Test
    void pressureOfRadialSlotsFromTheTangent() {
        SlotLaw law = new SlotLaw.Radial(WORKED, new DrivePin.FarEnd());
        for (double b = 0.01; b < CLOSED; b += 0.05) {
            Point z = WORKED.pin(law.pin(), b);
            Point velocity = new Point(z.x() - 37.4, z.y()).left().turned(-law.ringAngle(b));
            Point normal = law.slotTangent(b).left();
            double angle = Math.acos(Math.abs(velocity.dot(normal)) / velocity.norm());
            assertThat(law.pressure(b)).isCloseTo(angle, within(1e-7));
        }
    }

    @Test
    void linearSlotsMakeTheOpeningFallEvenly() {
        DrivePin pin = new DrivePin.Lever(8, Math.toRadians(120));
        SlotLaw.LinearOpening law = SlotLaw.LinearOpening.leastPressure(WORKED, pin, CLOSED, Math.PI / 2);
        assertThat(worst(law)).isLessThan(Math.toRadians(21));
        for (int i = 0; i <= 20; i++) {
            double b = law.bladeAngle(law.travel() * i / 20, CLOSED);
            double even = 32.15 + (4 - 32.15) * i / 20;
            assertThat(WORKED.inscribedRadius(b)).isCloseTo(even, within(1e-11));
            double slope = (law.ringAngle(b + 1e-6) - law.ringAngle(b - 1e-6)) / 2e-6;
            assertThat(law.ringRate(b)).isCloseTo(slope, within(1e-8));
            Point along = law.pinInRing(b + 1e-5).minus(law.pinInRing(b - 1e-5)).unit();
            assertThat(law.slotTangent(b).distance(along)).isLessThan(1e-7);
        }
    }

    /** At the dip the pin moves square to its radius: a linear slot would run along with it and could not push. */
    @Test
    void noLinearSlotAcrossADip() {
        DrivePin far = new DrivePin.FarEnd();
        double dip = SlotLaw.LinearOpening.turnsBack(WORKED, far, CLOSED);
        assertThat(Math.toDegrees(dip)).isCloseTo(17.5, within(1e-9));
        assertThatThrownBy(() -> new SlotLaw.LinearOpening(WORKED, far, CLOSED, 1.4))
                .isInstanceOf(IllegalArgumentException.class);
        // The same law forced through: t' = T cos(b/2)/(2 sin(B/2)); its relative velocity is parallel to the pin's.
        Point z = WORKED.pin(far, dip);
        Point velocity = new Point(z.x() - 37.4, z.y()).left();
        double rate = 1.4 * Math.cos(dip / 2) / (2 * Math.sin(CLOSED / 2));
        Point along = velocity.minus(z.left().times(rate));
        assertThat(velocity.cross(along) / velocity.norm() / along.norm()).isCloseTo(0, within(1e-9));
        assertThat(SlotLaw.LinearOpening.turnsBack(WORKED, far, Math.toRadians(17)))
                .isNaN();
        assertThat(SlotLaw.LinearOpening.turnsBack(WORKED, new DrivePin.Lever(6, -CLOSED / 2), CLOSED))
                .isCloseTo(CLOSED / 2, within(1e-12));
    }
}
