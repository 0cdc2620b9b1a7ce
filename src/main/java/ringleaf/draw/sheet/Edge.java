// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * A contour of a part as it is dimensioned.
 *
 * @param contour as drawn
 * @param pieces of it, joined where they share a carrier
 * @param hole whether material lies outside of it
 * @param levels on which it runs, for people; empty when on all
 */
record Edge(Contour contour, List<Segment> pieces, boolean hole, String levels) {

    boolean isCircle() {
        return pieces.size() == 1 && pieces.get(0) instanceof Arc arc && arc.isCircle();
    }

    /** The only piece of a circle. */
    Arc circle() {
        return (Arc) pieces.get(0);
    }

    List<Arc> arcs() {
        List<Arc> arcs = new ArrayList<>();
        for (Segment piece : pieces) {
            if (piece instanceof Arc arc) {
                arcs.add(arc);
            }
        }
        return arcs;
    }

    Edge placed(Placement placement) {
        List<Segment> placed = new ArrayList<>(pieces.size());
        for (Segment piece : pieces) {
            placed.add(piece.placed(placement));
        }
        return new Edge(contour.placed(placement), placed, hole, levels);
    }

    /** All contours of a part, each once with the levels that share it; the largest outer one first. */
    static List<Edge> of(Part part, Tolerance same) {
        List<Contour> contours = new ArrayList<>();
        List<boolean[]> levels = new ArrayList<>();
        List<Boolean> holes = new ArrayList<>();
        int count = part.layers().size();
        for (int level = 0; level < count; level++) {
            Layer layer = part.layers().get(level);
            for (Region region : layer.regions()) {
                List<Contour> all = region.contours();
                for (int i = 0; i < all.size(); i++) {
                    int known = known(contours, holes, all.get(i), i > 0, same);
                    if (known < 0) {
                        known = contours.size();
                        contours.add(all.get(i));
                        holes.add(i > 0);
                        levels.add(new boolean[count]);
                    }
                    levels.get(known)[level] = true;
                }
            }
        }
        List<Edge> edges = new ArrayList<>();
        int base = 0;
        for (int i = 0; i < contours.size(); i++) {
            Contour contour = contours.get(i);
            edges.add(new Edge(contour, Merging.of(contour, same), holes.get(i), words(levels.get(i))));
            if (!holes.get(i) && span(contour.box()) > span(contours.get(base).box()) + same.length()) {
                base = i;
            }
        }
        edges.add(0, edges.remove(base));
        return edges;
    }

    private static double span(Box box) {
        return box.width() + box.height();
    }

    private static int known(
            List<Contour> contours, List<Boolean> holes, Contour contour, boolean hole, Tolerance same) {
        for (int i = 0; i < contours.size(); i++) {
            Contour other = contours.get(i);
            if (holes.get(i) == hole
                    && (other == contour
                            || apart(other.box(), contour.box()) < same.length()
                                    && Math.abs(other.length() - contour.length()) < same.length()
                                    && Math.abs(other.area() - contour.area()) < same.length() * contour.length())) {
                return i;
            }
        }
        return -1;
    }

    private static double apart(Box a, Box b) {
        return Math.max(
                Math.max(Math.abs(a.minX() - b.minX()), Math.abs(a.minY() - b.minY())),
                Math.max(Math.abs(a.maxX() - b.maxX()), Math.abs(a.maxY() - b.maxY())));
    }

    private static String words(boolean[] levels) {
        StringBuilder out = new StringBuilder();
        int count = 0;
        for (int i = 0; i < levels.length; i++) {
            if (levels[i]) {
                out.append(count++ == 0 ? "" : "+").append(i + 1);
            }
        }
        return count == levels.length ? "" : (count == 1 ? "level " : "levels ") + out;
    }
}
