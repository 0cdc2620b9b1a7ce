// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import ringleaf.geom.Placement;

/**
 * One piece in its place: a copy of a part, turned and shifted from where the part is drawn, riding on a body.
 *
 * @param name for findings, e.g. {@code blade 3}
 * @param part what it is a copy of
 * @param body index of the body it moves with; 0 stands still
 * @param home from the part's drawing to the copy's place in state 0
 */
public record Member(String name, Part part, int body, Placement home) {
    /** From the part's drawing to the copy's place in the given state. */
    public Placement placed(Motion motion, int state) {
        return home.then(motion.pose(body, state));
    }
}
