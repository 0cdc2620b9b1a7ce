// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import ringleaf.mechanism.AsBuilt.Deviation;

/**
 * How far one size may drift while all others are as drawn.
 *
 * @param size which
 * @param together whether all its copies drift alike; else one of them alone
 * @param down how far it may fall before something gives way, in its unit; infinite where nothing does
 * @param downBreaks the check that gives way there, or empty
 * @param up how far it may grow
 * @param upBreaks the check that gives way there, or empty
 */
public record Drift(Deviation size, boolean together, double down, String downBreaks, double up, String upBreaks) {
    /** Whether another drift of the same size ends where this one does, by the same checks. */
    boolean hasLimitsOf(Drift other) {
        return size.equals(other.size)
                && down == other.down
                && up == other.up
                && downBreaks.equals(other.downBreaks)
                && upBreaks.equals(other.upBreaks);
    }

    /** The nearer of both, in multiples of what the process keeps it within; infinite where nothing gives way. */
    public double reserve() {
        return size.within() > 0 ? Math.min(down, up) / size.within() : Double.POSITIVE_INFINITY;
    }
}
