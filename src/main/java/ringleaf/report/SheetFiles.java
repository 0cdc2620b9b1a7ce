// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.Drawing;
import ringleaf.draw.SheetDrawing;
import ringleaf.draw.format.OutlineFormat;

/** Sheets on which parts of one stock are laid out, and the table of them. */
public final class SheetFiles {
    private static final String FOLDER = "sheets/";

    /**
     * The sheets of one stock.
     *
     * @param process that cuts them
     * @param stock they are of
     * @param width mm
     * @param height mm
     * @param pieces on all of them
     * @param area of all pieces, mm²
     * @param utilisation share that becomes parts, of the last sheet only what is used
     * @param boxUtilisation the same for upright boxes in rows
     * @param sheets each with its pieces
     */
    public record Stack(
            String process,
            String stock,
            double width,
            double height,
            int pieces,
            double area,
            double utilisation,
            double boxUtilisation,
            List<Sheet> sheets) {}

    /** One sheet and what lies on it. */
    public record Sheet(SheetDrawing.Sheet drawing, List<SheetDrawing.Item> items) {}

    private SheetFiles() {}

    /** Adds {@code sheets/<process>-<stock>-<n>} of each format, and {@code sheets.csv} unless there are none. */
    public static void add(List<Stack> stacks, PartFiles.Wanted wanted, FileSet files) {
        for (Stack stack : stacks) {
            int number = 1;
            for (Sheet sheet : stack.sheets()) {
                Drawing drawing = SheetDrawing.of(sheet.drawing(), sheet.items());
                String name = FileNames.of(stack.process()) + "-" + FileNames.of(stack.stock());
                String stem = FOLDER + name + "-" + number++;
                for (OutlineFormat format : wanted.formats()) {
                    files.add(stem + format.ending(), format.write(drawing, wanted.options()));
                }
            }
        }
        if (!stacks.isEmpty()) {
            files.add("sheets.csv", table(stacks));
        }
    }

    private static byte[] table(List<Stack> stacks) {
        Csv csv = new Csv();
        List<String> columns = new ArrayList<>(List.of("process", "stock", "width", "height", "sheets", "quantity"));
        columns.addAll(List.of("parts_mm2", "utilisation_percent", "boxes_in_rows_percent"));
        for (String column : columns) {
            csv.words(column);
        }
        csv.end();
        for (Stack stack : stacks) {
            csv.words(stack.process()).words(stack.stock());
            csv.number(stack.width()).number(stack.height());
            csv.number(stack.sheets().size()).number(stack.pieces());
            csv.number(Math.rint(stack.area() * 100) / 100);
            csv.number(Math.rint(stack.utilisation() * 1000) / 10);
            csv.number(Math.rint(stack.boxUtilisation() * 1000) / 10).end();
        }
        return csv.toBytes();
    }
}
