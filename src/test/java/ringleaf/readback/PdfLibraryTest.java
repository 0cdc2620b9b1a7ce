// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import ringleaf.draw.page.Paper;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.part.Part;

/**
 * A public PDF library (MuPDF's {@code mutool trace}, from Debian's mupdf-tools), which shares nothing with the library
 * the pages are written by, reads pages at true scale: size, both bars, areas and places of holes. It is skipped where
 * the tool is absent, unless RINGLEAF_REQUIRE_READERS=1 asks for it.
 */
class PdfLibraryTest {
    private static final double MM = 25.4 / 72;
    private static final String WIDE = ".9921";

    @TempDir
    Path folder;

    @Test
    void barsAreasAndHolesAreWhereTheyShouldBe() throws Exception {
        boolean there = isThere();
        if (!there) {
            assertThat(System.getenv("RINGLEAF_REQUIRE_READERS"))
                    .as("mutool is required")
                    .isNotEqualTo("1");
        }
        assumeTrue(there, "no mutool");
        for (Part part : List.of(Samples.plate(), Samples.ring())) {
            Path file = folder.resolve(part.name() + ".pdf");
            Files.write(file, PdfReadbackTest.paper(List.of(part), Paper.A4));
            check(part, trace(file));
        }
    }

    private static void check(Part part, Document trace) {
        Element page = (Element) trace.getElementsByTagName("page").item(0);
        assertThat(page.getAttribute("mediabox")).isEqualTo("0 0 595.276 841.89");
        List<PdfReader.Curve> curves = curves(page);
        Region region = part.layers().get(0).regions().get(0);
        List<Contour> exact = region.contours();
        List<PdfReader.Curve> closed =
                curves.stream().filter(PdfReader.Curve::closed).toList();
        assertThat(closed).hasSize(exact.size());
        double[] shift = null;
        for (int i = 0; i < exact.size(); i++) {
            Contour contour = exact.get(i);
            double area = Math.abs(closed.get(i).area());
            assertThat(area).isCloseTo(Math.abs(contour.area()), within(0.0005 * contour.length() + 1e-3));
            if (contour.isCircle()) {
                Arc circle = (Arc) contour.segments().get(0);
                double[] middle = closed.get(i).middle();
                double[] off = {
                    middle[0] - circle.centre().x(), middle[1] - circle.centre().y()
                };
                shift = shift == null ? off : shift;
                assertThat(Math.hypot(off[0] - shift[0], off[1] - shift[1])).isLessThan(0.01);
            }
        }
        for (int axis = 0; axis < 2; axis++) {
            int along = axis;
            assertThat(curves.stream()
                            .filter(c -> !c.closed() && c.points().size() == 4)
                            .filter(c -> Math.abs(Math.abs(c.points().get(3)[along]
                                                    - c.points().get(0)[along])
                                            - 100)
                                    < 0.01))
                    .hasSize(1);
        }
    }

    /** Wide lines of a page. */
    private static List<PdfReader.Curve> curves(Element page) {
        List<PdfReader.Curve> curves = new ArrayList<>();
        NodeList paths = page.getElementsByTagName("stroke_path");
        for (int i = 0; i < paths.getLength(); i++) {
            Element path = (Element) paths.item(i);
            assertThat(path.getAttribute("transform")).startsWith("1 0 0 -1 0 ");
            if (path.getAttribute("linewidth").equals(WIDE)) {
                curves.add(curve(path));
            }
        }
        return curves;
    }

    private static PdfReader.Curve curve(Element path) {
        List<double[]> points = new ArrayList<>();
        boolean closed = false;
        for (Node node = path.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                switch (element.getTagName()) {
                    case "moveto" -> points.add(at(element, ""));
                    case "lineto" -> {
                        points.add(points.get(points.size() - 1));
                        points.add(at(element, ""));
                        points.add(at(element, ""));
                    }
                    case "curveto" -> {
                        for (String which : List.of("1", "2", "3")) {
                            points.add(at(element, which));
                        }
                    }
                    case "closepath" -> closed = true;
                    default -> throw new IllegalStateException(element.getTagName());
                }
            }
        }
        return new PdfReader.Curve(points, 0, closed);
    }

    private static double[] at(Element element, String which) {
        return new double[] {
            Double.parseDouble(element.getAttribute("x" + which)) * MM,
            Double.parseDouble(element.getAttribute("y" + which)) * MM
        };
    }

    private static boolean isThere() throws Exception {
        try {
            Process process =
                    new ProcessBuilder("mutool", "-v").redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            process.waitFor();
            return true;
        } catch (IOException absent) {
            return false;
        }
    }

    private Document trace(Path file) throws Exception {
        Path errors = folder.resolve("errors.txt");
        Process process = new ProcessBuilder("mutool", "trace", file.toString(), "1")
                .redirectError(errors.toFile())
                .start();
        byte[] xml = process.getInputStream().readAllBytes();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(errors)).isZero();
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(xml));
    }
}
