// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import ringleaf.space.Pose;

/**
 * Where a mechanism stands: on the ground, or on a body of another mechanism, with which it moves.
 *
 * @param on index of the carrying mechanism, -1 for the ground
 * @param body of that mechanism
 * @param carrier its name as a spec has it, {@code neck.plate} or {@code ground}
 * @param pose from the mechanism's frame to the carrier's: that of the carrying mechanism in state 0, which moves with
 *     the body
 */
public record Stand(int on, int body, String carrier, Pose pose) {
    public static final String GROUND = "ground";

    /** On the ground. */
    public static Stand ground(Pose pose) {
        return new Stand(-1, 0, GROUND, pose);
    }

    public boolean isOnGround() {
        return on < 0;
    }
}
