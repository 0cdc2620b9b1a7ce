// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

/**
 * A resolved size, as it stands in design.json.
 *
 * @param name stable, lower case with hyphens
 * @param value in {@code unit}
 * @param unit mm, deg, mm2, Nmm, N or 1
 * @param origin where the value comes from
 * @param how for a solved value: how it was found and what bounds it; else empty
 */
public record Dimension(String name, double value, String unit, Origin origin, String how) {
    /** Where a value or a choice comes from. */
    public enum Origin {
        GIVEN,
        SOLVED,
        DEFAULT;

        public String label() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
