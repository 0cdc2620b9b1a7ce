// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;
import ringleaf.draw.page.Page;
import ringleaf.draw.pdf.PdfWriter;

/** Pages of PDF that show every part that is made. */
public abstract non-sealed class PageFormat implements Format {
    /** The option that says how large the pages are; every format of pages has it. */
    public static final FormatOption SIZE = new FormatOption(
            "--page-size",
            "SIZE",
            "paper of PDF pages: a4 or letter (default: letter where units are in or thou, else a4)",
            "size of paper",
            List.of("a4", "letter"));

    /** What the document is called after the title. */
    abstract String titled();

    abstract List<Page> pages(PartsShown parts);

    /** The document. */
    public final FormatFile write(PartsShown parts) {
        byte[] bytes = PdfWriter.write(parts.title() + ", " + titled(), parts.program(), pages(parts));
        return new FormatFile(files().get(0), bytes, List.of());
    }

    @Override
    public final List<String> files() {
        return List.of(name() + ".pdf");
    }

    @Override
    public final List<FormatOption> options() {
        return List.of(SIZE);
    }
}
