// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reads a 3MF package: its relationships to the model, objects, and items on the plate. */
public final class ThreeMfReader {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private static final String START = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";

    /** One object, not yet placed. */
    public record Solid(String name, ReadMesh mesh) {}

    /** One copy on the plate. */
    public record Copy(String number, Solid solid, double dx, double dy) {}

    public record Plate(Map<String, String> metadata, List<Solid> solids, List<Copy> copies) {}

    private ThreeMfReader() {}

    public static Plate read(byte[] file) throws Exception {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        assertThat(entries.keySet()).first().isEqualTo("[Content_Types].xml");
        Element types = xml(entries.get("[Content_Types].xml")).getDocumentElement();
        assertThat(types.getElementsByTagName("Default").getLength()).isEqualTo(2);
        Element start = (Element) xml(entries.get("_rels/.rels"))
                .getElementsByTagName("Relationship")
                .item(0);
        assertThat(start.getAttribute("Type")).isEqualTo(START);
        Element model =
                xml(entries.get(start.getAttribute("Target").substring(1))).getDocumentElement();
        assertThat(model.getNamespaceURI()).isEqualTo(CORE);
        assertThat(model.getAttribute("unit")).isEqualTo("millimeter");
        Map<String, String> metadata = new LinkedHashMap<>();
        for (Element each : all(model, "metadata")) {
            metadata.put(each.getAttribute("name"), each.getTextContent());
        }
        Map<String, Solid> solids = new LinkedHashMap<>();
        for (Element object : all(model, "object")) {
            assertThat(object.getAttribute("type")).isEqualTo("model");
            assertThat(solids.put(object.getAttribute("id"), new Solid(object.getAttribute("name"), mesh(object))))
                    .isNull();
        }
        List<Copy> copies = new ArrayList<>();
        for (Element item : all(model, "item")) {
            String[] turn = item.getAttribute("transform").split(" ");
            assertThat(turn)
                    .hasSize(12)
                    .startsWith("1", "0", "0", "0", "1", "0", "0", "0", "1")
                    .endsWith("0");
            copies.add(new Copy(
                    item.getAttribute("partnumber"),
                    solids.get(item.getAttribute("objectid")),
                    Double.parseDouble(turn[9]),
                    Double.parseDouble(turn[10])));
        }
        return new Plate(metadata, new ArrayList<>(solids.values()), copies);
    }

    private static ReadMesh mesh(Element object) {
        List<double[]> corners = new ArrayList<>();
        for (Element vertex : all(object, "vertex")) {
            corners.add(new double[] {number(vertex, "x"), number(vertex, "y"), number(vertex, "z")});
        }
        List<double[]> triangles = new ArrayList<>();
        for (Element triangle : all(object, "triangle")) {
            double[] t = new double[9];
            for (int k = 0; k < 3; k++) {
                double[] corner = corners.get(Integer.parseInt(triangle.getAttribute("v" + (k + 1))));
                System.arraycopy(corner, 0, t, 3 * k, 3);
            }
            triangles.add(t);
        }
        return new ReadMesh(triangles.toArray(new double[0][]));
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    private static List<Element> all(Element in, String name) {
        NodeList nodes = in.getElementsByTagName(name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            all.add((Element) nodes.item(i));
        }
        return all;
    }

    private static Document xml(byte[] bytes) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }
}
