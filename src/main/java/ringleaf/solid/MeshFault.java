// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Why a mesh does not bound a solid, and where.
 *
 * @param kind what is wrong
 * @param triangle the first triangle concerned, or -1
 * @param from a corner of the place, or the first end of the edge, mm
 * @param to the edge's other end, or the same corner, mm
 * @param count how often the same is wrong in the mesh
 */
public record MeshFault(Kind kind, int triangle, double[] from, double[] to, int count) {
    /** What can be wrong, in the order in which it is looked for. */
    public enum Kind {
        EMPTY("has no triangles"),
        NO_SUCH_CORNER("a triangle names a corner that is not there"),
        NO_NUMBER("a corner has a coordinate that is no number"),
        REPEATED_CORNER("a triangle has one corner twice"),
        HOLE("an edge belongs to one triangle only: there is a hole"),
        FOLDED("triangles on both sides of an edge face opposite ways, or more than two meet in it"),
        INSIDE_OUT("the triangles face inwards: the volume is not above 0");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The first fault of the mesh by the order of kinds; empty where it bounds a solid. */
    public static Optional<MeshFault> of(Mesh mesh) {
        int[] triangles = mesh.triangles();
        if (triangles.length < 3 || triangles.length % 3 != 0 || mesh.corners().length % 3 != 0) {
            return Optional.of(new MeshFault(Kind.EMPTY, -1, new double[3], new double[3], 1));
        }
        int bad = 0;
        int first = -1;
        Kind kind = null;
        for (int i = 0; i < triangles.length; i++) {
            Kind here = cornerFault(mesh, i);
            if (here != null && (kind == null || here == kind)) {
                kind = here;
                first = first < 0 ? i : first;
                bad++;
            }
        }
        if (kind != null) {
            double[] place = kind == Kind.NO_SUCH_CORNER ? new double[3] : corner(mesh, triangles[first]);
            return Optional.of(new MeshFault(kind, first / 3, place, place, bad));
        }
        return edgeFault(mesh).or(() -> inward(mesh));
    }

    private static Kind cornerFault(Mesh mesh, int at) {
        int[] triangles = mesh.triangles();
        int corner = triangles[at];
        if (corner < 0 || corner >= mesh.cornerCount()) {
            return Kind.NO_SUCH_CORNER;
        }
        for (int axis = 0; axis < 3; axis++) {
            if (!Double.isFinite(mesh.corners()[3 * corner + axis])) {
                return Kind.NO_NUMBER;
            }
        }
        return corner == triangles[at % 3 == 2 ? at - 2 : at + 1] ? Kind.REPEATED_CORNER : null;
    }

    /** Along every edge exactly two triangles meet, and they run along it in opposite directions. */
    private static Optional<MeshFault> edgeFault(Mesh mesh) {
        int[] triangles = mesh.triangles();
        long many = mesh.cornerCount();
        long[] edges = new long[triangles.length];
        for (int i = 0; i < triangles.length; i++) {
            edges[i] = triangles[i] * many + triangles[i % 3 == 2 ? i - 2 : i + 1];
        }
        long[] sorted = edges.clone();
        Arrays.sort(sorted);
        int holes = 0;
        long hole = -1;
        int folds = 0;
        long fold = -1;
        for (int i = 0; i < sorted.length; i++) {
            if (i > 0 && sorted[i] == sorted[i - 1]) {
                fold = folds++ == 0 ? sorted[i] : fold;
            } else if (Arrays.binarySearch(sorted, sorted[i] % many * many + sorted[i] / many) < 0) {
                hole = holes++ == 0 ? sorted[i] : hole;
            }
        }
        if (folds == 0 && holes == 0) {
            return Optional.empty();
        }
        // a triangle turned over leaves edges without a partner too, so folds are told first
        long edge = folds > 0 ? fold : hole;
        int triangle = 0;
        while (edges[triangle] != edge) {
            triangle++;
        }
        return Optional.of(new MeshFault(
                folds > 0 ? Kind.FOLDED : Kind.HOLE,
                triangle / 3,
                corner(mesh, (int) (edge / many)),
                corner(mesh, (int) (edge % many)),
                folds > 0 ? folds : holes));
    }

    private static Optional<MeshFault> inward(Mesh mesh) {
        double[] place = corner(mesh, mesh.triangles()[0]);
        return mesh.volume() > 0
                ? Optional.empty()
                : Optional.of(new MeshFault(Kind.INSIDE_OUT, 0, place, place, mesh.triangleCount()));
    }

    private static double[] corner(Mesh mesh, int number) {
        return Arrays.copyOfRange(mesh.corners(), 3 * number, 3 * number + 3);
    }

    /** What is wrong and where, in one line. */
    public String words() {
        if (triangle < 0) {
            return kind.words();
        }
        String at = kind == Kind.NO_SUCH_CORNER
                ? ""
                : Arrays.equals(from, to) ? " at " + place(from) : ", from " + place(from) + " to " + place(to);
        String more = count > 1 ? "; " + count + " such places" : "";
        return kind.words() + " (triangle " + (triangle + 1) + at + more + ")";
    }

    private static String place(double[] p) {
        return String.format(Locale.ROOT, "(%.4g, %.4g, %.4g)", p[0], p[1], p[2]);
    }
}
