// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/** Where a blade's drive pin stands, seen from its pivot in the open pose of the first blade (pivot on +x). */
public sealed interface DrivePin {
    /** Distance from the pivot to the drive pin, mm. */
    double length(Band band);

    /** Direction from the pivot to the drive pin in the open pose, rad, 0 pointing away from the axis. */
    double angle(Band band);

    /** The drive pin stands on the band's centre line at its far end: chord 2 Rp sin(a/2), a lever as long as that. */
    record FarEnd() implements DrivePin {
        @Override
        public double length(Band band) {
            return 2 * band.pivotRadius() * Math.sin(band.span() / 2);
        }

        @Override
        public double angle(Band band) {
            return Math.PI / 2 + band.span() / 2;
        }
    }

    /**
     * The drive pin stands on a lever at the pivot.
     *
     * @param length of the lever, mm, above 0 and not the pivot radius itself
     * @param angle of the lever to the outward radial in the open pose, rad; about 0 points outward, about pi inward
     */
    record Lever(double length, double angle) implements DrivePin {
        public Lever {
            if (!(length > 0) || !Double.isFinite(angle)) {
                throw new IllegalArgumentException("no lever of length " + length + " at " + angle);
            }
        }

        @Override
        public double length(Band band) {
            return length;
        }

        @Override
        public double angle(Band band) {
            return angle;
        }
    }
}
