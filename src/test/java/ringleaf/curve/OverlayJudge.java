// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** The second opinion: the same operations on fine chords by JTS, and rules that every result must keep. */
final class OverlayJudge {
    static final Tolerance FINE = new Tolerance(1e-4);

    private OverlayJudge() {}

    static double area(List<Region> regions) {
        double sum = 0;
        for (Region region : regions) {
            sum += region.area();
        }
        return sum;
    }

    static double length(List<Region> regions) {
        double sum = 0;
        for (Region region : regions) {
            sum += region.perimeter();
        }
        return sum;
    }

    static Geometry flat(List<Region> regions) {
        Geometry all = new GeometryFactory().createPolygon();
        for (Region region : regions) {
            // chords of outlines that touch in a point may cross there, which the fixer puts right
            Geometry one = GeometryFixer.fix(JtsShapes.polygon(region, FINE));
            all = judged(all, one, OverlayNG.UNION);
        }
        return all;
    }

    /** The judge's answer without the stray lines and points in which chords may touch. */
    static Geometry judged(Geometry a, Geometry b, int operation) {
        Geometry all = OverlayNGRobust.overlay(a, b, operation);
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < all.getNumGeometries(); i++) {
            if (all.getGeometryN(i) instanceof Polygon polygon) {
                polygons.add(polygon);
            }
        }
        return new GeometryFactory().createMultiPolygon(polygons.toArray(new Polygon[0]));
    }

    static void checkAll(String as, List<Region> a, List<Region> b) {
        Geometry flatA = flat(a);
        Geometry flatB = flat(b);
        double slack = FINE.length() * (length(a) + length(b)) + 1e-9;
        List<Region> both = new ArrayList<>(a);
        both.addAll(b);
        check(as + " union", Overlay.union(both), judged(flatA, flatB, OverlayNG.UNION), both, slack);
        check(as + " difference", Overlay.difference(a, b), judged(flatA, flatB, OverlayNG.DIFFERENCE), both, slack);
        check(
                as + " intersection",
                Overlay.intersection(a, b),
                judged(flatA, flatB, OverlayNG.INTERSECTION),
                both,
                slack);
    }

    static void check(String as, List<Region> made, Geometry judged, List<Region> sources, double slack) {
        assertThat(area(made)).as(as).isCloseTo(judged.getArea(), within(slack));
        Geometry flat = flat(made);
        double off = judged(flat, judged, OverlayNG.SYMDIFFERENCE).getArea();
        assertThat(off).as(as + ": area that differs").isLessThanOrEqualTo(2 * slack);
        List<Segment> carriers = new ArrayList<>();
        for (Region source : sources) {
            for (Contour contour : source.contours()) {
                carriers.addAll(contour.segments());
            }
        }
        for (Region region : made) {
            assertThat(region.outer().area()).as(as).isPositive();
            for (Contour contour : region.contours()) {
                checkPieces(as, contour, carriers);
            }
        }
    }

    private static void checkPieces(String as, Contour contour, List<Segment> carriers) {
        for (Segment piece : contour.segments()) {
            assertThat(piece.length()).as(as + ": no stub").isGreaterThan(1e-10);
            boolean known = false;
            for (Segment carrier : carriers) {
                known |= Intersections.sameCarrier(carrier, piece, 1e-9);
            }
            assertThat(known).as(as + ": on a source's carrier " + piece).isTrue();
            if (piece instanceof Arc arc) {
                assertThat(arc.start().distance(arc.centre())).as(as).isCloseTo(arc.radius(), within(1e-9));
                assertThat(arc.end().distance(arc.centre())).as(as).isCloseTo(arc.radius(), within(1e-9));
                assertThat(arc.pointAt(0.999999999).distance(arc.end())).as(as).isLessThan(1e-6);
            }
        }
    }
}
