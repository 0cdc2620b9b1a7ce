// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import ringleaf.spec.Cutting;

/**
 * Pieces laid one after the other, each on the first sheet that has room. A copy shares the sheets until it lays
 * something on them, so that orders that begin alike need not be laid from the start.
 */
final class Laying {
    private final Cutting.SheetSize size;
    private final double cell;
    private final Effort effort;
    private final List<SheetGrid> grids;
    private final BitSet own = new BitSet();

    Laying(Cutting.SheetSize size, double cell, Effort effort) {
        this(size, cell, effort, new ArrayList<>());
    }

    private Laying(Cutting.SheetSize size, double cell, Effort effort, List<SheetGrid> grids) {
        this.size = size;
        this.cell = cell;
        this.effort = effort;
        this.grids = grids;
    }

    /** The same so far; what either lays from now on the other does not see. */
    Laying copy() {
        own.clear();
        return new Laying(size, cell, effort, new ArrayList<>(grids));
    }

    /**
     * Lays one more piece.
     *
     * @param byMiddle whether the height of its middle counts, or else that of its top
     */
    void lay(NestShape shape, boolean byMiddle) {
        for (int i = 0; i < grids.size(); i++) {
            SheetGrid.Spot spot = grids.get(i).find(shape, byMiddle);
            if (spot != null) {
                if (!own.get(i)) {
                    grids.set(i, grids.get(i).copy());
                    own.set(i);
                }
                grids.get(i).put(shape, spot);
                return;
            }
        }
        SheetGrid fresh = new SheetGrid(
                size.width() - 2 * size.margin(), size.height() - 2 * size.margin(), size.margin(), cell, effort);
        SheetGrid.Spot spot = fresh.find(shape, byMiddle);
        if (spot == null) {
            throw new IllegalArgumentException(shape.piece.name() + " does not fit the sheet");
        }
        fresh.put(shape, spot);
        own.set(grids.size());
        grids.add(fresh);
    }

    int sheets() {
        return grids.size();
    }

    private SheetGrid last() {
        return grids.get(grids.size() - 1);
    }

    /** Height of the last sheet that is used, mm, margins included. */
    double usedHeight() {
        return (grids.isEmpty() ? 0 : last().top()) + 2 * size.margin();
    }

    /** How much lies how high on the last sheet, mm³: what falls before the height itself can. */
    double burden() {
        return grids.isEmpty() ? 0 : last().burden();
    }

    /** The shape that reaches highest on the last sheet. */
    NestShape highest() {
        return last().highest();
    }

    /** Fewer sheets, then less of the last one. */
    int compareTo(Laying other) {
        if (sheets() != other.sheets()) {
            return Integer.compare(sheets(), other.sheets());
        }
        double more = usedHeight() - other.usedHeight();
        return more < -1e-9 ? -1 : more > 1e-9 ? 1 : 0;
    }

    Nested nested() {
        List<List<Nested.Laid>> sheets = new ArrayList<>();
        for (SheetGrid grid : grids) {
            sheets.add(CutOrder.sorted(grid.laid()));
        }
        return new Nested(sheets, usedHeight());
    }
}
