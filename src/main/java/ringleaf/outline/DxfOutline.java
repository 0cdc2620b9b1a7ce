// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/**
 * Reads the lines, arcs, circles, polylines, ellipses, splines and inserted blocks of a DXF text (group codes as in the format's public reference, from
 * memory; checked against files of a public library). Anything else on the layers that are looked at is refused, not
 * skipped: a bezel without one of its edges is worse than none.
 */
final class DxfOutline {
    /** Blocks within blocks. */
    private static final int DEEPEST = 8;
    /** No bezel has so many pieces; blocks within blocks multiply them. */
    private static final int MOST = 2 * OutlineFile.MOST_VERTICES;

    private final SpecSource source;
    private final Set<String> layers;
    private final Problems problems;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<DxfPair> pairs;
    /** Layers of its entities, in the order of their names. */
    private final Set<String> names = new TreeSet<>();

    /** Layers that are frozen or switched off. */
    private final Set<String> off = new TreeSet<>();

    /** Where blocks begin among the pairs, and their base points, by their names. */
    private final Map<String, Integer> blocks = new HashMap<>();

    private final Map<String, Point> base = new HashMap<>();
    private String layer = "0";
    private double scale = 1;
    private int depth;
    private int at;
    private final double assumed;
    private Optional<Double> unit = Optional.empty();

    /**
     * A reader.
     *
     * @param layers that are looked at; empty for all
     * @param assumed millimetres in a unit where the file does not say so
     */
    DxfOutline(SpecSource source, Set<String> layers, double assumed, Problems problems) {
        this.assumed = assumed;
        this.source = source;
        this.layers = layers;
        this.problems = problems;
        this.pairs = DxfPair.all(source, problems);
    }

    /** Millimetres in a unit, where the file says so. */
    Optional<Double> unit() {
        return unit;
    }

    /** Layers on which something is drawn. */
    Set<String> layers() {
        return names;
    }

    /** Pieces in drawing units. */
    List<Piece> read() {
        boolean entities = false;
        while (at < pairs.size()) {
            DxfPair pair = pairs.get(at++);
            if (pair.is(9, "$INSUNITS") && at < pairs.size()) {
                unit(pairs.get(at));
            } else if (pair.is(0, "LAYER")) {
                at--;
                layer(next());
            } else if (pair.is(0, "BLOCK")) {
                at--;
                block(next());
            } else if (pair.is(2, "ENTITIES") && at > 1 && pairs.get(at - 2).is(0, "SECTION")) {
                entities = true;
                entities();
            }
        }
        boolean ends = !pairs.isEmpty() && pairs.get(pairs.size() - 1).is(0, "EOF");
        if (problems.isEmpty() && (!ends || !entities)) {
            problems.of(
                    source,
                    entities
                            ? "breaks off before its end"
                            : "holds no section of entities, so it is no DXF" + " drawing",
                    "save it again");
        }
        return pieces;
    }

    /** A row of the table of layers: bit 1 of its flags freezes it, a colour below nought switches it off. */
    private void layer(DxfEntity row) {
        if (row.has(2) && ((row.whole(70) & 1) != 0 || row.whole(62) < 0)) {
            off.add(row.text(2, ""));
        }
    }

    private void unit(DxfPair pair) {
        unit = switch (pair.value()) {
            case "1" -> Optional.of(25.4);
            case "4" -> Optional.of(1.0);
            case "5" -> Optional.of(10.0);
            case "6" -> Optional.of(1000.0);
            case "9" -> Optional.of(0.0254);
            case "0" -> Optional.empty();
            default -> {
                problems.at(
                        pair.place(source),
                        "drawings in unit number " + Shown.quoted(pair.value()) + " are" + " not read",
                        "save it in millimetres or inches");
                yield Optional.empty();
            }
        };
    }

