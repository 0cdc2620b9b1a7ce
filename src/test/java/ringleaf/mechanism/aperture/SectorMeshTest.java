// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.curve.Offset;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;
import ringleaf.tooth.GearPair;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/**
 * Pinion and sector of a ring are rolled through their travel and their play is measured on the outlines, by the judge
 * and under the names that pairs of gears have.
 */
class SectorMeshTest {
    private static final int STATES = 5;
    private static final List<String> PAIR = List.of("pinion", "drive-ring");
    /** Made thinner all round by so much a flank gives way by twice as much along the line of action, mm. */
    private static final double THINNED = 0.05;

    private static String text(String hand) {
        return "title: T\nmechanisms:\n  a:\n    kind: leaf-aperture\n    blades: 8\n    full-opening: 40\n"
                + "    least-opening: 14\n    blade-thickness: 0.15\n" + "    hand: "
                + hand + "\n    drive: {by: pinion, servo: micro-180}\n";
    }

    private static GearPair pair(String hand) {
        return Apertures.sizes(text(hand)).pinionPlan().orElseThrow().pair();
    }

    private static Finding found(Assembly assembly, String check) {
        Optional<Finding> found = Judge.judge(assembly, Options.DEFAULT).findings().stream()
                .filter(f -> f.check().equals(check) && f.subjects().containsAll(PAIR))
                .findFirst();
        assertThat(found).as(check).isPresent();
        assertThat(found.get().judge()).isEqualTo(Finding.Judge.OUTLINES);
        return found.get();
    }

    @ParameterizedTest
    @ValueSource(strings = {"left", "right"})
    void rollsOverTheWholeTravelAndHasItsPlay(String hand) {
        Assembly assembly = Apertures.design(text(hand), STATES).assembly();
        GearPair pair = pair(hand);
        assertThat(found(assembly, Requirement.Meshes.GAP).failed()).isFalse();
        Finding play = found(assembly, Requirement.Meshes.PLAY);
        assertThat(play.failed()).isFalse();
        double radius = pair.gear().referenceRadius();
        assertThat(Math.toRadians(play.measured()) * radius)
                .as("play along the reference circle, mm")
                .isCloseTo(pair.gearPlay() * radius, within(0.003));
    }

    @Test
    void teethThatAreThinnerHaveMorePlay() {
        Assembly made = Apertures.design(text("left"), STATES).assembly();
        UnaryOperator<Region> thinner =
                region -> Offset.of(Region.of(region.outer()), -THINNED).get(0);
        Assembly thinned = Faults.part("pinion", Faults.outlines(-1, thinner)).apply(made);
        Finding before = found(made, Requirement.Meshes.PLAY);
        Finding after = found(thinned, Requirement.Meshes.PLAY);
        assertThat(after.failed()).isTrue();
        // The line of action is normal to both flanks and touches the base circle: elementary, no source.
        double more = Math.toRadians(after.measured() - before.measured())
                * pair("left").gear().baseRadius();
        assertThat(more).isCloseTo(2 * THINNED, within(0.004));
    }
}
