package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.Cutting;

/**
 * Lays pieces on sheets, each as low as it will go, also into the holes of others. Several orders are tried, the
 * largest first and then changes of the best one; the best result counts, so more tries never give a worse one, and
 * the same input always gives the same result.
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
        List<NestShape> order = new ArrayList<>();
        for (NestShape shape : shapes) {
            for (int i = 0; i < shape.piece.count(); i++) {
                order.add(shape);
            }
        }
        order.sort((a, b) -> Double.compare(b.longest, a.longest));
        Nested best = laid(order, false);
        List<NestShape> bestOrder = order;
        boolean bestWay = false;
        long random = 20_011;
        for (int i = 1; i < size.effort(); i++) {
            watch.at(i, size.effort());
            List<NestShape> next = new ArrayList<>(bestOrder);
            boolean byMiddle = bestWay;
            if (i == 1) {
                byMiddle = true;
            } else if (i == 2) {
                next.sort((a, b) -> Double.compare(b.area, a.area));
            } else {
                // a few pieces change places; a fixed congruence, so that every run makes the same changes
                for (int k = 0; k < 1 + i % 3; k++) {
                    random = next(random);
                    int from = (int) ((random >>> 33) % next.size());
                    random = next(random);
                    int to = (int) ((random >>> 33) % next.size());
                    next.add(to, next.remove(from));
                }
            }
            Nested tried = laid(next, byMiddle);
            if (tried.isBetterThan(best)) {
                best = tried;
                bestOrder = next;
                bestWay = byMiddle;
            }
        }
        return best;
    }

    private static long next(long random) {
        return random * 6364136223846793005L + 1442695040888963407L;
    }

    private Nested laid(List<NestShape> order, boolean byMiddle) {
        List<SheetGrid> grids = new ArrayList<>();
        for (NestShape shape : order) {
            boolean done = false;
            for (int i = 0; !done && i < grids.size(); i++) {
                done = grids.get(i).lay(shape, byMiddle);
            }
            if (!done) {
                SheetGrid fresh = new SheetGrid(roomWidth, roomHeight, size.margin(), cell);
                if (!fresh.lay(shape, byMiddle)) {
                    throw new IllegalArgumentException(shape.piece.name() + " does not fit the sheet");
                }
                grids.add(fresh);
            }
        }
        List<List<Nested.Laid>> sheets = new ArrayList<>();
        for (SheetGrid grid : grids) {
            sheets.add(CutOrder.sorted(grid.laid()));
        }
        double top = grids.isEmpty() ? 0 : grids.get(grids.size() - 1).top();
        return new Nested(sheets, top + 2 * size.margin());
    }
}
