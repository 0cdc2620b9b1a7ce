package ringleaf.mechanism.aperture;

import ringleaf.mechanism.Material;
import ringleaf.mechanism.RoomLaw;
import ringleaf.tooth.BasicRack;

/**
 * Room from the tips of teeth to the roots they dip into, mm. It is c* m of the basic rack (ISO 53), or more where the
 * ring can lean further than that into the mesh or where the processes ask for more; the tips are lowered then by
 * k m with k = c* - c/m, below 0 (tip alteration: ISO 21771, from memory).
 */
final class TipRoom {
    /** Teeth lose at most this much of their height, in modules, where the module is left open; the contact goes then. */
    private static final double MOST_LOWERED = 0.3;
    /** Modules that are taken by themselves, mm: ISO 54, from memory, 0.5 to 0.8 common practice. */
    private static final double[] MODULES = {0.5, 0.6, 0.8, 1, 1.25, 1.5, 2, 2.5};
    /** Both tips of a mesh. */
    private static final int TIPS = 2;

    private TipRoom() {}

    /**
     * What the mesh of pinion and ring needs besides c* m.
     *
     * @param lean how far the ring can come nearer than its middle
     */
    static double needed(double lean, Material plate, Material pinion, Material ring) {
        return Math.max(
                lean, RoomLaw.room(TIPS, plate.repeatability(), pinion.repeatability(), ring.repeatability()));
    }

    /** By how much tips are lowered, in modules, at least 0. */
    static double lowering(double module, BasicRack rack, double room) {
        return Math.max(0, room / module - rack.clearance());
    }

    /** The least module from {@code usual} on whose teeth keep enough of their height. */
    static double module(double usual, BasicRack rack, double room) {
        for (double module : MODULES) {
            if (module >= usual && lowering(module, rack, room) <= MOST_LOWERED) {
                return module;
            }
        }
        return MODULES[MODULES.length - 1];
    }
}
