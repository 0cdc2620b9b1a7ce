// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

/**
 * What a check measured in one state.
 *
 * @param state in which
 * @param margin by how much the limit is held, in the measured unit; negative when it is broken
 * @param value what was measured
 * @param limit what it is held against
 * @param place members and coordinates
 */
record Measure(int state, double margin, double value, double limit, Place place) {
    /** The worst of the measures, the earliest when several are equally bad within {@code hair}; null when none is. */
    static Measure worst(Measure[] measures, double hair) {
        Measure worst = null;
        for (Measure m : measures) {
            if (m != null && (worst == null || m.margin < worst.margin - hair)) {
                worst = m;
            }
        }
        return worst;
    }
}
