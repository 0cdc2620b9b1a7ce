// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Memo;
import ringleaf.spec.SetOption;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

class DeciderTest {
    private static final int STATES = 31;

    private static Variants variants(String text) {
        SpecSource source = SpecSource.of("spec.yaml", text);
        Problems problems = new Problems();
        Node root = YamlReader.read(source, problems).orElseThrow();
        assertThat(problems.isEmpty()).isTrue();
        return new Variants(Kinds.REGISTERED, source, (Node.Mapping) root, SharedFiles.NONE);
    }

    private static Attempts attempts(Variants variants) {
        return new Attempts(variants.reader(), "stop", STATES, new Memo(1000));
    }

    /** Seeds of specs whose first guesses fail and for which a way was known when this was written. */
    @ParameterizedTest
    @ValueSource(longs = {8, 13, 14, 21, 24, 29, 32, 33, 36, 37, 44, 46, 52, 63, 147})
    void whatCanBeBuiltIsFound(long seed) {
        Variants variants = variants(RandomSpecs.aperture(seed));
        assertThat(attempts(variants).with().works()).as("the first guess").isFalse();
        List<Decider.Taken> taken = new Decider(variants, "stop", STATES, 2).taken();
        assertThat(taken).as("seed " + seed).isNotEmpty();
        // Literally, as it would be typed.
        List<SetOption> options = taken.stream().map(Decider.Taken::option).toList();
        Variants.Variant variant = variants.reader().read(options);
        assertThat(variant.isGood()).isTrue();
        Attempts.Setting[] settings = taken.stream()
                .map(t -> new Attempts.Setting(t.option().keys(), t.choice().value()))
                .toArray(Attempts.Setting[]::new);
        assertThat(attempts(variants).holds(STATES, settings)).isTrue();
        for (Decider.Taken each : taken) {
            assertThat(each.choice().how()).startsWith("with the first guess, ");
        }
    }

    @Test
    void theNumberOfThreadsMakesNoDifference() {
        Variants variants = variants(RandomSpecs.aperture(14));
        List<String> one = values(new Decider(variants, "stop", STATES, 1).taken());
        assertThat(one).isNotEmpty();
        assertThat(values(new Decider(variants, "stop", STATES, 4).taken())).isEqualTo(one);
    }

    private static List<String> values(List<Decider.Taken> taken) {
        return taken.stream()
                .map(t -> t.choice().name() + "=" + t.choice().value())
                .toList();
    }

    /** What the spec says is never decided again, whatever it costs. */
    @Test
    void whatIsGivenStays() {
        String text = RandomSpecs.aperture(13) + "    plate-thickness: 2.4\n    pin-diameter: 1.5\n    lap: 0.6\n";
        for (Decider.Taken each : new Decider(variants(text), "stop", STATES, 2).taken()) {
            assertThat(each.choice().name()).isNotIn("plate-thickness", "pin-diameter", "lap");
        }
    }

    /** A single value that works is found wherever a search through all of them, one by one, finds one. */
    @ParameterizedTest
    @ValueSource(longs = {13, 21, 32, 36, 44})
    void noSingleValueThatIsPreferredWorks(long seed) {
        Variants variants = variants(RandomSpecs.aperture(seed));
        List<Decider.Taken> taken = new Decider(variants, "stop", STATES, 2).taken();
        assertThat(taken).hasSize(1);
        String value = taken.get(0).choice().value();
        Attempts attempts = attempts(variants);
        for (var decision :
                ringleaf.kinds.Kinds.REGISTERED.named("leaf-aperture").decisions()) {
            if (decision.path().equals(taken.get(0).choice().name())) {
                for (String other :
                        decision.values().subList(0, decision.values().indexOf(value))) {
                    Attempts.Setting setting =
                            new Attempts.Setting(List.of("mechanisms", "stop", decision.path()), other);
                    assertThat(attempts.with(setting).works() && attempts.holds(STATES, setting))
                            .as(other)
                            .isFalse();
                }
            }
        }
    }
}
