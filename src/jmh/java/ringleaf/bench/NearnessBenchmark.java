// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.draw.mesh.PartMesh;
import ringleaf.geom.Tolerance;
import ringleaf.part.Part;
import ringleaf.solid.Mesh;
import ringleaf.solid.Near;
import ringleaf.solid.Nearness;
import ringleaf.solid.Solid;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/**
 * Distance of two solids of some 2,000 triangles, at a pose a little beside the last one: parts of a preset that turn
 * beside one another, one above the other, and one within a bore of the other.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class NearnessBenchmark {
    /** How the second one stands to the first. */
    public enum Way {
        BESIDE,
        ABOVE,
        SLANTED,
        WITHIN
    }

    @Param
    public Way way;

    private Nearness nearness;
    private double step;

    @Setup
    public void design() throws IOException {
        Mesh ring = mesh("harbour-light", 2000);
        Mesh other = way == Way.WITHIN ? shaft(ring) : ring;
        nearness = new Nearness(new Solid(ring, 0.01), new Solid(other, 0.01));
    }

    /** The part of the preset that has about so many triangles. */
    static Mesh mesh(String preset, int triangles) throws IOException {
        Mesh best = null;
        for (Part part : Specs.preset(preset).parts()) {
            if (!part.isDrawn()) {
                continue;
            }
            for (double chord = 0.02; chord > 1e-3; chord /= 1.5) {
                Mesh mesh = PartMesh.of(part, new Tolerance(chord)).orElseThrow();
                if (best == null || off(mesh, triangles) < off(best, triangles)) {
                    best = mesh;
                }
            }
        }
        return best;
    }

    private static int off(Mesh mesh, int triangles) {
        return Math.abs(mesh.triangleCount() - triangles);
    }

    /** The same, made so slender that it stands within the bore of the other. */
    private static Mesh shaft(Mesh ring) {
        double[] corners = ring.corners().clone();
        for (int i = 0; i < corners.length; i += 3) {
            corners[i] *= 0.62;
            corners[i + 1] *= 0.62;
        }
        return new Mesh(corners, ring.triangles());
    }

    @Benchmark
    public Near near() {
        step = step > 0.5 ? 0 : step + 0.001;
        Turn turn = Turn.about(Vector.Z, step);
        Pose pose =
                switch (way) {
                    case BESIDE -> new Pose(turn, new Vector(130, 10, 2));
                    case ABOVE -> new Pose(turn, new Vector(3, 4, 9));
                    case SLANTED -> new Pose(turn.then(Turn.about(Vector.X, 0.3)), new Vector(20, 5, 60));
                    case WITHIN -> new Pose(turn, new Vector(0.4, 0.2, 0));
                };
        return nearness.surfaces(pose, Double.POSITIVE_INFINITY).orElseThrow();
    }
}
