// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import ringleaf.leaf.Band;
import ringleaf.leaf.DrivePin;
import ringleaf.leaf.Play;
import ringleaf.leaf.SlotLaw;
import ringleaf.leaf.Sweep;

/** The folded sweep of 181 states with leak, lap, play and layers; the cost should hardly grow with the blades. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SweepBenchmark {
    private static final double CLEAR = 32;
    private static final double LEAST = 10;
    private static final int STATES = 181;
    private static final Play PLAY = new Play(0.1, 0.1, 0.15, 0.03);

    @Param({"8", "16", "32", "64"})
    int blades;

    private SlotLaw law;
    private double closed;

    @Setup
    public void pose() {
        // The same band for every number of blades, wide enough that none of them leaks.
        Band band = new Band(CLEAR + 0.15 + 24 / 2, 24, Math.toRadians(150), blades);
        law = new SlotLaw.Radial(band, new DrivePin.FarEnd());
        closed = band.bladeAngle(LEAST);
        for (double leak : sweep().leak) {
            if (leak > 0) {
                throw new IllegalStateException(blades + " blades leak, which makes a sweep cheaper");
            }
        }
    }

    @Benchmark
    public Sweep sweep() {
        return Sweep.of(law, closed, CLEAR, STATES, PLAY, 0);
    }
}
