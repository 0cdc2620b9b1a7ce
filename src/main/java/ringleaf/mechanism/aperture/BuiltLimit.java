// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.mechanism.AsBuilt;

/** What must hold of a finished aperture, in the order in which margins are given. */
enum BuiltLimit {
    OPENS("opens-fully", "mm", "blades, plates and ring are outside the full opening before the ring is stopped"),
    CLOSES("closes-to", "mm", "the least opening is reached before the ring is stopped"),
    TIGHT("light-tight", "1", "blades where they stand leave no gap"),
    PLAY("lap-worst-case", "1", "nor when pins and ring lean apart as far as their own clearances let them"),
    STAYS_IN("wall-clearance", "mm", "no blade touches the cavity's wall between the stops"),
    SLOT_ENDS("pin-in-slot", "mm", "no drive pin reaches an end of its slot between the stops"),
    PINS("pin-clearance", "mm", "pins turn in their bores, tilted as their blades lie, and slide in their slots"),
    HOLD("pin-engagement", "mm", "pins keep half of the hold they are designed with"),
    PIN_ENDS("pin-ends", "mm", "pins end short of what lies beyond them"),
    TURNS("rim-play", "mm", "the rim turns in its wall"),
    SEAT("ring-seat", "mm", "the ring lies on its seat all round, wherever it leans"),
    FREE("axial-play", "mm", "the retainer does not press on the ring"),
    DEPTH("cavity-depth", "mm", "the cavity holds the blades where most of them lie over one point"),
    BEND(
            "blade-slope",
            "deg",
            "blades climb over one another no more than a quarter steeper than their stock is designed for");

    /** Number of limits of a mesh, which come after these: backlash, tips, contact. */
    static final int OF_MESH = 3;

    private final AsBuilt.Limit limit;

    BuiltLimit(String check, String unit, String holds) {
        limit = new AsBuilt.Limit(check, unit, holds);
    }

    AsBuilt.Limit limit() {
        return limit;
    }
}
