// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/** Meshes of known shapes about the origin, all corners on the true surface. */
final class Bodies {
    private Bodies() {}

    static Mesh box(double x, double y, double z) {
        return revolved(List.of(new double[] {1, -z}, new double[] {1, z}), 4, (r, a) -> {
            int quarter = (int) Math.round(a / (Math.PI / 2));
            return new double[] {quarter == 0 || quarter == 3 ? x : -x, quarter < 2 ? y : -y};
        });
    }

    /** About the z axis, from -h to h. */
    static Mesh cylinder(double radius, double h, int sides) {
        return revolved(List.of(new double[] {radius, -h}, new double[] {radius, h}), sides, Bodies::round);
    }

    /** About the z axis, its base at 0, its tip at the height. */
    static Mesh cone(double radius, double height, int sides) {
        return revolved(List.of(new double[] {radius, 0}, new double[] {0, height}), sides, Bodies::round);
    }

    static Mesh sphere(double radius, int sides) {
        List<double[]> profile = new ArrayList<>();
        for (int i = 0; i <= sides / 2; i++) {
            double a = -Math.PI / 2 + i * 2 * Math.PI / sides;
            profile.add(new double[] {i == 0 || i == sides / 2 ? 0 : radius * Math.cos(a), radius * Math.sin(a)});
        }
        return revolved(profile, sides, Bodies::round);
    }

    /** A ball with bumps and dents, so that it is neither convex nor regular. */
    static Mesh lump(Random random, double radius, int sides) {
        Mesh ball = sphere(radius, sides);
        double[] corners = ball.corners().clone();
        for (int i = 0; i < corners.length; i += 3) {
            double factor = 0.5 + random.nextDouble();
            for (int k = 0; k < 3; k++) {
                corners[i + k] *= factor;
            }
        }
        return new Mesh(corners, ball.triangles());
    }

    /** The first with a cavity of the shape of the other, which lies inside it. */
    static Mesh hollow(Mesh outer, Mesh cavity) {
        int n = outer.corners().length;
        double[] corners = java.util.Arrays.copyOf(outer.corners(), n + cavity.corners().length);
        System.arraycopy(cavity.corners(), 0, corners, n, cavity.corners().length);
        int m = outer.triangles().length;
        int[] triangles = java.util.Arrays.copyOf(outer.triangles(), m + cavity.triangles().length);
        for (int i = 0; i < cavity.triangles().length; i += 3) {
            triangles[m + i] = cavity.triangles()[i] + n / 3;
            triangles[m + i + 1] = cavity.triangles()[i + 2] + n / 3;
            triangles[m + i + 2] = cavity.triangles()[i + 1] + n / 3;
        }
        return new Mesh(corners, triangles);
    }

    static Pose at(double x, double y, double z) {
        return new Pose(Turn.NONE, new Vector(x, y, z));
    }

    static Pose turned(Vector axis, double angle, double x, double y, double z) {
        return new Pose(Turn.about(axis, angle), new Vector(x, y, z));
    }

    static Turn anyTurn(Random random) {
        return new Turn(random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    }

    /** By how much chords of so many sides leave their circle. */
    static double sagitta(double radius, int sides) {
        return radius * (1 - Math.cos(Math.PI / sides));
    }

    private interface Section {
        double[] at(double radius, double angle);
    }

    private static double[] round(double radius, double angle) {
        return new double[] {radius * Math.cos(angle), radius * Math.sin(angle)};
    }

    /** Rings of corners from the lowest up; a radius of 0 is a single corner, else the end gets a flat. */
    private static Mesh revolved(List<double[]> profile, int sides, Section section) {
        List<Double> corners = new ArrayList<>();
        List<Integer> triangles = new ArrayList<>();
        int[] firsts = new int[profile.size()];
        for (int i = 0; i < profile.size(); i++) {
            firsts[i] = corners.size() / 3;
            double radius = profile.get(i)[0];
            for (int k = 0; k < (radius == 0 ? 1 : sides); k++) {
                double[] xy = section.at(radius, k * 2 * Math.PI / sides);
                corners.addAll(List.of(radius == 0 ? 0 : xy[0], radius == 0 ? 0 : xy[1], profile.get(i)[1]));
            }
        }
        for (int i = 0; i + 1 < profile.size(); i++) {
            for (int k = 0; k < sides; k++) {
                boolean tipBelow = profile.get(i)[0] == 0;
                boolean tipAbove = profile.get(i + 1)[0] == 0;
                int a = firsts[i] + (tipBelow ? 0 : k);
                int b = firsts[i] + (tipBelow ? 0 : (k + 1) % sides);
                int c = firsts[i + 1] + (tipAbove ? 0 : (k + 1) % sides);
                int d = firsts[i + 1] + (tipAbove ? 0 : k);
                if (!tipBelow) {
                    triangles.addAll(List.of(a, b, c));
                }
                if (!tipAbove) {
                    triangles.addAll(List.of(a, c, d));
                }
            }
        }
        int last = profile.size() - 1;
        for (int k = 1; k + 1 < sides; k++) {
            if (profile.get(0)[0] > 0) {
                triangles.addAll(List.of(firsts[0], firsts[0] + k + 1, firsts[0] + k));
            }
            if (profile.get(last)[0] > 0) {
                triangles.addAll(List.of(firsts[last], firsts[last] + k, firsts[last] + k + 1));
            }
        }
        return new Mesh(
                corners.stream().mapToDouble(Double::doubleValue).toArray(),
                triangles.stream().mapToInt(Integer::intValue).toArray());
    }
}
