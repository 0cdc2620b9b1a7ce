// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import ringleaf.draw.PlainText;
import ringleaf.draw.page.Page;

/**
 * Writes pages as one PDF document. Pages are of their exact size, nothing is scaled, and a viewer is asked not to scale
 * when printing. The same pages give the same bytes: no date, and an identifier that follows from the title alone.
 */
public final class PdfWriter {
    private static final double POINTS = 72 / 25.4;

    private PdfWriter() {}

    /**
     * The document.
     *
     * @param title of the document, for people
     * @param producer name and version of the tool
     * @param pages at least one
     */
    public static byte[] write(String title, String producer, List<Page> pages) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(32768);
        try (PDDocument document = new PDDocument()) {
            PDResources resources = resources();
            for (Page page : pages) {
                add(document, page, resources);
            }
            PDDocumentInformation information = document.getDocumentInformation();
            information.setTitle(PlainText.line(title));
            information.setProducer(producer);
            COSDictionary preferences = new COSDictionary();
            preferences.setItem(COSName.getPDFName("PrintScaling"), COSName.getPDFName("None"));
            document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("ViewerPreferences"), preferences);
            document.setDocumentId(0L);
            document.save(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** One of the fonts every reader has, named and not loaded: loading it would search the machine's own fonts. */
    private static PDResources resources() {
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE1);
        font.setItem(COSName.BASE_FONT, COSName.getPDFName("Helvetica"));
        font.setItem(COSName.ENCODING, COSName.WIN_ANSI_ENCODING);
        COSDictionary fonts = new COSDictionary();
        fonts.setItem(COSName.getPDFName("F1"), font);
        COSDictionary all = new COSDictionary();
        all.setItem(COSName.FONT, fonts);
        return new PDResources(all);
    }

    private static void add(PDDocument document, Page page, PDResources resources) throws IOException {
        PDPage sheet = new PDPage(new PDRectangle((float) (page.width() * POINTS), (float) (page.height() * POINTS)));
        sheet.setResources(resources);
        byte[] content = PageContent.of(page);
        sheet.setContents(new PDStream(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE));
        document.addPage(sheet);
    }
}
