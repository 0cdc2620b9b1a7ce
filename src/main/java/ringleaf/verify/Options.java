// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import ringleaf.geom.Tolerance;

/**
 * How to judge.
 *
 * @param thorough whether every state of the travel is judged, and not only ends, extremes and nine between
 * @param tolerance a limit on a length counts as held when it is missed by no more than this
 * @param progress told after each state
 */
public record Options(boolean thorough, Tolerance tolerance, Progress progress) {
    /** Ends, extremes and nine states between, to 2 µm, in silence. */
    public static final Options DEFAULT = new Options(false, Tolerance.JUDGE, Progress.SILENT);

    /** The same at every state. */
    public Options withThorough(boolean all) {
        return new Options(all, tolerance, progress);
    }
}
