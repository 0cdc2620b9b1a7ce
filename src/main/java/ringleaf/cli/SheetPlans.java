// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.SheetDrawing;
import ringleaf.fabricate.NestPiece;
import ringleaf.fabricate.Nested;
import ringleaf.fabricate.SheetSet;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Words;
import ringleaf.report.SheetFiles;
import ringleaf.spec.shared.Catalogues;

/** Nested sheets as they are drawn. */
final class SheetPlans {
    private SheetPlans() {}

    static List<SheetFiles.Stack> of(String title, List<SheetSet> sets, Catalogues catalogues) {
        List<SheetFiles.Stack> stacks = new ArrayList<>();
        for (SheetSet set : sets) {
            List<SheetFiles.Sheet> sheets = new ArrayList<>();
            for (int i = 0; i < set.nested().sheets().size(); i++) {
                List<SheetDrawing.Item> items = new ArrayList<>();
                for (Nested.Laid laid : set.nested().sheets().get(i)) {
                    items.add(item(laid));
                }
                sheets.add(new SheetFiles.Sheet(sheet(title, set, i, catalogues), items));
            }
            stacks.add(new SheetFiles.Stack(
                    set.process().name(),
                    set.stock().name(),
                    set.size().width(),
                    set.size().height(),
                    set.pieces(),
                    set.nested().area(),
                    set.utilisation(),
                    set.boxUtilisation(),
                    sheets));
        }
        return stacks;
    }

    private static SheetDrawing.Item item(Nested.Laid laid) {
        NestPiece piece = laid.piece();
        return new SheetDrawing.Item(
                piece.name(),
                piece.outline().placed(laid.placement()),
                placed(piece.cuts(), laid),
                placed(piece.marks(), laid),
                piece.engraved(),
                placed(piece.leads(), laid),
                levels(laid));
    }

    private static List<List<Region>> levels(Nested.Laid laid) {
        List<List<Region>> levels = new ArrayList<>();
        for (List<Region> level : laid.piece().levels()) {
            List<Region> placed = new ArrayList<>();
            for (Region region : level) {
                placed.add(region.placed(laid.placement()));
            }
            levels.add(placed);
        }
        return levels;
    }

    private static List<Path> placed(List<Path> paths, Nested.Laid laid) {
        List<Path> placed = new ArrayList<>();
        for (Path path : paths) {
            placed.add(path.placed(laid.placement()));
        }
        return placed;
    }

    private static SheetDrawing.Sheet sheet(String title, SheetSet set, int index, Catalogues catalogues) {
        double width = set.size().width();
        double height = set.size().height();
        List<String> notes = new ArrayList<>();
        notes.add((set.isPrinted() ? "bed " : "sheet ") + (index + 1) + " of "
                + set.nested().sheets().size() + ", "
                + set.process().name() + ", " + set.stock().name() + ", " + Words.number(width, 2)
                + " x " + Words.number(height, 2) + " mm, true scale");
        if (set.isPrinted()) {
            notes.add("footprints on the bed, nominal outlines, heights above the bed in mm:");
            heights(notes, set.nested().sheets().get(index));
        } else {
            notes.add(
                    set.kerf() > 0
                            ? "kerf of " + Words.number(set.kerf(), 4)
                                    + " mm is in: switch off any correction in the machine"
                            : "nominal outlines, no kerf in them");
        }
        if (set.tabWidth() > 0) {
            notes.add("tabs of " + Words.number(set.tabWidth(), 3) + " mm hold the parts: snip and file them flush");
        }
        return new SheetDrawing.Sheet(
                title + ", " + set.stock().name(),
                width,
                height,
                set.isFramed() ? toolingHoles(set, width, height) : List.of(),
                notes,
                set.isMetal(),
                MachineLines.styles(set.cutting(), set.process().name(), catalogues));
    }

    /** A line for each distinct part on the bed. */
    private static void heights(List<String> notes, List<Nested.Laid> sheet) {
        for (Nested.Laid laid : sheet) {
            String note = laid.piece().note();
            if (!notes.contains(note)) {
                notes.add(note);
            }
        }
    }

    /** Three holes in the frame, so that a mask cannot be laid on the wrong way round; none where there is no frame. */
    private static List<Contour> toolingHoles(SheetSet set, double width, double height) {
        double in = set.size().margin() / 2;
        double radius = Math.min(SheetSet.TOOLING_HOLE / 2, in / 2);
        if (!(radius > 0)) {
            return List.of();
        }
        return List.of(
                Contour.circle(new Point(in, in), radius),
                Contour.circle(new Point(width - in, in), radius),
                Contour.circle(new Point(in, height - in), radius));
    }
}
