// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Contour;
import ringleaf.geom.Segment;

/**
 * Joins directed chains, the result on their left, into contours. Where several meet in a node the walk stays with the
 * face on its left; a walk that comes back to a node is cut there, so that no contour touches itself.
 */
final class Stitching {
    private final List<Chain> chains;
    private final double snap;
    private final int[] next;
    private final List<Contour> contours = new ArrayList<>();

    private Stitching(List<Chain> chains, double snap) {
        this.chains = chains;
        this.snap = snap;
        this.next = new int[chains.size()];
    }

    /** The contours of the result; slivers thinner than the snap radius are left out. */
    static List<Contour> contours(List<Chain> chains, double snap, int nodeCount) {
        Stitching stitching = new Stitching(chains, snap);
        stitching.link(nodeCount);
        stitching.walk();
        return stitching.contours;
    }

    private void link(int nodeCount) {
        List<List<Spoke>> byNode = new ArrayList<>(nodeCount);
        for (int i = 0; i < nodeCount; i++) {
            byNode.add(null);
        }
        for (int i = 0; i < chains.size(); i++) {
            Chain chain = chains.get(i);
            List<Segment> segments = chain.segments;
            spokes(byNode, chain.from).add(new Spoke(i, true, segments.get(0)));
            spokes(byNode, chain.to)
                    .add(new Spoke(i, false, segments.get(segments.size() - 1).reversed()));
        }
        for (List<Spoke> spokes : byNode) {
            if (spokes != null) {
                link(spokes);
            }
        }
    }

    private static List<Spoke> spokes(List<List<Spoke>> byNode, int node) {
        if (byNode.get(node) == null) {
            byNode.set(node, new ArrayList<>(2));
        }
        return byNode.get(node);
    }

    /** What comes in with the result on its left goes out by the next spoke clockwise. */
    private void link(List<Spoke> spokes) {
        int n = spokes.size();
        if (n > 2) {
            Spoke.sort(spokes);
        }
        for (int i = 0; i < n; i++) {
            Spoke in = spokes.get(i);
            Spoke out = spokes.get((i + n - 1) % n);
            if (in.outgoing == out.outgoing) {
                throw new Unsettled("pieces do not alternate");
            }
            if (!in.outgoing) {
                next[in.chain] = out.chain;
            }
        }
    }

    private void walk() {
        boolean[] used = new boolean[chains.size()];
        for (int start = 0; start < chains.size(); start++) {
            List<Integer> path = new ArrayList<>();
            Map<Integer, Integer> placeOfNode = new HashMap<>();
            int at = start;
            while (!used[at]) {
                used[at] = true;
                placeOfNode.put(chains.get(at).from, path.size());
                path.add(at);
                Integer loop = placeOfNode.get(chains.get(at).to);
                if (loop != null) {
                    close(path.subList(loop, path.size()), placeOfNode);
                }
                at = next[at];
            }
            if (!path.isEmpty()) {
                throw new Unsettled("a contour does not close");
            }
        }
    }

    private void close(List<Integer> loop, Map<Integer, Integer> placeOfNode) {
        List<Segment> segments = new ArrayList<>();
        for (int chain : loop) {
            placeOfNode.remove(chains.get(chain).from);
            segments.addAll(chains.get(chain).segments);
        }
        loop.clear();
        Contour contour = new Contour(Joining.joined(segments, snap));
        if (Math.abs(contour.area()) > snap * contour.length()) {
            contours.add(contour);
        }
    }
}
