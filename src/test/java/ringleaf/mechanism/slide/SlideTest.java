// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Point;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.ServoLaw;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.spec.shared.LinearBearing;
import ringleaf.spec.text.SpecRefused;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

class SlideTest {
    private static final String SERVO = "drive: {servo: micro-180}";

    /** Half a stroke is the arm's sine of half the swing; force over the way is torque over the turn, whatever the law. */
    @Test
    void theHornGoesAsFarAsItsSine() {
        PlannedSlide planned = Slides.planned(Slides.ACRYLIC, "stroke: 30", "drive: {swing: 60}", "mass: 0.2");
        SlideLayout layout = planned.layout();
        assertThat(layout.arm()).isCloseTo(15 / Math.sin(Math.toRadians(30)), within(1e-12));
        assertThat(layout.way(layout.angle(1))).isCloseTo(30, within(1e-9));
        // 0.2 kg level: 0.2 * 9.80665 * 0.2 N of friction, work over the whole stroke
        double push = 0.2 * 9.80665 * 0.2;
        assertThat(layout.spec().push()).isCloseTo(push, within(1e-12));
        double work = 0;
        int steps = 20000;
        for (int i = 0; i < steps; i++) {
            work += Math.abs(layout.crank().speed(layout.angle((i + 0.5) / steps))) * push * layout.swing() / steps;
        }
        assertThat(work).isCloseTo(push * 30, within(1e-6));
    }

    /** Both pins of the link stay its length apart, and stay where horn and carriage have them. */
    @Test
    void theLinkStaysOnBothPins() {
        SlideLayout layout = Slides.planned(Slides.ACRYLIC, "stroke: 25", SERVO).layout();
        Motion motion = new SlideMotion(layout, 41);
        Point horn = layout.hornPin(layout.startAngle());
        Point carriage = layout.carriagePin();
        for (int i = 0; i < 41; i++) {
            Point onArm = motion.pose(SlideParts.ARM, i).apply(horn);
            Point onCarriage = motion.pose(SlideParts.CARRIAGE, i).apply(carriage);
            assertThat(onArm.distance(onCarriage)).isCloseTo(layout.link(), within(1e-9));
            assertThat(motion.pose(SlideParts.LINK, i).apply(horn).distance(onArm))
                    .isLessThan(1e-9);
            assertThat(motion.pose(SlideParts.LINK, i).apply(carriage).distance(onCarriage))
                    .isLessThan(1e-9);
        }
    }

    /** All bearings and swings one by one, written out: none before the choice taken holds. */
    @Test
    void theFirstChoiceThatHoldsIsTaken() {
        for (String[] lines : new String[][] {
            {"stroke: 25", SERVO, "mass: 0.15"},
            {"stroke: 40", "drive: {servo: standard-180}", "mass: 0.4", "slope: 60deg"},
            {"stroke: 20", SERVO, "overall-height: {at-most: 48}"},
            {"stroke: 60", "drive: {servo: standard-180}", "mass: 1.5", "overall-length: {at-most: 250}"}
        }) {
            SlideLayout found = Slides.planned(Slides.ACRYLIC, lines).layout();
            assertThat(new SlideChecks(found).all()).as(lines[0]).noneMatch(Finding::failed);
            SlideLayout first = null;
            for (LinearBearing bearing : found.spec().bearings()) {
                for (int straight : new int[] {5, 10, 15}) {
                    for (int swing : new int[] {80, 90, 100, 110, 70, 60, 50, 40}) {
                        SlideLayout tried =
                                SlideLayout.of(found.spec(), bearing, Math.toRadians(swing), Math.toRadians(straight));
                        boolean holds = new SlideChecks(tried).all().stream().noneMatch(Finding::failed);
                        first = first == null && holds ? tried : first;
                    }
                }
            }
            assertThat(first).isEqualTo(found);
        }
    }

    /** The link is no longer than it need be: half a millimetre less and the arm meets the bridge, or it leaves less straight. */
    @Test
    void theLinkIsTheShortestOfItsGrid() {
        for (String stroke : List.of("10", "25", "60")) {
            SlideLayout layout = Slides.planned(Slides.ACRYLIC, "stroke: " + stroke, SERVO, "mass: 0.01")
                    .layout();
            SlideLayout shorter = new SlideLayout(layout.spec(), layout.bearing(), layout.swing(), layout.link() - 0.5);
            double slant = Math.abs(shorter.crank().slant(shorter.startAngle()));
            assertThat(shorter.armToBridge() < layout.spec().beside().mm()
                            || slant > Math.toRadians(5)
                            || shorter.link()
                                    < 2 * layout.boss() + layout.spec().beside().mm())
                    .isTrue();
        }
    }

    /** What is designed is put together and moved by the judge of outlines, in random sizes of every process. */
    @Test
    void randomSlidesHoldOnTheirOutlines() {
        long seed = 4711;
        Random random = new Random(seed);
        List<String> wrong = new ArrayList<>();
        int passed = 0;
        for (int i = 0; i < 60; i++) {
            String[] making = {
                Slides.ACRYLIC,
                "fabrication:\n  plate: {process: filament-print, stock: petg}\n",
                "fabrication:\n  plate: {process: co2-laser, stock: acrylic-5}\n"
            };
            List<String> lines = new ArrayList<>(List.of(
                    String.format(Locale.ROOT, "stroke: %.2f", 5 + 55 * random.nextDouble()),
                    String.format(Locale.ROOT, "mass: %.3f", 0.5 * random.nextDouble() * random.nextDouble()),
                    String.format(Locale.ROOT, "slope: %.1f", 90 * random.nextDouble()),
                    "drive: {servo: "
                            + List.of("sub-micro-180", "micro-180", "standard-180")
                                    .get(random.nextInt(3)) + "}"));
            if (random.nextInt(3) == 0) {
                lines.add("pin-diameter: " + List.of("1.5", "2.5", "3").get(random.nextInt(3)));
            }
            Design design =
                    Slides.planned(making[i % 3], lines.toArray(String[]::new)).design(61);
            if (design.findings().stream().anyMatch(Finding::failed)) {
                continue;
            }
            List<Finding> judged =
                    Judge.judge(design.assembly(), Options.DEFAULT).findings();
            if (judged.stream().anyMatch(Finding::failed)) {
                wrong.add(i + " " + lines + ": "
                        + judged.stream()
                                .filter(Finding::failed)
                                .map(Finding::check)
                                .toList());
            }
            passed++;
        }
        assertThat(wrong).as("seed " + seed).isEmpty();
        assertThat(passed).as("seed " + seed).isGreaterThan(35);
    }

