// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;

/** A format of solids, of single parts or of several on a plate. */
public abstract non-sealed class SolidFormat implements Format {
    /** The option that says of which parts solids are made; every format of solids has it. */
    public static final FormatOption PARTS = new FormatOption(
            "--solids",
            "PARTS",
            "parts of which solids are made: printed (the default; with step alone, all), all, or names",
            "part",
            List.of());
    /** The option of formats that have chords instead of arcs. */
    public static final FormatOption CHORD = new FormatOption(
            "--chord",
            "LENGTH",
            "how far the chords of meshes may leave the arcs (default: 0.01mm)",
            "length",
            List.of());

    private static final String FOLDER = "solids/";

    /** Whether its files are for a printer, so that only what a printer can make is in them. */
    public boolean isPrinted() {
        return true;
    }

    /** The files of all these solids; a part that this format cannot hold is in none. */
    public abstract List<FormatFile> write(Solids solids);

    /** Where a file of this format goes. */
    protected final String path(String stem) {
        return FOLDER + stem + "." + name();
    }

    @Override
    public final List<String> files() {
        return List.of(path("*"));
    }
}
