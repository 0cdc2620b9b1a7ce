// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.paper;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * A part to be shown at true scale.
 *
 * @param name what it is called, e.g. {@code shutter blade}
 * @param detail a further line: pieces, process, stock
 * @param part with at least one layer
 */
public record PaperItem(String name, String detail, Part part) {
    /** Circles above this radius get a cross at their centre, mm. */
    private static final double CROSSED = 0.4;

    private static final double LEAST_ARM = 1.5;

    /** The contours of all levels, each once although levels share it. */
    List<Contour> contours() {
        List<Contour> all = new ArrayList<>();
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                for (Contour contour : region.contours()) {
                    if (!all.contains(contour)) {
                        all.add(contour);
                    }
                }
            }
        }
        return all;
    }

    /** The box of the part once it has been moved. */
    Box box(Placement placement) {
        Box box = null;
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                Box own = region.outer().placed(placement).box();
                box = box == null ? own : box.union(own);
            }
        }
        return box;
    }

    /**
     * Draws outlines, crosses at the centres of holes, and marks.
     *
     * @param seen of the page; a contour that lies wholly beside it is left out
     */
    void draw(Pen pen, Placement placement, Box seen) {
        for (Contour contour : contours()) {
            Contour placed = contour.placed(placement);
            if (!placed.box().meets(seen)) {
                continue;
            }
            pen.contour(Pen.OUTLINE, placed);
            if (placed.isCircle() && placed.segments().get(0) instanceof Arc arc && arc.radius() > CROSSED) {
                cross(pen, arc.centre(), Math.max(LEAST_ARM, arc.radius() < 6 ? arc.radius() + 1 : 3));
            }
        }
        for (Path mark : part.marks()) {
            pen.path(Pen.THIN, mark.placed(placement));
        }
    }

    /** An upright cross. */
    static void cross(Pen pen, Point centre, double arm) {
        pen.line(Pen.THIN, centre.minus(new Point(arm, 0)), centre.plus(new Point(arm, 0)));
        pen.line(Pen.THIN, centre.minus(new Point(0, arm)), centre.plus(new Point(0, arm)));
    }
}
