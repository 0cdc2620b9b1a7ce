// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Box;
import ringleaf.spec.Cutting;

/** The plain way to lay out a sheet, to compare with: upright boxes in rows, the highest first. */
public final class BoxPacking {
    private BoxPacking() {}

    /** Area used, mm²: whole sheets, and of the last one the height that is used. Pieces too large are left out. */
    public static double usedArea(List<NestPiece> pieces, Cutting.SheetSize size) {
        double room = size.width() - 2 * size.margin();
        double height = size.height() - 2 * size.margin();
        List<Box> boxes = new ArrayList<>();
        for (NestPiece piece : pieces) {
            Box box = piece.outline().box();
            for (int i = 0; i < piece.count(); i++) {
                boxes.add(box);
            }
        }
        boxes.sort((a, b) -> Double.compare(b.height(), a.height()));
        int sheets = 1;
        double x = 0;
        double row = 0;
        double tall = 0;
        for (Box box : boxes) {
            if (box.width() > room || box.height() > height) {
                continue;
            }
            if (x > 0 && x + box.width() > room) {
                row += tall + size.gap();
                x = 0;
                tall = 0;
            }
            if (row + box.height() > height) {
                sheets++;
                row = 0;
                x = 0;
                tall = 0;
            }
            x += box.width() + size.gap();
            tall = Math.max(tall, box.height());
        }
        return size.width() * ((sheets - 1) * size.height() + row + tall + 2 * size.margin());
    }
}
