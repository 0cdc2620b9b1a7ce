// SPDX-License-Identifier: Apache-2.0
package ringleaf.linkage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.space.Vector;

class PlateRodsTest {
    private static final Vector BACK = new Vector(0, 0, -1);

    /** Rods parallel to z at rest, horn pins straight outward beside their ends. */
    static PlateRods rods(
            JointOrder order, double a, double b, double panHorn, double tiltHorn, double pan, double tilt) {
        PushRod panRod = new PushRod(new Vector(b - panHorn, 0, -pan), Vector.X, BACK, panHorn, pan, 1);
        PushRod tiltRod = new PushRod(new Vector(0, a - tiltHorn, -tilt), Vector.Y, Vector.Z, tiltHorn, tilt, 1);
        Vector panSeat = new Vector(b, 0, 0);
        Vector tiltSeat = new Vector(0, a, 0);
        return new PlateRods(order, panSeat, tiltSeat, panRod.onSideOf(panSeat, 0), tiltRod.onSideOf(tiltSeat, 0));
    }

    private static PlateRods worked() {
        return rods(JointOrder.PAN, 20, 22, 12, 11, 55, 60);
    }

    @ParameterizedTest
    @CsvSource({
        "25,0,50.42683193,NaN",
        "-25,0,-51.19025574,NaN",
        "0,20,NaN,38.53008456",
        "0,-20,NaN,-38.37582475",
        "25,20,NaN,34.77555272"
    })
    void hornsStandWhereTheWorkedCaseSays(double pan, double tilt, double panHorn, double tiltHorn) {
        PlateRods.Two horns = worked().horns(Math.toRadians(pan), Math.toRadians(tilt));
        if (!Double.isNaN(panHorn)) {
            assertEquals(panHorn, Math.toDegrees(horns.pan()), 1e-8);
        }
        if (!Double.isNaN(tiltHorn)) {
            assertEquals(tiltHorn, Math.toDegrees(horns.tilt()), 1e-8);
        }
    }

    @Test
    void panningDragsTheTiltAndTiltingNotThePan() {
        PlateRods.Two off =
                worked().crossing(Math.toRadians(25), Math.toRadians(20)).orElseThrow();
        assertEquals(1.903031, Math.toDegrees(off.tilt()), 1e-6);
        assertEquals(0, off.pan(), 1e-12);
        for (int t = -30; t <= 30; t += 10) {
            assertEquals(
                    worked().horns(0.3, 0).pan(),
                    worked().horns(0.3, Math.toRadians(t)).pan(),
                    1e-13);
        }
    }

    /** With rods that go on for ever sin t' = sin t / cos p: 2.171 deg more at tilt 20, pan 25. */
    @Test
    void longRodsDragByTheSineLaw() {
        PlateRods far = rods(JointOrder.PAN, 20, 22, 12, 11, 1e4, 1e4);
        double p = Math.toRadians(25);
        double t = Math.toRadians(20);
        double expected = Math.asin(Math.sin(t) / Math.cos(p)) - t;
        assertEquals(2.171, Math.toDegrees(expected), 5e-4);
        assertEquals(expected, far.crossing(p, t).orElseThrow().tilt(), 2e-4);
    }

    /** Universal joint between two shafts: tan b = tan a cos d in one phase; textbook relation of the cardan joint. */
    @Test
    void theJointRunsAsAUniversalJointDoes() {
        double d = Math.toRadians(30);
        for (int deg = 15; deg < 90; deg += 15) {
            double a = Math.toRadians(deg);
            // The fork of the first shaft turns about z; the cross's second arm stays in the plane across the second
            // shaft.
            Vector fork = new Vector(Math.cos(a), Math.sin(a), 0);
            Vector second = new Vector(Math.sin(d), 0, Math.cos(d));
            Vector arm = second.cross(fork).times(1 / second.cross(fork).length());
            double b = Math.atan2(-arm.x() * Math.cos(d) + arm.z() * Math.sin(d), arm.y());
            assertEquals(Math.atan(Math.tan(a) / Math.cos(d)), Math.abs(b), 1e-12);
        }
        JointOrder order = JointOrder.PAN;
        Vector axis = order.plate(0.4, 0.3).apply(Vector.Z);
        assertEquals(Math.cos(0.3) * Math.sin(0.4), axis.x(), 1e-15);
        assertEquals(-Math.sin(0.3), axis.y(), 1e-15);
    }

    /** Rows of an RSSR loop with crossed axes, computed independently: O2 = (0, 50, 20), u = y, v = z. */
    @ParameterizedTest
    @CsvSource({
        "0,122.50308431,-78.90026533",
        "30,107.99194618,-54.86184382",
        "60,91.96530709,-29.03165750",
        "90,83.36298318,-15.98284813",
        "180,122.50308431,-78.90026533"
    })
    void rodsBetweenCrossedAxes(double t, double one, double other) {
        double q = Math.toRadians(t);
        Vector end = new Vector(20 * Math.cos(q), 20 * Math.sin(q), 0);
        Vector centre = new Vector(0, 50, 20);
        double first = Math.toDegrees(new PushRod(centre, Vector.Y, Vector.Z, 30, 60, 1).angle(end));
        double second = Math.toDegrees(new PushRod(centre, Vector.Y, Vector.Z, 30, 60, -1).angle(end));
        assertEquals(Math.max(one, other), Math.max(first, second), 1e-7);
        assertEquals(Math.min(one, other), Math.min(first, second), 1e-7);
    }

