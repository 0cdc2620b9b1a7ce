// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

/**
 * What is known of the least distance of two bodies over all settings. Distances are those of the true surfaces at
 * least: the chord errors of both meshes are subtracted.
 *
 * @param state what follows for what was asked
 * @param setting of the drives where they were found nearest
 * @param least distance found there, mm, not below 0
 * @param near both nearest points there, in the frame of the first body; its distance is that of the meshes
 * @param bound proved: nowhere are they nearer than this, mm, not below 0
 * @param poses looked at
 */
public record Outcome(State state, double[] setting, double least, Near near, double bound, int poses) {
    /** What was asked is proved, refuted, or neither. */
    public enum State {
        /** Everywhere at least as far apart as was asked. */
        PROVED,
        /** A setting is known where they are nearer than was asked, none where they touch. */
        NEARER,
        /** A setting is known where they touch, or one is within the other. */
        TOUCHING,
        /** Neither was found before poses ran out or the search was stopped. */
        OPEN
    }
}
