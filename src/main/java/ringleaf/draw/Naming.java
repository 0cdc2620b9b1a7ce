// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import ringleaf.part.Part;

/** Which parts of which there is only one carry their name as engraving. */
public enum Naming {
    /** Those whose upper face is not seen in use. */
    WHERE_HIDDEN,
    EVERYWHERE,
    NONE;

    boolean isOn(Part part) {
        return part.quantity() == 1 && (this == EVERYWHERE || this == WHERE_HIDDEN && !part.onShow());
    }
}
