// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;

/** Distances of two solids at a pose, held against closed forms; random ones stand in {@link CollisionLibraryTest}. */
class NearnessTest {
    private static final double ROUNDING = 2e-9;

    private static Near near(Mesh first, Mesh second, Pose pose) {
        Nearness nearness = new Nearness(new Solid(first, 0), new Solid(second, 0));
        Near near = nearness.at(pose);
        assertThat(near.onFirst().minus(near.onSecond()).length()).isEqualTo(near.distance(), within(ROUNDING));
        assertThat(nearness.isFarther(pose, near.distance() + 0.01)).isFalse();
        if (near.distance() > 0) {
            assertThat(nearness.isFarther(pose, 0.99 * near.distance())).isTrue();
        }
        return near;
    }

    @Test
    void boxesFaceToFaceEdgeToEdgeAndCornerToCorner() {
        Mesh box = Bodies.box(1, 2, 3);
        assertThat(near(box, box, Bodies.at(5, 0.3, 0.2)).distance()).isEqualTo(3, within(ROUNDING));
        assertThat(near(box, box, Bodies.at(5, 8, 1)).distance()).isEqualTo(5, within(ROUNDING));
        assertThat(near(box, box, Bodies.at(4, 7, 12)).distance()).isEqualTo(7, within(ROUNDING));
        Mesh cube = Bodies.box(1, 1, 1);
        Pose edgeOn = Bodies.turned(Vector.Z, Math.PI / 4, 6, 0.1, 0);
        assertThat(near(cube, cube, edgeOn).distance()).isEqualTo(5 - Math.sqrt(2), within(ROUNDING));
        // a cube stood on its corner over another's face
        Turn corner = Turn.about(new Vector(1, -1, 0), Math.acos(1 / Math.sqrt(3)));
        Near over = near(cube, cube, new Pose(corner, new Vector(0.2, 0.1, 4)));
        assertThat(over.distance()).isEqualTo(3 - Math.sqrt(3), within(ROUNDING));
        assertThat(over.onFirst().z()).isEqualTo(1, within(ROUNDING));
        assertThat(over.onSecond().x()).isEqualTo(0.2, within(ROUNDING));
    }

    @Test
    void edgesThatCross() {
        // two square bars across one another, each stood on an edge
        Mesh bar = Bodies.box(1, 10, 1);
        Turn onEdge = Turn.about(Vector.Y, Math.PI / 4);
        Mesh first = moved(bar, new Pose(onEdge, Vector.ZERO));
        Pose across = new Pose(onEdge.then(Turn.about(Vector.Z, 1.1)), new Vector(0.3, 0.2, 5));
        assertThat(near(first, bar, across).distance()).isEqualTo(5 - 2 * Math.sqrt(2), within(ROUNDING));
    }

    @Test
    void spheresAndCylindersWithinTheirChords() {
        int sides = 64;
        Solid five = new Solid(Bodies.sphere(5, sides), 2 * Bodies.sagitta(5, sides));
        Solid three = new Solid(Bodies.sphere(3, sides), 2 * Bodies.sagitta(3, sides));
        Random random = new Random(7);
        Nearness spheres = new Nearness(five, three);
        for (int i = 0; i < 100; i++) {
            Vector way = new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
            double apart = 8.2 + 10 * random.nextDouble();
            Pose pose = new Pose(Bodies.anyTurn(random), way.times(apart / way.length()));
            double found = spheres.at(pose).distance();
            assertThat(apart - 8).isBetween(found - spheres.chords(), found + ROUNDING);
        }
        Solid shaft = new Solid(Bodies.cylinder(4, 30, sides), Bodies.sagitta(4, sides));
        Solid rod = new Solid(Bodies.cylinder(1, 30, sides), Bodies.sagitta(1, sides));
        Nearness rods = new Nearness(shaft, rod);
        double crossed = rods.at(Bodies.turned(Vector.X, 0.7, 9, 1, 2)).distance();
        assertThat(9.0 - 5).isBetween(crossed - rods.chords(), crossed + ROUNDING);
        double beside = rods.at(Bodies.at(6, 8, 5)).distance();
        assertThat(10.0 - 5).isBetween(beside - rods.chords(), beside + ROUNDING);
    }

