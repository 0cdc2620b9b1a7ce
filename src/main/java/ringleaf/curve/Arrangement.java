// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * Pieces cut wherever they meet, so that edges share nothing but nodes; pieces that run along each other are one edge.
 *
 * <p>Two lengths rule it: {@code touch} (how near is a touch) and four times that, the snap radius, within which points
 * are one node. Each cut end lies on its carrier within the snap radius.
 */
final class Arrangement {
    private final List<Segment> pieces = new ArrayList<>();
    private final List<Integer> operands = new ArrayList<>();
    private final double touch;
    final double snap;
    final Nodes nodes;
    private final List<Edge> edges = new ArrayList<>();
    /** Edges by their pair of nodes; only ever looked up. */
    private final Map<Long, List<Edge>> byEnds = new HashMap<>();

    private Arrangement(double touch) {
        this.touch = touch;
        this.snap = 4 * touch;
        this.nodes = new Nodes(snap);
    }

    /** Eight times the rounding of coordinates in this box, and the rounding of the radii met. */
    static double touch(Box box, double greatestRadius) {
        double size = Math.max(
                Math.max(Math.abs(box.minX()), Math.abs(box.maxX())),
                Math.max(Math.abs(box.minY()), Math.abs(box.maxY())));
        return 8 * Tolerance.rounding(box) + 16 * Math.ulp(Math.min(greatestRadius, 1000 * size));
    }

    /** Cuts {@code pieces}, of which {@code operands} tells the operand, 0 or 1. */
    static Arrangement of(List<Segment> pieces, List<Integer> operands, double touch) {
        Arrangement made = new Arrangement(touch);
        made.pieces.addAll(pieces);
        made.operands.addAll(operands);
        made.cut();
        return made;
    }

    /** Edges along which the operands' outlines do not cancel. */
    List<Edge> edges() {
        List<Edge> live = new ArrayList<>();
        for (Edge edge : edges) {
            if (edge.first != 0 || edge.second != 0) {
                live.add(edge);
            }
        }
        return live;
    }

    private void cut() {
        int n = pieces.size();
        List<List<Integer>> cuts = new ArrayList<>(n);
        Envelope[] boxes = new Envelope[n];
        STRtree tree = new STRtree();
        for (int i = 0; i < n; i++) {
            Segment piece = pieces.get(i);
            List<Integer> ends = new ArrayList<>(4);
            ends.add(nodes.at(piece.start()));
            ends.add(nodes.at(piece.end()));
            cuts.add(ends);
            Box box = piece.box().grown(snap);
            boxes[i] = new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
            tree.insert(boxes[i], i);
        }
        List<Point> found = new ArrayList<>(2);
        for (int i = 0; i < n; i++) {
            for (Object item : tree.query(boxes[i])) {
                int other = (Integer) item;
                if (other > i) {
                    found.clear();
                    Intersections.crossings(pieces.get(i), pieces.get(other), touch, found);
                    for (Point p : found) {
                        int node = nodes.at(p);
                        addCut(cuts.get(i), node);
                        addCut(cuts.get(other), node);
                    }
                }
            }
        }
        cutAtNearNodes(tree, cuts);
        for (int i = 0; i < n; i++) {
            split(pieces.get(i), operands.get(i), cuts.get(i));
        }
    }

    /** Ends and crossings of others that lie on a piece cut it too; so pieces on one carrier get common nodes. */
    private void cutAtNearNodes(STRtree tree, List<List<Integer>> cuts) {
        for (int node = 0; node < nodes.size(); node++) {
            Point p = nodes.point(node);
            for (Object item : tree.query(new Envelope(p.x(), p.x(), p.y(), p.y()))) {
                int i = (Integer) item;
                if (Distances.distance(pieces.get(i), p) <= touch) {
                    addCut(cuts.get(i), node);
                }
            }
        }
    }

    private static void addCut(List<Integer> cuts, int node) {
        if (!cuts.contains(node)) {
            cuts.add(node);
        }
    }

    private void split(Segment piece, int operand, List<Integer> cuts) {
        int n = cuts.size() - 2;
        int[] inner = new int[n];
        double[] shares = new double[n];
        for (int k = 0; k < n; k++) {
            int node = cuts.get(k + 2);
            double share = Math.min(1, Math.max(0, Stations.share(piece, nodes.point(node))));
            int at = k;
            while (at > 0 && shares[at - 1] > share) {
                shares[at] = shares[at - 1];
                inner[at] = inner[at - 1];
                at--;
            }
            shares[at] = share;
            inner[at] = node;
        }
        int from = cuts.get(0);
        double share = 0;
        for (int k = 0; k <= n; k++) {
            int to = k < n ? inner[k] : cuts.get(1);
            double next = k < n ? shares[k] : 1;
            add(piece, operand, from, share, to, next);
            from = to;
            share = next;
        }
    }

    private void add(Segment piece, int operand, int from, double share, int to, double next) {
        boolean tiny = (next - share) * piece.length() <= 2 * snap;
        if (from == to && tiny) {
            return;
        }
        Point start = nodes.point(from);
        Point end = nodes.point(to);
        // two nodes side by side on the piece: a link shorter than the snap keeps the chain whole
        boolean link = next <= share || piece instanceof Arc && tiny;
        Segment part = link ? new Line(start, end) : piece.part(share, next).withEnds(start, end);
        long ends = ((long) Math.min(from, to) << 32) | Math.max(from, to);
        List<Edge> known = byEnds.get(ends);
        if (known == null) {
            known = new ArrayList<>(1);
            byEnds.put(ends, known);
        }
        for (Edge edge : known) {
            int runs = edge.along(part, from, to, 2 * snap);
            if (runs != 0) {
                edge.count(operand, runs);
                return;
            }
        }
        Edge edge = new Edge(part, from, to);
        edge.count(operand, 1);
        known.add(edge);
        edges.add(edge);
    }
}
