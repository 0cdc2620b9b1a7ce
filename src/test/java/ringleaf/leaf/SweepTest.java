// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SweepTest {
    private static final Band WORKED = new Band(37.4, 10.5, Math.toRadians(145), 14);
    private static final double CLOSED = WORKED.bladeAngle(4);

    @Test
    void workedCase() {
        SlotLaw law = new SlotLaw.Radial(WORKED, new DrivePin.FarEnd());
        Sweep sweep = Sweep.of(law, CLOSED, 32, 181, Play.NONE, 0);
        assertThat(sweep.states()).isEqualTo(181);
        assertThat(sweep.layers).isEqualTo(8);
        assertThat(Math.toDegrees(sweep.bladeAngle[sweep.layersAt])).isBetween(5.0, 12.0);
        assertThat(Math.toDegrees(sweep.ringAngle[180])).isCloseTo(85.6195, within(5e-5));
        assertThat(sweep.ringAngle[90]).isCloseTo(sweep.ringAngle[180] / 2, within(1e-12));
        assertThat(sweep.openingRadius[0]).isCloseTo(32.15, within(1e-12));
        assertThat(sweep.openingRadius[180]).isCloseTo(4, within(1e-12));
        assertThat(sweep.lap[0]).isEqualTo(FoldedCover.LAP_CAP);
        assertThat(Sweep.leastOf(sweep.lap)).isEqualTo(180);
        assertThat(sweep.lap[180]).isCloseTo(0.061, within(5e-4));
        assertThat(sweep.leak).containsOnly(0);
        assertThat(sweep.lapAfterPlay[180]).isEqualTo(sweep.lap[180]);
        assertThat(Math.toDegrees(sweep.pressure[Sweep.greatestOf(sweep.pressure)]))
                .isCloseTo(23.9055, within(5e-5));
        assertThat(sweep.reach[Sweep.greatestOf(sweep.reach)]).isCloseTo(46.74, within(5e-3));
        assertThatThrownBy(() -> Sweep.of(law, 0, 32, 181, Play.NONE, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aRunningMostIsTheMostOfAll() {
        Random random = new Random(3);
        for (int i = 0; i < 6; i++) {
            Band band = new Band(
                    30 + 6 + 6 * random.nextDouble() / 2,
                    6 + 6 * random.nextDouble(),
                    1.7 + random.nextDouble(),
                    5 + 7 * i);
            double closed = band.bladeAngle(5);
            Sweep sweep = Sweep.of(new SlotLaw.Radial(band, new DrivePin.FarEnd()), closed, 29.8, 25, Play.NONE, 0);
            int most = 0;
            for (double b : sweep.bladeAngle) {
                most = Math.max(most, new FoldedCover(band, b).layers(0));
            }
            assertThat(sweep.layers).as("case " + i + " " + band).isEqualTo(most);
        }
    }

    /** What a brief sweep passes over is above the least, and all that is read off it is as in the whole one. */
    @Test
    void aBriefSweepHasTheLeastValuesOfTheWhole() {
        long seed = 20261126;
        Random random = new Random(seed);
        int passedOver = 0;
        for (int i = 0; i < 60; i++) {
            double width = 4 + 14 * random.nextDouble();
            Band band = new Band(30 + width / 2, width, 1.6 + 1.4 * random.nextDouble(), 4 + random.nextInt(30));
            SlotLaw law = new SlotLaw.Radial(band, new DrivePin.FarEnd());
            Play play = i % 3 == 0 ? Play.NONE : new Play(0.1 * random.nextDouble(), 0.1, 0.2, 0.05);
            double closed = band.bladeAngle(4 + 20 * random.nextDouble());
            Sweep whole = Sweep.of(law, closed, 29.8, 41, play, 0);
            Sweep brief = Sweep.brief(law, closed, 29.8, 41, play, 0);
            String what = "seed " + seed + ", case " + i + ": " + band;
            for (double[][] two : new double[][][] {{whole.lap, brief.lap}, {whole.lapAfterPlay, brief.lapAfterPlay}}) {
                int least = Sweep.leastOf(two[0]);
                assertThat(Sweep.leastOf(two[1])).as(what).isEqualTo(least);
                assertThat(two[1][least]).as(what).isEqualTo(two[0][least]);
                for (int k = 0; k < 41; k++) {
                    assertThat(two[1][k]).as(what).isLessThanOrEqualTo(two[0][k] + 1e-6);
                    passedOver += two[1][k] < two[0][k] ? 1 : 0;
                }
            }
            assertThat(brief.leak).as(what).isEqualTo(whole.leak);
            assertThat(brief.layers).as(what).isEqualTo(whole.layers);
            assertThat(brief.layersAt).as(what).isEqualTo(whole.layersAt);
            assertThat(brief.reach).as(what).isEqualTo(whole.reach);
            assertThat(brief.pressure).as(what).isEqualTo(whole.pressure);
        }
        assertThat(passedOver).isGreaterThan(500);
    }

    /**
     * Blades thrown off at random within the joints' play, at worst all at once, do not open a gap where lap less loss
     * is not below 0; the opening's edge may move by as much.
     */
    @Test
    void playWithinTheLapOpensNoGap() {
        Band band = new Band(32.15 + 13 / 2, 13, Math.toRadians(142), 9);
        SlotLaw law = new SlotLaw.Radial(band, new DrivePin.FarEnd());
        double closed = band.bladeAngle(9);
        Play play = new Play(0.15, 0.2, 0.25, 0.1);
        Sweep sweep = Sweep.of(law, closed, 32, 7, play, 0);
        Random random = new Random(11);
        int opened = 0;
        for (int state = 1; state < 7; state++) {
            double b = sweep.bladeAngle[state];
            boolean holds = sweep.lapAfterPlay[state] >= 0;
            for (int draw = 0; draw < 4; draw++) {
                double leak = ThrownBlades.leak(law, b, 32, play, sweep.loss[state], random);
                if (holds) {
                    assertThat(leak).as("state %s draw %s", state, draw).isLessThan(1e-3);
                }
                opened += leak > 1e-3 ? 1 : 0;
            }
            assertThat(sweep.loss[state]).isGreaterThan(0.5);
        }
        assertThat(sweep.lapAfterPlay[6]).isPositive();
        // The check can fail: a play five times as large opens gaps, and the sweep says so.
        Play loose = new Play(0.75, 1, 1.25, 0.5);
        Sweep rattling = Sweep.of(law, closed, 32, 7, loose, 0);
        assertThat(rattling.lapAfterPlay[6]).isNegative();
        for (int draw = 0; draw < 8; draw++) {
            opened += ThrownBlades.leak(law, closed, 32, loose, 0.5, random) > 1e-3 ? 1 : 0;
        }
        assertThat(opened).isPositive();
    }
}
