// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.Locale;

/** What sort of thing a part is: which of a spec's ways of making holds for it, and how it is drawn. */
public enum Family {
    BLADE,
    RING,
    PLATE,
    SPACER,
    GEAR,
    PULLEY,
    PIN,
    JIG,
    /** Not made, by whatever process. */
    BOUGHT;

    /** As it stands in a spec and in design.json. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether its edges are flanks of teeth. */
    public boolean isToothed() {
        return this == GEAR || this == PULLEY;
    }
}
