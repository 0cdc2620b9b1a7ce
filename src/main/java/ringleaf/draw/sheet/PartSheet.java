// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringleaf.curve.Lettering;
import ringleaf.curve.Scaled;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** One try at a part's sheet: a size of paper, a scale, tables on it or not. */
final class PartSheet {
    private static final double EDGE = 4;
    private static final double OVERHANG = 3.5;
    private static final double SECTION_GAP = 9;
    private static final double TOP = 12;
    private final SheetItem item;
    private final Features features;
    private final Tolerance same;
    private final Box area;
    private final double scale;
    private final Plotter plotter;
    private final List<Table> left = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();
    private View view;
    private Box box;

    private PartSheet(SheetItem item, Features features, Tolerance same, Box sheet, double scale) {
        this.item = item;
        this.features = features;
        this.same = same;
        this.scale = scale;
        Box frame = TitleBlock.frame(sheet);
        this.area = frame.grown(-1);
        this.plotter = new Plotter(new Room(area));
        plotter.room().add(TitleBlock.block(sheet));
        for (Line mark : TitleBlock.centring(sheet)) {
            plotter.room().add(mark);
        }
    }

    /** Draws what there is room for; null where the view itself has none. */
    static PartSheet of(SheetItem item, Features features, Tolerance same, Box sheet, double scale, boolean tables) {
        PartSheet part = new PartSheet(item, features, same, sheet, scale);
        return part.draw(TitleBlock.block(sheet), tables) ? part : null;
    }

    Pen pen() {
        return plotter.pen();
    }

    /** Tables that had no room. */
    List<Table> left() {
        return left;
    }

    /** Sizes that had no room. */
    List<String> unplaced() {
        return unplaced;
    }

    private boolean isStepped() {
        return item.part().layers().size() > 1;
    }

    /** The upright dimension line stands clear of the arrows of a section. */
    private double offset() {
        return isStepped() ? Linear.OFFSET + 3 : Linear.OFFSET;
    }

    private boolean draw(Box block, boolean tables) {
        Box real = features.edges().get(0).contour().box();
        for (Edge edge : features.edges()) {
            real = real.union(edge.contour().box());
        }
        List<Table> all = Tables.of(item, features);
        // The widest first: narrow ones find room beside them.
        all.sort(Comparator.comparingDouble((Table table) -> -table.width()));
        double width = real.width() * scale;
        double height = real.height() * scale;
        boolean boxed = features.found().isBoxed();
        double side = boxed ? offset() + 5 : isStepped() ? 2 * OVERHANG + 2 : OVERHANG;
        double section =
                isStepped() ? SECTION_GAP + (item.part().zTo() - item.part().zFrom()) * scale : 0;
        double below = (boxed ? Linear.OFFSET + 2 : OVERHANG) + section;
        double bottom = block.maxY() + EDGE;
        double slackX = area.width() - 2 * EDGE - width - 2 * side;
        double slackY = area.maxY() - EDGE - bottom - height - below;
        if (slackX < 0 || slackY < 0) {
            return false;
        }
        double tallest = 0;
        for (Table table : all) {
            tallest = Math.max(tallest, tables ? table.height() + EDGE : 0);
        }
        double top = area.maxY() - EDGE - Math.max(Math.min(slackY / 2, TOP), (slackY - tallest) / 2);
        Point corner = new Point(area.centre().x() - width / 2, top - height);
        view = new View(scale, corner.minus(new Point(real.minX(), real.minY()).times(scale)));
        box = new Box(corner.x(), corner.y(), corner.x() + width, top);
        outlines();
        centres();
        if (boxed) {
            sizes(real);
        }
        if (isStepped()) {
            section(box.minY() - below);
        }
        for (Table table : all) {
            if (!tables || !lay(table, bottom)) {
                left.add(table);
            }
        }
        texts();
        if (scale > 1) {
            trueSize(real);
        }
        return true;
    }

