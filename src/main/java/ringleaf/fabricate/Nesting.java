// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.Cutting;

/**
 * Lays pieces on sheets, each as low as it will go, also into the holes of others. Several orders are tried, and
 * the best result counts, that of upright boxes in rows among them, so more tries never give a worse one, and the same input always gives the same result.
 *
 * <p>Outlines are compared on a grid of cells, which is on the safe side: pieces keep at least the gap and stay inside
 * the margin exactly, and lie a cell further apart at most than they would have to.
 */
public final class Nesting {
    private static final double FINEST = 0.2;
    private static final double MOST_CELLS = 400_000;

    /** Told how far it has come. */
    @FunctionalInterface
    public interface Watch {
        void at(int done, int all);
    }

    private final List<NestShape> shapes = new ArrayList<>();
    private final Cutting.SheetSize size;
    private final double roomWidth;
    private final double roomHeight;
    private final double cell;

    private Nesting(List<NestPiece> pieces, Cutting.SheetSize size) {
        this.size = size;
        roomWidth = size.width() - 2 * size.margin();
        roomHeight = size.height() - 2 * size.margin();
        cell = Math.max(FINEST, Math.sqrt(roomWidth * roomHeight / MOST_CELLS));
        for (NestPiece piece : pieces) {
            shapes.add(new NestShape(piece, size.turn(), size.gap(), cell, roomWidth, roomHeight));
        }
    }

    /** Whether a piece fits the sheet at all. */
    public static boolean fits(NestPiece piece, Cutting.SheetSize size) {
        return NestShape.fits(
                piece.outline(), size.turn(), size.width() - 2 * size.margin(), size.height() - 2 * size.margin());
    }

    /** Lays all copies of all pieces, each of which must fit. */
    public static Nested of(List<NestPiece> pieces, Cutting.SheetSize size, Watch watch) {
        return new Nesting(pieces, size).best(watch);
    }

    private Nested best(Watch watch) {
        List<NestShape> all = new ArrayList<>();
        for (NestShape shape : shapes) {
            for (int i = 0; i < shape.piece.count(); i++) {
                all.add(shape);
            }
        }
        if (all.isEmpty()) {
            return new Nested(List.of(), 0);
        }
        Nested searched = LayingSearch.of(all, size, cell, watch).nested();
        return BoxPacking.of(shapes.stream().map(shape -> shape.piece).toList(), size)
                .filter(boxes -> boxes.isLess(searched))
                .orElse(searched);
    }
}
