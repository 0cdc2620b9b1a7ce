// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Reads the lines of a PDF document back with PDFBox's own parser; shares no code with the writer. Lengths in mm. */
public final class PdfReader {
    private static final double MM = 25.4 / 72;

    /** A subpath: its start, then three points for every cubic curve (a line as one with its handles on it). */
    public record Curve(List<double[]> points, double width, boolean closed) {
        /** Signed area by Green's theorem, exact for cubics. */
        public double area() {
            double sum = 0;
            for (int i = 0; i + 3 < points.size(); i += 3) {
                sum += cubic(points.get(i), points.get(i + 1), points.get(i + 2), points.get(i + 3));
            }
            double[] first = points.get(0);
            double[] last = points.get(points.size() - 1);
            return sum + (last[0] * first[1] - last[1] * first[0]) / 2;
        }

        private static double cubic(double[] a, double[] b, double[] c, double[] d) {
            return (6 * cross(a, b)
                            + 3 * cross(a, c)
                            + cross(a, d)
                            + 3 * cross(b, c)
                            + 3 * cross(b, d)
                            + 6 * cross(c, d))
                    / 20;
        }

        private static double cross(double[] a, double[] b) {
            return a[0] * b[1] - a[1] * b[0];
        }

        /** Middle of the box of the curve's nodes. */
        public double[] middle() {
            double[] box = {1e9, 1e9, -1e9, -1e9};
            for (int i = 0; i < points.size(); i += 3) {
                double[] p = points.get(i);
                box[0] = Math.min(box[0], p[0]);
                box[1] = Math.min(box[1], p[1]);
                box[2] = Math.max(box[2], p[0]);
                box[3] = Math.max(box[3], p[1]);
            }
            return new double[] {(box[0] + box[2]) / 2, (box[1] + box[3]) / 2};
        }
    }

    /** A page: its size and its curves. */
    public record Sheet(double width, double height, List<Curve> curves) {}

    private double lineWidth;
    private final List<Double> numbers = new ArrayList<>();
    private final List<Curve> curves = new ArrayList<>();
    private List<double[]> points = new ArrayList<>();

    private PdfReader() {}

    public static List<Sheet> read(byte[] bytes) throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(bytes)) {
            for (PDPage page : document.getPages()) {
                PDRectangle box = page.getMediaBox();
                PdfReader reader = new PdfReader();
                for (Object token : new PDFStreamParser(page).parse()) {
                    reader.take(token);
                }
                sheets.add(new Sheet(box.getWidth() * MM, box.getHeight() * MM, reader.curves));
            }
        }
        return sheets;
    }

    private void take(Object token) {
        if (token instanceof COSNumber number) {
            numbers.add((double) number.floatValue());
        } else if (token instanceof Operator operator) {
            operate(operator.getName());
            numbers.clear();
        }
    }

    private void operate(String name) {
        switch (name) {
            case "w" -> lineWidth = numbers.get(0) * MM;
            case "m" -> {
                points = new ArrayList<>();
                points.add(at(0));
            }
            case "l" -> {
                double[] from = points.get(points.size() - 1);
                points.add(from);
                points.add(at(0));
                points.add(at(0));
            }
            case "c" -> {
                points.add(at(0));
                points.add(at(2));
                points.add(at(4));
            }
            case "s", "S" -> curves.add(new Curve(points, lineWidth, name.equals("s")));
            case "cm" -> throw new IllegalStateException("a matrix scales the page");
            default -> {
                // text, colours, windows
            }
        }
    }

    private double[] at(int i) {
        return new double[] {numbers.get(i) * MM, numbers.get(i + 1) * MM};
    }
}