    private void outlines() {
        List<Contour> contours = new ArrayList<>();
        for (Edge edge : features.edges()) {
            contours.add(view.of(edge.contour()));
        }
        plotter.room().material(contours);
        if (!isStepped()) {
            for (Contour contour : contours) {
                plotter.contour(contour);
            }
        } else {
            Placement turn = Placement.turn(features.bearings().turn());
            Visible visible = Visible.of(item.part(), same);
            for (Segment segment : visible.seen()) {
                plotter.wide(placed(segment.placed(turn)));
            }
            for (Segment segment : visible.hidden()) {
                dashed(placed(segment.placed(turn)));
            }
        }
        for (Path mark : item.part().marks()) {
            Path turned = mark.placed(Placement.turn(features.bearings().turn()));
            Path placed = Scaled.of(turned, scale).placed(new Placement(0, view.shift()));
            for (Segment segment : placed.segments()) {
                plotter.thin(segment);
            }
        }
    }

    private Segment placed(Segment segment) {
        return Scaled.of(segment, scale).placed(new Placement(0, view.shift()));
    }

    /** Hidden edges: narrow dashes (ISO 128-2 line 02.1, from memory). */
    private void dashed(Segment segment) {
        plotter.room().add(segment);
        double length = segment.length();
        for (double at = 0; at < length; at += 3) {
            double end = Math.min(length, at + 2);
            plotter.pen().path(Pen.THIN, Path.of(segment.part(at / length, end / length)));
        }
    }

    private void centres() {
        Bearings bearings = features.bearings();
        Point origin = view.at(bearings.origin());
        if (bearings.round()) {
            axis(new Point(box.minX() - OVERHANG, origin.y()), new Point(box.maxX() + OVERHANG, origin.y()));
            axis(new Point(origin.x(), box.minY() - OVERHANG), new Point(origin.x(), box.maxY() + OVERHANG));
        } else {
            plotter.pen().circle(Pen.THIN, origin, 1.2);
            for (Segment half : List.of(Arc.of(origin, 1.2, 0, Math.PI), Arc.of(origin, 1.2, Math.PI, Math.PI))) {
                plotter.room().add(half);
            }
        }
        for (Found.Ring ring : features.found().rings()) {
            plotter.centreCircle(view.at(ring.centre()), ring.radius() * scale);
        }
        for (Found.Mark mark : features.found().marks()) {
            if (bearings.round() && mark.at().distance(bearings.origin()) < same.length()) {
                continue;
            }
            Point at = view.at(mark.at());
            double arm = mark.radius() * scale + 1.5;
            plotter.centreLine(new Line(at.minus(new Point(arm, 0)), at.plus(new Point(arm, 0))));
            plotter.centreLine(new Line(at.minus(new Point(0, arm)), at.plus(new Point(0, arm))));
        }
    }

    /** A centre line across the view, unless its origin lies off it. */
    private void axis(Point from, Point to) {
        if (from.x() <= to.x()
                && from.y() <= to.y()
                && box.grown(OVERHANG + 0.1).meets(Box.of(from, to))) {
            plotter.centreLine(new Line(from, to));
        }
    }

    private void sizes(Box real) {
        Linear linear = new Linear(plotter);
        Point left = extreme(new Point(-1, 0));
        Point right = extreme(new Point(1, 0));
        Point low = extreme(new Point(0, -1));
        Point high = extreme(new Point(0, 1));
        String width = features.found().sizes().length(real.width());
        if (!linear.level(left, right, box.minY() - Linear.OFFSET, width)) {
            unplaced.add(width + " wide over all");
        }
        String height = features.found().sizes().length(real.height());
        if (!linear.upright(low, high, box.minX() - offset(), height)) {
            unplaced.add(height + " high over all");
        }
    }

    /** The place on the sheet where the outline reaches furthest in one of the four directions. */
    private Point extreme(Point way) {
        Point best = null;
        for (Edge edge : features.edges()) {
            for (Segment segment : edge.pieces()) {
                Box own = segment.box();
                for (Point p : List.of(segment.start(), segment.end(), reach(segment, own, way))) {
                    if (best == null || p.dot(way) > best.dot(way) + same.length()) {
                        best = p;
                    }
                }
            }
        }
        return view.at(best);
    }

    private static Point reach(Segment segment, Box own, Point way) {
        if (segment instanceof Arc arc) {
            double angle = way.angle();
            if (arc.isCircle() || arc.shareOf(angle) <= 1) {
                return arc.centre().plus(way.times(arc.radius()));
            }
        }
        return segment.start();
    }

