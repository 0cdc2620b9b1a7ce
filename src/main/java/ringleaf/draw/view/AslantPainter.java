// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import ringleaf.draw.svg.PathData;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * Paints parts aslant: x as it is, y shrunk, z up, so that a circle is an exact ellipse. Walls are the outline drawn
 * over and over from the lower face to the upper one.
 */
final class AslantPainter {
    /** By which y shrinks: the sine of the height of the eye, here 22 degrees. */
    static final double SQUASH = 0.375;
    /** How much of a height is seen: the cosine that belongs to it. */
    static final double RISE = Math.sqrt(1 - SQUASH * SQUASH);

    private static final double OUTLINE = 0.22;
    /** Distance between the outlines that make a wall, in units; less than their stroke. */
    private static final double STEP = 0.24;

    private final Scene scene;
    private final Sheet sheet;
    private int shapes;

    AslantPainter(Scene scene, Sheet sheet) {
        this.scene = scene;
        this.sheet = sheet;
    }

    /** Paints every member of the part, its lower face {@code lift} mm up the sheet. */
    void paint(Part part, double lift) {
        List<Integer> members = members(part);
        Element group = sheet.add(sheet.root(), "g");
        Palette.Paint paint = scene.palette().of(part);
        if (members.size() >= 3 && scene.isLeaf(members.get(0))) {
            leaves(group, part, lift);
            return;
        }
        for (int member : fromTheBack(part, members)) {
            for (Layer layer : part.layers()) {
                solid(group, layer, scene.placed(member, 0), lift + RISE * (layer.zFrom() - part.zFrom()), paint);
            }
        }
    }

    /** The rightmost point of what is painted, on the sheet with y up. */
    Point rightEdge(Part part, double lift) {
        Point edge = new Point(Double.NEGATIVE_INFINITY, 0);
        for (int member : members(part)) {
            for (Layer layer : part.layers()) {
                for (Region region : layer.regions()) {
                    Box box = region.placed(scene.placed(member, 0)).box();
                    if (box.maxX() > edge.x()) {
                        edge = new Point(box.maxX(), box.centre().y());
                    }
                }
            }
        }
        return new Point(edge.x() + sheet.unit(), SQUASH * edge.y() + lift);
    }

    private List<Integer> members(Part part) {
        List<Integer> members = new ArrayList<>();
        for (int i = 0; i < scene.assembly().members().size(); i++) {
            if (scene.assembly().members().get(i).part().name().equals(part.name())) {
                members.add(i);
            }
        }
        return members;
    }

    private List<Integer> fromTheBack(Part part, List<Integer> members) {
        Point centre = part.box().centre();
        List<Integer> sorted = new ArrayList<>(members);
        sorted.sort((a, b) -> Double.compare(
                scene.placed(b, 0).apply(centre).y(),
                scene.placed(a, 0).apply(centre).y()));
        return sorted;
    }

    private void solid(Element group, Layer layer, Placement placement, double lift, Palette.Paint paint) {
        double rise = RISE * layer.height();
        double u = sheet.unit();
        PathData data = new PathData(Sheet.DECIMALS, SQUASH, -lift);
        for (Region region : layer.regions()) {
            data.add(region.placed(placement));
        }
        String id = "solid-" + ++shapes;
        Element defs = sheet.add(group, "defs");
        sheet.add(defs, "path", "id", id, "d", data.toString(), "stroke-width", Sheet.number(OUTLINE * u));
        int steps = (int) Math.ceil(rise / (STEP * u));
        // The lowest outline is dark all round: the foot of the wall.
        use(group, id, 0, paint.side(), paint.line());
        for (int i = 1; i < steps; i++) {
            use(group, id, -rise * i / steps, paint.side(), paint.side());
        }
        use(group, id, -rise, paint.fill(), paint.line());
    }

    private void use(Element group, String id, double y, String fill, String line) {
        sheet.add(group, "use", "xlink:href", "#" + id, "y", Sheet.number(y), "fill", fill, "stroke", line);
    }

    private void leaves(Element group, Part part, double lift) {
        List<Integer> members = scene.assembly().leaves().orElseThrow().members();
        Palette.Paint paint = scene.palette().of(part);
        for (int i = 0; i < members.size(); i++) {
            leaf(group, part, members.get(i), lift, PlanPainter.tint(i, members.size(), paint));
        }
        Contour outline = Scene.widest(part).regions().get(0).outer();
        LeafOrder order = LeafOrder.of(
                outline.placed(scene.placed(members.get(0), 0)),
                outline.placed(scene.placed(members.get(1), 0)),
                members.size(),
                2 * (scene.box().width() + scene.box().height()));
        for (int i = 0; i < order.wedges().size(); i++) {
            PathData wedge = new PathData(Sheet.DECIMALS, SQUASH, -lift)
                    .add(order.wedges().get(i));
            leaf(sheet.clipped(group, wedge), part, members.get(i), lift, PlanPainter.tint(i, members.size(), paint));
        }
    }

    private void leaf(Element group, Part part, int member, double lift, String fill) {
        Palette.Paint paint = scene.palette().of(part);
        PathData data = new PathData(Sheet.DECIMALS, SQUASH, -lift);
        PathData edge = new PathData(Sheet.DECIMALS, SQUASH, -lift);
        for (Region region : Scene.widest(part).regions()) {
            Region placed = region.placed(scene.placed(member, 0));
            data.add(placed);
            edge.add(placed.outer());
        }
        Element shade = sheet.path(group, edge.toString(), "none", paint.line(), 1);
        Sheet.set(shade, "stroke-opacity", "0.2");
        sheet.path(group, data.toString(), fill, paint.line(), OUTLINE);
    }
}
