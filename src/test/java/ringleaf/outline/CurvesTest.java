// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.curve.Distances;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Curves and blocks of drawings, against the curves' own equations evaluated by other means. */
class CurvesTest {
    private static final OutlineFile.Asked ASKED = new OutlineFile.Asked(
            SpecSource.of("spec", "").whole().named("units"),
            SpecSource.of("spec", "").whole().named("layers"));

    private static Region read(String text) {
        Problems problems = new Problems();
        OutlineFile.Reading reading = new OutlineFile.Reading(Optional.of(LengthUnit.of("mm")), List.of(), 0, 0, 0);
        List<Region> regions = OutlineFile.regions(SpecSource.of("bezel", text), reading, ASKED, problems);
        assertThat(problems.isEmpty()).as(problems.text()).isTrue();
        assertThat(regions).hasSize(1);
        return regions.get(0);
    }

    private static String svg(String shapes) {
        return "<svg xmlns='http://www.w3.org/2000/svg'>" + shapes + "</svg>";
    }

    private static String dxf(String blocks, String entities) {
        return "0\nSECTION\n2\nBLOCKS\n" + blocks + "0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + entities
                + "0\nENDSEC\n0\nEOF\n";
    }

    private static double off(Contour contour, Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : contour.segments()) {
            least = Math.min(least, Distances.distance(segment, p));
        }
        return least;
    }

    private static String shown(double... values) {
        StringBuilder text = new StringBuilder();
        for (double value : values) {
            text.append(String.format(Locale.ROOT, "%.9f ", value));
        }
        return text.toString();
    }

    /** Bernstein's polynomials; y runs down in the drawing. */
    @Test
    void bezierCurvesAreFollowed() {
        Random random = new Random(20261201);
        for (int n = 0; n < 40; n++) {
            double[] x = new double[4];
            double[] y = new double[4];
            for (int i = 0; i < 4; i++) {
                x[i] = 20 * i + 12 * random.nextDouble();
                y[i] = 30 * random.nextDouble();
            }
            boolean cubic = random.nextBoolean();
            String curve =
                    cubic ? "C" + shown(x[1], y[1], x[2], y[2], x[3], y[3]) : "Q" + shown(x[1], y[1], x[3], y[3]);
            String path = "M" + shown(x[0], y[0]) + curve + "L" + shown(x[3], 90, x[0], 90) + "Z";
            boolean turned = random.nextBoolean();
            String g = turned ? "<g transform='scale(3)'>" : "<g>";
            Contour outer = read(svg(g + "<path d='" + path + "'/></g>")).outer();
            double grown = turned ? 3 : 1;
            for (int i = 0; i <= 500; i++) {
                double t = i / 500.0;
                double u = 1 - t;
                double[] b = cubic
                        ? new double[] {u * u * u, 3 * t * u * u, 3 * t * t * u, t * t * t}
                        : new double[] {u * u, 2 * t * u, 0, t * t};
                Point p = new Point(
                        b[0] * x[0] + b[1] * x[1] + b[2] * x[2] + b[3] * x[3],
                        -(b[0] * y[0] + b[1] * y[1] + b[2] * y[2] + b[3] * y[3]));
                assertThat(off(outer, p.times(grown))).as("%s at %s", path, t).isLessThan(Curves.WITHIN);
            }
        }
    }

    /** Four curves with the usual 0.5523 make a circle within 2.7e-4 of its radius (from memory). */
    @Test
    void holesDrawnAsBezierCurvesAreCircles() {
        double k = 0.5522847498 * 1.1;
        String hole = "M1.1 0 C1.1 " + k + " " + k + " 1.1 0 1.1 S-1.1 " + k + " -1.1 0 S" + -k + " -1.1 0 -1.1 S1.1 "
                + -k + " 1.1 0 Z";
        Region region = read(svg("<rect x='-9' y='-9' width='18' height='18'/><path d='" + hole + "'/>"));
        assertThat(region.holes()).hasSize(1);
        assertThat(region.holes().get(0).isCircle()).isTrue();
        assertThat(((Arc) region.holes().get(0).segments().get(0)).radius()).isCloseTo(1.1, within(1e-3));
    }

    @Test
    void ellipsesAreFollowed() {
        double turn = Math.toRadians(30);
        Point far = Point.polar(30, -turn);
        String path = "M" + shown(far.x(), far.y()) + "A30 20 -30 1 1 " + shown(-far.x(), -far.y()) + "A30 20 -30 1 1 "
                + shown(far.x(), far.y()) + "Z";
        String major = shown(30 * Math.cos(turn), 30 * Math.sin(turn)).trim().replace(" ", "\n21\n");
        String ellipse = "0\nELLIPSE\n8\n0\n10\n0\n20\n0\n11\n" + major + "\n40\n"
                + shown(2.0 / 3).trim() + "\n41\n0\n42\n6.283185307179586\n";
        for (String text : List.of(
                svg("<ellipse rx='30' ry='20' transform='rotate(-30)'/>"),
                svg("<path d='" + path + "'/>"),
                dxf("", ellipse))) {
            Contour outer = read(text).outer();
            assertThat(Math.abs(outer.area())).isCloseTo(Math.PI * 600, within(0.005 * 160));
            for (int i = 0; i < 720; i++) {
                Point p = new Point(30 * Math.cos(i / 114.59), 20 * Math.sin(i / 114.59));
                Point turned = Point.polar(1, turn)
                        .times(p.x())
                        .plus(Point.polar(1, turn).left().times(p.y()));
                assertThat(off(outer, turned)).as("%s %s", text, i).isLessThan(Curves.WITHIN);
            }
        }
    }

    /** Basis functions by Cox's recursion. */
    private static double basis(double[] knots, int i, int degree, double t) {
        if (degree == 0) {
            return t >= knots[i] && t < knots[i + 1] ? 1 : 0;
        }
        double a = knots[i + degree] - knots[i];
        double b = knots[i + degree + 1] - knots[i + 1];
        return (a > 0 ? (t - knots[i]) / a * basis(knots, i, degree - 1, t) : 0)
                + (b > 0 ? (knots[i + degree + 1] - t) / b * basis(knots, i + 1, degree - 1, t) : 0);
    }

    private static String spline(int degree, double[] knots, double[] x, double[] y, double[] weights) {
        StringBuilder text = new StringBuilder("0\nSPLINE\n8\n0\n70\n0\n71\n" + degree + "\n");
        for (double knot : knots) {
            text.append("40\n").append(shown(knot)).append('\n');
        }
        for (int i = 0; i < x.length; i++) {
            text.append("41\n" + shown(weights[i]) + "\n10\n" + shown(x[i]) + "\n20\n" + shown(y[i]) + "\n");
        }
        return text.toString();
    }

    @Test
    void splinesAreFollowed() {
        Random random = new Random(16);
        for (int n = 0; n < 20; n++) {
            double[] knots = {0, 0, 0, 0, 1, 1.5, 3, 3, 3, 4, 4, 4, 4};
            double[] x = new double[9];
            double[] y = new double[9];
            double[] w = new double[9];
            for (int i = 0; i < 9; i++) {
                x[i] = 12 * i + 5 * random.nextDouble();
                y[i] = 20 * random.nextDouble();
                w[i] = 0.6 + random.nextDouble();
            }
            String rest = "0\nLWPOLYLINE\n8\n0\n70\n0\n10\n" + shown(x[0]) + "\n20\n" + shown(y[0]) + "\n10\n"
                    + shown(x[0]) + "\n20\n-30\n10\n" + shown(x[8]) + "\n20\n-30\n10\n" + shown(x[8]) + "\n20\n"
                    + shown(y[8]) + "\n";
            Contour outer = read(dxf("", spline(3, knots, x, y, w) + rest)).outer();
            for (int s = 0; s < 400; s++) {
                double t = 4 * s / 400.0;
                double px = 0;
                double py = 0;
                double pw = 0;
                for (int i = 0; i < 9; i++) {
                    double b = basis(knots, i, 3, t) * w[i];
                    px += b * x[i];
                    py += b * y[i];
                    pw += b;
                }
                assertThat(off(outer, new Point(px / pw, py / pw)))
                        .as("%d at %s", n, t)
                        .isLessThan(Curves.WITHIN);
            }
        }
    }

    /** A circle of nine control points of second degree, corners weighted by cos 45 (from memory). */
    @Test
    void aCircleAsASplineIsACircle() {
        double h = Math.sqrt(0.5);
        double[] knots = {0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4};
        double[] x = {5, 5, 0, -5, -5, -5, 0, 5, 5};
        double[] y = {0, 5, 5, 5, 0, -5, -5, -5, 0};
        double[] w = {1, h, 1, h, 1, h, 1, h, 1};
        Contour outer = read(dxf("", spline(2, knots, x, y, w))).outer();
        assertThat(outer.isCircle()).isTrue();
        assertThat(((Arc) outer.segments().get(0)).radius()).isCloseTo(5, within(1e-6));
    }

    /** A hole in a block that is turned, twice as large, in another block that is shifted. */
    @Test
    void blocksAreInserted() {
        String inner = "0\nBLOCK\n2\nhole\n70\n0\n10\n1\n20\n0\n0\nCIRCLE\n8\n0\n10\n4\n20\n0\n40\n0.5\n0\nENDBLK\n";
        String outer =
                "0\nBLOCK\n2\npair\n70\n0\n10\n0\n20\n0\n0\nINSERT\n8\n0\n2\nhole\n10\n0\n20\n0\n41\n2\n42\n2\n50\n90\n"
                        + "0\nINSERT\n8\n0\n2\nhole\n10\n0\n20\n0\n0\nENDBLK\n";
        String plate = "0\nCIRCLE\n8\n0\n10\n0\n20\n0\n40\n20\n0\nINSERT\n8\n0\n2\npair\n10\n5\n20\n1\n";
        Region region = read(dxf(inner + outer, plate));
        List<String> holes = new ArrayList<>();
        for (Contour hole : region.holes()) {
            Arc arc = (Arc) hole.segments().get(0);
            holes.add(String.format(
                    Locale.ROOT,
                    "%.3f %.3f %.3f",
                    arc.centre().x(),
                    arc.centre().y(),
                    arc.radius()));
        }
        assertThat(holes).containsExactlyInAnyOrder("5.000 7.000 1.000", "8.000 1.000 0.500");
    }

    @Test
    void blocksThatHoldThemselvesOrAreNotThereAreRefused() {
        String itself =
                "0\nBLOCK\n2\na\n10\n0\n20\n0\n0\nINSERT\n8\n0\n2\na\n10\n1\n20\n0\n0\nINSERT\n8\n0\n2\na\n10\n2\n20\n0\n"
                        + "0\nENDBLK\n";
        for (String[] each : new String[][] {{itself, "a", "too deep"}, {"", "b", "which the drawing does not hold"}}) {
            Problems problems = new Problems();
            OutlineFile.Reading reading = new OutlineFile.Reading(Optional.of(LengthUnit.of("mm")), List.of(), 0, 0, 0);
            String text = dxf(each[0], "0\nINSERT\n8\n0\n2\n" + each[1] + "\n10\n0\n20\n0\n");
            OutlineFile.regions(SpecSource.of("bezel", text), reading, ASKED, problems);
            assertThat(problems.text()).contains(each[2]);
        }
    }
}
