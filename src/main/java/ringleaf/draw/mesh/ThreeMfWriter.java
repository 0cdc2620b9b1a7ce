// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import ringleaf.draw.Decimals;
import ringleaf.draw.PlainText;
import ringleaf.solid.Mesh;

/**
 * 3MF (ISO/IEC 25422, core specification): a zip package with one model in millimetres, an object with its name for
 * each distinct part, and an item on the plate for each copy. No clock: entries carry the zip format's earliest date.
 */
public final class ThreeMfWriter {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final int DECIMALS = 6;

    /**
     * A part on the plate.
     *
     * @param name for people
     * @param mesh lying on z = 0
     * @param count of copies
     */
    public record Item(String name, Mesh mesh, int count) {}

    private ThreeMfWriter() {}

    /**
     * The file.
     *
     * @param title of the plate
     * @param description what it is and how exact
     * @param application that made it, with its version
     */
    public static byte[] write(String title, String description, String application, List<Item> items) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(65536);
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            entry(
                    zip,
                    "[Content_Types].xml",
                    HEAD + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                            + "<Default Extension=\"rels\""
                            + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                            + "<Default Extension=\"model\""
                            + " ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/></Types>\n");
            entry(
                    zip,
                    "_rels/.rels",
                    HEAD + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                            + "<Relationship Id=\"rel0\" Target=\"/3D/3dmodel.model\""
                            + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
                            + "</Relationships>\n");
            entry(zip, "3D/3dmodel.model", model(title, description, application, items));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        // before the format's first date in every time zone, so that it is written the same in all of them
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String model(String title, String description, String application, List<Item> items) {
        StringBuilder out = new StringBuilder(65536);
        out.append(HEAD);
        out.append("<model unit=\"millimeter\" xml:lang=\"en\"");
        out.append(" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n");
        metadata(out, "Title", title);
        metadata(out, "Description", description);
        metadata(out, "Application", application);
        out.append("<resources>\n");
        for (int i = 0; i < items.size(); i++) {
            object(out, i + 1, items.get(i));
        }
        out.append("</resources>\n<build>\n");
        int[] copies = new int[items.size()];
        for (BedLayout.Spot spot : BedLayout.of(items)) {
            out.append("<item objectid=\"").append(spot.item() + 1).append("\" transform=\"1 0 0 0 1 0 0 0 1 ");
            Decimals.append(out, spot.shift().x(), DECIMALS);
            out.append(' ');
            Decimals.append(out, spot.shift().y(), DECIMALS);
            Item item = items.get(spot.item());
            String number = item.count() > 1 ? " " + ++copies[spot.item()] : "";
            out.append(" 0\" partnumber=\"")
                    .append(escaped(item.name() + number))
                    .append("\"/>\n");
        }
        return out.append("</build>\n</model>\n").toString();
    }

    private static void metadata(StringBuilder out, String name, String text) {
        out.append("<metadata name=\"")
                .append(name)
                .append("\">")
                .append(escaped(text))
                .append("</metadata>\n");
    }

    private static void object(StringBuilder out, int id, Item item) {
        out.append("<object id=\"").append(id).append("\" type=\"model\" name=\"");
        out.append(escaped(item.name())).append("\"><mesh>\n<vertices>\n");
        double[] corners = item.mesh().corners();
        for (int i = 0; i < corners.length; i += 3) {
            out.append("<vertex x=\"");
            Decimals.append(out, corners[i], DECIMALS);
            out.append("\" y=\"");
            Decimals.append(out, corners[i + 1], DECIMALS);
            out.append("\" z=\"");
            Decimals.append(out, corners[i + 2], DECIMALS);
            out.append("\"/>\n");
        }
        out.append("</vertices>\n<triangles>\n");
        int[] triangles = item.mesh().triangles();
        for (int t = 0; t < triangles.length; t += 3) {
            out.append("<triangle v1=\"")
                    .append(triangles[t])
                    .append("\" v2=\"")
                    .append(triangles[t + 1]);
            out.append("\" v3=\"").append(triangles[t + 2]).append("\"/>\n");
        }
        out.append("</triangles>\n</mesh></object>\n");
    }

    private static String escaped(String text) {
        String line = PlainText.line(text);
        StringBuilder out = new StringBuilder(line.length() + 8);
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
        return out.toString();
    }
}
