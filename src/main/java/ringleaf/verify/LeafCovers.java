// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import ringleaf.geom.Placement;
import ringleaf.part.LeafFamily;
import ringleaf.part.Part;

/**
 * What each leaf of a family covers, exactly and as polygons that hold it, shrunk all round if asked for. A hole in
 * which a member of the same body stands counts as filled.
 */
final class LeafCovers {
    private final List<List<Shape>> drawn = new ArrayList<>();
    private final List<List<Inset>> insets = new ArrayList<>();
    private final double fine;
    private final double by;
    private Geometry[] polygons;

    /**
     * @param fine how far the polygons may reach beyond the leaves, mm (twice that when shrunk)
     * @param by how much to shrink, mm, 0 for not at all
     */
    LeafCovers(Scene scene, LeafFamily family, double fine, double by) {
        this.fine = fine;
        this.by = by;
        Part before = null;
        for (int member : family.members()) {
            Part part = scene.assembly.members().get(member).part();
            int last = drawn.size() - 1;
            drawn.add(part == before ? drawn.get(last) : shapes(scene, member));
            insets.add(part == before ? insets.get(last) : insets(drawn.get(last + 1)));
            before = part;
        }
    }

    private static List<Shape> shapes(Scene scene, int member) {
        List<Shape> shapes = new ArrayList<>();
        for (Slab slab : scene.slabs) {
            if (slab.member == member && slab.leafy) {
                shapes.add(filled(scene, slab));
            }
        }
        return shapes;
    }

    private List<Inset> insets(List<Shape> shapes) {
        List<Inset> all = new ArrayList<>();
        for (Shape shape : shapes) {
            all.add(Inset.of(shape, by));
        }
        return all;
    }

    /** The pieces of one leaf, exactly, in its place. */
    List<Inset> insets(int leaf, Placement placement) {
        List<Inset> moved = new ArrayList<>();
        for (Inset inset : insets.get(leaf)) {
            moved.add(inset.placed(placement));
        }
        return moved;
    }

    /** Made on first need: a tight design needs none. */
    private synchronized Geometry polygon(int leaf) {
        if (polygons == null) {
            polygons = new Geometry[drawn.size()];
            for (int i = 0; i < polygons.length; i++) {
                boolean same = i > 0 && drawn.get(i) == drawn.get(i - 1);
                polygons[i] = same ? polygons[i - 1] : polygon(drawn.get(i));
            }
        }
        return polygons[leaf];
    }

    private Geometry polygon(List<Shape> shapes) {
        List<Polygon> all = new ArrayList<>();
        for (Shape shape : shapes) {
            Geometry polygon = Chords.full(shape, fine);
            all.addAll(Reach.polygons(by > 0 ? shrunk(polygon, by, fine) : polygon));
        }
        return Chords.FACTORY.buildGeometry(all);
    }

    /** Rounds of concave corners are chorded to the generous side; the rest errs by less than is added back. */
    private static Geometry shrunk(Geometry polygon, double by, double fine) {
        BufferParameters how = new BufferParameters(16);
        how.setSimplifyFactor(Math.min(0.01, fine / 2 / by));
        return BufferOp.bufferOp(polygon, -Math.max(by - fine, 0), how);
    }

    private static Shape filled(Scene scene, Slab leaf) {
        Shape shape = leaf.drawn;
        List<Integer> open = new ArrayList<>();
        for (int i = 1; i < shape.contours(); i++) {
            if (!isFilled(scene, leaf, i)) {
                open.add(i);
            }
        }
        return open.size() == shape.contours() - 1 ? shape : shape.withHoles(open);
    }

    private static boolean isFilled(Scene scene, Slab leaf, int hole) {
        Placement home = scene.assembly.members().get(leaf.member).home();
        for (Slab other : scene.slabs) {
            if (other.body != leaf.body || other.member == leaf.member || other.leafy) {
                continue;
            }
            Placement toLeaf = scene.assembly.members().get(other.member).home().then(home.inverse());
            Shape standing = other.drawn.placed(toLeaf);
            double x = (standing.minX + standing.maxX) / 2;
            double y = (standing.minY + standing.maxY) / 2;
            if (leaf.drawn.encloses(hole, x, y)) {
                return true;
            }
        }
        return false;
    }

    /** One leaf as polygons in its place. */
    Geometry placed(int leaf, Placement placement) {
        Geometry shape = polygon(leaf);
        List<Polygon> moved = new ArrayList<>();
        for (Polygon polygon : Reach.polygons(shape)) {
            LinearRing[] holes = new LinearRing[polygon.getNumInteriorRing()];
            for (int i = 0; i < holes.length; i++) {
                holes[i] = moved(polygon.getInteriorRingN(i), placement);
            }
            moved.add(Chords.FACTORY.createPolygon(moved(polygon.getExteriorRing(), placement), holes));
        }
        return moved.size() == 1 ? moved.get(0) : Chords.FACTORY.buildGeometry(moved);
    }

    private static LinearRing moved(LinearRing ring, Placement placement) {
        double cos = Math.cos(placement.angle());
        double sin = Math.sin(placement.angle());
        double dx = placement.shift().x();
        double dy = placement.shift().y();
        Coordinate[] from = ring.getCoordinates();
        Coordinate[] to = new Coordinate[from.length];
        for (int i = 0; i < to.length; i++) {
            to[i] = new Coordinate(cos * from[i].x - sin * from[i].y + dx, sin * from[i].x + cos * from[i].y + dy);
        }
        return Chords.FACTORY.createLinearRing(to);
    }
}
