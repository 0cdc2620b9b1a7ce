// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.Spoken;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/** A random drive is a sound design or a clear refusal, and the judge agrees with the closed forms. */
class RandomDriveTest {
    private static final String[] BELTS = {"MXL", "XL", "T2.5", "T5", "3M", "5M", "curvilinear-2"};
    private static final String[] MAKING = {
        "",
        "fabrication:\n  pulley: {process: co2-laser, stock: acrylic-3}\n",
        "fabrication:\n  plate: {process: co2-laser, stock: acrylic-3}\n"
    };

    @Test
    void randomDrivesAreSoundOrRefused() {
        long seed = 20261125;
        Random random = new Random(seed);
        int made = 0;
        for (int i = 0; i < 90; i++) {
            String spec = spec(random);
            String name = "seed " + seed + ", case " + i + ":\n" + spec;
            Problems problems = new Problems();
            Optional<Design> design;
            try {
                design = Designs.read(spec, problems, SharedFiles.NONE);
            } catch (RuntimeException e) {
                throw new AssertionError(name, e);
            }
            if (design.isEmpty()) {
                assertThat(problems.text()).as(name).startsWith("arm.yaml:");
                continue;
            }
            made++;
            Design found = design.get();
            double pitch = Designs.value(found, "pitch");
            assertThat(Math.abs(Designs.value(found, "belt-length") - pitch * Designs.value(found, "belt-teeth")))
                    .as(name)
                    .isLessThan(1e-6);
            boolean sound = found.findings().stream().noneMatch(Finding::failed);
            if (sound && i % 3 == 0) {
                for (Finding finding :
                        Judge.judge(found.assembly(), Options.DEFAULT).findings()) {
                    assertThat(finding.failed())
                            .as(Spoken.of(finding) + "\n" + name)
                            .isFalse();
                }
            }
        }
        assertThat(made).isGreaterThan(25);
    }

    private static String spec(Random random) {
        String belt = BELTS[random.nextInt(BELTS.length)];
        List<String> lines = new ArrayList<>();
        int z1 = 8 + random.nextInt(30);
        int z2 = 8 + random.nextInt(50);
        if (random.nextInt(4) == 0) {
            lines.add("ratio: " + (1 + random.nextInt(5)) + ":" + (1 + random.nextInt(3)));
        } else {
            lines.add("driver: {teeth: " + z1 + (random.nextBoolean() ? ", flanges: none}" : "}"));
            lines.add("driven: {teeth: " + z2 + (random.nextBoolean() ? ", hub-height: 4}" : "}"));
        }
        boolean fixed = random.nextBoolean();
        int distance = 20 + random.nextInt(130);
        if (fixed) {
            lines.add("centres: fixed");
            lines.add("centre-distance: " + distance);
            if (random.nextBoolean()) {
                lines.add("idler: {side: inside, along: 0." + (2 + random.nextInt(6)) + "}");
            }
        } else if (random.nextBoolean()) {
            lines.add("centre-distance: {at-least: " + distance + ", at-most: " + (distance + 20) + "}");
        }
        if (random.nextInt(3) == 0) {
            lines.add("belt-teeth: " + (30 + random.nextInt(120)));
        }
        lines.add("at: " + random.nextInt(360));
        lines.add("plates: " + new String[] {"none", "one", "two"}[random.nextInt(3)]);
        if (random.nextBoolean()) {
            lines.add("servo: micro-180");
        }
        if (random.nextInt(3) == 0) {
            lines.add("further: [{x: " + (random.nextInt(120) - 60) + ", y: " + (random.nextInt(120) - 60) + ", side: "
                    + (random.nextBoolean() ? "inside" : "outside") + "}]");
        }
        return MAKING[random.nextInt(MAKING.length)] + Designs.drive(belt, lines.toArray(new String[0]));
    }
}
