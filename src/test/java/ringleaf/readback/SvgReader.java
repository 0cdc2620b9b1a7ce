// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Reads the SVG of a part: groups of paths (M, L, A, Z, absolute) and circles; y turned up again. */
final class SvgReader {
    final Document document;
    final List<ReadFigure> figures = new ArrayList<>();

    SvgReader(byte[] file) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setNamespaceAware(true);
        document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(file));
        walk(document.getDocumentElement(), "");
    }

    Element root() {
        return document.getDocumentElement();
    }

    private void walk(Element element, String layer) {
        String own = element.getLocalName().equals("g") ? element.getAttribute("id") : layer;
        if (element.getLocalName().equals("path")) {
            path(element.getAttribute("d"), own);
        } else if (element.getLocalName().equals("circle")) {
            double cx = number(element, "cx");
            double cy = -number(element, "cy");
            figures.add(new ReadFigure(own, true, true, List.of(ReadPiece.circle(cx, cy, number(element, "r")))));
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                walk(inner, own);
            }
        }
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    private void path(String data, String layer) {
        String[] words = data.replaceAll("([MLAZ])", " $1 ").trim().split("\\s+");
        List<ReadPiece> pieces = new ArrayList<>();
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        boolean closed = false;
        boolean begun = false;
        for (int i = 0; i < words.length; ) {
            switch (words[i]) {
                case "M" -> {
                    if (begun) {
                        figures.add(new ReadFigure(layer, closed, false, pieces));
                        pieces = new ArrayList<>();
                    }
                    begun = true;
                    closed = false;
                    x = Double.parseDouble(words[i + 1]);
                    y = -Double.parseDouble(words[i + 2]);
                    startX = x;
                    startY = y;
                    i += 3;
                }
                case "L" -> {
                    double toX = Double.parseDouble(words[i + 1]);
                    double toY = -Double.parseDouble(words[i + 2]);
                    pieces.add(ReadPiece.line(x, y, toX, toY));
                    x = toX;
                    y = toY;
                    i += 3;
                }
                case "A" -> {
                    double toX = Double.parseDouble(words[i + 6]);
                    double toY = -Double.parseDouble(words[i + 7]);
                    if (!words[i + 1].equals(words[i + 2])) {
                        throw new IllegalArgumentException("not round: " + data);
                    }
                    double radius = Double.parseDouble(words[i + 1]);
                    pieces.add(arc(x, -y, radius, words[i + 4].equals("1"), words[i + 5].equals("1"), toX, -toY));
                    x = toX;
                    y = toY;
                    i += 8;
                }
                case "Z" -> {
                    closed = true;
                    if (x != startX || y != startY) {
                        pieces.add(ReadPiece.line(x, y, startX, startY));
                    }
                    i++;
                }
                default -> throw new IllegalArgumentException("cannot read " + words[i] + " in " + data);
            }
        }
        figures.add(new ReadFigure(layer, closed, false, pieces));
    }

    /**
     * End points to centre, SVG 1.1 second edition, F.6.5 and F.6.6, for rx = ry; everything given y down, the
     * result y up.
     */
    static ReadPiece arc(double x1, double y1, double r, boolean large, boolean sweepFlag, double x2, double y2) {
        double hx = (x1 - x2) / 2;
        double hy = (y1 - y2) / 2;
        double lambda = (hx * hx + hy * hy) / (r * r);
        double radius = lambda > 1 ? Math.sqrt(lambda) * r : r;
        double d = hx * hx + hy * hy;
        double k = Math.sqrt(Math.max(0, (radius * radius - d) / d)) * (large != sweepFlag ? 1 : -1);
        double cx = k * hy + (x1 + x2) / 2;
        double cy = -k * hx + (y1 + y2) / 2;
        double turn = Math.atan2(y2 - cy, x2 - cx) - Math.atan2(y1 - cy, x1 - cx);
        if (sweepFlag && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweepFlag && turn > 0) {
            turn -= 2 * Math.PI;
        }
        return new ReadPiece(x1, -y1, x2, -y2, cx, -cy, radius, -turn);
    }
}
