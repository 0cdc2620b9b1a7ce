// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.spec.Cutting;

/** The plain way to lay out a sheet, which no search may lose against: upright boxes in rows, the highest first. */
public final class BoxPacking {
    private final Cutting.SheetSize size;
    private final List<List<Nested.Laid>> sheets = new ArrayList<>();
    private List<Nested.Laid> sheet = new ArrayList<>();
    private boolean whole = true;
    private double x;
    private double row;
    private double tall;

    private BoxPacking(Cutting.SheetSize size) {
        this.size = size;
        sheets.add(sheet);
    }

    /** Area used, mm²: whole sheets, and of the last one the height that is used. Pieces too large are left out. */
    public static double usedArea(List<NestPiece> pieces, Cutting.SheetSize size) {
        BoxPacking packed = packed(pieces, size);
        return size.width() * ((packed.sheets.size() - 1) * size.height() + packed.usedHeight());
    }

    /** All pieces laid so; nothing where one fits the sheet only when it is turned. */
    static Optional<Nested> of(List<NestPiece> pieces, Cutting.SheetSize size) {
        BoxPacking packed = packed(pieces, size);
        return packed.whole
                ? Optional.of(
                        new Nested(packed.sheets.stream().map(CutOrder::sorted).toList(), packed.usedHeight()))
                : Optional.empty();
    }

    private static BoxPacking packed(List<NestPiece> pieces, Cutting.SheetSize size) {
        List<NestPiece> copies = new ArrayList<>();
        for (NestPiece piece : pieces) {
            for (int i = 0; i < piece.count(); i++) {
                copies.add(piece);
            }
        }
        copies.sort((a, b) ->
                Double.compare(b.outline().box().height(), a.outline().box().height()));
        BoxPacking packed = new BoxPacking(size);
        copies.forEach(packed::lay);
        return packed;
    }

    private void lay(NestPiece piece) {
        double room = size.width() - 2 * size.margin();
        double height = size.height() - 2 * size.margin();
        Box box = piece.outline().box();
        if (box.width() > room || box.height() > height) {
            whole = false;
            return;
        }
        if (x > 0 && x + box.width() > room) {
            row += tall + size.gap();
            x = 0;
            tall = 0;
        }
        if (row + box.height() > height) {
            sheet = new ArrayList<>();
            sheets.add(sheet);
            row = 0;
            x = 0;
            tall = 0;
        }
        Point corner = new Point(size.margin() + x - box.minX(), size.margin() + row - box.minY());
        sheet.add(new Nested.Laid(piece, new Placement(0, corner)));
        x += box.width() + size.gap();
        tall = Math.max(tall, box.height());
    }

    private double usedHeight() {
        return row + tall + 2 * size.margin();
    }
}
