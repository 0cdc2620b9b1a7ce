// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Segment;

/** Edges in a row, directed; inside of it no third edge meets, so each side of it lies in one face. */
final class Chain {
    final List<Segment> segments;
    final int from;
    final int to;
    final int first;
    final int second;
    /** The longest edge: its middle is the safest place to ask what lies beside the chain. */
    final Edge longest;
    /** Whether the chain runs along its longest edge, and not back along it. */
    final boolean forth;

    private Chain(List<Segment> segments, int from, int to, int first, int second, Edge longest, boolean forth) {
        this.segments = segments;
        this.from = from;
        this.to = to;
        this.first = first;
        this.second = second;
        this.longest = longest;
        this.forth = forth;
    }

    /** A single kept edge in its own direction, or back. */
    static Chain of(Edge edge, boolean forth) {
        Chain chain = new Chain(List.of(edge.segment), edge.from, edge.to, edge.first, edge.second, edge, true);
        return forth ? chain : chain.reversed();
    }

    Chain reversed() {
        List<Segment> back = new ArrayList<>(segments.size());
        for (int i = segments.size() - 1; i >= 0; i--) {
            back.add(segments.get(i).reversed());
        }
        return new Chain(back, to, from, -first, -second, longest, !forth);
    }

    /** All edges put into chains as long as possible, in an order that follows from the edges' order. */
    static List<Chain> all(List<Edge> edges, int nodeCount) {
        List<List<Integer>> meeting = new ArrayList<>(nodeCount);
        for (int i = 0; i < nodeCount; i++) {
            meeting.add(new ArrayList<>(2));
        }
        for (int i = 0; i < edges.size(); i++) {
            meeting.get(edges.get(i).from).add(i);
            meeting.get(edges.get(i).to).add(i);
        }
        boolean[] used = new boolean[edges.size()];
        List<Chain> chains = new ArrayList<>();
        // chains that begin where several edges meet, then the closed ones that are left
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < edges.size(); i++) {
                Edge edge = edges.get(i);
                boolean forth = pass == 1 || meeting.get(edge.from).size() != 2;
                boolean back = meeting.get(edge.to).size() != 2;
                if (!used[i] && (forth || back)) {
                    chains.add(grow(edges, meeting, used, i, forth));
                }
            }
        }
        return chains;
    }

    private static Chain grow(List<Edge> edges, List<List<Integer>> meeting, boolean[] used, int start, boolean forth) {
        List<Segment> segments = new ArrayList<>();
        Edge edge = edges.get(start);
        int from = forth ? edge.from : edge.to;
        int first = forth ? edge.first : -edge.first;
        int second = forth ? edge.second : -edge.second;
        int at = start;
        int node = from;
        Edge longest = edge;
        boolean longestForth = forth;
        while (true) {
            edge = edges.get(at);
            used[at] = true;
            boolean along = edge.from == node;
            if ((along ? edge.first : -edge.first) != first || (along ? edge.second : -edge.second) != second) {
                throw new Unsettled("outlines open at " + edge.segment.start());
            }
            if (edge.segment.length() > longest.segment.length()) {
                longest = edge;
                longestForth = along;
            }
            segments.add(along ? edge.segment : edge.segment.reversed());
            node = along ? edge.to : edge.from;
            List<Integer> ends = meeting.get(node);
            int next = ends.size() != 2 ? at : ends.get(0) == at ? ends.get(1) : ends.get(0);
            if (next == at || used[next]) {
                return new Chain(segments, from, node, first, second, longest, longestForth);
            }
            at = next;
        }
    }
}
