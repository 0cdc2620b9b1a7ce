// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.leaf.Play;
import ringleaf.leaf.Sweep;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.AsBuilt.Deviation;

/** Apertures with sizes that are off, against clearances in closed form and against the fold. */
class ApertureBuiltTest {
    private static final String[] LIGHT = {
        "full-opening: 64", "least-opening: 20", "blades: 14", "blade-thickness: 0.15", "drive: {servo: micro-180}"
    };

    private static double[][] asDrawn(AsBuilt built) {
        List<Deviation> sizes = built.deviations();
        double[][] off = new double[sizes.size()][];
        for (int i = 0; i < off.length; i++) {
            off[i] = new double[sizes.get(i).copies()];
        }
        return off;
    }

    private static int size(AsBuilt built, String name) {
        for (int i = 0; i < built.deviations().size(); i++) {
            if (built.deviations().get(i).name().equals(name)) {
                return i;
            }
        }
        throw new AssertionError(name);
    }

    private static double margin(AsBuilt built, double[][] off, BuiltLimit limit) {
        return built.bench().margins(off)[limit.ordinal()];
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "drive-pin: lever", "hand: right", "drive-pin: far-end", "slot: linear-opening"})
    void asDrawnEverythingHoldsAndEveryMarginIsANumber(String extra) {
        ApertureBuilt built = new ApertureBuilt(Apertures.sizes(Apertures.spec(join(LIGHT, extra))));
        double[] margins = built.bench().margins(asDrawn(built));
        assertThat(margins).hasSize(built.limits().size());
        for (int i = 0; i < margins.length; i++) {
            assertThat(margins[i]).as(built.limits().get(i).check()).isFinite().isNotNegative();
        }
    }

    private static String[] join(String[] lines, String extra) {
        String[] all = java.util.Arrays.copyOf(lines, lines.length + 1);
        all[lines.length] = extra;
        return all;
    }

    /** Room that a design leaves on purpose is what its built thing has left, and falls one for one. */
    @Test
    void marginsAreTheClearances() {
        ApertureDesign design = Apertures.sizes(Apertures.spec(LIGHT));
        ApertureBuilt built = new ApertureBuilt(design);
        double[][] off = asDrawn(built);
        Clearances room = design.spec().clearances();
        assertThat(margin(built, off, BuiltLimit.TURNS)).isCloseTo(room.ringRadial(), within(1e-9));
        assertThat(margin(built, off, BuiltLimit.OPENS)).isCloseTo(room.opening(), within(1e-6));
        assertThat(margin(built, off, BuiltLimit.FREE)).isCloseTo(room.ringAxial(), within(1e-9));
        assertThat(margin(built, off, BuiltLimit.SLOT_ENDS)).isCloseTo(room.slotEnd(), within(1e-3));
        off[size(built, "wall-radius")][0] = -0.05;
        assertThat(margin(built, off, BuiltLimit.TURNS)).isCloseTo(room.ringRadial() - 0.05, within(1e-9));
        off = asDrawn(built);
        off[size(built, "blade-inner-radius")][5] = -0.04;
        assertThat(margin(built, off, BuiltLimit.OPENS)).isCloseTo(room.opening() - 0.04, within(1e-6));
        off = asDrawn(built);
        off[size(built, "slot-outer-end")][13] = -0.07;
        assertThat(margin(built, off, BuiltLimit.SLOT_ENDS)).isCloseTo(room.slotEnd() - 0.07, within(2e-3));
    }

    /** All slots wider by the same is more play for all: the fold's own lap after play says when a gap opens. */
    @Test
    void playOpensAGapWhereTheFoldSaysSo() {
        ApertureDesign design = Apertures.sizes(Apertures.spec(join(LIGHT, "drive-pin: lever")));
        ApertureBuilt built = new ApertureBuilt(design);
        Clearances room = design.spec().clearances();
        double[][] off = asDrawn(built);
        int slot = size(built, "slot-width");
        int both = 0;
        for (double wider = 0; wider < 1.2; wider += 0.04) {
            java.util.Arrays.fill(off[slot], wider);
            Play play = new Play(room.bore(), room.slot() + wider, room.ringRadial(), 0);
            Sweep sweep = Sweep.of(design.law(), design.closed(), design.spec().clearRadius(), 61, play, design.ear());
            double least = sweep.lapAfterPlay[Sweep.leastOf(sweep.lapAfterPlay)];
            boolean holds = margin(built, off, BuiltLimit.PLAY) > 0;
            if (Math.abs(least) > 0.05) {
                assertThat(holds)
                        .as("slots wider by " + wider + ", fold leaves " + least)
                        .isEqualTo(least > 0);
                both |= holds ? 1 : 2;
            }
        }
        assertThat(both).as("some hold and some do not").isEqualTo(3);
    }

    /** Turning the ring's slots all alike turns all blades alike, by the law of the slots. */
    @Test
    void slotsOffAlikeAreTheRingTurned() {
        ApertureDesign design = Apertures.sizes(Apertures.spec(LIGHT));
        ApertureBuilt built = new ApertureBuilt(design);
        double[][] off = asDrawn(built);
        double drawn = margin(built, off, BuiltLimit.CLOSES);
        java.util.Arrays.fill(off[size(built, "slot-across")], 0.02);
        double ring = design.travel() + design.rim().overTravel() * Math.signum(design.travel());
        double b = design.law().bladeAngle(design.travel(), design.closed());
        double turn = 0.02 / design.band().pinRadius(design.pin(), b);
        double moved = turn / design.law().ringRate(b) * 2 * design.band().pivotRadius() * Math.cos(b / 2) / 2;
        assertThat(margin(built, off, BuiltLimit.CLOSES) - drawn)
                .as("ring at " + ring)
                .isCloseTo(moved, within(0.1 * moved));
    }

    @Test
    void benchesDoNotRememberTheBuildBefore() {
        ApertureBuilt built = new ApertureBuilt(Apertures.sizes(Apertures.spec(LIGHT)));
        AsBuilt.Bench bench = built.bench();
        double[] first = bench.margins(asDrawn(built));
        double[][] off = asDrawn(built);
        for (double[] copies : off) {
            java.util.Arrays.fill(copies, 0.3);
        }
        bench.margins(off);
        assertThat(bench.margins(asDrawn(built))).isEqualTo(first);
    }

    /** A pin that cannot reach its slot any more breaks the build instead of the tool. */
    @Test
    void whatCannotBeReckonedDoesNotHold() {
        ApertureBuilt built = new ApertureBuilt(Apertures.sizes(Apertures.spec(join(LIGHT, "drive-pin: lever"))));
        double[][] off = asDrawn(built);
        off[size(built, "slot-across")][0] = 60;
        assertThat(margin(built, off, BuiltLimit.SLOT_ENDS)).isNegative();
    }
}
