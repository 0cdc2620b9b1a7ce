// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.spec.text.SpecRefused;

/** Random specs: a design on which formulas and outlines agree, or a clear refusal; never anything else. */
class RandomGearsTest {
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void goodOrRefused(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 8; i++) {
            String text = spec(random);
            String who = "seed " + seed + ", spec " + i + ":\n" + text;
            try {
                Design design = Gears.designs(text, 13).get(0);
                boolean own = failed(design.findings());
                boolean judged = failed(Gears.judged(design));
                // Where every formula holds, the outlines must roll; where they do not, some formula must have said so.
                if (!own) {
                    assertThat(judged).as(who + Gears.judged(design)).isFalse();
                }
                assertThat(design.motion().rows()).as(who).hasSize(13);
            } catch (SpecRefused refused) {
                assertThat(refused.problems().text())
                        .as(who)
                        .doesNotContain("Exception")
                        .isNotBlank();
            }
        }
    }

    private static boolean failed(List<Finding> findings) {
        for (Finding finding : findings) {
            if (finding.failed()) {
                return true;
            }
        }
        return false;
    }

    private static String spec(Random random) {
        boolean inner = random.nextInt(4) == 0;
        int driver = 8 + random.nextInt(25);
        int driven = inner ? driver + 8 + random.nextInt(60) : 8 + random.nextInt(70);
        double module = 0.5 + 0.25 * random.nextInt(7);
        double angle = new double[] {14.5, 20, 20, 20, 22.5, 25}[random.nextInt(6)];
        StringBuilder text = new StringBuilder("mechanisms:\n  g:\n    kind: gear-pair\n");
        text.append("    internal: ").append(inner).append('\n');
        text.append("    pressure-angle: ").append(angle).append('\n');
        text.append("    backlash: ").append(0.02 + 0.1 * random.nextDouble()).append('\n');
        text.append("    at: ").append(random.nextInt(360) - 180).append('\n');
        if (random.nextInt(3) == 0) {
            double middle = module * (inner ? driven - driver : driver + driven) / 2.0;
            text.append("    centre-distance: ")
                    .append(middle + module * (random.nextDouble() - 0.3))
                    .append('\n');
        }
        text.append("    module: ").append(module).append('\n');
        text.append("    driver: {teeth: ").append(driver).append(", bore: {form: none}}\n");
        text.append("    driven: {teeth: ").append(driven).append("}\n");
        return text.toString();
    }
}