    private void entities() {
        while (at < pairs.size()) {
            DxfPair start = pairs.get(at);
            if (start.is(0, "ENDSEC")) {
                return;
            }
            one();
        }
        problems.of(source, "breaks off within its entities", "save it again");
    }

    private void one() {
        DxfEntity entity = next();
        if (entity.type().equals("POLYLINE")) {
            polyline(entity);
        } else if (isWanted(entity)) {
            entity(entity);
        }
    }

    /** A block's name, its base point and where its entities begin. */
    private void block(DxfEntity head) {
        if (head.has(2)) {
            blocks.put(head.text(2, ""), at);
            base.put(head.text(2, ""), head.has(10) ? head.point(10) : Point.ORIGIN);
        }
    }

    /** The entity that begins here, up to the next one. */
    private DxfEntity next() {
        int from = at++;
        while (at < pairs.size() && pairs.get(at).code() != 0) {
            at++;
        }
        return new DxfEntity(source, pairs.subList(from, at), problems);
    }

    /**
     * On a layer that is looked at, in the drawing itself and not on its paper, and not hidden; a layer that is frozen or
     * off counts where it is asked for by its name.
     */
    private boolean isWanted(DxfEntity entity) {
        String layer = layerOf(entity);
        names.add(layer);
        boolean seen =
                !entity.text(67, "0").equals("1") && !entity.text(60, "0").equals("1");
        return seen && (layers.isEmpty() ? !off.contains(layer) : layers.contains(layer));
    }

    private void entity(DxfEntity entity) {
        entity.checkUpright();
        switch (entity.type()) {
            case "LINE" -> add(entity, new Line(entity.point(10), entity.point(11)));
            case "CIRCLE" -> circle(entity);
            case "ARC" -> arc(entity);
            case "LWPOLYLINE" -> chain(entity, entity.vertices(), (entity.whole(70) & 1) != 0);
            case "ELLIPSE" -> curve(entity, DxfCurves.ellipse(entity, within()));
            case "SPLINE" -> curve(entity, DxfCurves.spline(entity, within()));
            case "INSERT" -> insert(entity);
            default ->
                problems.at(
                        entity.place(),
                        "is a " + Shown.quoted(entity.type()) + "; lines, arcs, circles, polylines, ellipses, splines"
                                + " and blocks are read, nothing else",
                        "turn it into those, or put it on another layer and name the ones to take under layers:");
        }
    }

    private void add(DxfEntity entity, Segment segment) {
        if (!entity.isGood()) {
            return;
        }
        if (!(segment.length() > 0)) {
            problems.at(entity.place(), "has no length", "remove it");
            return;
        }
        pieces.add(new Piece(List.of(segment), false, entity.place()));
    }

    /** {@link Curves#WITHIN} in the drawing's units, within the blocks that are inserted. */
    private double within() {
        return Curves.WITHIN / (unit.orElse(assumed) * scale);
    }

    private void curve(DxfEntity entity, Optional<List<Segment>> arcs) {
        if (!entity.isGood()) {
            return;
        }
        if (arcs.isEmpty() || arcs.get().isEmpty()) {
            problems.at(
                    entity.place(),
                    "is no curve that arcs can follow: it turns back, or lacks knots or control points",
                    "draw it as lines and arcs");
            return;
        }
        List<Segment> segments = arcs.get();
        boolean whole =
                segments.get(0).start().equals(segments.get(segments.size() - 1).end());
        pieces.add(new Piece(segments, whole, entity.place()));
    }

