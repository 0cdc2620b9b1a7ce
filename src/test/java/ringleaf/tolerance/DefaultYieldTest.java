// SPDX-License-Identifier: Apache-2.0
package ringleaf.tolerance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.explore.Variants;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.AsBuilt;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** By default clearances at least 95 of 100 builds of gears and belts hold, or a clearance says why it is held. */
class DefaultYieldTest {
    private static final String[] MAKING = {
        "{process: co2-laser, stock: acrylic-3}",
        "{process: co2-laser, stock: plywood-3}",
        "{process: filament-print, stock: petg}",
        "{process: resin-print, stock: resin}"
    };
    private static final double[] MODULES = {0.8, 1, 1.25, 1.5, 2};
    private static final String[] BELTS = {"MXL", "XL", "T2.5", "T5", "3M", "5M", "curvilinear-2"};

    private static Optional<AsBuilt> built(String spec) {
        Problems problems = new Problems();
        SpecReader reader =
                new SpecReader(Kinds.REGISTERED.fields(), new Catalogues(SharedFiles.NONE, problems), problems);
        SpecSource source = SpecSource.of("test.yaml", spec);
        Node.Mapping root = reader.root(source, List.of()).orElseThrow();
        Variants.Variant variant = new Variants(Kinds.REGISTERED, source, root, SharedFiles.NONE)
                .reader()
                .read(List.of());
        return variant.isGood() ? variant.planned().get(0).asBuilt() : Optional.empty();
    }

    private static String gears(Random random) {
        int small = 14 + random.nextInt(14);
        boolean ring = random.nextInt(3) == 0;
        return "fabrication:\n  gear: " + MAKING[random.nextInt(MAKING.length)]
                + "\nmechanisms:\n  g:\n    kind: gear-pair\n    internal: " + ring
                + "\n    module: " + MODULES[random.nextInt(MODULES.length)]
                + "\n    driver: {teeth: " + small + "}\n    driven: {teeth: "
                + (ring ? 2 * small + 16 + random.nextInt(30) : 20 + random.nextInt(40)) + "}\n";
    }

    private static String belt(Random random) {
        return "fabrication:\n  pulley: " + MAKING[random.nextInt(MAKING.length)]
                + "\n  plate: " + MAKING[random.nextInt(MAKING.length)]
                + "\nmechanisms:\n  b:\n    kind: belt-drive\n    belt: \"" + BELTS[random.nextInt(BELTS.length)]
                + "\"\n    driver: {teeth: " + (16 + random.nextInt(10)) + "}\n    driven: {teeth: "
                + (20 + random.nextInt(30)) + "}\n";
    }

    @Test
    void seededGearsAndBeltsHoldOrSayWhyNot() {
        Random random = new Random(20261201);
        int judged = 0;
        for (int i = 0; i < 40; i++) {
            String spec = i % 2 == 0 ? gears(random) : belt(random);
            Optional<AsBuilt> built = built(spec);
            if (built.isPresent()) {
                judged++;
                holds(spec, built.get());
            }
        }
        assertThat(judged).isGreaterThanOrEqualTo(30);
    }

    private static void holds(String spec, AsBuilt built) {
        Yield yield = new YieldStudy(built).of(600, 1, 1, Ticker.NONE);
        if (yield.share() < 0.95) {
            String commonest = yield.failures().get(0).check();
            for (AsBuilt.Limit limit : built.limits()) {
                if (limit.check().equals(commonest)) {
                    assertThat(limit.room()).as(spec + yield).contains("held at");
                }
            }
        }
    }

    /** What the law leaves nothing of is said, and a larger clearance by itself does not count. */
    @ParameterizedTest
    @ValueSource(strings = {"backlash: 0", "backlash: 0.05"})
    void playThatIsGivenTooSmallIsToldWithWhatTheProcessAsksFor(String given) {
        AsBuilt built = built("fabrication:\n  gear: " + MAKING[2] + "\nmechanisms:\n  g:\n    kind: gear-pair\n    "
                        + given + "\n    module: 1\n    driver: {teeth: 20}\n    driven: {teeth: 40}\n")
                .orElseThrow();
        assertThat(new DriftStudy(built).brokenAsDrawn())
                .as("rounding breaks nothing")
                .isEmpty();
        Yield yield = new YieldStudy(built).of(600, 1, 1, Ticker.NONE);
        assertThat(yield.share()).isLessThan(0.95);
        assertThat(yield.failures().get(0).check()).isEqualTo("backlash");
        assertThat(built.limits().get(0).room()).contains("as given").contains("root-sum-square");
        assertThat(built.limits().get(0).reliefs()).isNotEmpty();
    }
}
