package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Arc;
import ringleaf.geom.Placement;
import ringleaf.geom.Tolerance;

/**
 * A part as it lies on the sheet, before it has a scale: contours, where sizes are taken from, and what was found.
 *
 * @param edges in the turned part, the outline first
 * @param bearings of them
 * @param found features
 * @param span what a calliper measures over its teeth
 */
record Features(List<Edge> edges, Bearings bearings, Found found, Optional<ToothSpan> span) {
    /** Turn of arcs about the part's centre that makes an opening of no simpler form round, rad. */
    private static final double ROUND = Math.PI / 2;

    /** Pieces above which an opening is described like an outline. */
    private static final int MANY = 12;

    static Features of(SheetItem item, Tolerance same) {
        List<Edge> drawn = Edge.of(item.part(), same);
        Bearings bearings = Bearings.of(drawn, same);
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : drawn) {
            edges.add(bearings.turn() == 0 ? edge : edge.placed(Placement.turn(bearings.turn())));
        }
        Found found = new Found();
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
            } else if (i == 0 || edge.pieces().size() > MANY || isRound(edge, bearings, same)) {
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
        return item.involute()
                .flatMap(gear -> Teeth.of(outline, bearings, same)
                        .flatMap(teeth -> ToothSpan.of(outline, teeth, bearings.origin(), gear, same)));
    }

    private static boolean isRound(Edge edge, Bearings bearings, Tolerance same) {
        double sweep = 0;
        for (Arc arc : edge.arcs()) {
            boolean about = arc.centre().distance(bearings.origin()) < same.length();
            sweep += about ? Math.abs(arc.sweep()) : 0;
        }
        return bearings.round() && sweep > ROUND && Shape.of(edge, bearings, same).isOpening();
    }
}
