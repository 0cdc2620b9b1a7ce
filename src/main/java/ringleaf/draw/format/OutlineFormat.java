// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;
import java.util.Map;
import ringleaf.draw.Drawing;

/** A format of drawings: of each distinct part, and of each sheet on which parts are laid out. */
public abstract non-sealed class OutlineFormat implements Format {
    /**
     * The bytes of one drawing.
     *
     * @param given values of options by name, where they were given; already known to be among those that they take
     */
    public abstract byte[] write(Drawing drawing, Map<String, String> given);

    /** What stands behind the dot of its files. */
    public final String ending() {
        return "." + name();
    }

    @Override
    public final List<String> files() {
        return List.of("parts/*" + ending(), "sheets/*" + ending());
    }

    @Override
    public final boolean isUsual() {
        return true;
    }
}
