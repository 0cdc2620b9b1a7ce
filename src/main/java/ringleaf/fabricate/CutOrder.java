// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Containment;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/** The order in which pieces of a sheet are cut: what lies in the hole of another piece comes before that piece. */
final class CutOrder {
    private CutOrder() {}

    /** The same pieces, inner ones first, else as they come. */
    static List<Nested.Laid> sorted(List<Nested.Laid> laid) {
        List<Region> regions = new ArrayList<>();
        for (Nested.Laid one : laid) {
            regions.add(one.piece().outline().placed(one.placement()));
        }
        int[] depth = new int[laid.size()];
        int deepest = 0;
        for (int i = 0; i < depth.length; i++) {
            for (int j = 0; j < depth.length; j++) {
                depth[i] += i != j && liesIn(regions.get(i), regions.get(j)) ? 1 : 0;
            }
            deepest = Math.max(deepest, depth[i]);
        }
        List<Nested.Laid> sorted = new ArrayList<>();
        for (int d = deepest; d >= 0; d--) {
            for (int i = 0; i < depth.length; i++) {
                if (depth[i] == d) {
                    sorted.add(laid.get(i));
                }
            }
        }
        return sorted;
    }

    private static boolean liesIn(Region inner, Region outer) {
        if (!inner.box().meets(outer.box())) {
            return false;
        }
        Point p = inner.outer().segments().get(0).start();
        for (Contour hole : outer.holes()) {
            if (Containment.of(hole, p, 0) == Containment.INSIDE) {
                return true;
            }
        }
        return false;
    }
}
