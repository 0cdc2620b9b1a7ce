// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Point;

/** The angle of a blade with pins off, against the place where its pin then stands. */
class PinInSlotTest {
    private static final Band BAND = new Band(37.4, 10.5, Math.toRadians(145), 14);
    private static final double CLOSED = Math.toRadians(44);
    private static final List<DrivePin> PINS = List.of(
            new DrivePin.FarEnd(), new DrivePin.Lever(6, -CLOSED / 2), new DrivePin.Lever(3, Math.PI - CLOSED / 2));

    @Test
    void asDrawnItIsTheSlotsOwnLaw() {
        for (DrivePin pin : PINS) {
            SlotLaw law = new SlotLaw.Radial(BAND, pin);
            PinInSlot follower = new PinInSlot(law);
            for (double b = -0.01; b <= CLOSED + 0.01; b += 0.05) {
                assertThat(follower.bladeAngle(law.ringAngle(b), 0, 0, 0, 0, 0))
                        .as(pin + " " + b)
                        .isCloseTo(b, within(1e-12));
            }
        }
    }

    /** Straight slots: the pin stands at exactly the slot's own distance from the radial line. */
    @Test
    void thePinStandsInTheSlot() {
        Random random = new Random(3);
        for (DrivePin pin : PINS) {
            SlotLaw law = new SlotLaw.Radial(BAND, pin);
            PinInSlot follower = new PinInSlot(law);
            for (int i = 0; i < 50; i++) {
                double drawn = CLOSED * random.nextDouble();
                double ring = law.ringAngle(drawn);
                double[] off = random.doubles(5, -0.2, 0.2).toArray();
                double b = follower.bladeAngle(ring, off[0], off[1], off[2], off[3], off[4]);
                Point slot = BAND.pin(pin, 0).unit().turned(ring);
                assertThat(slot.cross(stands(pin, b, off)))
                        .as(pin + " seed 3 " + i)
                        .isCloseTo(off[4], within(1e-12));
                assertThat(b).isCloseTo(drawn, within(0.3));
            }
        }
    }

    /** Curved slots: to first order, so what is left falls with the square of the errors. */
    @Test
    void curvedSlotsToFirstOrder() {
        DrivePin pin = new DrivePin.Lever(6, -CLOSED / 2 + Math.toRadians(60));
        SlotLaw law = SlotLaw.LinearOpening.leastPressure(BAND, pin, CLOSED, Math.PI / 2);
        PinInSlot follower = new PinInSlot(law);
        double[] off = {0.04, -0.03, 0.05, 0.03, -0.04};
        for (double b : new double[] {0.1, 0.3, 0.6}) {
            double ring = law.ringAngle(b);
            assertThat(follower.bladeAngle(ring, 0, 0, 0, 0, 0)).isCloseTo(b, within(1e-12));
            double whole = missed(law, follower, pin, ring, off, 1);
            double half = missed(law, follower, pin, ring, off, 0.5);
            assertThat(whole).as("at " + b).isLessThan(2e-3);
            assertThat(half).as("at " + b).isLessThan(0.3 * whole + 1e-9);
        }
    }

    /** Distance from the pin to the slot's centre line shifted sideways by what it is off, by fine sampling. */
    private static double missed(
            SlotLaw law, PinInSlot follower, DrivePin pin, double ring, double[] all, double share) {
        double[] off = new double[all.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = share * all[i];
        }
        double b = follower.bladeAngle(ring, off[0], off[1], off[2], off[3], off[4]);
        Point stands = stands(pin, b, off).turned(-ring);
        double least = Double.MAX_VALUE;
        for (double at = 0; at <= CLOSED; at += 1e-5) {
            Point on = law.pinInRing(at);
            Point along = law.slotTangent(at);
            Point left = (along.dot(on) < 0 ? along.times(-1) : along).left();
            least = Math.min(least, stands.distance(on.plus(left.times(off[4]))));
        }
        return least;
    }

    private static Point stands(DrivePin pin, double b, double[] off) {
        Point arm = Point.polar(1, pin.angle(BAND) + b);
        return new Point(BAND.pivotRadius() + off[0], off[1])
                .plus(arm.times(pin.length(BAND) + off[2]))
                .plus(arm.left().times(off[3]));
    }
}
