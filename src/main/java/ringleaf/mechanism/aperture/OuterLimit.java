// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

/**
 * What the spec says of the round housing's outer diameter, mm.
 *
 * @param least 0 when nothing is said
 * @param most infinite when nothing is said
 */
public record OuterLimit(double least, double most) {
    public boolean isExact() {
        return least == most;
    }

    public boolean hasMost() {
        return most < Double.POSITIVE_INFINITY;
    }
}
