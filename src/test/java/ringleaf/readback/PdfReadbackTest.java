// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import ringleaf.draw.page.Page;
import ringleaf.draw.page.Paper;
import ringleaf.draw.paper.PaperItem;
import ringleaf.draw.paper.PaperPages;
import ringleaf.draw.pdf.PdfWriter;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** Pages at true scale, read back by PDFBox's parser: sizes, bars, areas and places of holes. */
class PdfReadbackTest {
    /** Contours are drawn with wide lines. */
    private static final double OUTLINE = 0.35;

    static byte[] paper(List<Part> parts, Paper size) {
        List<PaperItem> items = new ArrayList<>();
        for (Part part : parts) {
            items.add(new PaperItem(part.name(), "one of many", part));
        }
        List<Page> pages = PaperPages.of("Samples", items, size);
        return PdfWriter.write("Samples", "test", pages);
    }

    private static List<Contour> contours(Part part) {
        List<Contour> all = new ArrayList<>();
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                all.addAll(region.contours());
            }
        }
        return all;
    }

    /** Outlines of a sheet; bars are open paths of the same width. */
    static List<PdfReader.Curve> outlines(PdfReader.Sheet sheet) {
        return sheet.curves().stream()
                .filter(c -> c.closed() && Math.abs(c.width() - OUTLINE) < 1e-3)
                .toList();
    }

    @Test
    void pagesAreOfTheirExactSize() throws Exception {
        for (Paper paper : Paper.values()) {
            for (PdfReader.Sheet sheet : PdfReader.read(paper(Samples.all(3), paper))) {
                assertThat(sheet.width()).isCloseTo(paper == Paper.A4 ? 210 : 215.9, within(5e-5));
                assertThat(sheet.height()).isCloseTo(paper == Paper.A4 ? 297 : 279.4, within(5e-5));
            }
        }
    }

    @Test
    void everyPageHasABarOfAHundredMillimetresEachWay() throws Exception {
        for (PdfReader.Sheet sheet : PdfReader.read(paper(Samples.all(3), Paper.A4))) {
            assertThat(bars(sheet, 0)).isEqualTo(1);
            assertThat(bars(sheet, 1)).isEqualTo(1);
        }
    }

    private static long bars(PdfReader.Sheet sheet, int axis) {
        return sheet.curves().stream()
                .filter(c -> !c.closed() && c.points().size() == 4 && Math.abs(c.width() - OUTLINE) < 1e-3)
                .filter(c ->
                        Math.abs(Math.abs(c.points().get(3)[axis] - c.points().get(0)[axis]) - 100) < 1e-3)
                .filter(c -> Math.abs(c.points().get(3)[1 - axis] - c.points().get(0)[1 - axis]) < 1e-6)
                .count();
    }

    @Test
    void areasAreExactWithinTheCurvesBound() throws Exception {
        List<Part> parts = Samples.all(11);
        for (Part part : parts) {
            List<Double> drawn = new ArrayList<>();
            List<PdfReader.Sheet> sheets = PdfReader.read(paper(List.of(part), Paper.A4));
            assertThat(sheets).hasSize(1);
            outlines(sheets.get(0)).forEach(c -> drawn.add(Math.abs(c.area())));
            List<Double> exact = new ArrayList<>();
            double length = 0;
            for (Contour contour : contours(part)) {
                exact.add(Math.abs(contour.area()));
                length = Math.max(length, contour.length());
            }
            drawn.sort(Comparator.naturalOrder());
            exact.sort(Comparator.naturalOrder());
            assertThat(drawn).hasSameSizeAs(exact);
            for (int i = 0; i < exact.size(); i++) {
                assertThat(drawn.get(i)).as(part.name()).isCloseTo(exact.get(i), within(0.0005 * length + 1e-4));
            }
        }
    }

    @Test
    void holesLieWhereTheyShouldFromOneAnother() throws Exception {
        Part plate = Samples.plate();
        List<PdfReader.Curve> circles =
                outlines(PdfReader.read(paper(List.of(plate), Paper.LETTER)).get(0));
        List<Contour> exact = contours(plate);
        assertThat(circles).hasSize(exact.size());
        double[] origin = circles.get(0).middle();
        for (int i = 0; i < exact.size(); i++) {
            Arc arc = (Arc) exact.get(i).segments().get(0);
            assertThat(circles.get(i).middle()[0] - origin[0])
                    .isCloseTo(arc.centre().x(), within(1e-4));
            assertThat(circles.get(i).middle()[1] - origin[1])
                    .isCloseTo(arc.centre().y(), within(1e-4));
        }
    }

    @Test
    void theSamePagesGiveTheSameBytesAndCarryNoDate() throws Exception {
        byte[] first = paper(Samples.all(5), Paper.A4);
        assertThat(paper(Samples.all(5), Paper.A4)).isEqualTo(first);
        try (PDDocument document = Loader.loadPDF(first)) {
            assertThat(document.getDocumentInformation().getCreationDate()).isNull();
            assertThat(document.getDocumentInformation().getModificationDate()).isNull();
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Samples");
        }
    }

    @Test
    void textCanBeSearched() throws Exception {
        try (PDDocument document = Loader.loadPDF(paper(List.of(Samples.blade()), Paper.A4))) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("blade", "Print at 100 %", "page 1 of 1");
        }
    }
}