    /** Across the axis of a cone, a cylinder is as near as its axis to the cone's side less its radius. */
    @Test
    void coneBesideACylinder() {
        int sides = 128;
        double radius = 10;
        double height = 24;
        Solid cone = new Solid(Bodies.cone(radius, height, sides), Bodies.sagitta(radius, sides));
        Solid rod = new Solid(Bodies.cylinder(2, 40, sides), Bodies.sagitta(2, sides));
        Nearness nearness = new Nearness(cone, rod);
        for (double z : new double[] {8, 12, 17}) {
            double x = 13;
            double expected = (x * height + z * radius - radius * height) / Math.hypot(radius, height) - 2;
            double found =
                    nearness.at(Bodies.turned(Vector.X, Math.PI / 2, x, 0, z)).distance();
            assertThat(expected).isBetween(found - nearness.chords(), found + ROUNDING);
        }
    }

    @Test
    void whatIsInsideTouchesAndWhatIsInACavityDoesNot() {
        Mesh large = Bodies.box(10, 10, 10);
        Mesh small = Bodies.box(1, 1, 1);
        assertThat(near(large, small, Bodies.at(2, 3, 1)).distance()).isZero();
        assertThat(near(small, large, Bodies.at(2, 3, 1)).distance()).isZero();
        Mesh hollow = Bodies.hollow(large, Bodies.box(6, 6, 6));
        assertThat(near(hollow, small, Bodies.at(2, 3, 1)).distance()).isEqualTo(2, within(ROUNDING));
        assertThat(near(hollow, small, Bodies.at(8, 3, 1)).distance()).isZero();
        // one of two loose pieces inside is enough
        Mesh pieces = joined(small, moved(small, Bodies.at(40, 0, 0)));
        assertThat(near(large, pieces, Bodies.at(-40, 0, 0)).distance()).isZero();
        assertThat(near(large, pieces, Bodies.at(-20, 0, 0)).distance()).isEqualTo(9, within(ROUNDING));
    }

    @Test
    void solidsThatMeetHaveAPointInCommon() {
        Mesh bar = Bodies.box(10, 1, 1);
        Near cross = near(bar, bar, Bodies.turned(Vector.Z, Math.PI / 2, 0.2, 0.1, 0.3));
        assertThat(cross.distance()).isZero();
        assertThat(Math.abs(cross.onFirst().y())).isLessThanOrEqualTo(1 + ROUNDING);
        assertThat(cross.onFirst()).isEqualTo(cross.onSecond());
    }

    @Test
    void whereTheSearchBeginsChangesNothing() {
        Random random = new Random(3);
        Solid first = new Solid(Bodies.lump(random, 10, 24), 0);
        Solid second = new Solid(Bodies.lump(random, 8, 24), 0);
        Nearness kept = new Nearness(first, second);
        for (int i = 0; i < 200; i++) {
            Pose pose = new Pose(
                    Bodies.anyTurn(random), new Vector(14 + 12 * random.nextDouble(), 5 * random.nextDouble(), i % 5));
            assertThat(kept.at(pose).distance())
                    .isEqualTo(new Nearness(first, second).at(pose).distance(), within(ROUNDING));
        }
    }

    static Mesh moved(Mesh mesh, Pose pose) {
        double[] c = mesh.corners().clone();
        for (int i = 0; i < c.length; i += 3) {
            Vector v = pose.apply(new Vector(c[i], c[i + 1], c[i + 2]));
            c[i] = v.x();
            c[i + 1] = v.y();
            c[i + 2] = v.z();
        }
        return new Mesh(c, mesh.triangles());
    }

    static Mesh joined(Mesh one, Mesh other) {
        // the cavity's triangles run the other way: back again
        Mesh both = Bodies.hollow(one, other);
        int[] all = both.triangles().clone();
        for (int i = one.triangles().length; i < all.length; i += 3) {
            int swap = all[i + 1];
            all[i + 1] = all[i + 2];
            all[i + 2] = swap;
        }
        return new Mesh(both.corners(), all);
    }
}
