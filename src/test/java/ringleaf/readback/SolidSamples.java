// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** Parts of several levels: pins, blind bores, steps that share arcs in part, thrown stacks. */
final class SolidSamples {
    private SolidSamples() {}

    static Part stack(String name, List<Layer> layers) {
        return new Part(name, Family.PLATE, 2, new Part.Source("filament-print", "pla"), layers, List.of(), "");
    }

    /** A plate with blind bores, a pin that stands on a blade, a ring whose two levels share some arcs, a spool. */
    static List<Part> all() {
        List<Contour> bores = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            bores.add(Contour.circle(Point.polar(37.4, i * Math.PI / 7), 0.8));
        }
        Region plate = Region.ring(Point.ORIGIN, 32, 55);
        Part blind = stack("blind", List.of(Layer.of(plate, 0, 1.2), Layer.of(plate.withHoles(bores), 1.2, 4)));
        Region leaf = Region.of(Samples.band(37.4, 10.5, 0, Math.toRadians(145)));
        Region pin = Region.disc(Point.polar(37.4, 0), 0.75);
        Part pinned = stack("pinned", List.of(Layer.of(pin, 0.4, 3), Layer.of(leaf, 3, 3.6)));
        Contour cavity = Contour.circle(Point.ORIGIN, 40);
        Region pocket = Region.disc(new Point(48, 0), 12);
        Region housing = Region.of(Contour.circle(Point.ORIGIN, 66));
        List<Region> low = Overlay.difference(List.of(housing), List.of(Region.of(cavity), pocket));
        List<Region> high = Overlay.difference(
                List.of(housing), List.of(Region.disc(Point.ORIGIN, 44), Region.disc(new Point(48, 0), 12)));
        Part spacer = stack("spacer", List.of(new Layer(low, 3, 5), new Layer(high, 5, 7.15)));
        Part spool = stack(
                "spool",
                List.of(
                        Layer.of(Region.ring(Point.ORIGIN, 1.5, 10), 0, 1),
                        Layer.of(Region.ring(Point.ORIGIN, 1.5, 7), 1, 8),
                        Layer.of(Region.ring(Point.ORIGIN, 1.5, 10), 8, 9),
                        Layer.of(Region.ring(Point.ORIGIN, 2.5, 4), 9, 14)));
        return List.of(blind, pinned, spacer, spool);
    }

    /** Levels of discs and rectangles from a small store, so that they often share edges. */
    static Part thrown(long seed) {
        Random random = new Random(seed);
        List<Layer> layers = new ArrayList<>();
        double z = random.nextInt(3);
        int levels = 1 + random.nextInt(4);
        for (int i = 0; i < levels; i++) {
            // every level holds the middle, so that all is one body
            List<Region> regions = new ArrayList<>(List.of(Region.disc(Point.ORIGIN, 6)));
            for (int k = random.nextInt(4); k > 0; k--) {
                regions.add(piece(random));
            }
            List<Region> holes = new ArrayList<>();
            for (int k = random.nextInt(3); k > 0; k--) {
                holes.add(Region.disc(Point.polar(3, random.nextInt(6)), 0.4 + 0.6 * random.nextInt(2)));
            }
            double to = z + 0.5 + random.nextInt(3);
            layers.add(new Layer(Overlay.difference(regions, holes), z, to));
            z = to;
        }
        return stack("thrown-" + seed, layers);
    }

    private static Region piece(Random random) {
        double at = random.nextInt(8) * Math.PI / 4;
        if (random.nextBoolean()) {
            return Region.disc(Point.polar(5, at), 2 + random.nextInt(3));
        }
        Point p = Point.polar(4, at);
        return Region.of(
                Shapes.roundedRectangle(new Box(p.x() - 4, p.y() - 2, p.x() + 4, p.y() + 2), random.nextInt(2)));
    }

    /** Area of all levels times their heights, mm³. */
    static double volume(Part part) {
        double volume = 0;
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                volume += region.area() * layer.height();
            }
        }
        return volume;
    }

    /** By how much corners in single precision can change the volume, mm³. */
    static double rounding(Part part) {
        double rounding = 0;
        Box box = part.box();
        double reach = Math.max(Math.max(Math.abs(box.minX()), box.maxX()), Math.max(Math.abs(box.minY()), box.maxY()));
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                rounding += region.perimeter() * layer.height() * Math.ulp((float) reach);
            }
        }
        return rounding;
    }

    /** By how much chords within this tolerance can change the volume: tolerance times length times height of arcs. */
    static double bound(Part part, double tolerance) {
        double bound = 0;
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                for (Contour contour : region.contours()) {
                    for (Segment segment : contour.segments()) {
                        bound += segment instanceof Arc ? tolerance * segment.length() * layer.height() : 0;
                    }
                }
            }
        }
        return bound;
    }
}
