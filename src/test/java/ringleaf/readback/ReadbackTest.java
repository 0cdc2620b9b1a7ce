// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.draw.Drawing;
import ringleaf.draw.Drawings;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.part.Part;

/** What is read back from a file is the part: in size, shape, layers and kind of curve. */
class ReadbackTest {
    private static final long SEED = 20261125;

    static Stream<Part> parts() {
        return Samples.all(SEED).stream();
    }

    @ParameterizedTest
    @MethodSource("parts")
    void svgIsThePart(Part part) throws Exception {
        SvgReader read = new SvgReader(SvgWriter.write(Drawings.of(part)));
        // 2e-6 mm: contract; two pieces of 120 degrees with six decimals come to half of it.
        compare(part, read.figures, 2e-6, Math.toRadians(120));
        String[] view = read.root().getAttribute("viewBox").split(" ");
        Box box = part.box();
        assertThat(Double.parseDouble(view[0])).isEqualTo(box.minX() - 1, within(1e-6));
        assertThat(Double.parseDouble(view[1])).isEqualTo(-box.maxY() - 1, within(1e-6));
        assertThat(Double.parseDouble(view[2])).isEqualTo(box.width() + 2, within(2e-6));
        assertThat(Double.parseDouble(view[3])).isEqualTo(box.height() + 2, within(2e-6));
        assertThat(read.root().getAttribute("width")).isEqualTo(view[2] + "mm");
        assertThat(read.root().getAttribute("height")).isEqualTo(view[3] + "mm");
        assertThat(new String(SvgWriter.write(Drawings.of(part)))).doesNotContain("transform", "style=");
    }

    @ParameterizedTest
    @MethodSource("parts")
    void dxfIsThePart(Part part) {
        for (DxfVersion version : DxfVersion.values()) {
            DxfReader read = new DxfReader(DxfWriter.write(Drawings.of(part), version));
            // Coordinates of 9 decimals move a point by 0.7e-9 mm at most; a bulge of 13 adds less.
            compare(part, read.figures, 1e-8, Math.PI + 1e-9);
            assertThat(read.variable("$INSUNITS", 70)).isEqualTo(4);
            assertThat(read.variable("$MEASUREMENT", 70)).isEqualTo(1);
            Box box = part.box();
            assertThat(read.variable("$EXTMIN", 10)).isEqualTo(box.minX(), within(1e-9));
            assertThat(read.variable("$EXTMIN", 20)).isEqualTo(box.minY(), within(1e-9));
            assertThat(read.variable("$EXTMAX", 10)).isEqualTo(box.maxX(), within(1e-9));
            assertThat(read.variable("$EXTMAX", 20)).isEqualTo(box.maxY(), within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void bothFormatsShowTheSame(Part part) throws Exception {
        Drawing drawing = Drawings.of(part);
        List<ReadFigure> svg = new SvgReader(SvgWriter.write(drawing)).figures;
        List<ReadFigure> dxf = new DxfReader(DxfWriter.write(drawing, DxfVersion.AC1015)).figures;
        assertThat(svg).hasSameSizeAs(dxf);
        for (int i = 0; i < svg.size(); i++) {
            assertThat(svg.get(i).layer()).isEqualTo(dxf.get(i).layer());
            assertThat(svg.get(i).closed()).isEqualTo(dxf.get(i).closed());
            assertThat(svg.get(i).circle()).isEqualTo(dxf.get(i).circle());
            double length = dxf.get(i).length();
            assertThat(svg.get(i).length()).isEqualTo(length, within(1e-5 + 1e-6 * length));
        }
    }

    private static void compare(Part part, List<ReadFigure> figures, double deviation, double widest) {
        int levels = part.layers().size();
        List<String> layers = new ArrayList<>();
        for (int i = 0; i < levels; i++) {
            String layer = levels == 1 ? "cut" : "level-" + (i + 1);
            layers.add(layer);
            List<Contour> contours = part.layers().get(i).regions().stream()
                    .flatMap(r -> r.contours().stream())
                    .toList();
            List<ReadFigure> read =
                    figures.stream().filter(f -> f.layer().equals(layer)).toList();
            assertThat(read).as("drawn once each").hasSameSizeAs(contours);
            for (int j = 0; j < read.size(); j++) {
                compare(contours.get(j), read.get(j), deviation, widest);
            }
        }
        for (ReadFigure figure : figures) {
            assertThat(layers.contains(figure.layer())
                            || List.of("mark", "guide").contains(figure.layer()))
                    .as(figure.layer())
                    .isTrue();
        }
    }

    private static void compare(Contour contour, ReadFigure read, double deviation, double widest) {
        assertThat(read.closed()).isTrue();
        assertThat(read.circle()).isEqualTo(contour.isCircle());
        double length = contour.length();
        assertThat(read.length())
                .isEqualTo(length, within(deviation * (10 + read.pieces().size())));
        if (!read.circle()) {
            double slack = 2 * deviation * length;
            assertThat(read.area()).as("sense of travel, too").isEqualTo(contour.area(), within(slack));
        }
        List<ReadPiece> exact = exact(contour);
        ReadPiece before = read.pieces().get(read.pieces().size() - 1);
        for (ReadPiece piece : read.pieces()) {
            assertThat(piece.length()).as("no piece without length").isGreaterThan(0);
            assertThat(piece.x0()).as("joins exactly").isEqualTo(before.x1());
            assertThat(piece.y0()).as("joins exactly").isEqualTo(before.y1());
            assertThat(read.circle() || Math.abs(piece.sweep()) <= widest + 1e-6)
                    .isTrue();
            for (int k = 0; k <= 8; k++) {
                double[] at = piece.at(k / 8.0);
                double off = exact.stream()
                        .mapToDouble(e -> e.distance(at[0], at[1]))
                        .min()
                        .orElseThrow();
                assertThat(off).as("deviation").isLessThan(deviation);
            }
            before = piece;
        }
        for (Segment segment : contour.segments()) {
            for (int k = 0; k <= 8; k++) {
                Point at = segment.pointAt(k / 8.0);
                assertThat(read.distance(at.x(), at.y())).isLessThan(deviation);
            }
        }
        long arcs = contour.segments().stream().filter(s -> s instanceof Arc).count();
        long lines = contour.segments().size() - arcs;
        long readArcs = read.pieces().stream().filter(ReadPiece::isArc).count();
        assertThat(readArcs).as("arcs are still arcs").isGreaterThanOrEqualTo(arcs);
        assertThat(read.pieces().size() - readArcs).as("lines").isEqualTo(lines);
        assertThat(new java.util.HashSet<>(read.pieces())).as("nothing twice").hasSameSizeAs(read.pieces());
    }

    private static List<ReadPiece> exact(Contour contour) {
        List<ReadPiece> pieces = new ArrayList<>();
        for (Segment s : contour.segments()) {
            Point a = s.start();
            Point b = s.end();
            if (s instanceof Arc arc) {
                Point c = arc.centre();
                pieces.add(new ReadPiece(a.x(), a.y(), b.x(), b.y(), c.x(), c.y(), arc.radius(), arc.sweep()));
            } else {
                pieces.add(ReadPiece.line(a.x(), a.y(), b.x(), b.y()));
            }
        }
        return pieces;
    }
}
