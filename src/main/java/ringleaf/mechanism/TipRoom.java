// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.Optional;
import ringleaf.machine.Room;
import ringleaf.tooth.BasicRack;

/**
 * Room from the tips of teeth to the roots they dip into, mm. It is c* m of the basic rack (ISO 53), or more where a
 * gear can lean further than that into the mesh or where the processes ask for more; the tips are lowered then by
 * k m with k = c* - c/m, below 0 (tip alteration: ISO 21771, from memory).
 */
public final class TipRoom {
    /** Teeth lose at most this much of their height, in modules, where the module is left open; the contact goes then. */
    private static final double MOST_LOWERED = 0.3;
    /** Modules that are taken by themselves, mm: ISO 54, from memory, 0.5 to 0.8 common practice. */
    private static final double[] MODULES = {0.5, 0.6, 0.8, 1, 1.25, 1.5, 2, 2.5};
    /** Both tips of a mesh. */
    public static final int TIPS = 2;

    private TipRoom() {}

    /**
     * What a mesh needs besides c* m.
     *
     * @param lean how far a gear can come nearer than its middle
     * @param axes what places the axes
     */
    public static double needed(double lean, Material axes, Material one, Material other) {
        return Math.max(lean, of(axes, one, other).asked());
    }

    /** What the processes ask for by themselves. */
    public static Room of(Material axes, Material one, Material other) {
        return Room.of(
                "tip-clearance",
                Optional.empty(),
                0,
                TIPS,
                axes.repeatability(),
                one.repeatability(),
                other.repeatability());
    }

    /** By how much tips are lowered, in modules, at least 0. */
    public static double lowering(double module, BasicRack rack, double room) {
        return Math.max(0, room / module - rack.clearance());
    }

    /** The least module from {@code usual} on whose teeth keep enough of their height. */
    public static double module(double usual, BasicRack rack, double room) {
        for (double module : MODULES) {
            if (module >= usual && lowering(module, rack, room) <= MOST_LOWERED) {
                return module;
            }
        }
        return MODULES[MODULES.length - 1];
    }
}
