package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Decides for each chain of an arrangement whether it bounds the result, by the winding numbers on its two sides. */
final class Faces {
    /** Whether a place belongs to the result, by how often the operands' outlines run round it. */
    interface Rule {
        boolean inside(int first, int second);
    }

    /** rad; a plain number that no usual part has as an angle. */
    private static final double OFF_SQUARE = 0.3183;

    private Faces() {}

    /** The chains with the result on exactly one side, turned so that it lies left. */
    static List<Chain> boundary(Arrangement arrangement, Rule rule) {
        List<Edge> edges = arrangement.edges();
        List<Chain> kept = new ArrayList<>();
        for (Chain chain : Chain.all(edges, arrangement.nodes.size())) {
            int[] left = windingLeftOf(chain, edges);
            boolean inLeft = rule.inside(left[0], left[1]);
            boolean inRight = rule.inside(left[0] - chain.first, left[1] - chain.second);
            if (inLeft != inRight) {
                kept.add(inLeft ? chain : chain.reversed());
            }
        }
        return kept;
    }

    /**
     * Casts a ray to the left from the middle of the chain's longest piece. It leaves the piece at an angle off the
     * square, so that the symmetry of usual parts does not send it through corners.
     */
    private static int[] windingLeftOf(Chain chain, List<Edge> edges) {
        Segment own = chain.forth ? chain.longest.segment : chain.longest.segment.reversed();
        Point p = own.pointAt(0.5);
        Point ray = own.tangentAt(0.5).left().turned(OFF_SQUARE);
        int first = 0;
        int second = 0;
        for (Edge edge : edges) {
            int crossings;
            if (edge == chain.longest) {
                crossings = chain.forth ? ownCrossings(own, p, ray) : -ownCrossings(own, p, ray);
            } else {
                crossings = Winding.crossings(edge.segment, p, ray.x(), ray.y());
            }
            first += crossings * edge.first;
            second += crossings * edge.second;
        }
        return new int[] {first, second};
    }

    /** Crossings with the piece on whose left the ray starts: none, but for an arc that closes round that side. */
    private static int ownCrossings(Segment own, Point p, Point ray) {
        boolean closesRound = own instanceof Arc arc && arc.sweep() > Math.PI;
        return closesRound ? Winding.crossingsFromInside((Arc) own, p, ray.x(), ray.y()) : 0;
    }
}
