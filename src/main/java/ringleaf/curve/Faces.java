// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** Decides for each chain of an arrangement whether it bounds the result, by the winding numbers on its two sides. */
final class Faces {
    /** Whether a place belongs to the result, by how often the operands' outlines run round it. */
    enum Rule {
        UNION,
        DIFFERENCE,
        INTERSECTION;

        boolean inside(int first, int second) {
            boolean inSecond = second > 0;
            return first > 0 && (this == UNION || inSecond == (this == INTERSECTION));
        }
    }

    /** rad; no direction that usual parts have, so that rays rarely run through corners. */
    static final double ASKEW = 0.3183;

    private final List<Edge> edges;
    private final Point[] directions = {
        Point.polar(1, ASKEW), Point.polar(1, ASKEW).left()
    };
    private final Rays[] rays = new Rays[2];

    private Faces(List<Edge> edges) {
        this.edges = edges;
    }

    /** The chains with the result on exactly one side, turned so that it lies left. */
    static List<Chain> boundary(Arrangement arrangement, Rule rule) {
        Faces faces = new Faces(arrangement.edges());
        List<Chain> kept = new ArrayList<>();
        for (Chain chain : Chain.all(faces.edges, arrangement.nodes.size())) {
            int[] left = faces.windingLeftOf(chain);
            boolean inLeft = rule.inside(left[0], left[1]);
            boolean inRight = rule.inside(left[0] - chain.first, left[1] - chain.second);
            if (inLeft != inRight) {
                kept.add(inLeft ? chain : chain.reversed());
            }
        }
        return kept;
    }

    /** Casts a ray from the middle of the chain's longest edge, in the one of two directions that leaves it steeper. */
    private int[] windingLeftOf(Chain chain) {
        Edge own = chain.longest;
        Point p = own.segment.pointAt(0.5);
        Point normal = own.segment.tangentAt(0.5).left();
        int which = Math.abs(directions[0].dot(normal)) >= Math.abs(directions[1].dot(normal)) ? 0 : 1;
        Rays cast = rays(which);
        boolean leftwards = directions[which].dot(normal) > 0;
        int first = 0;
        int second = 0;
        for (int i : cast.near(p)) {
            Edge edge = edges.get(i);
            int crossings = edge == own ? ownCrossings(own, p, directions[which], leftwards) : cast.crossings(i, p);
            first += crossings * edge.first;
            second += crossings * edge.second;
        }
        // what the ray saw is the side it left to; going from right to left over an edge adds its count
        if (leftwards != chain.forth) {
            first += chain.first;
            second += chain.second;
        }
        return new int[] {first, second};
    }

    /** Crossings with the edge the ray starts on: none, but for an arc that closes round the side it leaves to. */
    private static int ownCrossings(Edge own, Point p, Point ray, boolean leftwards) {
        if (!(own.segment instanceof Arc arc) || leftwards != arc.sweep() > 0) {
            return 0;
        }
        // a ray within 45 degrees of the normal meets its circle again at least a quarter turn away
        return Math.abs(arc.sweep()) > Math.PI / 2 ? Winding.crossingsFromInside(arc, p, ray.x(), ray.y()) : 0;
    }

    private Rays rays(int which) {
        if (rays[which] == null) {
            List<Segment> segments = new ArrayList<>(edges.size());
            for (Edge edge : edges) {
                segments.add(edge.segment);
            }
            rays[which] = new Rays(segments, directions[which]);
        }
        return rays[which];
    }
}
