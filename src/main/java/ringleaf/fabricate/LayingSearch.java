// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.spec.Cutting;

/**
 * Tries orders of laying: the longest pieces first, the largest first, and then changes of the best order. Half of the
 * changes move the piece that reaches highest, as nothing gets lower while it stays; changes that leave the height but
 * bring material further down are kept too. The best result counts, so more tries never give a worse one, and a fixed
 * sequence of numbers makes the same changes in every run.
 */
final class LayingSearch {
    /** Orders that begin alike are laid from the last of so many marks on. */
    private static final int MARKS = 32;

    /** Orders that are tried however long they take. */
    private static final int USUAL = 3;

    private static final long SEED = 20_011;

    private final Cutting.SheetSize size;
    private final double cell;
    private final int stride;
    private final Effort effort = new Effort();
    private long random = SEED;
    private Trial best;

    /** An order that was laid, with what lay there before every so many pieces. */
    private record Trial(List<NestShape> order, boolean byMiddle, Laying laid, List<Laying> before) {}

    private LayingSearch(Cutting.SheetSize size, double cell, int pieces) {
        this.size = size;
        this.cell = cell;
        this.stride = Math.max(1, pieces / MARKS);
    }

    /** The best laying of one copy for each entry of {@code shapes}, of which there is one at least. */
    static Laying of(List<NestShape> shapes, Cutting.SheetSize size, double cell, Nesting.Watch watch) {
        LayingSearch search = new LayingSearch(size, cell, shapes.size());
        for (int i = 0; i < size.effort() && !(i > USUAL && search.effort.isSpent()); i++) {
            watch.at(i, size.effort());
            search.step(i, shapes);
        }
        return search.best.laid();
    }

    private void step(int i, List<NestShape> shapes) {
        switch (i) {
            case 0 -> take(tried(byLength(shapes), false));
            case 1 -> take(tried(byLength(shapes), true));
            case 2 -> take(tried(byArea(shapes), best.byMiddle()));
            default -> take(tried(changed(i), best.byMiddle()));
        }
    }

    private static List<NestShape> byLength(List<NestShape> shapes) {
        List<NestShape> order = new ArrayList<>(shapes);
        order.sort((a, b) -> Double.compare(b.longest, a.longest));
        return order;
    }

    private static List<NestShape> byArea(List<NestShape> shapes) {
        List<NestShape> order = new ArrayList<>(shapes);
        order.sort((a, b) -> Double.compare(b.area, a.area));
        return order;
    }

    private List<NestShape> changed(int i) {
        List<NestShape> order = new ArrayList<>(best.order());
        int n = order.size();
        if (i % 2 == 1) {
            // any copy of the highest shape will do, the last one is the likeliest to be it
            int from = order.lastIndexOf(best.laid().highest());
            order.add(below(from + 1), order.remove(from));
        } else {
            for (int k = 0; k < 1 + i / 2 % 2; k++) {
                order.add(below(n), order.remove(below(n)));
            }
        }
        return order;
    }

    private Trial tried(List<NestShape> order, boolean byMiddle) {
        int alike = 0;
        if (best != null && best.byMiddle() == byMiddle) {
            while (alike < order.size() && order.get(alike) == best.order().get(alike)) {
                alike++;
            }
        }
        List<Laying> before = new ArrayList<>();
        for (int i = 0; alike > 0 && i * stride <= alike && i < best.before().size(); i++) {
            before.add(best.before().get(i));
        }
        int from = before.isEmpty() ? 0 : (before.size() - 1) * stride;
        Laying laying = before.isEmpty()
                ? new Laying(size, cell, effort)
                : before.get(before.size() - 1).copy();
        for (int i = from; i < order.size(); i++) {
            if (i % stride == 0 && i / stride >= before.size()) {
                before.add(laying.copy());
            }
            laying.lay(order.get(i), byMiddle);
        }
        return new Trial(order, byMiddle, laying, before);
    }

    private void take(Trial trial) {
        int order = best == null ? -1 : trial.laid().compareTo(best.laid());
        if (order < 0 || order == 0 && trial.laid().burden() < best.laid().burden()) {
            best = trial;
        }
    }

    /** A number from 0 to one below {@code limit}, by a fixed congruence. */
    private int below(int limit) {
        random = random * 6364136223846793005L + 1442695040888963407L;
        return (int) ((random >>> 33) % limit);
    }
}
