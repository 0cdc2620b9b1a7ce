package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/** Puts holes into the outer contours that hold them. */
final class Nesting {
    private Nesting() {}

    /** Regions of contours that do not cross: counter-clockwise ones are outer, clockwise ones are holes. */
    static List<Region> regions(List<Contour> contours) {
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
                holes.get(holder(outers, contour)).add(contour);
            }
        }
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < outers.size(); i++) {
            regions.add(new Region(outers.get(i), holes.get(i)));
        }
        return regions;
    }

    /** The smallest outer contour round the hole. */
    private static int holder(List<Contour> outers, Contour hole) {
        Point inside = middleOfLongest(hole);
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outers.size(); i++) {
            double area = outers.get(i).area();
            if (area < least && Winding.of(outers.get(i), inside) != 0) {
                best = i;
                least = area;
            }
        }
        if (best < 0) {
            throw new Unsettled("a hole lies in no outline");
        }
        return best;
    }

    private static Point middleOfLongest(Contour contour) {
        Segment longest = contour.segments().get(0);
        for (Segment segment : contour.segments()) {
            if (segment.length() > longest.length()) {
                longest = segment;
            }
        }
        return longest.pointAt(0.5);
    }
}