    private void section(double bottom) {
        Bearings bearings = features.bearings();
        boolean through = box.minY() < view.at(bearings.origin()).y()
                && view.at(bearings.origin()).y() < box.maxY();
        double y = through && bearings.round()
                ? view.at(bearings.origin()).y()
                : box.centre().y();
        double cut = view.back(new Point(0, y)).y();
        for (int sense = -1; sense <= 1; sense += 2) {
            double x = sense < 0 ? box.minX() - OVERHANG : box.maxX() + OVERHANG;
            Point end = new Point(x, y);
            plotter.wide(new Line(end, end.plus(new Point(sense * 3, 0))));
            Point tail = end.plus(new Point(sense * 2.4, 0));
            plotter.thin(new Line(tail, tail.plus(new Point(0, 4))));
            plotter.arrow(tail.plus(new Point(0, 0.2)), new Point(0, -1));
            Point corner = tail.plus(new Point(-Lettering.width("A", Plotter.TEXT) / 2, 5.6));
            plotter.text("A", corner, Plotter.TEXT);
        }
        Section section = new Section(item.part(), bearings.turn(), cut);
        Box drawn = section.draw(plotter, view, bottom);
        if (drawn != null) {
            String caption = "A-A";
            double w = Lettering.width(caption, Plotter.TEXT);
            Point corner = new Point(drawn.centre().x() - w / 2, drawn.maxY() + 2);
            Point aside = new Point(drawn.maxX() + 3, drawn.minY());
            boolean free = plotter.room().isFree(Room.textBox(caption, corner, Plotter.TEXT));
            plotter.text(caption, free ? corner : aside, Plotter.TEXT);
        }
    }

    /** Puts a table as low and as far left as it has room. */
    private boolean lay(Table table, double bottom) {
        double width = table.width();
        double height = table.height();
        for (double y = area.minY() + 1; y + height < area.maxY() - 1; y += 2) {
            for (double x = area.minX() + 2; x + width < area.maxX() - 1; x += 2) {
                Box place = new Box(x, y, x + width, y + height);
                if (plotter.room().isFree(place.grown(0.8))) {
                    table.draw(plotter, new Point(x, y + height));
                    return true;
                }
            }
        }
        return false;
    }

    private void texts() {
        Placer placer = new Placer(plotter, view, box);
        if (!features.bearings().round()) {
            Point origin = features.bearings().origin();
            placer.label(new Found.Place("0", origin, new Target.OnArc(Arc.circle(origin, 1.2 / scale)), ""));
        }
        for (Found.Place place : features.found().places()) {
            if (!placer.label(place)) {
                unplaced.add(place.label() + ": " + place.what());
            }
        }
        List<Found.Callout> callouts = new ArrayList<>(features.found().callouts());
        callouts.sort(Comparator.comparingInt(callout -> callout.targets().size()));
        for (Found.Callout callout : callouts) {
            if (!placer.callout(callout)) {
                unplaced.add(String.join(", ", callout.lines()));
            }
        }
    }

    /** The outline at true scale beside an enlarged view, where there is room. */
    private void trueSize(Box real) {
        String caption = "true size, 1:1";
        double width = Math.max(real.width(), Lettering.width(caption, Table.TEXT));
        double height = real.height() + 5;
        for (double y = area.maxY() - height - 2; y > area.minY(); y -= 2) {
            for (double x = area.maxX() - width - 2; x > area.minX(); x -= 2) {
                Box place = new Box(x, y, x + width, y + height);
                if (plotter.room().isFree(place.grown(1))) {
                    Point shift =
                            new Point(x + (width - real.width()) / 2, y + 5).minus(new Point(real.minX(), real.minY()));
                    for (Edge edge : features.edges()) {
                        plotter.pen().contour(Pen.THIN, edge.contour().placed(new Placement(0, shift)));
                    }
                    double off = (width - Lettering.width(caption, Table.TEXT)) / 2;
                    plotter.text(caption, new Point(x + off, y + 1), Table.TEXT);
                    plotter.room().add(place);
                    return;
                }
            }
        }
    }
}
