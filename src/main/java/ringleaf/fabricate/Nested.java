// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.List;
import ringleaf.geom.Placement;

/**
 * Pieces laid on sheets of one size.
 *
 * @param sheets what lies on each
 * @param usedHeight of the last sheet, mm: from its lower edge to the top of the highest piece and the margin
 */
public record Nested(List<List<Laid>> sheets, double usedHeight) {
    /** A copy of a piece on a sheet, moved there from where it is drawn. */
    public record Laid(NestPiece piece, Placement placement) {}

    public Nested {
        sheets = List.copyOf(sheets);
    }

    /** Whether it takes fewer sheets, or less of the last one. */
    boolean isLess(Nested other) {
        int more = sheets.size() - other.sheets.size();
        return more < 0 || more == 0 && usedHeight < other.usedHeight - 1e-9;
    }

    /** Net area of all pieces, mm². */
    public double area() {
        double area = 0;
        for (List<Laid> sheet : sheets) {
            for (Laid laid : sheet) {
                area += laid.piece().outline().area();
            }
        }
        return area;
    }

    /** Share of the sheet that became parts; of the last sheet only what is used counts. */
    public double utilisation(double width, double height) {
        return area() / (width * ((sheets.size() - 1) * height + usedHeight));
    }
}
