// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import ringleaf.geom.Angles;
import ringleaf.geom.Point;

/**
 * How far the ring turns for a blade angle, and the slot in the ring that this makes. In the ring's own frame (that
 * of its open pose) the drive pin runs along z e^{-it}, z being the pin and t the ring angle; the slot follows it.
 */
public sealed interface SlotLaw {
    Band band();

    DrivePin pin();

    /** Ring angle t, rad, counter-clockwise positive, 0 at b = 0. */
    double ringAngle(double b);

    /** dt/db, 1. */
    double ringRate(double b);

    /**
     * The blade angle in [0, closed] at which the ring has turned by {@code ringAngle}, rad; the nearer end of the
     * travel where there is none. Safe Newton: the law must be monotone from 0 to {@code closed}. Error below 1e-14.
     */
    double bladeAngle(double ringAngle, double closed);

    /** The pin's centre in the ring's frame, mm. */
    default Point pinInRing(double b) {
        return band().pin(pin(), b).turned(-ringAngle(b));
    }

    /**
     * Unit tangent of the slot's centre line in the ring's frame, in the direction in which the pin runs along it when
     * the blade closes: (z' - i t' z) e^{-it}; not a number where the pin rests in the slot (a radial slot at the dip).
     */
    default Point slotTangent(double b) {
        return relative(b).unit().turned(-ringAngle(b));
    }

    /** The pin's velocity against the ring, per blade angle, in the fixed frame: z' - i t' z. */
    private Point relative(double b) {
        Point z = band().pin(pin(), b);
        Point arm = new Point(z.x() - band().pivotRadius(), z.y());
        return arm.left().minus(z.left().times(ringRate(b)));
    }

    /** Pressure angle, rad in [0, pi/2]: between the pin's velocity about its pivot and the slot's normal. */
    default double pressure(double b) {
        Point z = band().pin(pin(), b);
        Point velocity = new Point(z.x() - band().pivotRadius(), z.y()).left();
        Point along = relative(b);
        // The normal is the tangent turned by a quarter, so the parts change places.
        return Math.atan2(Math.abs(velocity.dot(along)), Math.abs(velocity.cross(along)));
    }

    /** Straight slots that point at the axis. */
    record Radial(Band band, DrivePin pin) implements SlotLaw {
        private static final int MOST_STEPS = 60;

        @Override
        public double ringAngle(double b) {
            return band.ringAngle(pin, b);
        }

        @Override
        public double ringRate(double b) {
            return band.ringRate(pin, b);
        }

        @Override
        public double pressure(double b) {
            return band.slotPressure(pin, b);
        }

        @Override
        public Point slotTangent(double b) {
            Point out = pinInRing(b).unit();
            return band.pin(pin, b).y() > 0 ? out.times(-1) : out;
        }

        @Override
        public double bladeAngle(double ringAngle, double closed) {
            double end = ringAngle(closed);
            double share = ringAngle / end;
            if (!(share > 0)) {
                return 0;
            }
            if (share >= 1) {
                return closed;
            }
            double low = 0;
            double high = closed;
            double b = share * closed;
            for (int i = 0; i < MOST_STEPS; i++) {
                double miss = (ringAngle(b) - ringAngle) * Math.signum(end);
                if (miss > 0) {
                    high = b;
                } else {
                    low = b;
                }
                double next = b - miss / (ringRate(b) * Math.signum(end));
                if (!(next > low && next < high)) {
                    next = (low + high) / 2;
                }
                if (Math.abs(next - b) < 1e-15 * closed) {
                    return next;
                }
                b = next;
            }
            return b;
        }
    }

    /**
     * Slots by which the inscribed radius falls evenly with the ring angle: t = T sin(b/2)/sin(B/2).
     *
     * @param closed B, the blade angle at the end of the travel, rad, in (0, pi)
     * @param travel T, the ring angle there, rad, signed, not 0
     */
    record LinearOpening(Band band, DrivePin pin, double closed, double travel) implements SlotLaw {
        private static final int TRIALS = 48;
        private static final int SAMPLES = 12;

        public LinearOpening {
            double turns = turnsBack(band, pin, closed);
            if (!Double.isNaN(turns)) {
                throw new IllegalArgumentException("the drive pin's radius turns back at a blade angle of " + turns);
            }
            if (!(Math.abs(travel) > 0)) {
                throw new IllegalArgumentException("no ring travel");
            }
        }

        /**
         * The blade angle in [0, closed] at which the pin's radius is least or greatest, rad, or not a number when it
         * runs one way only. At such an angle the pin moves square to its radius, so any law but the radial slot's
         * has the slot run the same way there: pressure angle 90°, a dead point, and no linear slot exists.
         */
        public static double turnsBack(Band band, DrivePin pin, double closed) {
            double dip = band.dipAngle(pin);
            double crest = Angles.positive(-pin.angle(band));
            double first = Math.min(dip, crest);
            return first <= closed ? first : Double.NaN;
        }

        /**
         * The law whose travel, of up to {@code most} rad either way, has the least worst pressure angle; by trial of
         * {@value #TRIALS} travels and refining around the best.
         */
        public static LinearOpening leastPressure(Band band, DrivePin pin, double closed, double most) {
            double best = most;
            double least = Double.MAX_VALUE;
            double step = 2 * most / TRIALS;
            for (int round = 0; round < 3; round++) {
                double from = round == 0 ? -most + step / 2 : best - step;
                double stride = round == 0 ? step : step / 12;
                int trials = round == 0 ? TRIALS : 25;
                for (int i = 0; i < trials; i++) {
                    double travel = from + i * stride;
                    if (Math.abs(travel) > most || Math.abs(travel) < 1e-6) {
                        continue;
                    }
                    double worst = new LinearOpening(band, pin, closed, travel).worstPressure();
                    if (worst < least) {
                        least = worst;
                        best = travel;
                    }
                }
                step = stride;
            }
            return new LinearOpening(band, pin, closed, best);
        }

        private double worstPressure() {
            double worst = 0;
            for (int i = 0; i <= SAMPLES; i++) {
                worst = Math.max(worst, pressure(closed * i / SAMPLES));
            }
            return worst;
        }

        @Override
        public double ringAngle(double b) {
            return travel * Math.sin(b / 2) / Math.sin(closed / 2);
        }

        @Override
        public double ringRate(double b) {
            return travel * Math.cos(b / 2) / (2 * Math.sin(closed / 2));
        }

        @Override
        public double bladeAngle(double ringAngle, double closedAt) {
            double share = Math.max(0, Math.min(1, ringAngle / travel));
            return Math.min(closedAt, 2 * Math.asin(share * Math.sin(closed / 2)));
        }
    }
}
