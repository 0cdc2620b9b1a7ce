// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.draw.mesh.Levels;
import ringleaf.draw.mesh.Stops;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Part;

/**
 * The exact boundary of a part: a wall for every piece of every level's outline, and a flat wherever one level ends and
 * the next does not go on. Along every edge two faces meet; an edge ends wherever another one begins on it.
 */
final class Brep {
    /** Points closer than this are one, mm. */
    static final double NEAR = 1e-6;

    /** A corner at a height, mm. */
    record Vertex(Point point, double z) {}

    /**
     * What two faces have in common.
     *
     * @param from number of its first vertex
     * @param to number of its last vertex, the same where it is a whole circle
     * @param along its piece, arcs counter-clockwise; empty where it is upright
     */
    record Edge(int from, int to, Optional<Segment> along) {}

    /** An edge as a face runs along it. */
    record Use(int edge, boolean forward) {}

    /**
     * A face; seen from outside, the face lies to the left of its loops, the outer one of a flat first.
     *
     * @param wall the piece of an outline over which it stands, solid to its left; empty for a flat
     * @param up whether a flat looks up
     * @param z height of a flat, mm
     * @param area of a flat, mm²
     */
    record Face(Optional<Segment> wall, boolean up, double z, double area, List<List<Use>> loops) {}

    private final Levels levels;
    private final List<Vertex> vertices = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();
    private final List<Stops> stops = new ArrayList<>();
    /** Of every height: numbers of the vertices by those of the corners. */
    private final List<Map<Integer, Integer>> corners = new ArrayList<>();

    private final List<Map<Key, Integer>> known = new ArrayList<>();

    /** Edges between the same corners differ in where their middles are. */
    private record Key(int one, int other, int middle) {}

    private Brep(Part part) {
        levels = new Levels(part);
        for (int i = 0; i <= levels.count(); i++) {
            List<Region> upper = levels.upper(i);
            List<Region> lower = levels.lower(i);
            List<Contour> contours = new ArrayList<>();
            for (List<Region> regions : List.of(levels.solid(i - 1), levels.solid(i), upper, lower)) {
                regions.forEach(region -> contours.addAll(region.contours()));
            }
            stops.add(new Stops(contours, NEAR, levels.count() > 1));
            corners.add(new HashMap<>());
            known.add(new HashMap<>());
            upper.forEach(region -> flat(region, true));
            lower.forEach(region -> flat(region, false));
        }
        for (int i = 0; i < levels.count(); i++) {
            for (Region region : levels.solid(i)) {
                for (Contour contour : region.contours()) {
                    walls(contour, i);
                }
            }
        }
    }

    /** The boundary where the part is drawn; empty where it touches itself along an edge, so that none is closed. */
    static Optional<Brep> of(Part part) {
        Brep brep = new Brep(part);
        return brep.isClosed() ? Optional.of(brep) : Optional.empty();
    }

    List<Vertex> vertices() {
        return vertices;
    }

    List<Edge> edges() {
        return edges;
    }

    List<Face> faces() {
        return faces;
    }

    /** Every edge is run along once in either direction. */
    private boolean isClosed() {
        int[] forward = new int[edges.size()];
        int[] back = new int[edges.size()];
        for (Face face : faces) {
            for (List<Use> loop : face.loops()) {
                for (Use use : loop) {
                    (use.forward() ? forward : back)[use.edge()]++;
                }
            }
        }
        for (int i = 0; i < forward.length; i++) {
            if (forward[i] != 1 || back[i] != 1) {
                return false;
            }
        }
        return !faces.isEmpty();
    }

    /** A flat at the height whose stops were made last. */
    private void flat(Region region, boolean up) {
        int height = stops.size() - 1;
        List<List<Use>> loops = new ArrayList<>();
        for (Contour contour : region.contours()) {
            List<Use> loop = new ArrayList<>();
            for (Segment segment : (up ? contour : contour.reversed()).segments()) {
                loop.addAll(chain(segment, height));
            }
            if (!loop.isEmpty()) {
                loops.add(loop);
            }
        }
        faces.add(new Face(Optional.empty(), up, levels.height(height), region.area(), loops));
    }

    /** The walls of a level along a contour, solid to its left. */
    private void walls(Contour contour, int level) {
        List<Segment> pieces = new ArrayList<>();
        List<List<Use>> below = new ArrayList<>();
        List<List<Use>> above = new ArrayList<>();
        for (Segment segment : contour.segments()) {
            List<Use> low = chain(segment, level);
            List<Use> high = chain(segment.reversed(), level + 1);
            if (!low.isEmpty() && !high.isEmpty()) {
                pieces.add(segment);
                below.add(low);
                above.add(high);
            }
        }
        int first = edges.size();
        for (List<Use> low : below) {
            int from = start(low.get(0));
            int to = end(above.get(edges.size() - first));
            edges.add(new Edge(from, to, Optional.empty()));
        }
        for (int i = 0; i < pieces.size(); i++) {
            List<Use> loop = new ArrayList<>(below.get(i));
            loop.add(new Use(first + (i + 1) % pieces.size(), true));
            loop.addAll(above.get(i));
            loop.add(new Use(first + i, false));
            faces.add(new Face(Optional.of(pieces.get(i)), false, 0, 0, List.of(loop)));
        }
    }

    private int start(Use use) {
        Edge edge = edges.get(use.edge());
        return use.forward() ? edge.from() : edge.to();
    }

    private int end(List<Use> chain) {
        Use last = chain.get(chain.size() - 1);
        Edge edge = edges.get(last.edge());
        return last.forward() ? edge.to() : edge.from();
    }

    /** The edges along a piece at a height, in its direction. */
    private List<Use> chain(Segment segment, int height) {
        List<Use> chain = new ArrayList<>();
        List<Stops.Stop> on = stops.get(height).on(segment);
        for (int i = 0; i + 1 < on.size(); i++) {
            Stops.Stop from = on.get(i);
            Stops.Stop to = on.get(i + 1);
            boolean circle =
                    segment instanceof Arc arc && Math.abs(arc.sweep()) * (to.share() - from.share()) > Math.PI;
            if (from.corner() != to.corner() || circle) {
                chain.add(edge(segment.part(from.share(), to.share()), from.corner(), to.corner(), height));
            }
        }
        return chain;
    }

    private Use edge(Segment piece, int from, int to, int height) {
        boolean forward = piece instanceof Line ? from < to : piece.curvature() > 0;
        int one = forward ? from : to;
        int other = forward ? to : from;
        int middle = stops.get(height).number(piece.pointAt(0.5));
        Integer edge = known.get(height).get(new Key(one, other, middle));
        if (edge == null) {
            edge = edges.size();
            known.get(height).put(new Key(one, other, middle), edge);
            Segment along = forward ? piece : piece.reversed();
            edges.add(new Edge(vertex(one, height), vertex(other, height), Optional.of(along)));
        }
        return new Use(edge, forward);
    }

    private int vertex(int corner, int height) {
        return corners.get(height).computeIfAbsent(corner, c -> {
            vertices.add(new Vertex(stops.get(height).points().get(c), levels.height(height)));
            return vertices.size() - 1;
        });
    }
}
