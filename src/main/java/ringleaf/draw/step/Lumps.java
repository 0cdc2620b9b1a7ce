// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The connected pieces of a boundary: solids in one piece, each with the cavities that it encloses on all sides. */
final class Lumps {
    /**
     * A solid in one piece.
     *
     * @param outer numbers of the faces round it
     * @param cavities numbers of the faces of each cavity
     */
    record Lump(List<Integer> outer, List<List<Integer>> cavities) {}

    private final Brep brep;
    private final int[] leader;

    private Lumps(Brep brep) {
        this.brep = brep;
        leader = new int[brep.faces().size()];
        int[] byEdge = new int[brep.edges().size()];
        Arrays.fill(byEdge, -1);
        for (int i = 0; i < leader.length; i++) {
            leader[i] = i;
            for (List<Brep.Use> loop : brep.faces().get(i).loops()) {
                for (Brep.Use use : loop) {
                    join(i, byEdge[use.edge()] < 0 ? i : byEdge[use.edge()]);
                    byEdge[use.edge()] = i;
                }
            }
        }
    }

    static List<Lump> of(Brep brep) {
        return new Lumps(brep).lumps();
    }

    private List<Lump> lumps() {
        Map<Integer, List<Integer>> shells = new LinkedHashMap<>();
        for (int i = 0; i < leader.length; i++) {
            shells.computeIfAbsent(leader(i), l -> new ArrayList<>()).add(i);
        }
        List<Lump> lumps = new ArrayList<>();
        for (List<Integer> shell : shells.values()) {
            if (volume(shell) > 0) {
                lumps.add(new Lump(shell, new ArrayList<>()));
            }
        }
        for (List<Integer> shell : shells.values()) {
            if (volume(shell) <= 0) {
                around(shell, lumps).cavities().add(shell);
            }
        }
        return lumps;
    }

    /** The smallest lump whose box holds the cavity. */
    private Lump around(List<Integer> cavity, List<Lump> lumps) {
        double[] inner = box(cavity);
        Lump best = lumps.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (Lump lump : lumps) {
            double[] outer = box(lump.outer());
            boolean holds = true;
            for (int k = 0; k < 3; k++) {
                holds &= outer[k] < inner[k] && outer[3 + k] > inner[3 + k];
            }
            double size = (outer[3] - outer[0]) * (outer[4] - outer[1]) * (outer[5] - outer[2]);
            if (holds && size < least) {
                least = size;
                best = lump;
            }
        }
        return best;
    }

    /** By the divergence theorem of a field along z: only flats count, mm³. */
    private double volume(List<Integer> shell) {
        double volume = 0;
        for (int i : shell) {
            Brep.Face face = brep.faces().get(i);
            volume += (face.up() ? 1 : -1) * face.area() * face.z();
        }
        return volume;
    }

    private double[] box(List<Integer> shell) {
        double inf = Double.POSITIVE_INFINITY;
        double[] box = {inf, inf, inf, -inf, -inf, -inf};
        for (int i : shell) {
            for (List<Brep.Use> loop : brep.faces().get(i).loops()) {
                for (Brep.Use use : loop) {
                    Brep.Edge edge = brep.edges().get(use.edge());
                    double z = brep.vertices().get(edge.from()).z();
                    box[2] = Math.min(box[2], z);
                    box[5] = Math.max(box[5], z);
                    edge.along().ifPresent(piece -> {
                        box[0] = Math.min(box[0], piece.box().minX());
                        box[1] = Math.min(box[1], piece.box().minY());
                        box[3] = Math.max(box[3], piece.box().maxX());
                        box[4] = Math.max(box[4], piece.box().maxY());
                    });
                }
            }
        }
        return box;
    }

    private void join(int a, int b) {
        int one = leader(a);
        int other = leader(b);
        leader[Math.max(one, other)] = Math.min(one, other);
    }

    private int leader(int i) {
        int at = i;
        while (leader[at] != at) {
            leader[at] = leader[leader[at]];
            at = leader[at];
        }
        return at;
    }
}