    /** Planar four-bar of Norton, Design of Machinery (40, 120, 80, 100; 40 deg), with the rocker's plane lifted by 15. */
    @Test
    void aLiftedFourBarIsTheSameLoop() {
        double q = Math.toRadians(40);
        Vector end = new Vector(40 * Math.cos(q), 40 * Math.sin(q), 0);
        PushRod rod = new PushRod(new Vector(100, 0, 15), Vector.X, Vector.Y, 80, Math.hypot(120, 15), 1);
        double one = Math.toDegrees(rod.angle(end));
        double other = Math.toDegrees(rod.onSideOf(end, 0).angle(end));
        assertEquals(57.32488007, Math.max(one, other), 1e-7);
        double third = Math.toDegrees(new PushRod(rod.centre(), Vector.X, Vector.Y, 80, rod.length(), -1).angle(end));
        assertEquals(-98.00496408, Math.min(one, third), 1e-7);
    }

    /** The raw constraint equations by least squares, over random designs, in both orders. */
    @Test
    void aNumericLoopSolverAgrees() {
        long seed = 20261;
        Random random = new Random(seed);
        int looked = 0;
        for (int i = 0; i < 120; i++) {
            JointOrder order = i % 2 == 0 ? JointOrder.PAN : JointOrder.TILT;
            PlateRods rods = rods(
                    order,
                    15 + 15 * random.nextDouble(),
                    15 + 15 * random.nextDouble(),
                    13 + 6 * random.nextDouble(),
                    13 + 6 * random.nextDouble(),
                    40 + 40 * random.nextDouble(),
                    40 + 40 * random.nextDouble());
            double p = Math.toRadians(50 * random.nextDouble() - 25);
            double t = Math.toRadians(40 * random.nextDouble() - 20);
            PlateRods.Two horns = rods.horns(p, t);
            if (!horns.isFinite()) {
                continue;
            }
            looked++;
            Optional<PlateRods.Two> back = rods.plate(horns, new PlateRods.Two(0.8 * p, 0.8 * t));
            assertTrue(back.isPresent(), "seed " + seed + " case " + i);
            assertEquals(p, back.get().pan(), 1e-11);
            assertEquals(t, back.get().tilt(), 1e-11);
            double[] numeric = leastSquares(rods, horns, 0.8 * p, 0.8 * t);
            assertEquals(p, numeric[0], 1e-7, "seed " + seed + " case " + i);
            assertEquals(t, numeric[1], 1e-7, "seed " + seed + " case " + i);
        }
        assertTrue(looked > 80, "only " + looked + " of the designs reach");
    }

    private static double[] leastSquares(PlateRods rods, PlateRods.Two horns, double pan, double tilt) {
        MultivariateJacobianFunction lengths = at -> {
            double[] value = lengths(rods, horns, at.getEntry(0), at.getEntry(1));
            double[][] slope = new double[2][2];
            double h = 1e-7;
            for (int k = 0; k < 2; k++) {
                double[] up =
                        lengths(rods, horns, at.getEntry(0) + (k == 0 ? h : 0), at.getEntry(1) + (k == 1 ? h : 0));
                for (int r = 0; r < 2; r++) {
                    slope[r][k] = (up[r] - value[r]) / h;
                }
            }
            return new Pair<>(new ArrayRealVector(value), new Array2DRowRealMatrix(slope));
        };
        return new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(new double[] {pan, tilt})
                        .target(new double[] {
                            rods.panRod().length(), rods.tiltRod().length()
                        })
                        .model(lengths)
                        .maxEvaluations(500)
                        .maxIterations(500)
                        .build())
                .getPoint()
                .toArray();
    }

    /** Turned by matrices written out here, not by the code's quaternions. */
    private static double[] lengths(PlateRods rods, PlateRods.Two horns, double pan, double tilt) {
        double[] lengths = new double[2];
        PushRod[] both = {rods.panRod(), rods.tiltRod()};
        Vector[] seats = {rods.panSeat(), rods.tiltSeat()};
        double[] angles = {horns.pan(), horns.tilt()};
        for (int i = 0; i < 2; i++) {
            Vector v = seats[i];
            Vector end = rods.order() == JointOrder.PAN ? aboutY(aboutX(v, tilt), pan) : aboutX(aboutY(v, pan), tilt);
            lengths[i] = end.minus(both[i].pin(angles[i])).length();
        }
        return lengths;
    }

    private static Vector aboutX(Vector v, double t) {
        return new Vector(v.x(), Math.cos(t) * v.y() - Math.sin(t) * v.z(), Math.sin(t) * v.y() + Math.cos(t) * v.z());
    }

    private static Vector aboutY(Vector v, double p) {
        return new Vector(Math.cos(p) * v.x() + Math.sin(p) * v.z(), v.y(), -Math.sin(p) * v.x() + Math.cos(p) * v.z());
    }

    @Test
    void turnsPerAngleAreTheSlopesOfTheClosedForm() {
        PlateRods rods = rods(JointOrder.TILT, 20, 22, 12, 11, 55, 60);
        double h = 1e-6;
        PlateRods.Two at = rods.horns(0.2, -0.15);
        double[][] turns = rods.hornsPerAngle(0.2, -0.15, at);
        assertEquals(
                (rods.horns(0.2 + h, -0.15).pan() - rods.horns(0.2 - h, -0.15).pan()) / 2 / h, turns[0][0], 1e-7);
        assertEquals(
                (rods.horns(0.2, -0.15 + h).pan() - rods.horns(0.2, -0.15 - h).pan()) / 2 / h, turns[0][1], 1e-7);
        assertEquals(
                (rods.horns(0.2 + h, -0.15).tilt() - rods.horns(0.2 - h, -0.15).tilt()) / 2 / h, turns[1][0], 1e-7);
        assertEquals(
                (rods.horns(0.2, -0.15 + h).tilt() - rods.horns(0.2, -0.15 - h).tilt()) / 2 / h, turns[1][1], 1e-7);
    }
}
