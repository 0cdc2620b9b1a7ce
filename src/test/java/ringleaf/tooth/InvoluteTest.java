// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringleaf.geom.Point;

class InvoluteTest {
    @Test
    void agreesWithPublishedDigits() {
        for (double[] row : ReferenceTable.rows("involute-function.csv")) {
            double angle = Math.toRadians(row[0]);
            assertThat(Involute.inv(angle)).isCloseTo(row[1], within(1e-15));
            assertThat(Involute.arcInv(row[1])).isCloseTo(angle, within(4e-14));
        }
    }

    @Test
    void readsTheHandbookExampleBackwards() {
        // Profile-shifted pair of the KHK and SDP/SI references as remembered: inv aw = 0.034316, aw = 26.0886.
        assertThat(Math.toDegrees(Involute.arcInv(0.034316))).isCloseTo(26.0886, within(1e-4));
    }

    @Test
    void inverseComesBack() {
        for (double degrees = 0.01; degrees < 80; degrees += 0.173) {
            double angle = Math.toRadians(degrees);
            assertThat(Involute.arcInv(Involute.inv(angle))).isCloseTo(angle, within(1e-12));
            if (degrees >= 5 && degrees <= 50) {
                assertThat(Involute.arcInv(Involute.inv(angle))).isCloseTo(angle, within(1e-14));
            }
        }
        assertThat(Involute.arcInv(0)).isZero();
    }

    @Test
    void seriesAndDifferenceMeet() {
        for (double angle = 0.15; angle < 0.2; angle += 0.001) {
            assertThat(Involute.inv(angle)).isCloseTo(Math.tan(angle) - angle, within(5e-17));
        }
    }

    @Test
    void refusesWhatNoInvoluteReaches() {
        assertThatThrownBy(() -> Involute.arcInv(-0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Involute.arcInv(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tangentsAreTheDifferenceQuotients() {
        InvoluteCurve involute = new InvoluteCurve(10, 0.3, 0, 1);
        RootCurve root = RootCurve.of(Forms.of(2, 14));
        for (int i = 1; i < 20; i++) {
            double roll = i / 20.0;
            Point step =
                    involute.at(roll + 1e-6).minus(involute.at(roll - 1e-6)).unit();
            assertThat(step.distance(involute.tangent(roll))).isLessThan(1e-7);
            double normal = root.to() * i / 20;
            Point move = root.at(normal + 1e-6).minus(root.at(normal - 1e-6)).unit();
            assertThat(move.distance(root.tangent(normal))).isLessThan(1e-7);
        }
    }
}
