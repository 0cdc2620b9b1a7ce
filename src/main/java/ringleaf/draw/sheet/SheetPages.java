// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.Decimals;
import ringleaf.draw.page.Page;
import ringleaf.draw.page.Paper;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Box;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;

/**
 * Dimensioned sheets of parts: for each the largest scale of the preferred series (ISO 5455: 1, 2, 5 times powers of
 * ten) at which everything has room, true scale where that is so; parts below 40 mm are enlarged, and shown at true size
 * beside. What has no room goes into tables on a further sheet.
 */
public final class SheetPages {
    /** Sizes nearer than that are one size on a drawing, mm. */
    private static final Tolerance SAME = new Tolerance(0.001);

    private static final double SMALL = 40;
    private static final double ENLARGED = 110;
    private static final double[] UP = {50, 20, 10, 5, 2};
    private static final double[] DOWN = {1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01};
    private static final int TRIED = 3;
    private static final double COLUMN_GAP = 4;
    /** Further sheets keep off the marks at the middle of each side, mm. */
    private static final double MARKS = 6;

    /** A sheet before the number of sheets is known. */
    private record Sheet(Pen pen, Box box, SheetItem item, String scale) {}

    private final Paper paper;
    private final String tool;
    private final List<Sheet> sheets = new ArrayList<>();

    private SheetPages(Paper paper, String tool) {
        this.paper = paper;
        this.tool = tool;
    }

    /**
     * The sheets of all parts, in their order.
     *
     * @param tool name and version of the tool
     */
    public static List<Page> of(List<SheetItem> items, Paper paper, String tool) {
        SheetPages pages = new SheetPages(paper, tool);
        for (SheetItem item : items) {
            pages.add(item);
        }
        return pages.finished();
    }

    /** The span that a sheet tells of a part whose design states none, measured on the outline. */
    public static Optional<SheetItem.Datum> span(SheetItem item) {
        return Features.of(item, SAME)
                .span()
                .map(span -> new SheetItem.Datum(
                        "span over " + span.teeth() + " teeth", item.unit().length(span.span())));
    }

    private void add(SheetItem item) {
        Features features = Features.of(item, SAME);
        PartSheet best = null;
        Sheet bestSheet = null;
        int tried = 0;
        for (double scale : scales(features)) {
            for (int way = 0; way < 4 && (best == null || !best.unplaced().isEmpty()); way++) {
                Box box = paper.sheet(way % 2 == 1);
                PartSheet sheet = PartSheet.of(item, features, SAME, box, scale, way < 2);
                if (sheet != null
                        && (best == null
                                || sheet.unplaced().size() < best.unplaced().size())) {
                    best = sheet;
                    bestSheet = new Sheet(sheet.pen(), box, item, words(scale));
                }
            }
            tried += best == null ? 0 : 1;
            if (best != null && (best.unplaced().isEmpty() || tried == TRIED)) {
                break;
            }
        }
        List<Table> left = new ArrayList<>();
        if (best == null) {
            left.addAll(Tables.of(item, features));
            for (Found.Callout callout : features.found().callouts()) {
                left.add(Table.notes(List.of(String.join(", ", callout.lines())), ENLARGED));
            }
        } else {
            sheets.add(bestSheet);
            left.addAll(best.left());
            if (!best.unplaced().isEmpty()) {
                List<List<String>> rows = new ArrayList<>();
                for (String size : best.unplaced()) {
                    rows.add(List.of(size));
                }
                left.add(new Table("Further sizes", List.of("size"), rows));
            }
        }
        further(item, left);
    }

    /** Scales worth a try, the best one first. */
    private static List<Double> scales(Features features) {
        Box real = features.edges().get(0).contour().box();
        double size = Math.max(real.width(), real.height());
        List<Double> scales = new ArrayList<>();
        for (double scale : UP) {
            if (size < SMALL && size * scale <= ENLARGED) {
                scales.add(scale);
            }
        }
        for (double scale : DOWN) {
            scales.add(scale);
        }
        return scales;
    }

    private static String words(double scale) {
        return scale >= 1 ? Decimals.of(scale, 3) + ":1" : "1:" + Decimals.of(1 / scale, 3);
    }

    /** Tables that had no room beside the view, in columns on upright sheets. */
    private void further(SheetItem item, List<Table> tables) {
        Box box = paper.sheet(false);
        Box frame = TitleBlock.frame(box).grown(-MARKS);
        double bottom = TitleBlock.block(box).maxY() + COLUMN_GAP;
        Plotter plotter = null;
        Point at = null;
        double widest = 0;
        for (Table table : tables) {
            for (Table piece : table.pieces(frame.maxY() - bottom)) {
                boolean under = at != null && at.y() - piece.height() >= bottom;
                if (!under && at != null) {
                    at = new Point(at.x() + widest + COLUMN_GAP, frame.maxY());
                    widest = 0;
                }
                if (at == null || at.x() + piece.width() > frame.maxX() && at.x() > frame.minX()) {
                    plotter = new Plotter(new Room(frame));
                    sheets.add(new Sheet(plotter.pen(), box, item, "-"));
                    at = new Point(frame.minX(), frame.maxY());
                    widest = 0;
                }
                piece.draw(plotter, at);
                widest = Math.max(widest, piece.width());
                at = at.minus(new Point(0, piece.height() + COLUMN_GAP));
            }
        }
    }

    private List<Page> finished() {
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            String number = (i + 1) + " of " + sheets.size();
            String format = paper == Paper.A4 ? "A4" : "Letter";
            TitleBlock.draw(sheet.pen, sheet.box, new TitleBlock.Facts(sheet.item, sheet.scale, number, format, tool));
            pages.add(new Page(
                    sheet.box.width(),
                    sheet.box.height(),
                    List.of(new Page.Content(sheet.pen.drawing(sheet.item.part().name()), Optional.empty()))));
        }
        return pages;
    }
}
