// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.w3c.dom.Element;
import ringleaf.draw.Decimals;
import ringleaf.draw.svg.PathData;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Part;

/**
 * Paints an assembly as seen from above: low layers first, leaves in their order, what lies above them so that they
 * shine through, pins last.
 */
final class PlanPainter {
    private static final double FINE = 0.18;
    private static final double OUTLINE = 0.24;

    private final Scene scene;
    private final Sheet sheet;
    private final Element root;
    private final int state;
    private final double cut;

    /** One layer of one member, to be painted. */
    private record Item(Member member, int index, Layer layer) {}

    PlanPainter(Scene scene, Sheet sheet, Element root, int state, double cut) {
        this.scene = scene;
        this.sheet = sheet;
        this.root = root;
        this.state = state;
        this.cut = cut;
    }

    void paint() {
        List<Item> under = new ArrayList<>();
        List<Item> over = new ArrayList<>();
        List<Item> pins = new ArrayList<>();
        sort(under, over, pins);
        Element ground = sheet.group(root, "under");
        if (scene.assembly().leaves().isPresent()) {
            Region clear = scene.assembly().leaves().get().clear();
            sheet.region(ground, clear, Palette.LIGHT, "none", FINE);
        }
        for (Item item : under) {
            solid(ground, item);
        }
        if (scene.assembly().leaves().isPresent()) {
            leaves(scene.assembly().leaves().get());
        }
        Element above = sheet.group(root, "over");
        for (Item item : over) {
            if (item.member().body() != 0) {
                moving(above, item);
            }
        }
        Element dots = sheet.group(root, "pins");
        for (Item item : pins) {
            pin(dots, item);
        }
        Element covers = sheet.group(root, "covers");
        for (Item item : over) {
            if (item.member().body() == 0) {
                cover(covers, item);
            }
        }
        clearing(covers);
    }

    private void sort(List<Item> under, List<Item> over, List<Item> pins) {
        List<Member> members = scene.assembly().members();
        for (int i = 0; i < members.size(); i++) {
            Part part = members.get(i).part();
            Layer leaf = scene.isLeaf(i) ? Scene.widest(part) : null;
            for (Layer layer : part.layers()) {
                Item item = new Item(members.get(i), i, layer);
                if (leaf != null && layer == leaf || layer.zFrom() >= cut) {
                    continue;
                }
                if (leaf != null || part.family() == Family.PIN) {
                    pins.add(item);
                } else if (scene.isAbove(layer)) {
                    over.add(item);
                } else {
                    under.add(item);
                }
            }
        }
        Comparator<Item> byHeight =
                Comparator.comparingDouble(item -> item.layer().zFrom());
        under.sort(byHeight);
        over.sort(byHeight);
        pins.sort(byHeight);
    }

    private Palette.Paint paint(Item item) {
        return scene.palette().of(item.member().part());
    }

    private void solid(Element parent, Item item) {
        Palette.Paint paint = paint(item);
        place(parent, item, paint.fill(), paint.line(), OUTLINE);
        marks(parent, item, paint.line());
    }

    private void moving(Element parent, Item item) {
        Palette.Paint paint = paint(item);
        Element path = place(parent, item, paint.fill(), paint.line(), OUTLINE);
        // A ring over leaves lets them be seen; a gear beside them may be solid.
        boolean covers =
                scene.assembly().leaves().isPresent() && item.member().part().family() != Family.GEAR;
        if (covers) {
            Sheet.set(path, "fill-opacity", "0.3");
        }
        marks(parent, item, paint.line());
    }

    private void cover(Element parent, Item item) {
        Palette.Paint paint = paint(item);
        Element path = place(parent, item, paint.fill(), paint.line(), FINE);
        Sheet.set(path, "fill-opacity", "0.1");
        Sheet.set(path, "stroke-opacity", "0.7");
        Sheet.set(path, "stroke-dasharray", dashes(1.2, 0.8));
    }

    private void pin(Element parent, Item item) {
        Palette.Paint paint = paint(item);
        String fill = item.member().part().family() == Family.PIN ? paint.fill() : paint.side();
        place(parent, item, fill, Palette.PAPER, FINE);
    }

