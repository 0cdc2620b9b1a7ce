// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.kinds.Kinds;
import ringleaf.mechanism.Request;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.FitRow;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Requirement;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.SpecDocument;
import ringleaf.spec.SpecReader;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/**
 * What a joint says is what is cut, what turns and what the judge asks, in every kind of drive: the joints are held
 * against finished outlines and against the motion, which know nothing of them.
 */
class JointsAreCutTest {
    private static final double SAME = 1e-6;
    private static final int STATES = 9;

    @Test
    void racks() {
        long seed = 20261201;
        Random random = new Random(seed);
        for (int i = 0; i < 8; i++) {
            String slot = String.valueOf(0.2 + random.nextInt(20) / 100.0);
            String held = random.nextBoolean()
                    ? "drive: {servo: micro-180}"
                    : "drive: {torque: 0.5kgcm}\n    pinion: {bore: {form: round, diameter: 4}}";
            Design design =
                    design("rack", "stroke: " + (10 + random.nextInt(50)), held, "clearances: {slot: " + slot + "}");
            String which = "seed " + seed + ", case " + i + ", " + held;
            agree(which, design);
            FitRow row = row(design, "front-plate", "slot");
            assertThat(row.size() - row.nominal()).as(which).isCloseTo(Double.parseDouble(slot), within(1e-9));
            Requirement.PinInHole asked = design.assembly().requirements().stream()
                    .filter(r -> r instanceof Requirement.PinInHole && r.check().equals("pin-in-slot"))
                    .map(Requirement.PinInHole.class::cast)
                    .findFirst()
                    .orElseThrow();
            assertThat(asked.fits()).as(which).hasSize(4);
            assertThat(asked.snug()).as(which).isTrue();
            assertThat(asked.fits())
                    .as(which)
                    .allSatisfy(fit -> assertThat(2 * fit.pinRadius()).isCloseTo(row.nominal(), within(1e-9)))
                    .allSatisfy(fit -> assertThat(fit.hole().box().height()).isCloseTo(row.size(), within(1e-9)))
                    .allSatisfy(fit -> assertThat(cuts(design.assembly()
                                    .members()
                                    .get(fit.holeMember())
                                    .part()))
                            .anyMatch(cut -> cut.centroid().distance(fit.hole().centroid()) < SAME
                                    && Math.abs(cut.box().width()
                                                    - fit.hole().box().width())
                                            < SAME
                                    && Math.abs(cut.box().height()
                                                    - fit.hole().box().height())
                                            < SAME));
            assertThat(rolled(design)).as(which).isEqualTo(1);
        }
    }

    @Test
    void gears() {
        String[] bores = {
            "{form: round, diameter: 5}",
            "{form: d, diameter: 5}",
            "{form: keyway, diameter: 6}",
            "{form: square, diameter: 4}"
        };
        for (String bore : bores) {
            Design pair = design(
                    "gear-pair",
                    "ratio: 2:1",
                    "module: 1.5",
                    "driver: {bore: " + bore + "}",
                    "driven: {bore: " + bore + "}");
            agree(bore, pair);
            assertThat(pair.joints().stream().map(FitRow::part).distinct())
                    .as(bore)
                    .containsExactly("driver", "driven");
            assertThat(rolled(pair)).as(bore).isEqualTo(1);
        }
        Design train = design("gear-train", "ratio: 12", "module: 1", "drive: {servo: micro-180}");
        agree("train", train);
        assertThat(rolled(train)).isEqualTo(2);
        agree("internal", design("gear-pair", "ratio: 3", "module: 1", "internal: true"));
    }

    @Test
    void belts() {
        String[] held = {"servo: micro-180", "centre-distance: {at-least: 70, at-most: 90}"};
        for (String each : held) {
            for (String teeth : List.of("16", "24")) {
                Design design =
                        design("belt-drive", "belt: T2.5", "driver: {teeth: " + teeth + "}", "ratio: 3:2", each);
                agree(each, design);
                Set<String> parts = new TreeSet<>();
                design.joints().forEach(row -> parts.add(row.part()));
                assertThat(parts)
                        .as(each)
                        .contains("base-plate", "front-plate", "driver-pulley", "driven-pulley", "driven-axle");
            }
        }
    }

