// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every field of every preset, at its bounds, beside them and in between, gives a design with findings or a refusal, and
 * never an exception, a figure that is no number, or a long wait. By default as many of the cases as a share of the time
 * allows, in an order that {@code -Dringleaf.sweep=SEED} changes; {@code -Dringleaf.sweep.seconds=100000} runs them all.
 */
class FieldSweepTest {
    /** Processor time of one case, s: twice what a run may take, as this one draws and meshes all there is. */
    private static final double LONGEST = 20;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cold-frame-vent",
                "field-camera-stop",
                "harbour-light",
                "instrument-plate",
                "lamp-carriage-rack",
                "lens-slide",
                "lens-turntable-gears",
                "semaphore-arm-belt"
            })
    void noValueOfAnyFieldBreaksARun(String preset) {
        long seed = Long.getLong("ringleaf.sweep", 1);
        double seconds = Double.parseDouble(System.getProperty("ringleaf.sweep.seconds", "8"));
        Random random = new Random(31 * seed + preset.hashCode());
        List<List<String>> cases = new ArrayList<>(SweptFields.of(Swept.run(folder, preset, List.of())));
        Collections.shuffle(cases, random);
        List<String> bad = new ArrayList<>();
        double spent = 0;
        int ran = 0;
        int refused = 0;
        int failed = 0;
        for (int i = 0; i < cases.size() && spent < seconds; i++) {
            List<String> sets = new ArrayList<>(cases.get(i));
            if (random.nextBoolean()) {
                sets.add("fabrication.kerf=true");
            }
            Swept swept = Swept.of(folder, preset, sets, true);
            ran++;
            spent += swept.seconds();
            refused += swept.said().isEmpty() ? 0 : 1;
            failed += swept.failed() ? 1 : 0;
            if (swept.broke() || swept.seconds() > LONGEST) {
                bad.add(String.format("%s %s: %.1f s %s", preset, sets, swept.seconds(), swept.said()));
            }
        }
        System.out.printf(
                "%s: seed %d, %d of %d cases, %d refused, %d failed%n",
                preset, seed, ran, cases.size(), refused, failed);
        assertThat(bad).isEmpty();
    }

    /** What is drawn for a machine or a printer of parts whose outlines cross. */
    @Test
    void solidsOfOutlinesThatCrossAreLeftOut() {
        Swept swept = Swept.of(folder, "lamp-carriage-rack", List.of("carriage.rack-length=5.001"), true);
        assertThat(swept.broke()).as(swept.said()).isFalse();
    }

    /** Values within their ranges that once broke a run, each alone. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "harbour-light | shutter.blade-width=0.5",
                "harbour-light | shutter.clearances.drive-end=20",
                "harbour-light | shutter.clearances.pivot-end=20",
                "harbour-light | shutter.drive.spare-teeth=40",
                "field-camera-stop | stop.drive.arm-width=50",
                "harbour-light | shutter.lever=0.5 fabrication.kerf=true",
                "lamp-carriage-rack | carriage.pinion.teeth=4 fabrication.kerf=true",
                "lamp-carriage-rack | carriage.rack-length=5 fabrication.kerf=true",
                "semaphore-arm-belt | arm.idler.diameter=44.7213595",
                "semaphore-arm-belt | arm.obstacles=[{x:10,y:10,diameter:4000}]"
            })
    void whatOnceBrokeIsRefusedOrFailsACheck(String preset, String sets) {
        Swept swept = Swept.of(folder, preset, List.of(sets.split(" ")), false);
        assertThat(swept.broke()).as(swept.said()).isFalse();
        assertThat(swept.failed() || !swept.said().isEmpty()).isTrue();
    }
}