    private void insert(DxfEntity entity) {
        DxfInsert insert = DxfInsert.of(entity);
        Integer start = blocks.get(insert.block());
        if (!entity.isGood()) {
            return;
        }
        if (start == null || depth == DEEPEST || insert.isArray()) {
            problems.at(
                    entity.place(),
                    start == null
                            ? "inserts " + Shown.quoted(insert.block()) + ", which the drawing does not hold"
                            : depth == DEEPEST ? "inserts blocks within blocks too deep" : "inserts rows of a block",
                    "explode it in the drawing program");
            return;
        }
        Affine map = insert.map(base.get(insert.block()));
        double outside = scale;
        String around = layer;
        int back = at;
        int first = pieces.size();
        scale *= Math.max(1e-9, map.stretch());
        layer = layerOf(entity);
        depth++;
        at = start;
        while (at < pairs.size() && !pairs.get(at).is(0, "ENDBLK") && pieces.size() < MOST) {
            one();
        }
        depth--;
        at = back;
        scale = outside;
        layer = around;
        for (int i = first; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean round = piece.segments().stream().anyMatch(s -> s instanceof Arc);
            if (round && !map.keepsCircles()) {
                problems.at(entity.place(), "stretches a block with arcs: they are none then", "explode it first");
                return;
            }
            pieces.set(i, new Piece(map.apply(piece), piece.closed(), piece.place()));
        }
    }

    /** That of the entity; within a block the layer 0 is that of what inserts it. */
    private String layerOf(DxfEntity entity) {
        String own = entity.text(8, "0");
        return depth > 0 && own.equals("0") ? layer : own;
    }

    private void circle(DxfEntity entity) {
        double radius = entity.positive(40);
        if (entity.isGood()) {
            pieces.add(new Piece(Contour.circle(entity.point(10), radius).segments(), true, entity.place()));
        }
    }

    /** Arcs run counter-clockwise from the first angle to the second, degrees. */
    private void arc(DxfEntity entity) {
        double radius = entity.positive(40);
        double from = Math.toRadians(entity.number(50));
        double to = Math.toRadians(entity.number(51));
        if (entity.isGood()) {
            double sweep = ringleaf.geom.Angles.positive(to - from);
            if (!(sweep > 0)) {
                problems.at(entity.place(), "begins where it ends", "draw a circle");
                return;
            }
            add(entity, Arc.of(entity.point(10), radius, from, sweep));
        }
    }

    private void polyline(DxfEntity head) {
        List<DxfVertex> vertices = new ArrayList<>();
        while (at < pairs.size() && pairs.get(at).is(0, "VERTEX")) {
            DxfEntity vertex = next();
            vertices.add(new DxfVertex(vertex.point(10), vertex.has(42) ? vertex.number(42) : 0));
        }
        if (at >= pairs.size() || !pairs.get(at).is(0, "SEQEND")) {
            problems.at(head.place(), "this polyline has no end", "save the drawing again");
            return;
        }
        next();
        if (!isWanted(head)) {
            return;
        }
        head.checkUpright();
        int flags = head.whole(70);
        if ((flags & ~(1 | 128)) != 0) {
            problems.at(head.place(), "is a curved, spatial or meshed polyline", "turn it into lines and arcs");
            return;
        }
        chain(head, vertices, (flags & 1) != 0);
    }

    /** A polyline whose vertices carry bulges: tan of a quarter of the sweep to the next. */
    private void chain(DxfEntity entity, List<DxfVertex> vertices, boolean closed) {
        if (!entity.isGood() || !problems.isEmpty()) {
            return;
        }
        List<Segment> segments = new ArrayList<>();
        int count = closed ? vertices.size() : vertices.size() - 1;
        for (int i = 0; i < count; i++) {
            DxfVertex from = vertices.get(i);
            Point to = vertices.get((i + 1) % vertices.size()).point();
            if (from.point().equals(to)) {
                // Many programs repeat the first vertex at the end of a closed polyline.
                continue;
            }
            segments.add(from.bulge() == 0 ? new Line(from.point(), to) : Arc.ofBulge(from.point(), to, from.bulge()));
        }
        if (segments.isEmpty()) {
            problems.at(entity.place(), "is a polyline without a length", "remove it");
            return;
        }
        boolean whole =
                segments.get(0).start().equals(segments.get(segments.size() - 1).end());
        pieces.add(new Piece(segments, whole, entity.place()));
    }
}