    /** What stands across the plane takes the room that its outline takes there: rods and plates where they should be. */
    @Test
    void whatStandsAcrossTakesItsRoom() {
        PlannedSlide planned = Slides.planned(Slides.ACRYLIC, "stroke: 25", SERVO);
        SlideLayout layout = planned.layout();
        List<Member> members = planned.design(11).assembly().members();
        for (Member member : members) {
            if (member.name().startsWith("rod")) {
                Layer box = member.layers().get(0);
                var at = box.regions().get(0).placed(member.home()).box();
                assertThat(at.minX()).isCloseTo(layout.rear() - 3, within(1e-9));
                assertThat(at.maxX()).isCloseTo(layout.front() + 3, within(1e-9));
                assertThat(at.height()).isCloseTo(3, within(1e-9));
                assertThat(Math.abs(box.zFrom() + box.zTo()) / 2).isCloseTo(layout.rodSpacing() / 2, within(1e-9));
            }
        }
        assertThat(members.stream().filter(m -> !m.isFlat()).count()).isEqualTo(10);
    }

    @Test
    void theTableFollowsTheSliderCrank() {
        PlannedSlide planned = Slides.planned(Slides.ACRYLIC, "stroke: 25", SERVO);
        ServoLaw law = planned.servoLaw().orElseThrow();
        assertThat(law.output(0, ServoLaw.Build.AS_DRAWN)).isCloseTo(0, within(1e-12));
        assertThat(law.output(law.travel(), ServoLaw.Build.AS_DRAWN)).isCloseTo(25, within(1e-9));
        double before = -1;
        for (int i = 0; i <= 50; i++) {
            double now = law.output(law.travel() * i / 50, ServoLaw.Build.AS_DRAWN);
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    /** A carriage that jams, a servo too weak, rods too thin: each fails by its own check. */
    @Test
    void whatCannotRunFails() {
        assertThat(failed("stroke: 20", SERVO, "bearing: 3x7x10", "bearing-spread: 21", "mass: 3", "slope: 90"))
                .contains("torque");
        assertThat(failed("stroke: 40", "bearing: 3x7x10", "bearing-spread: 8", SERVO))
                .contains("bearings-apart");
        assertThat(failed("stroke: 60", "drive: {swing: 140}")).contains("link-angle");
        assertThat(failed("stroke: 30", "drive: {servo: {travel: 60, torque: 1.5kgcm}, swing: 80}"))
                .contains("servo-reaches");
        assertThat(failed("stroke: 30", "drive: {link-length: 8}")).contains("link-length");
        assertThat(failed("stroke: 200", "bearing: 3x7x10", "mass: 20", "drive: {servo: standard-180}"))
                .contains("rod-sag");
        assertThat(failed("stroke: 30", "rod-spacing: 14", SERVO)).contains("mount-web");
        assertThat(failed("stroke: 30", "overall-length: {at-most: 50}", "overall-height: {at-most: 20}"))
                .contains("overall-length", "overall-height");
    }

    private static List<String> failed(String... lines) {
        return new SlideChecks(Slides.planned(Slides.ACRYLIC, lines).layout())
                .all().stream().filter(Finding::failed).map(Finding::check).toList();
    }

    @Test
    void whatIsLeftOutOrUnknownIsAskedFor() {
        assertThatThrownBy(() -> Slides.planned("", "mass: 1"))
                .isInstanceOfSatisfying(
                        SpecRefused.class, r -> assertThat(r.problems().text()).contains("stroke"));
        assertThatThrownBy(() -> Slides.planned("", "stroke: 20", "bearing: 3x7x11"))
                .isInstanceOfSatisfying(
                        SpecRefused.class, r -> assertThat(r.problems().text()).contains("3x7x10"));
    }

    /** Off by nothing the margins are those of the drawing; a longer link comes out by as much, and binds in the end. */
    @Test
    void asBuiltALongerLinkComesOutFurther() {
        PlannedSlide planned = Slides.planned(Slides.ACRYLIC, "stroke: 25", SERVO);
        AsBuilt built = planned.asBuilt().orElseThrow();
        double[][] off = new double[built.deviations().size()][];
        int link = -1;
        for (int i = 0; i < off.length; i++) {
            off[i] = new double[built.deviations().get(i).copies()];
            link = built.deviations().get(i).name().equals("link") ? i : link;
        }
        double[] drawn = built.bench().margins(off);
        SlideLayout layout = planned.layout();
        assertThat(drawn[0]).isCloseTo(-layout.carriage() - layout.rear(), within(1e-9));
        assertThat(drawn[1]).isCloseTo(layout.front() - 25, within(1e-9));
        off[link][0] = 0.3;
        double[] longer = built.bench().margins(off);
        assertThat(longer[1] - drawn[1]).isCloseTo(-0.3, within(5e-3));
        assertThat(longer[0] - drawn[0]).isCloseTo(0.3, within(5e-3));
    }
}
