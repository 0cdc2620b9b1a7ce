// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;

/** One sheet while it is filled: cells that are taken, and how far each shape has been tried without success. */
final class SheetGrid {
    private static final int PAD = 3;
    /** Cells that are copied in the time in which one is looked at. */
    private static final int COPIED = 8;

    private final double cell;
    private final double margin;
    private final double roomWidth;
    private final double roomHeight;
    private final int stride;
    private final Effort effort;
    private final boolean[] taken;
    private final List<Nested.Laid> laid;
    /** Cells, as columns and rows, of which each belongs to one laid piece. */
    private final List<int[]> markers;

    /** Places below which a shape found no room; that grows with every look and stays true, as sheets only fill up. */
    private final Map<TurnedShape, Long> tried;

    private double top;
    private double burden;
    private NestShape highest;

    /** A place for a shape at one of its angles, in cells. */
    record Spot(TurnedShape turned, int x, int y) {}

    SheetGrid(double roomWidth, double roomHeight, double margin, double cell, Effort effort) {
        this.roomWidth = roomWidth;
        this.roomHeight = roomHeight;
        this.margin = margin;
        this.cell = cell;
        this.effort = effort;
        stride = (int) Math.ceil(roomWidth / cell) + 2 * PAD;
        taken = new boolean[stride * ((int) Math.ceil(roomHeight / cell) + 2 * PAD)];
        laid = new ArrayList<>();
        markers = new ArrayList<>();
        tried = new HashMap<>();
    }

    private SheetGrid(SheetGrid from) {
        roomWidth = from.roomWidth;
        roomHeight = from.roomHeight;
        margin = from.margin;
        cell = from.cell;
        stride = from.stride;
        effort = from.effort;
        taken = from.taken.clone();
        laid = new ArrayList<>(from.laid);
        markers = new ArrayList<>(from.markers);
        tried = new HashMap<>(from.tried);
        top = from.top;
        burden = from.burden;
        highest = from.highest;
    }

    SheetGrid copy() {
        effort.spend(taken.length / COPIED);
        return new SheetGrid(this);
    }

    /** Areas times the heights of their tops above the lower margin, mm³. */
    double burden() {
        return burden;
    }

    /** The shape that reaches highest, the first of those; null on an empty sheet. */
    NestShape highest() {
        return highest;
    }

    List<Nested.Laid> laid() {
        return laid;
    }

    /** Top of the highest piece above the lower margin, mm. */
    double top() {
        return top;
    }

    /**
     * The angle and place where the shape is lowest; null when there is no room.
     *
     * @param byMiddle whether the centre of its area counts, or else its top
     */
    Spot find(NestShape shape, boolean byMiddle) {
        TurnedShape best = null;
        long bestPlace = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double leftmost = Double.POSITIVE_INFINITY;
        for (TurnedShape turned : shape.turned) {
            double reach = byMiddle ? turned.middle : turned.height;
            long place = first(turned, lowest - reach);
            if (place < 0) {
                continue;
            }
            double high = (place / stride) * cell + reach;
            double right = (place % stride) * cell + turned.width;
            if (high < lowest - 1e-9 || high < lowest + 1e-9 && right < leftmost) {
                best = turned;
                bestPlace = place;
                lowest = high;
                leftmost = right;
            }
        }
        return best == null ? null : new Spot(best, (int) (bestPlace % stride), (int) (bestPlace / stride));
    }

    /** The first free place in rows from below, as row times row length plus column; -1 for none up to a height. */
    private long first(TurnedShape turned, double highest) {
        int columns = (int) Math.floor((roomWidth - turned.width) / cell + 1e-9) + 1;
        int rows = (int) Math.floor((roomHeight - turned.height) / cell + 1e-9) + 1;
        int[] steps = turned.steps(stride);
        long from = tried.getOrDefault(turned, 0L);
        for (int y = (int) (from / stride); y < rows; y++) {
            if (y * cell > highest + 1e-9) {
                tried.put(turned, (long) y * stride);
                return -1;
            }
            for (int x = y == from / stride ? (int) (from % stride) : 0; x < columns; x++) {
                if (isFree(turned, steps, x, y)) {
                    long place = (long) y * stride + x;
                    tried.put(turned, place);
                    return place;
                }
            }
        }
        tried.put(turned, (long) rows * stride);
        return -1;
    }

    private boolean isFree(TurnedShape turned, int[] steps, int x, int y) {
        int base = (y + PAD) * stride + x + PAD;
        for (int i = 0; i < steps.length; i++) {
            if (taken[base + steps[i]]) {
                effort.spend(i + 1);
                return false;
            }
        }
        effort.spend(steps.length + markers.size());
        // no edge meets a taken cell: a laid piece is then wholly outside or wholly covered
        for (int[] marker : markers) {
            if (turned.own.has(marker[0] - x, marker[1] - y)) {
                return false;
            }
        }
        return true;
    }

    /** Lays the shape where room was found for it. */
    void put(NestShape shape, Spot spot) {
        TurnedShape turned = spot.turned();
        int x = spot.x();
        int y = spot.y();
        effort.spend((int) (turned.width / cell * (turned.height / cell)));
        turned.grown.take(taken, stride, x + PAD, y + PAD);
        int[] some = turned.own.someCell();
        markers.add(new int[] {some[0] + x, some[1] + y});
        Point shift = new Point(margin + x * cell, margin + y * cell).minus(turned.corner);
        laid.add(new Nested.Laid(shape.piece, new Placement(turned.turn.angle(), shift)));
        double reach = y * cell + turned.height;
        burden += reach * shape.area;
        if (highest == null || reach > top + 1e-9) {
            top = reach;
            highest = shape;
        }
    }
}