    /** Every hole of the table is cut as wide, as often, and where a joint with a servo's screws is too. */
    private static void agree(String which, Design design) {
        assertThat(design.joints()).as(which).isNotEmpty().doesNotHaveDuplicates();
        for (FitRow row : design.joints()) {
            Part part = design.parts().stream()
                    .filter(p -> p.name().equals(row.part()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(which + ": no part " + row.part()));
            boolean round = row.shape() == FitRow.Shape.HOLE || row.shape() == FitRow.Shape.SEAT;
            if (part.isDrawn() && round) {
                assertThat(round(part, row.size()))
                        .as(which + ": " + row.name() + " of " + row.part() + ", " + row.size())
                        .isGreaterThanOrEqualTo(row.count());
            }
        }
    }

    /** Places about which an edge of a part runs round with a diameter. */
    private static int round(Part part, double diameter) {
        List<Point> places = new ArrayList<>();
        for (Contour cut : cuts(part)) {
            cut.segments().stream()
                    .filter(s -> s instanceof Arc arc && Math.abs(2 * arc.radius() - diameter) < SAME)
                    .map(s -> ((Arc) s).centre())
                    .filter(at -> places.stream().noneMatch(other -> other.distance(at) < SAME))
                    .forEach(places::add);
        }
        return places.size();
    }

    private static List<Contour> cuts(Part part) {
        List<Contour> cuts = new ArrayList<>();
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                cuts.addAll(region.holes());
            }
        }
        return cuts;
    }

    /** How many meshes there are; in each the motion turns the second by the joint's ratio. */
    private static int rolled(Design design) {
        Assembly assembly = design.assembly();
        int meshes = 0;
        for (Requirement asked : assembly.requirements()) {
            if (asked instanceof Requirement.Meshes mesh) {
                meshes++;
                for (int state = 1; state < STATES; state++) {
                    Placement first = pose(assembly, mesh.first().member(), state);
                    Placement before = pose(assembly, mesh.first().member(), state - 1);
                    double move = mesh.first() instanceof Requirement.Sliding sliding
                            ? first.shift().minus(before.shift()).dot(sliding.direction())
                            : first.angle() - before.angle();
                    double turn = pose(assembly, mesh.second().member(), state).angle()
                            - pose(assembly, mesh.second().member(), state - 1).angle();
                    double miss = turn - mesh.ratio() * move;
                    assertThat(Math.IEEEremainder(miss, 2 * Math.PI)).isCloseTo(0, within(1e-9));
                    Point axis = mesh.second().axis();
                    assertThat(pose(assembly, mesh.second().member(), state)
                                    .apply(axis)
                                    .distance(axis))
                            .isLessThan(1e-9);
                }
            }
        }
        return meshes;
    }

    private static Placement pose(Assembly assembly, int member, int state) {
        return assembly.motion().pose(assembly.members().get(member).body(), state);
    }

    private static FitRow row(Design design, String part, String name) {
        return design.joints().stream()
                .filter(row -> row.part().equals(part) && row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Design design(String kind, String... lines) {
        String text =
                "title: Test\nmechanisms:\n  m:\n    kind: " + kind + "\n    " + String.join("\n    ", lines) + "\n";
        Problems problems = new Problems();
        Catalogues catalogues = new Catalogues(SharedFiles.NONE, problems);
        Optional<SpecDocument> document = new SpecReader(Kinds.REGISTERED.fields(), catalogues, problems)
                .read(SpecSource.of("test.yaml", text), List.of());
        problems.throwIfAny();
        MechanismSpec one = document.orElseThrow().mechanisms().get(0);
        var planned = Kinds.REGISTERED
                .named(one.kind().name())
                .read(new Request(one.name(), one.values(), document.get().fabrication(), catalogues, problems));
        problems.throwIfAny();
        return planned.design(STATES);
    }
}
