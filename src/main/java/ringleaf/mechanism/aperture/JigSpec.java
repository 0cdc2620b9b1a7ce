// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.mechanism.Material;

/**
 * Jigs as asked for.
 *
 * @param pockets blades that a gluing jig holds at once
 * @param stacking whether a stand holds all blades while the ring goes on
 * @param making how jigs are made; built up in layers, as sockets are blind
 */
record JigSpec(int pockets, boolean stacking, Material making) {
    /** More pockets make a jig larger than most beds, and glue sets in the first before the last is filled. */
    static final int USUAL_POCKETS = 4;
    /** Jigs are about this thick, mm; it decides nothing but what a process can make. */
    static final double THICKNESS = 5;

    /** Room between a blade and its pocket all round, mm. */
    double pocketRoom() {
        return making.runningClearance() / 2;
    }

    /**
     * Added to a pin's diameter for its socket, mm, where its bore leaves that much ({@link PinLean}): as for a glued pin,
     * so that it drops in.
     */
    double socketRoom() {
        return making.runningClearance() / 2;
    }
}
