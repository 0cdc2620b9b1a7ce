// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import ringleaf.space.Vector;

/**
 * How near two solids are at one pose.
 *
 * @param distance of the meshes, mm; 0 where they meet or one lies within the other
 * @param onFirst the first one's nearest point, in its own frame, mm
 * @param onSecond the other's nearest point, in the first one's frame, mm
 * @param pair which triangles these are, to begin with at a pose close by
 */
public record Near(double distance, Vector onFirst, Vector onSecond, Pair pair) {
    /** Triangles in the order of the trees. */
    record Pair(int first, int second) {}
}
