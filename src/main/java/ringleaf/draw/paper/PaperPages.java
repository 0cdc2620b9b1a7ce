// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Lettering;
import ringleaf.draw.page.Page;
import ringleaf.draw.page.Paper;
import ringleaf.draw.page.Pen;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;

/**
 * Lays parts out on paper at true scale: those that have room on a page in rows, the highest first, larger ones over
 * several pages. Outlines are nominal.
 */
public final class PaperPages {
    private static final double GAP = 6;
    /** Pages that anybody would tape together; beyond, the largest parts are told and not drawn. */
    static final int MOST = 200;

    private static final double NAME = 2.5;
    private static final double DETAIL = 1.8;
    /** Below a part: room, name, detail. */
    private static final double LABEL = 2 + NAME + 1.5 + DETAIL + 1;

    /** A part with its label, before it has a place. */
    private record Cell(PaperItem item, double turn, Box box, double width, double height) {
        static Cell of(PaperItem item, double turn) {
            Box box = item.box(Placement.turn(turn));
            double label = Math.max(Lettering.width(item.name(), NAME), Lettering.width(item.detail(), DETAIL));
            return new Cell(item, turn, box, Math.max(box.width(), label), box.height() + LABEL);
        }

        boolean fits(Box area) {
            return width <= area.width() && height <= area.height();
        }

        /** Draws it with its lower left corner there. */
        void draw(Pen pen, Point corner, Box sheet) {
            double shift = (width - box.width()) / 2;
            Point to = corner.plus(new Point(shift, LABEL));
            item.draw(pen, new Placement(turn, to.minus(new Point(box.minX(), box.minY()))), sheet);
            label(pen, item.name(), NAME, corner.plus(new Point(0, LABEL - 2 - NAME)));
            label(pen, item.detail(), DETAIL, corner.plus(new Point(0, 1)));
        }

        private void label(Pen pen, String text, double size, Point corner) {
            pen.text(text, corner.plus(new Point((width - Lettering.width(text, size)) / 2, 0)), size);
        }
    }

    /** A row of cells on a page that has room for more. */
    private static final class Row {
        private final int page;
        private final double top;
        private final double height;
        private double x;

        Row(int page, double top, double height, double x) {
            this.page = page;
            this.top = top;
            this.height = height;
            this.x = x;
        }
    }

    private final Box sheet;
    private final Box area;
    private final List<Pen> pens = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    /** For each page with rows, how far down it is filled. */
    private final List<Double> filled = new ArrayList<>();

    private PaperPages(Paper paper) {
        this.sheet = paper.sheet(false);
        this.area = PaperFrame.area(sheet);
    }

    /** All pages, of which there is at least one when there is an item. */
    public static List<Page> of(String title, List<PaperItem> items, Paper paper) {
        PaperPages pages = new PaperPages(paper);
        List<Cell> cells = new ArrayList<>();
        List<Tiling> large = new ArrayList<>();
        for (PaperItem item : items) {
            Optional<Cell> cell = pages.cell(item);
            if (cell.isPresent()) {
                cells.add(cell.get());
            } else {
                large.add(Tiling.of(item, paper));
            }
        }
        List<Tiling> beyond = beyond(large);
        cells.sort((a, b) -> Double.compare(b.height(), a.height()));
        for (Cell cell : cells) {
            pages.lay(cell);
        }
        pages.tell(beyond);
        return pages.finished(title, large);
    }

    /** Takes out of the parts that are tiled those with the most tiles, until no more pages are left than are drawn. */
    private static List<Tiling> beyond(List<Tiling> large) {
        List<Tiling> beyond = new ArrayList<>();
        int tiles = 0;
        for (Tiling each : large) {
            tiles += each.tiles();
        }
        while (tiles > MOST) {
            Tiling most = large.get(0);
            for (Tiling each : large) {
                most = each.tiles() > most.tiles() ? each : most;
            }
            large.remove(most);
            beyond.add(most);
            tiles -= most.tiles();
        }
        return beyond;
    }

    /** Pages that name what is too large to be taped together. */
    private void tell(List<Tiling> beyond) {
        double y = area.minY();
        for (Tiling each : beyond) {
            if (y < area.minY() + 3 * NAME) {
                pens.add(new Pen());
                y = area.maxY() - 3 * NAME;
                String head = "Too large for paper: have their outlines plotted on one sheet each.";
                pens.get(pens.size() - 1).text(Pen.fitted(head, NAME, area.width()), new Point(area.minX(), y), NAME);
                y -= 3 * NAME;
            }
            String line = each.tiles() + " pages: " + each.name();
            pens.get(pens.size() - 1).text(Pen.fitted(line, NAME, area.width()), new Point(area.minX(), y), NAME);
            y -= 2 * NAME;
        }
    }

    private Optional<Cell> cell(PaperItem item) {
        for (double turn : new double[] {0, Math.PI / 2}) {
            Cell cell = Cell.of(item, turn);
            if (cell.fits(area)) {
                return Optional.of(cell);
            }
        }
        return Optional.empty();
    }

    private void lay(Cell cell) {
        for (Row row : rows) {
            if (cell.height() <= row.height && row.x + cell.width() <= area.maxX()) {
                put(cell, row);
                return;
            }
        }
        int page = 0;
        while (page < filled.size() && filled.get(page) - cell.height() < area.minY()) {
            page++;
        }
        if (page == filled.size()) {
            filled.add(area.maxY());
            pens.add(new Pen());
        }
        Row row = new Row(page, filled.get(page), cell.height(), area.minX());
        rows.add(row);
        filled.set(page, row.top - row.height - GAP);
        put(cell, row);
    }

    private void put(Cell cell, Row row) {
        cell.draw(pens.get(row.page), new Point(row.x, row.top - cell.height()), sheet);
        row.x += cell.width() + GAP;
    }

    private List<Page> finished(String title, List<Tiling> large) {
        int count = pens.size();
        for (Tiling tiling : large) {
            count += tiling.tiles();
        }
        List<Page> all = new ArrayList<>();
        for (Pen pen : pens) {
            PaperFrame.draw(pen, sheet, title, all.size() + 1, count);
            Page.Content content = new Page.Content(pen.drawing(title), Optional.empty());
            all.add(new Page(sheet.width(), sheet.height(), List.of(content)));
        }
        for (Tiling tiling : large) {
            tiling.add(all, title, count);
        }
        return all;
    }
}
