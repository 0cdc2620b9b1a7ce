// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/** Puts holes into the outer contours that hold them. */
final class Nesting {
    /** Places on a piece where usual parts do not touch. */
    private static final double[] SHARES = {0.4142, 0.7321, 0.2361};

    private Nesting() {}

    /**
     * Regions of contours that do not cross: counter-clockwise ones are outer, clockwise ones are holes.
     *
     * @param near mm; contours touch in places nearer than this
     */
    static List<Region> regions(List<Contour> contours, double near) {
        List<Contour> outers = new ArrayList<>();
        List<List<Contour>> holes = new ArrayList<>();
        for (Contour contour : contours) {
            if (contour.isCounterClockwise()) {
                outers.add(contour);
                holes.add(new ArrayList<>());
            }
        }
        for (Contour contour : contours) {
            if (!contour.isCounterClockwise()) {
                holes.get(holder(outers, contour, near)).add(contour);
            }
        }
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < outers.size(); i++) {
            regions.add(new Region(outers.get(i), holes.get(i)));
        }
        return regions;
    }

    /** The smallest outer contour round the hole. */
    private static int holder(List<Contour> outers, Contour hole, double near) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outers.size(); i++) {
            double area = outers.get(i).area();
            if (area < least && lies(hole, outers.get(i), near)) {
                best = i;
                least = area;
            }
        }
        if (best < 0) {
            throw new Unsettled("a hole lies in no outline");
        }
        return best;
    }

    /** Whether the hole lies in the outer contour, asked at a place where the two do not touch. */
    private static boolean lies(Contour hole, Contour outer, double near) {
        if (!hole.box().meets(outer.box())) {
            return false;
        }
        for (Segment segment : hole.segments()) {
            for (double share : SHARES) {
                Containment place = Containment.of(outer, segment.pointAt(share), near);
                if (place != Containment.ON) {
                    return place == Containment.INSIDE;
                }
            }
        }
        return false;
    }
}
