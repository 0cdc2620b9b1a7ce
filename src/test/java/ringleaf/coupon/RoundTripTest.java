// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringleaf.spec.text.Problems;

/**
 * Sheets filled in by machines of which everything is known: what they are made of comes back within the uncertainty
 * that is stated, as often as is stated.
 */
class RoundTripTest {
    private static final int RUNS = 400;
    private static final int FEWER = 150;

    /** How often each of some values lay within its interval. */
    private static final class Coverage {
        private int runs;
        private int refused;
        private final int[] within = new int[5];
        private double bias;
    }

    private static Coverage cover(MadeUpMachine machine, int runs) {
        Coverage coverage = new Coverage();
        boolean layers = machine.coupon.layers();
        for (long seed = 1; seed <= runs; seed++) {
            Problems problems = new Problems();
            var measured = machine.measured(machine.sheet(seed), problems);
            if (measured.isEmpty()) {
                coverage.refused++;
                continue;
            }
            coverage.runs++;
            Measured m = measured.get();
            Estimate kerf = layers ? MadeUpMachine.value(m, "slots come out wider by") : MadeUpMachine.value(m, "kerf");
            count(coverage, 0, kerf, machine.kerf);
            coverage.bias += kerf.value() - machine.kerf;
            count(
                    coverage,
                    1,
                    MadeUpMachine.value(m, "holes come out wider by"),
                    machine.hole + (layers ? machine.kerf : 0));
            count(coverage, 2, MadeUpMachine.value(m, "scale along x is off by"), 100 * machine.scaleX);
            count(coverage, 3, MadeUpMachine.value(m, "scale along y is off by"), 100 * machine.scaleY);
            count(coverage, 4, MadeUpMachine.value(m, "repeatability"), 1.959964 * machine.machine);
        }
        return coverage;
    }

    private static void count(Coverage coverage, int i, Estimate estimate, double truth) {
        coverage.within[i] += estimate.holds(truth) ? 1 : 0;
    }

    /** Three deviations of the binomial distribution about 95 %. */
    private static double bound(int runs) {
        return 3 * Math.sqrt(0.95 * 0.05 / runs);
    }

    @Test
    void intervalsHoldTheTruthAsOftenAsStated() {
        MadeUpMachine machine = new MadeUpMachine("co2-laser", "acrylic-3");
        Coverage coverage = cover(machine, RUNS);
        assertThat(coverage.refused).as("sheets refused that were honest").isLessThan(RUNS / 100);
        for (int i = 0; i < 4; i++) {
            double share = (double) coverage.within[i] / coverage.runs;
            assertThat(share).as("value " + i).isCloseTo(0.95, within(bound(coverage.runs)));
        }
        // The interval of a deviation is approximate: Satterthwaite's.
        assertThat((double) coverage.within[4] / coverage.runs).isCloseTo(0.95, within(bound(coverage.runs) + 0.02));
        assertThat(coverage.bias / coverage.runs).as("mean error of the kerf").isCloseTo(0, within(0.0015));
    }

    @Test
    void theSameHoldsForLayers() {
        MadeUpMachine machine = new MadeUpMachine("filament-print", "pla");
        machine.kerf = -0.12;
        machine.hole = -0.08;
        machine.machine = 0.05;
        machine.leastWeb = 0.75;
        machine.leastHole = 0.7;
        Coverage coverage = cover(machine, FEWER);
        assertThat(coverage.refused).isLessThan(FEWER / 50);
        for (int i = 0; i < 4; i++) {
            double share = (double) coverage.within[i] / coverage.runs;
            assertThat(share).as("value " + i).isCloseTo(0.95, within(bound(coverage.runs)));
        }
    }

    private static MadeUpMachine readByAnInstrumentThatErrs() {
        MadeUpMachine machine = new MadeUpMachine("fibre-laser", "brass-0.15");
        machine.kerf = 0.055;
        machine.machine = 0.012;
        machine.reading = 0.006;
        machine.outsideError = 0.02;
        machine.insideError = 0.03;
        machine.leastWeb = 0.3;
        machine.leastHole = 0.2;
        return machine;
    }

    /** An error of the instrument that stays the same cannot be seen in the readings; the interval allows for it. */
    @Test
    void anInstrumentsOwnErrorIsAllowedFor() {
        MadeUpMachine machine = readByAnInstrumentThatErrs();
        Coverage coverage = cover(machine, FEWER);
        assertThat(coverage.refused).isLessThan(FEWER / 50);
        for (int i = 0; i < 4; i++) {
            double share = (double) coverage.within[i] / coverage.runs;
            assertThat(share).as("value " + i).isGreaterThan(0.95 - bound(coverage.runs));
        }
    }

    /** With it left out of account, the interval would hold the truth far too seldom: the test above can fail. */
    @Test
    void leavingItOutWouldShow() {
        MadeUpMachine machine = readByAnInstrumentThatErrs();
        int within = 0;
        int runs = 60;
        for (long seed = 1; seed <= runs; seed++) {
            String sheet =
                    machine.sheet(seed).replace("error: 0.02mm", "error: 0mm").replace("error: 0.03mm", "error: 0mm");
            var measured = machine.measured(sheet, new Problems());
            within += measured.isPresent()
                            && MadeUpMachine.value(measured.get(), "kerf").holds(0.055)
                    ? 1
                    : 0;
        }
        assertThat((double) within / runs).isLessThan(0.85);
    }

    @Test
    void moreReadingsTakeMeasuringOffTheRepeatability() {
        MadeUpMachine machine = new MadeUpMachine("co2-laser", "acrylic-3");
        machine.machine = 0.02;
        machine.reading = 0.03;
        machine.readings = 8;
        double sum = 0;
        int runs = 0;
        for (long seed = 1; seed <= 40; seed++) {
            var measured = machine.measured(machine.sheet(seed), new Problems());
            if (measured.isPresent()) {
                sum += MadeUpMachine.value(measured.get(), "repeatability").value();
                double scatter = MadeUpMachine.value(measured.get(), "readings of one size scatter by")
                        .value();
                assertThat(scatter).as("seed " + seed).isCloseTo(0.03, within(0.007));
                runs++;
            }
        }
        assertThat(runs).isGreaterThanOrEqualTo(39);
        assertThat(sum / runs).isCloseTo(1.96 * 0.02, within(0.005));
    }

    @Test
    void laddersAndFitsComeBack() {
        MadeUpMachine machine = new MadeUpMachine("co2-laser", "acrylic-3");
        machine.machine = 0.005;
        machine.hole = 0;
        machine.leastWeb = 1.5;
        Measured m = machine.measured(machine.sheet(7), new Problems()).orElseThrow();
        Estimate web = MadeUpMachine.value(m, "least-web");
        // The interval runs from the rung that failed to the first that came out, and the catalogue takes the latter.
        assertThat(web.holds(machine.leastWeb)).isTrue();
        assertThat(web.value()).isGreaterThanOrEqualTo(machine.leastWeb - 0.01);
        assertThat(MadeUpMachine.value(m, "least-hole").holds(machine.leastHole))
                .isTrue();
        assertThat(MadeUpMachine.value(m, "running-clearance").holds(0.06)).isTrue();
        assertThat(MadeUpMachine.value(m, "slot-clearance").holds(0.1)).isTrue();
        assertThat(MadeUpMachine.value(m, "press-allowance").holds(0.01)).isTrue();
    }
}
