// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.curve.Triangulation;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Part;
import ringleaf.solid.Mesh;

/**
 * The solid of a part from its layers: walls round every level, and a face wherever one level ends and the next does
 * not go on, so that the surface is closed and there are no walls inside.
 *
 * <p>Chords are inscribed and leave no arc by more than the tolerance, so the volume differs from area times height by
 * at most the tolerance times the length of all arcs times the height (proved: a chord of sagitta s cuts off less than
 * s times its arc). Corners nearer to one another than single precision tells apart are one.
 */
public final class PartMesh {
    /** So many steps of single precision apart, corners stay distinct whatever is done with them. */
    private static final double STEPS = 8;
    /** Where chords of neighbours cross, they are made finer by this, and not more often than so many times. */
    private static final double FINER = 4;

    private static final int TRIES = 4;

    private final Levels levels;
    private final Rings rings;
    private final double near;
    private final List<int[]> triangles = new ArrayList<>();
    /** Numbers from 1 on of the corners in use, by point and height. */
    private int[] numbers;

    private int used;
    private double[] corners = new double[192];

    private PartMesh(Levels levels, List<List<Region>> faces, Tolerance chord, double near) {
        this.levels = levels;
        this.near = near;
        List<Contour> contours = new ArrayList<>();
        for (int i = 0; i < levels.count(); i++) {
            contours.addAll(contours(levels.solid(i)));
        }
        for (List<Region> face : faces) {
            contours.addAll(contours(face));
        }
        rings = new Rings(contours, near, chord, levels.count() > 1);
    }

    /**
     * The solid where the part is drawn.
     *
     * @param part with an outline
     * @param chord how far chords may leave the arcs
     * @return empty where outlines cross or the part touches itself along an edge, so that no closed surface bounds it
     */
    public static Optional<Mesh> of(Part part, Tolerance chord) {
        Levels levels = new Levels(part);
        List<List<Region>> faces = new ArrayList<>();
        for (int i = 0; i <= levels.count(); i++) {
            faces.add(levels.upper(i));
            faces.add(levels.lower(i));
        }
        double near = STEPS * Math.ulp((float) reach(part.box()));
        double tolerance = chord.length();
        for (int i = 0; i < TRIES; i++) {
            try {
                Mesh mesh = new PartMesh(levels, faces, new Tolerance(tolerance), near).mesh(faces);
                if (mesh.isClosed()) {
                    return Optional.of(mesh);
                }
            } catch (IllegalStateException crossing) {
                // chords of two arcs that nearly touch may cross; finer ones do not
                continue;
            } finally {
                tolerance /= FINER;
            }
        }
        return Optional.empty();
    }

    /**
     * The solid as it is to be printed: on its larger face, lowest point at z = 0. A part that is largest on top is
     * turned over about the x axis; else x and y stay as drawn.
     *
     * @return empty as in {@link #of}
     */
    public static Optional<Mesh> onBed(Part part, Tolerance chord) {
        Levels levels = new Levels(part);
        boolean over = levels.area(levels.count() - 1) > levels.area(0) * (1 + 1e-9);
        return of(part, chord).map(mesh -> over ? mesh.turnedOver() : mesh.lowered());
    }

    private static double reach(Box box) {
        return Math.max(
                Math.max(Math.abs(box.minX()), Math.abs(box.maxX())),
                Math.max(Math.abs(box.minY()), Math.abs(box.maxY())));
    }

    private static List<Contour> contours(List<Region> regions) {
        List<Contour> contours = new ArrayList<>();
        for (Region region : regions) {
            contours.addAll(region.contours());
        }
        return contours;
    }

    private Mesh mesh(List<List<Region>> faces) {
        List<List<int[]>> walls = new ArrayList<>();
        for (int i = 0; i < levels.count(); i++) {
            List<int[]> level = new ArrayList<>();
            for (Contour contour : contours(levels.solid(i))) {
                level.add(rings.of(contour));
            }
            walls.add(level);
        }
        List<List<List<int[]>>> flats = new ArrayList<>();
        for (List<Region> face : faces) {
            List<List<int[]>> regions = new ArrayList<>();
            for (Region region : face) {
                List<int[]> ringsOfOne = new ArrayList<>();
                for (Contour contour : region.contours()) {
                    ringsOfOne.add(rings.of(contour));
                }
                regions.add(ringsOfOne);
            }
            flats.add(regions);
        }
        numbers = new int[rings.points().size() * (levels.count() + 1)];
        for (int i = 0; i < levels.count(); i++) {
            for (int[] ring : walls.get(i)) {
                wall(ring, i);
            }
        }
        // the upper face of a part of one level is its lower face once more
        Map<List<Region>, List<int[]>> cut = new IdentityHashMap<>();
        for (int i = 0; i < flats.size(); i++) {
            List<int[]> flat = cut.get(faces.get(i));
            if (flat == null) {
                flat = new ArrayList<>();
                for (List<int[]> region : flats.get(i)) {
                    flat.add(Triangulation.of(rings.points(), region, near));
                }
                cut.put(faces.get(i), flat);
            }
            for (int[] region : flat) {
                face(region, i / 2, i % 2 == 0);
            }
        }
        return new Mesh(Arrays.copyOf(corners, 3 * used), joined());
    }

    /** The walls along one ring, outside on its right. */
    private void wall(int[] ring, int level) {
        int[] wall = new int[6 * ring.length];
        for (int i = 0; i < ring.length; i++) {
            int a = ring[i];
            int b = ring[(i + 1) % ring.length];
            int lowA = corner(a, level);
            int lowB = corner(b, level);
            int highA = corner(a, level + 1);
            int highB = corner(b, level + 1);
            int[] two = {lowA, lowB, highB, lowA, highB, highA};
            System.arraycopy(two, 0, wall, 6 * i, 6);
        }
        triangles.add(wall);
    }

    private void face(int[] cut, int height, boolean up) {
        int[] flat = cut.clone();
        for (int t = 0; t < flat.length; t += 3) {
            int a = corner(flat[t], height);
            int b = corner(flat[t + 1], height);
            int c = corner(flat[t + 2], height);
            flat[t] = a;
            flat[t + 1] = up ? b : c;
            flat[t + 2] = up ? c : b;
        }
        triangles.add(flat);
    }

    /** The number of a corner of the plane at a height. */
    private int corner(int point, int height) {
        int key = point * (levels.count() + 1) + height;
        if (numbers[key] == 0) {
            if (3 * used == corners.length) {
                corners = Arrays.copyOf(corners, 2 * corners.length);
            }
            corners[3 * used] = rings.points().get(point).x();
            corners[3 * used + 1] = rings.points().get(point).y();
            corners[3 * used + 2] = levels.height(height);
            numbers[key] = ++used;
        }
        return numbers[key] - 1;
    }

    private int[] joined() {
        int length = 0;
        for (int[] some : triangles) {
            length += some.length;
        }
        int[] all = new int[length];
        int at = 0;
        for (int[] some : triangles) {
            System.arraycopy(some, 0, all, at, some.length);
            at += some.length;
        }
        return all;
    }
}
