// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import ringleaf.part.Part;

/** Drawings of single parts as tests want them. */
public final class Drawings {
    private Drawings() {}

    /** As usual. */
    public static Drawing of(Part part) {
        return of(part, PartDrawing.Options.USUAL);
    }

    /** With nothing done to the outline. */
    public static Drawing of(Part part, PartDrawing.Options options) {
        return PartDrawing.of(part, options, PartDrawing.Extra.NONE);
    }

    /** With what was done to the outline. */
    public static Drawing of(Part part, PartDrawing.Options options, PartDrawing.Extra extra) {
        return PartDrawing.of(part, options, extra);
    }
}
