// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecRefused;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

class RackTest {
    private static final String CUT = """
            fabrication:
              plate: {process: co2-laser, stock: acrylic-3}
              gear: {process: co2-laser, stock: acrylic-3}
            """;

    /**
     * A rack is the basic rack of ISO 53: its pitch is pi m, and a turn of the pinion moves it by the reference radius
     * m z/2 for each radian; force is torque over that radius, less friction.
     */
    @Test
    void theRackMovesByTheReferenceRadius() {
        Design design = Racks.design(
                "stroke: 40",
                "module: 1",
                "pinion: {teeth: 20}",
                "drive: {torque: 100mNm}",
                "backlash: 0.2",
                "clearances: {slot: 0.1}");
        assertThat(Racks.value(design, "pinion-travel")).isCloseTo(Math.toDegrees(40 / 10.0), within(1e-9));
        assertThat(Racks.value(design, "mounting-distance")).isCloseTo(10, within(1e-9));
        double force = Racks.value(design, "rack-force");
        assertThat(force).isLessThan(100 / 10.0).isGreaterThan(0.8 * 100 / 10.0);
        Assembly assembly = design.assembly();
        int last = assembly.motion().states() - 1;
        Placement moved = assembly.motion().pose(RackMotion.RACK, last);
        assertThat(moved.apply(Point.ORIGIN).x()).isCloseTo(40, within(1e-12));
        assertThat(assembly.motion().pose(RackMotion.PINION, last).angle()).isCloseTo(4, within(1e-12));
    }

    @Test
    void aServoGivesTheStrokeAndTheTable() {
        Kind.Planned planned =
                Racks.planned(new Problems(), "", "drive: {servo: micro-180}", "module: 1.25", "pinion: {teeth: 18}");
        Design design = planned.design(31);
        assertThat(Racks.value(design, "stroke")).isCloseTo(Math.floor(10 * Math.PI * 11.25) / 10, within(1e-9));
        ServoLaw law = planned.servoLaw().orElseThrow();
        assertThat(law.output(1, ServoLaw.Build.AS_DRAWN)).isCloseTo(11.25, within(1e-12));
        assertThat(law.unit()).isEqualTo("mm");
    }

    /** With a rack of given length the stroke is the longest that both its teeth and the servo reach. */
    @Test
    void aGivenLengthGivesTheLongestStroke() {
        Design design = Racks.design("rack-length: 90", "drive: {servo: micro-180}");
        double stroke = Racks.value(design, "stroke");
        assertThat(Racks.value(design, "rack-length")).isEqualTo(90);
        double module = Racks.value(design, "module");
        for (int teeth = 12; teeth < 48; teeth += 3) {
            try {
                Design other = Racks.design(
                        "rack-length: 90",
                        "drive: {servo: micro-180}",
                        "module: " + module,
                        "pinion: {teeth: " + teeth + "}");
                assertThat(Racks.value(other, "stroke")).as(teeth + " teeth").isLessThanOrEqualTo(stroke + 1e-9);
            } catch (SpecRefused refused) {
                assertThat(refused.problems().text()).contains("teeth");
            }
        }
    }

    /** The search against all candidates one by one, written out: none before the one taken holds without a warning. */
    @Test
    void theFirstCandidateThatHoldsIsTaken() {
        for (String stroke : List.of("15", "60")) {
            Design found = Racks.design("stroke: " + stroke, "drive: {servo: standard-180}");
            assertThat(found.findings()).noneMatch(f -> f.status() != Finding.Status.PASS);
            double module = Racks.value(found, "module");
            for (double tried : new double[] {1, 0.8, 1.25, 1.5, 0.7, 0.6, 2, 0.5, 2.5, 3, 0.4}) {
                if (tried == module) {
                    break;
                }
                assertThat(holds(stroke, tried))
                        .as("stroke " + stroke + ", module " + tried)
                        .isFalse();
            }
        }
    }

    private static boolean holds(String stroke, double module) {
        for (double pin : new double[] {3, 2.5, 2, 4, 1.5, 5, 6}) {
            for (int teeth = 10; teeth < 70; teeth++) {
                try {
                    PlannedRack planned = (PlannedRack) Racks.planned(
                            new Problems(),
                            "",
                            "stroke: " + stroke,
                            "drive: {servo: standard-180}",
                            "module: " + module,
                            "guide: {pin-diameter: " + pin + "}",
                            "pinion: {teeth: " + teeth + "}");
                    boolean clean = new RackChecks(planned.layout())
                            .all().stream().allMatch(f -> f.status() == Finding.Status.PASS);
                    if (clean) {
                        return true;
                    }
                } catch (SpecRefused refused) {
                    assertThat(refused.problems().text()).contains("test.yaml:");
                }
            }
        }
        return false;
    }

    /** Room at the tips is made by deeper roots: teeth keep their height, and so their contact. */
    @Test
    void printedTeethKeepTheirHeight() {
        Design printed = Racks.design("stroke: 40", "module: 1", "pinion: {teeth: 20}");
        RackLayout layout = ((PlannedRack)
                        Racks.planned(new Problems(), "", "stroke: 40", "module: 1", "pinion: {teeth: 20}"))
                .layout();
        assertThat(printed.findings()).noneMatch(Finding::failed);
        assertThat(layout.pair().rackAddendum()).isCloseTo(1, within(1e-12));
        assertThat(layout.rootDepth()).isGreaterThan(1.25);
        // a rack on 20 teeth, ISO 21771 relations: the published contact ratio of the full rack is 1.7688
        assertThat(layout.pair().ratio()).isCloseTo(1.7688, within(1e-4));
        assertThat(layout.tipClearance()).isGreaterThan(0.25);
    }

