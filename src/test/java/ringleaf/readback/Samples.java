// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Mirror;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** Made-up parts of the shapes that mechanisms have. */
final class Samples {
    private Samples() {}

    /** A band along a circle with round ends: the shape of a blade. */
    static Contour band(double middle, double width, double from, double span) {
        Point first = Point.polar(middle, from);
        Point last = Point.polar(middle, from + span);
        Arc outer = Arc.of(Point.ORIGIN, middle + width / 2, from, span);
        Arc end = Arc.of(last, width / 2, from + span, Math.PI);
        Arc inner = Arc.of(Point.ORIGIN, middle - width / 2, from + span, -span);
        Arc start = Arc.of(first, width / 2, from + Math.PI, Math.PI);
        return joined(List.of(outer, end, inner, start));
    }

    /** The pieces with each start moved onto the end before it. */
    static Contour joined(List<Segment> pieces) {
        List<Segment> joined = new ArrayList<>();
        Point at = pieces.get(0).start();
        for (int i = 0; i < pieces.size(); i++) {
            Point end = i == pieces.size() - 1
                    ? pieces.get(0).start()
                    : pieces.get(i).end();
            joined.add(pieces.get(i).withEnds(at, end));
            at = end;
        }
        return new Contour(joined);
    }

    /** A straight slot with round ends between two points. */
    static Contour slot(Point a, Point b, double width) {
        Point side = b.minus(a).unit().left().times(width / 2);
        double along = b.minus(a).angle();
        return joined(List.of(
                new Line(a.minus(side), b.minus(side)),
                Arc.of(b, width / 2, along - Math.PI / 2, Math.PI),
                new Line(b.plus(side), a.plus(side)),
                Arc.of(a, width / 2, along + Math.PI / 2, Math.PI)));
    }

    static Part part(String name, Region region, Path... marks) {
        return new Part(
                name,
                Family.PLATE,
                1,
                new Part.Source("co2-laser", "acrylic-3"),
                List.of(Layer.of(region, 0, 3)),
                List.of(marks),
                "");
    }

    /** A ring with slots, bores, a toothed stretch of short arcs and lines, and a mark. */
    static Part ring() {
        List<Segment> rim = new ArrayList<>();
        double pitch = Math.toRadians(5);
        for (int i = 0; i < 18; i++) {
            double a = i * pitch;
            Point foot = Point.polar(44, a);
            Point tip = Point.polar(46, a + pitch * 0.3);
            Point tipEnd = Point.polar(46, a + pitch * 0.5);
            Point footEnd = Point.polar(44, a + pitch * 0.8);
            rim.add(Arc.ofBulge(foot, tip, 0.08));
            rim.add(Arc.around(Point.ORIGIN, tip, tipEnd, true));
            rim.add(Arc.ofBulge(tipEnd, footEnd, 0.08));
            rim.add(Arc.around(Point.ORIGIN, footEnd, Point.polar(44, a + pitch), true));
        }
        rim.add(new Line(Point.polar(44, 18 * pitch), Point.polar(46, 18 * pitch)));
        rim.add(Arc.around(Point.ORIGIN, Point.polar(46, 18 * pitch), Point.polar(46, 0), true));
        rim.add(new Line(Point.polar(46, 0), Point.polar(44, 0)));
        List<Contour> holes = new ArrayList<>();
        holes.add(Contour.circle(Point.ORIGIN, 30));
        for (int i = 0; i < 8; i++) {
            double a = Math.PI / 4 * i + 0.1;
            holes.add(slot(Point.polar(33, a), Point.polar(40.5, a), 1.7));
        }
        Point corner = new Point(-41, 5);
        Path mark = Path.of(new Line(new Point(-41, 3), corner), new Line(corner, new Point(-39, 5)));
        return part("drive-ring", new Region(joined(rim), holes), mark);
    }

    static Part blade() {
        Region leaf = Region.of(
                band(37.4, 10.5, 0, Math.toRadians(145)), Contour.circle(Point.polar(37.4, Math.toRadians(145)), 0.78));
        Region pin = Region.disc(Point.polar(37.4, 0), 0.75);
        return new Part(
                "blade",
                Family.BLADE,
                14,
                new Part.Source("filament-printer", "pla"),
                List.of(Layer.of(leaf, 3, 3.6), Layer.of(pin, 3.6, 6.2)),
                List.of(),
                "");
    }

    static Part plate() {
        List<Contour> bores = new ArrayList<>();
        bores.add(Contour.circle(Point.ORIGIN, 32));
        for (int i = 0; i < 14; i++) {
            bores.add(Contour.circle(Point.polar(37.4, i * Math.PI / 7), 0.8));
        }
        return part("base-plate", Region.of(Contour.circle(Point.ORIGIN, 55)).withHoles(bores));
    }

    /** Corners, a notch of 270 degrees and pieces of a thousandth of a millimetre. */
    static Part notched() {
        Point notch = new Point(10, 0);
        Contour outer = joined(List.of(
                new Line(new Point(0, 0), new Point(8, 0)),
                Arc.around(notch, new Point(8, 0), new Point(12, 0), false),
                new Line(new Point(12, 0), new Point(20, 0)),
                new Line(new Point(20, 0), new Point(20, 10)),
                new Line(new Point(20, 10), new Point(19.999, 10.0005)),
                new Line(new Point(19.999, 10.0005), new Point(0, 10)),
                Arc.ofBulge(new Point(0, 10), new Point(0, 9), 2.414213562373095),
                new Line(new Point(0, 9), new Point(0, 0))));
        return part("catch", Region.of(outer));
    }

    /** Every sample, and each turned, shifted far off and mirrored by a seeded throw. */
    static List<Part> all(long seed) {
        Random random = new Random(seed);
        List<Part> plain = List.of(
                ring(),
                blade(),
                plate(),
                notched(),
                part("square", Region.of(Contour.rectangle(new Box(-1.0 / 3, 0, 2.0 / 3, 1.0 / 7)))));
        List<Part> all = new ArrayList<>(plain);
        for (Part part : plain) {
            Placement placement = new Placement(
                    random.nextDouble() * 7, new Point(random.nextDouble() * 900 - 450, random.nextDouble() * 900));
            List<Layer> moved =
                    part.layers().stream().map(l -> placed(l, placement)).toList();
            Part copy = new Part(
                    part.name() + "-moved",
                    part.family(),
                    part.quantity(),
                    part.source(),
                    moved,
                    part.marks().stream().map(m -> m.placed(placement)).toList(),
                    part.note());
            all.add(copy);
            all.add(copy.mirrored(new Mirror(random.nextDouble(), Point.ORIGIN)));
        }
        return all;
    }

    private static Layer placed(Layer layer, Placement placement) {
        return new Layer(
                layer.regions().stream().map(r -> r.placed(placement)).toList(),
                layer.zFrom(),
                layer.zTo(),
                layer.marks().stream().map(m -> m.placed(placement)).toList());
    }
}
