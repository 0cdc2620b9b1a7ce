// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.draw.mesh.PartMesh;
import ringleaf.draw.mesh.StlWriter;
import ringleaf.fabricate.ThrownSpec;
import ringleaf.geom.Tolerance;
import ringleaf.part.Part;
import ringleaf.solid.Mesh;

/** Every part of every spec that is not refused has a solid without a fault and of the outlines' volume. */
class EverySolidTest {
    private static final double CHORD = 0.01;
    private static final double ROUNDING = 1e-5;
    private static final int SPECS = 72;

    /** Parts whose levels end in points on one another's edges, or nearly so. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{kind: belt-drive, belt: T5, driver: {teeth: 15}, driven: {teeth: 33}}",
                "{kind: belt-drive, belt: 5M, driver: {teeth: 20}, driven: {teeth: 40, hub-screws: {screw: M2},"
                        + " lightening: {form: spokes, count: 8}}}",
                "{kind: pulley, belt: T2.5, teeth: 24, hub-height: 6, hub-diameter: 14, bore: {form: bearing, bearing: 623}}"
            })
    void levelsThatTouch(String mechanism) {
        String spec = "mechanisms:\n  made: " + mechanism + "\n";
        assertThat(faults(spec)).as(spec).isEmpty();
    }

    @Test
    void everyThrownSpec() {
        int solids = 0;
        Map<String, Integer> made = new TreeMap<>();
        List<String> faults = new ArrayList<>();
        for (long seed = 1000; seed < 1000 + SPECS; seed++) {
            String spec = ThrownSpec.of(seed, "");
            Optional<ThrownSpec.Made> design = ThrownSpec.design(spec);
            if (design.isPresent()) {
                solids += design.get().drawn().size();
                made.merge(ThrownSpec.kind(seed), 1, Integer::sum);
                faults.addAll(faults(spec));
            }
        }
        assertThat(faults).isEmpty();
        assertThat(made).as("kinds").hasSize(6);
        assertThat(made.values()).allMatch(count -> count > SPECS / 30);
        assertThat(solids).isGreaterThan(2 * SPECS);
    }

    private static List<String> faults(String spec) {
        List<String> faults = new ArrayList<>();
        for (Part part : ThrownSpec.design(spec).orElseThrow().drawn()) {
            try {
                check(part);
            } catch (RuntimeException | AssertionError fault) {
                faults.add(part.name() + ": " + fault + "\n" + spec);
            }
        }
        return faults;
    }

    private static void check(Part part) {
        Mesh mesh = PartMesh.onBed(part, new Tolerance(CHORD)).orElseThrow();
        assertThat(mesh.isClosed()).isTrue();
        ReadMesh read = StlReader.read(StlWriter.write(mesh, ""));
        assertThat(read.faults()).isZero();
        double volume = SolidSamples.volume(part);
        double bound = SolidSamples.bound(part, CHORD) + ROUNDING * volume + SolidSamples.rounding(part);
        assertThat(read.volume()).isPositive().isCloseTo(volume, within(bound));
    }
}