    /** A pinion that is bored for the servo's output ends where that ends, and needs no room for a horn. */
    @Test
    void aPinionOnTheOutputItself() {
        String bored = "pinion: {bore: {form: round, diameter: 4.8, fit: press}}";
        RackLayout on = ((PlannedRack)
                        Racks.planned(new Problems(), "", "stroke: 25", "drive: {servo: micro-180}", bored))
                .layout();
        RackPlates plates = new RackPlates(on);
        double hornHeight = on.spec().servo().orElseThrow().hornHeight();
        assertThat(plates.pinionBottom() + on.spec().width()).isCloseTo(plates.earFace() + hornHeight, within(1e-9));
        assertThat(RackLayout.hornHole(on.spec())).isCloseTo(4.8 / 2 + 0.5, within(1e-9));
        assertThat(Racks.judged(Racks.design("stroke: 25", "drive: {servo: micro-180}", bored)))
                .noneMatch(Finding::failed);
    }

    /** What the calculated checks pass the outlines pass too: random racks of both processes, none of them a preset. */
    @Test
    void theOutlinesAgree() {
        Random random = new Random(20261130);
        int sound = 0;
        for (int i = 0; i < 24; i++) {
            String[] lines = {
                "stroke: " + (5 + random.nextInt(90)),
                random.nextBoolean() ? "drive: {servo: micro-180}" : "drive: {torque: 0.5kgcm}",
                random.nextInt(3) == 0 ? "eye: 2" : "spare-teeth: " + random.nextInt(4),
                "pressure-angle: " + (random.nextBoolean() ? 20 : 25)
            };
            String what = "case " + i + ": " + String.join(", ", lines);
            Design design =
                    Racks.planned(new Problems(), i % 2 == 0 ? CUT : "", lines).design(41);
            if (design.findings().stream().anyMatch(Finding::failed)) {
                continue;
            }
            sound++;
            assertThat(Racks.judged(design)).as(what).isNotEmpty().noneMatch(Finding::failed);
        }
        assertThat(sound).isGreaterThan(18);
    }

    /** Faults set on purpose in the finished assembly are found. */
    @Test
    void faultsAreFound() {
        Design design = Racks.planned(new Problems(), CUT, "stroke: 30", "drive: {servo: micro-180}")
                .design(31);
        Assembly sound = design.assembly();
        assertThat(Judge.judge(sound, Options.DEFAULT).failed()).isFalse();
        assertThat(fails(sound, RackParts.RACK, Placement.shift(0, 0.4)))
                .as("rack too near")
                .isTrue();
        assertThat(fails(sound, RackParts.RACK, Placement.shift(0.5, 0)))
                .as("rack out of step")
                .isTrue();
        assertThat(fails(sound, RackParts.PINION, Placement.turn(0.05)))
                .as("pinion out of step")
                .isTrue();
        assertThat(fails(sound, RackParts.PIN, Placement.shift(0, 0.2)))
                .as("pins beside their slots")
                .isTrue();
        assertThat(fails(sound, RackParts.PIN, Placement.shift(-1, 0)))
                .as("pins beyond their slots")
                .isTrue();
        assertThat(fails(sound, RackParts.SPACER, Placement.shift(0, 12)))
                .as("a spacer in the rack's way")
                .isTrue();
    }

    private static boolean fails(Assembly sound, String part, Placement off) {
        List<Member> members = sound.members().stream()
                .map(m -> m.part().name().equals(part) ? new Member(m.name(), m.part(), m.body(), off) : m)
                .toList();
        Assembly wrong = new Assembly(
                sound.name(),
                members,
                sound.motion(),
                sound.leaves(),
                sound.requirements(),
                List.of(),
                List.of(),
                sound.views());
        return Judge.judge(wrong, Options.DEFAULT).failed();
    }

    /** A stroke that no pinion reaches within the servo's travel grows none without end. */
    @Test
    void solvedTeethAreNoMoreThanGivenOnesMayBe() {
        Design design = Racks.design("stroke: 1000", "module: 0.4", "drive: {servo: micro-180}");
        assertThat(Racks.value(design, "pinion-teeth")).isEqualTo(400);
        assertThat(design.findings()).anyMatch(f -> f.check().equals("servo-reaches") && f.failed());
    }

    @Test
    void aSlotAsWideAsItsPinFails() {
        Design design = Racks.design("stroke: 30", "clearances: {slot: 0}");
        assertThat(Racks.judged(design)).anyMatch(f -> f.failed() && f.check().equals("pin-in-slot"));
    }

    @Test
    void whatCannotBeIsRefusedWithWhatWorks() {
        assertThatThrownBy(() -> Racks.design("spare-teeth: 2"))
                .isInstanceOfSatisfying(
                        SpecRefused.class, e -> assertThat(e.problems().text())
                                .contains("stroke: is missing")
                                .contains("e.g. stroke: 40"));
        assertThatThrownBy(() -> Racks.design("stroke: 120", "module: 0.5", "backlash: 2"))
                .isInstanceOfSatisfying(SpecRefused.class, e -> {
                    String text = e.problems().text();
                    assertThat(text).contains("teeth of module 0.5 cannot be made");
                    String works = text.replaceAll("(?s).*module: ([0-9.]+) works.*", "$1");
                    assertThat(Racks.design("stroke: 120", "backlash: 2", "module: " + works))
                            .isNotNull();
                });
    }
}
