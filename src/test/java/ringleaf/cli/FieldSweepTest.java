// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every field of every preset, at its bounds, beside them and in between, gives a design with findings or a refusal, and
 * never an exception, a figure that is no number, or a long wait. By default a share of the cases, another each run by
 * {@code -Dringleaf.sweep=SEED}; {@code -Dringleaf.sweep.share=1} runs them all.
 */
class FieldSweepTest {
    private static final double LONGEST = 10;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cold-frame-vent",
                "field-camera-stop",
                "harbour-light",
                "lamp-carriage-rack",
                "lens-turntable-gears",
                "semaphore-arm-belt"
            })
    void noValueOfAnyFieldBreaksARun(String preset) {
        long seed = Long.getLong("ringleaf.sweep", 1);
        double share = Double.parseDouble(System.getProperty("ringleaf.sweep.share", "0.03"));
        String only = System.getProperty("ringleaf.sweep.only", "");
        Random random = new Random(31 * seed + preset.hashCode());
        List<String> bad = new ArrayList<>();
        int ran = 0;
        int refused = 0;
        int failed = 0;
        for (List<String> sets : SweptFields.of(Swept.run(folder, preset, List.of()))) {
            boolean kerf = random.nextBoolean();
            if (random.nextDouble() >= share || !sets.toString().contains(only)) {
                continue;
            }
            List<String> all = new ArrayList<>(sets);
            if (kerf) {
                all.add("fabrication.kerf=true");
            }
            Swept swept = Swept.of(folder, preset, all, true);
            ran++;
            refused += swept.said().isEmpty() ? 0 : 1;
            failed += swept.failed() ? 1 : 0;
            if (swept.broke() || swept.seconds() > LONGEST) {
                String what = String.format("%s %s: %.1f s %s", preset, all, swept.seconds(), swept.said());
                bad.add(what);
                System.out.println(what);
            }
        }
        System.out.printf("%s: seed %d, %d runs, %d refused, %d failed%n", preset, seed, ran, refused, failed);
        assertThat(bad).isEmpty();
    }
}
