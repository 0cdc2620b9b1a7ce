// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Area, length, box and centre of outlines with arcs, against closed forms and against fine chords in JTS. */
class OutlineMeasuresTest {
    private static final int CHORDS = 4000;

    /** A star-like closed outline of lines and arcs of either sense. */
    private static Contour blob(Random random) {
        int n = 3 + random.nextInt(6);
        List<Point> corners = new ArrayList<>();
        Point centre = new Point(20 * random.nextDouble() - 10, 20 * random.nextDouble() - 10);
        for (int i = 0; i < n; i++) {
            corners.add(centre.plus(Point.polar(4 + 3 * random.nextDouble(), i * Angles.TURN / n)));
        }
        List<Segment> pieces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % n);
            boolean line = random.nextInt(3) == 0;
            pieces.add(line ? new Line(a, b) : Arc.ofBulge(a, b, 0.9 * random.nextDouble() - 0.3));
        }
        return new Contour(pieces);
    }

    private static Polygon chords(Contour contour) {
        List<Coordinate> points = new ArrayList<>();
        for (Segment segment : contour.segments()) {
            int n = segment instanceof Line ? 1 : CHORDS;
            for (int i = 0; i < n; i++) {
                Point p = segment.pointAt((double) i / n);
                points.add(new Coordinate(p.x(), p.y()));
            }
        }
        points.add(points.get(0).copy());
        return new GeometryFactory().createPolygon(points.toArray(new Coordinate[0]));
    }

    @Test
    void outlinesAgreeWithFineChords() {
        for (long seed = 1; seed <= 40; seed++) {
            Contour contour = blob(new Random(seed));
            Polygon flat = chords(contour);
            String as = "seed " + seed;
            assertThat(contour.area()).as(as).isCloseTo(flat.getArea(), within(1e-5));
            assertThat(contour.length()).as(as).isCloseTo(flat.getLength(), within(1e-5));
            assertThat(contour.centroid().x())
                    .as(as)
                    .isCloseTo(flat.getCentroid().getX(), within(1e-5));
            assertThat(contour.centroid().y())
                    .as(as)
                    .isCloseTo(flat.getCentroid().getY(), within(1e-5));
            Envelope box = flat.getEnvelopeInternal();
            assertThat(contour.box().minX()).as(as).isCloseTo(box.getMinX(), within(1e-5));
            assertThat(contour.box().maxX()).as(as).isCloseTo(box.getMaxX(), within(1e-5));
            assertThat(contour.box().minY()).as(as).isCloseTo(box.getMinY(), within(1e-5));
            assertThat(contour.box().maxY()).as(as).isCloseTo(box.getMaxY(), within(1e-5));
            assertThat(contour.reversed().area()).as(as).isCloseTo(-contour.area(), within(1e-11));
        }
    }

    @Test
    void closedFormsOfHalfDiscAndRing() {
        Point centre = new Point(3, -2);
        Contour half = Contour.of(
                Arc.of(centre, 5, 0, Math.PI),
                new Line(
                        Arc.of(centre, 5, 0, Math.PI).end(),
                        Arc.of(centre, 5, 0, Math.PI).start()));
        assertThat(half.area()).isCloseTo(12.5 * Math.PI, within(1e-12));
        // the centre of a half disc lies 4 r / (3 pi) from its straight side
        assertThat(half.centroid().x()).isCloseTo(3, within(1e-12));
        assertThat(half.centroid().y()).isCloseTo(-2 + 20 / (3 * Math.PI), within(1e-12));
        Region ring = Region.ring(centre, 3, 5);
        assertThat(ring.area()).isCloseTo(16 * Math.PI, within(1e-12));
        assertThat(ring.perimeter()).isCloseTo(16 * Math.PI, within(1e-12));
        assertThat(ring.centroid().distance(centre)).isLessThan(1e-12);
        assertThat(ring.box()).isEqualTo(new Box(-2, -7, 8, 3));
    }

    @Test
    void flatArcsOfHugeRadiusLoseNothing() {
        // a lens of two flat arcs: area about 2 (2/3) chord sagitta, sagitta = bulge chord / 2
        for (double bulge : new double[] {1e-3, 1e-6, 1e-9}) {
            Point a = new Point(30, 40);
            Point b = new Point(36, 48);
            Contour lens = Contour.of(Arc.ofBulge(a, b, bulge), Arc.ofBulge(b, a, bulge));
            double off = 20 * bulge * bulge * bulge + 1e-12;
            assertThat(lens.area()).isCloseTo(2 * 2.0 / 3 * 10 * bulge * 5, within(off));
            Contour plate =
                    Contour.of(Arc.ofBulge(a, b, bulge), new Line(b, new Point(0, 60)), new Line(new Point(0, 60), a));
            Contour flat = Contour.polygon(List.of(a, b, new Point(0, 60)));
            assertThat(plate.area()).isCloseTo(flat.area() + 2.0 / 3 * 10 * bulge * 5, within(off));
            assertThat(plate.centroid().distance(flat.centroid())).isLessThan(10 * bulge + 1e-12);
        }
    }

    @Test
    void placingAndMirroringKeepMeasures() {
        for (long seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            Contour contour = blob(random);
            Placement placement =
                    new Placement(7 * random.nextDouble(), new Point(9 * random.nextDouble(), random.nextDouble()));
            Contour placed = contour.placed(placement);
            assertThat(placed.area()).isCloseTo(contour.area(), within(1e-10));
            assertThat(placed.length()).isCloseTo(contour.length(), within(1e-11));
            assertThat(placed.centroid().distance(placement.apply(contour.centroid())))
                    .isLessThan(1e-11);
            Mirror mirror = new Mirror(3 * random.nextDouble(), new Point(1, 2));
            Contour mirrored = contour.mirrored(mirror);
            assertThat(mirrored.area()).isCloseTo(-contour.area(), within(1e-10));
            assertThat(mirrored.centroid().distance(mirror.apply(contour.centroid())))
                    .isLessThan(1e-11);
            checkPieces(placed);
            checkPieces(mirrored);
            checkPieces(contour.reversed());
            checkPieces(contour.mirrored(mirror).mirrored(new Mirror(mirror.axisAngle(), Point.ORIGIN)));
        }
    }

    @Test
    void placementsComposeAndInvert() {
        Placement a = new Placement(0.7, new Point(3, -4));
        Placement b = new Placement(-2.1, new Point(0.5, 9));
        Point p = new Point(11, 13);
        assertThat(a.then(b).apply(p).distance(b.apply(a.apply(p)))).isLessThan(1e-13);
        assertThat(a.inverse().apply(a.apply(p)).distance(p)).isLessThan(1e-13);
        Point pivot = new Point(2, 5);
        assertThat(Placement.turnAbout(pivot, 1.1).apply(pivot).distance(pivot)).isLessThan(1e-14);
        assertThat(Mirror.FLIP_Y.apply(p)).isEqualTo(new Point(11, -13));
    }

    /** An arc's ends, angles and tangents still belong together. */
    private static void checkPieces(Contour contour) {
        for (Segment segment : contour.segments()) {
            if (segment instanceof Arc arc) {
                Point start = arc.centre().plus(Point.polar(arc.radius(), arc.startAngle()));
                Point end = arc.centre().plus(Point.polar(arc.radius(), arc.startAngle() + arc.sweep()));
                assertThat(arc.start().distance(start)).isLessThan(1e-11);
                assertThat(arc.end().distance(end)).isLessThan(1e-11);
                Point ahead =
                        arc.pointAt(0.5 + 1e-6).minus(arc.pointAt(0.5 - 1e-6)).unit();
                assertThat(ahead.distance(arc.tangentAt(0.5))).isLessThan(1e-6);
            }
        }
    }
}
