// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;

/**
 * What is cut or printed for each copy of a part, and how many copies beyond what a mechanism takes. The one count
 * that tables, notes in files, sheets, plates and drawings read.
 *
 * @param plies of each level that is cut from sheet thinner than the level, from the bed up; none where a copy is made
 *     in one piece
 * @param spares whole copies over, at least 0
 */
public record Pieces(List<Integer> plies, int spares) {
    /** One piece a copy, none over. */
    public static final Pieces SINGLE = new Pieces(List.of(), 0);

    public Pieces {
        plies = List.copyOf(plies);
    }

    /** Sheets that lie on one another in a level, at least 1. */
    public int plies(int level) {
        return plies.isEmpty() ? 1 : plies.get(level);
    }
}
