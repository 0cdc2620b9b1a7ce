// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.draw.format.FormatFile;
import ringleaf.draw.format.Formats;
import ringleaf.draw.format.PageFormat;
import ringleaf.draw.format.PartsShown;
import ringleaf.draw.page.Paper;
import ringleaf.draw.paper.PaperItem;
import ringleaf.draw.sheet.SheetItem;
import ringleaf.draw.sheet.SheetUnit;
import ringleaf.part.Design;
import ringleaf.part.Part;
import ringleaf.report.PartData;

/** PDF pages of a whole preset. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PagesBenchmark {
    private final List<PaperItem> papers = new ArrayList<>();
    private final List<SheetItem> sheets = new ArrayList<>();

    @Setup
    public void design() throws IOException {
        Design design = Specs.preset("harbour-light");
        for (Part part : design.parts()) {
            if (part.isDrawn() && !part.source().isBought()) {
                papers.add(new PaperItem(part.name(), "", part));
                sheets.add(new SheetItem(
                        "Harbour light",
                        design.name(),
                        part,
                        "",
                        "",
                        List.of(),
                        PartData.of(design, part, SheetUnit.MM),
                        PartData.involute(design, part),
                        SheetUnit.MM));
            }
        }
    }

    /** Parts of harbour-light at true scale, 5 pages of A4. */
    @Benchmark
    public FormatFile paper() {
        return pages("paper");
    }

    /** Dimensioned sheets of all parts of harbour-light. */
    @Benchmark
    public FormatFile drawing() {
        return pages("drawing");
    }

    private FormatFile pages(String format) {
        PageFormat pages = Formats.only(Formats.ALL, PageFormat.class).stream()
                .filter(f -> f.name().equals(format))
                .findFirst()
                .orElseThrow();
        return pages.write(new PartsShown("Harbour light", papers, sheets, Paper.A4, ""));
    }
}
