// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.List;
import ringleaf.draw.page.Paper;
import ringleaf.draw.paper.PaperItem;
import ringleaf.draw.paper.PaperPages;
import ringleaf.draw.pdf.PdfWriter;
import ringleaf.draw.sheet.SheetItem;
import ringleaf.draw.sheet.SheetPages;

/** PDF pages of parts: at true scale to lay the real thing on, and dimensioned. */
public final class PageFiles {
    private PageFiles() {}

    /** Adds {@code paper.pdf}; there is at least one item. */
    public static void paper(String title, List<PaperItem> items, Paper size, String tool, FileSet files) {
        files.add(
                "paper.pdf", PdfWriter.write(title + ", parts at true scale", tool, PaperPages.of(title, items, size)));
    }

    /** Adds {@code drawing.pdf}; there is at least one item. */
    public static void drawing(String title, List<SheetItem> items, Paper size, String tool, FileSet files) {
        files.add("drawing.pdf", PdfWriter.write(title + ", drawings", tool, SheetPages.of(items, size, tool)));
    }
}
