// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.List;
import ringleaf.geom.Path;
import ringleaf.geom.Region;

/**
 * An outline to be laid on sheets.
 *
 * @param name for people
 * @param outline to cut, or the footprint of what is printed
 * @param marks that go with it
 * @param cuts what is cut of the outer contour between its tabs; empty where it is cut all round
 * @param leads from where the cut runs into each contour
 * @param count of copies
 * @param engraved whether it carries its name
 * @param levels of what is printed, from the bed up; empty for what is cut
 * @param note a line for people on the levels' heights, or empty
 */
public record NestPiece(
        String name,
        Region outline,
        List<Path> marks,
        List<Path> cuts,
        List<Path> leads,
        int count,
        boolean engraved,
        List<List<Region>> levels,
        String note) {
    public NestPiece {
        marks = List.copyOf(marks);
        cuts = List.copyOf(cuts);
        leads = List.copyOf(leads);
        levels = List.copyOf(levels);
    }

    /** A piece that is cut, without leads. */
    public NestPiece(String name, Region outline, List<Path> marks, List<Path> cuts, int count, boolean engraved) {
        this(name, outline, marks, cuts, List.of(), count, engraved, List.of(), "");
    }
}
