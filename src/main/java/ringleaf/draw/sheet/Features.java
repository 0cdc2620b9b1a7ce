// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Winding;
import ringleaf.geom.Placement;
import ringleaf.geom.Tolerance;

/**
 * A part as it lies on the sheet, before it has a scale: contours, where sizes are taken from, and what was found.
 *
 * @param edges in the turned part, the outline first
 * @param bearings of them
 * @param found features
 * @param span what a caliper measures over its teeth
 */
record Features(List<Edge> edges, Bearings bearings, Found found, Optional<ToothSpan> span) {
    /** Pieces above which an opening is described like an outline. */
    private static final int MANY = 12;

    static Features of(SheetItem item, Tolerance same) {
        List<Edge> drawn = Edge.of(item.part(), same);
        Bearings bearings = Bearings.of(drawn, same);
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : drawn) {
            edges.add(bearings.turn() == 0 ? edge : edge.placed(Placement.turn(bearings.turn())));
        }
        Sizes sizes = new Sizes(item.unit());
        Found found = new Found(sizes);
        new RoundFeatures(bearings, item.fits(), same, found).add(edges);
        OutlineFeatures outlines = new OutlineFeatures(bearings, same, found);
        List<Edge> shapes = new ArrayList<>();
        boolean toothed = false;
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            if (edge.isCircle()) {
                continue;
            }
            if (outlines.teeth(edge)) {
                toothed |= i == 0;
            } else if (i == 0 || edge.pieces().size() > MANY || isRound(edge, bearings, same, sizes)) {
                outlines.radii(edge);
            } else {
                shapes.add(edge);
            }
        }
        new ShapeFeatures(bearings, item.fits(), same, found).add(shapes);
        if (toothed) {
            found.sized();
        }
        return new Features(edges, bearings, found, span(item, edges.get(0), bearings, same));
    }

    private static Optional<ToothSpan> span(SheetItem item, Edge outline, Bearings bearings, Tolerance same) {
        for (SheetItem.Datum datum : item.data()) {
            if (datum.name().startsWith("span")) {
                return Optional.empty();
            }
        }
        return item.involute().flatMap(gear -> Teeth.of(outline, bearings, same)
                .flatMap(teeth -> ToothSpan.of(outline, teeth, bearings.origin(), gear, same)));
    }

    /** Whether the opening has no simpler form and goes round the part's centre. */
    private static boolean isRound(Edge edge, Bearings bearings, Tolerance same, Sizes sizes) {
        return bearings.round()
                && Winding.of(edge.contour(), bearings.origin()) != 0
                && Shape.of(edge, bearings, same, sizes).isOpening();
    }
}