    private void marks(Element parent, Item item, String colour) {
        if (item.layer().marks().isEmpty()) {
            return;
        }
        Placement placement = scene.placed(item.index(), state);
        PathData data = new PathData(Sheet.DECIMALS);
        for (Path mark : item.layer().marks()) {
            data.add(mark.placed(placement));
        }
        sheet.path(parent, data.toString(), "none", colour, FINE);
    }

    /** Adds the item's outline where it stands in this state. */
    private Element place(Element parent, Item item, String fill, String line, double width) {
        Element path = sheet.path(parent, scene.outline(item.layer()), fill, line, width);
        Placement placement = scene.placed(item.index(), state);
        if (!placement.equals(Placement.IDENTITY)) {
            Sheet.set(path, "transform", transform(placement));
        }
        return path;
    }

    static String transform(Placement placement) {
        String turn = Decimals.of(-Math.toDegrees(placement.angle()), 5);
        String shift = Decimals.of(placement.shift().x(), 5) + " "
                + Decimals.of(-placement.shift().y(), 5);
        return "translate(" + shift + ") rotate(" + turn + ")";
    }

    private void leaves(LeafFamily family) {
        List<Integer> members = family.members();
        if (members.isEmpty()) {
            return;
        }
        Part part = scene.assembly().members().get(members.get(0)).part();
        Palette.Paint paint = scene.palette().of(part);
        shape(part, paint);
        Element group = sheet.group(root, "leaves");
        for (int i = 0; i < members.size(); i++) {
            leaf(group, members.get(i), tint(i, members.size(), paint));
        }
        if (members.size() < 3) {
            return;
        }
        double reach =
                2 * (Math.abs(sheet.area().width()) + Math.abs(sheet.area().height()));
        Contour outline = outline(part);
        LeafOrder order = LeafOrder.of(
                outline.placed(scene.placed(members.get(0), state)),
                outline.placed(scene.placed(members.get(1), state)),
                members.size(),
                reach);
        for (int i = 0; i < order.wedges().size(); i++) {
            Element again = sheet.clipped(
                    root, new PathData(Sheet.DECIMALS).add(order.wedges().get(i)));
            leaf(again, members.get(i), tint(i, members.size(), paint));
        }
    }

    /** Two tints in turn; an odd last leaf gets the shade between, so that it stands off both its neighbours. */
    static String tint(int index, int count, Palette.Paint paint) {
        boolean between = index == count - 1 && count % 2 == 1;
        return between ? paint.third() : index % 2 == 0 ? paint.fill() : paint.second();
    }

    private static Contour outline(Part part) {
        return Scene.widest(part).regions().get(0).outer();
    }

    /** The leaf as drawn, once: a soft edge that falls on the leaf beneath, then the leaf itself. */
    private void shape(Part part, Palette.Paint paint) {
        Element defs = sheet.add(root, "defs");
        Element shape = sheet.group(defs, "leaf");
        String data = scene.outline(Scene.widest(part));
        PathData edge = new PathData(Sheet.DECIMALS);
        for (Region region : Scene.widest(part).regions()) {
            edge.add(region.outer());
        }
        for (double width : new double[] {1.5, 0.8}) {
            Element shade = sheet.path(shape, edge.toString(), "none", paint.line(), width);
            Sheet.set(shade, "stroke-opacity", "0.1");
        }
        String line = Sheet.number(FINE * sheet.unit());
        sheet.add(shape, "path", "d", data, "stroke", paint.line(), "stroke-width", line);
    }

    private void leaf(Element parent, int member, String fill) {
        Placement placement = scene.placed(member, state);
        sheet.add(parent, "use", "xlink:href", "#leaf", "fill", fill, "transform", transform(placement));
    }

    /** The edge of what must be clear, over everything. */
    private void clearing(Element parent) {
        if (scene.assembly().leaves().isEmpty()) {
            return;
        }
        Region clear = scene.assembly().leaves().get().clear();
        Element path = sheet.region(parent, clear, "none", Palette.INK, FINE);
        Sheet.set(path, "stroke-dasharray", dashes(0.4, 0.9));
    }

    private String dashes(double on, double off) {
        return Sheet.number(on * sheet.unit()) + " " + Sheet.number(off * sheet.unit());
    }
}
