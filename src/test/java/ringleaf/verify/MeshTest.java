// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.Spoken;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Requirement;
import ringleaf.report.FindingWords;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.Forms;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.RackOutline;
import ringleaf.tooth.SectorReach;
import ringleaf.tooth.ToothForm;

/** The rolled proof holds for what meshes and fails for what does not. */
class MeshTest {
    private static Assembly pair(GearPair pair, double distance, double play, double ratio) {
        Region driver = Region.of(GearOutline.of(pair.pinion(), Tolerance.CURVE).external());
        Region driven = Region.of(GearOutline.of(pair.gear(), Tolerance.CURVE).external());
        Point axis = new Point(distance, 0);
        double facing = Math.PI - pair.gear().pitchAngle() / 2;
        List<Member> members = List.of(
                Mechanisms.member("driver", 1, driver, 0, 5),
                Mechanisms.member("driven", 2, driven.placed(new Placement(facing, axis)), 0, 5));
        Requirement meshes = new Requirement.Meshes(
                new Requirement.Turning(0, Point.ORIGIN),
                new Requirement.Turning(1, axis),
                ratio,
                new Requirement.Rolled(0, pair.pinion().pitchAngle(), 16, "a pitch"),
                0,
                play,
                0.003);
        return Mechanisms.assembly(
                Mechanisms.motion(
                        2,
                        List.of(
                                s -> Placement.turn(s * pair.pinion().pitchAngle()),
                                s -> Placement.turnAbout(
                                        axis, s * ratio * pair.pinion().pitchAngle()))),
                members,
                meshes);
    }

    private static GearPair sound() {
        return GearPair.of(Forms.of(1, 20), Forms.of(1, 40)).withNormalBacklash(0.08, 0.5);
    }

    @Test
    void aSoundPairRolls() {
        GearPair pair = sound();
        List<Finding> findings =
                Mechanisms.judge(pair(pair, 30, pair.gearPlay(), -0.5)).findings();
        assertThat(findings).hasSize(2).allMatch(f -> f.status() == Finding.Status.PASS);
        assertThat(findings.get(0).measured()).isCloseTo(pair.normalBacklash() / 2, within(0.002));
        assertThat(Math.toRadians(findings.get(1).measured())).isCloseTo(pair.gearPlay(), within(0.003 / 20));
    }

    /** A pinion of 18 teeth on a rack that slides by 12 mm; a turn of the pinion takes the rack along by r. */
    private static List<Finding> rack(double distance, double play, double perTurn) {
        double thinning = 0.06;
        ToothForm pinion = ToothForm.of(1, 18, 0, thinning, BasicRack.ofAngle(Math.toRadians(20)));
        Region bar = Region.of(new RackOutline(1, pinion.rack(), thinning).bar(9, 4));
        Region gear = Region.of(GearOutline.of(pinion, Tolerance.CURVE).external());
        Point axis = new Point(4 * Math.PI - 6, distance);
        // The fifth tooth stands 6 mm past the axis: in a space of the pinion that has turned by so much.
        double facing = -Math.PI / 2 + 6 / pinion.referenceRadius() + pinion.pitchAngle() / 2;
        List<Member> members = List.of(
                Mechanisms.member("rack", 1, bar, 0, 5),
                Mechanisms.member("pinion", 2, gear.placed(new Placement(facing, axis)), 0, 5));
        Requirement meshes = new Requirement.Meshes(
                new Requirement.Sliding(0, new Point(-1, 0)),
                new Requirement.Turning(1, axis),
                -1 / perTurn,
                new Requirement.Rolled(0, 12, 90, "the whole travel"),
                0,
                play,
                0.003);
        return Mechanisms.judge(Mechanisms.assembly(
                        Mechanisms.motion(
                                2,
                                List.of(
                                        s -> Placement.shift(-12 * s, 0),
                                        s -> Placement.turnAbout(axis, -12 * s / perTurn))),
                        members,
                        meshes))
                .findings();
    }

    /** The play of a pinion on a rack is the thinning of both along the reference circle: geometry of the basic rack. */
    @Test
    void aRackRollsPastItsPinion() {
        List<Finding> sound = rack(9, 0.12 / 9, 9);
        assertThat(sound).hasSize(2).allMatch(f -> f.status() == Finding.Status.PASS);
        assertThat(sound.get(0).measured()).isCloseTo(0.06 * Math.cos(Math.toRadians(20)), within(0.002));
        assertThat(rack(9, 0.2 / 9, 9).get(1).failed()).isTrue();
        assertThat(rack(8.85, 0.12 / 9, 9).get(1).failed()).as("too near").isTrue();
        assertThat(rack(9, 0.12 / 9, 9.3).get(0).failed()).as("out of step").isTrue();
    }

    @Test
    void aWrongPlayIsFound() {
        GearPair pair = sound();
        List<Finding> findings =
                Mechanisms.judge(pair(pair, 30, 1.2 * pair.gearPlay(), -0.5)).findings();
        assertThat(findings.get(0).failed()).isFalse();
        assertThat(findings.get(1).failed()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {29.8, 29.5})
    void axesTooNearOverlap(double distance) {
        GearPair pair = sound();
        List<Finding> findings =
                Mechanisms.judge(pair(pair, distance, pair.gearPlay(), -0.5)).findings();
        assertThat(findings.get(0).failed()).isTrue();
        assertThat(Spoken.of(findings.get(0))).contains("overlap");
    }

    @Test
    void aWrongRatioOverlaps() {
        GearPair pair = sound();
        assertThat(Mechanisms.judge(pair(pair, 30, pair.gearPlay(), -0.45)).failed())
                .isTrue();
    }

    @Test
    void gearsAtOtherHeightsCannotMesh() {
        GearPair pair = sound();
        Assembly a = pair(pair, 30, pair.gearPlay(), -0.5);
        Member up = a.members().get(1);
        Member raised = new Member(
                up.name(),
                Mechanisms.part("driven", up.part().layers().get(0).regions().get(0), 6, 9),
                up.body(),
                up.home());
        Assembly apart = new Assembly(
                a.name(),
                List.of(a.members().get(0), raised),
                a.motion(),
                a.leaves(),
                a.requirements(),
                a.callouts(),
                a.steps());
        assertThat(Mechanisms.judge(apart).failed()).isTrue();
    }

    /** A sector of teeth on the rim of a ring, driven by a pinion beside it through so many pitches of the ring. */
    private static Assembly sector(GearPair pair, int spaces, double pitches) {
        double at = 2.0;
        double travel = pitches * pair.gear().pitchAngle();
        double middle = at - travel / 2;
        double space = middle + (spaces % 2 == 0 ? pair.gear().pitchAngle() / 2 : 0);
        double rim = pair.gear().tipRadius() + 0.1;
        Contour outline = GearOutline.of(pair.gear(), Tolerance.CURVE).sectorRim(rim, spaces, middle);
        Region ring = new Region(outline, List.of(Contour.circle(Point.ORIGIN, rim - 8)));
        Point centre = Point.polar(pair.centreDistance(), at);
        Region pinion = Region.of(GearOutline.of(pair.pinion(), Tolerance.CURVE).external())
                .placed(new Placement(pair.pinionPhase(space, at), centre));
        double ratio = (double) pair.gear().teeth() / pair.pinion().teeth();
        Requirement meshes = new Requirement.Meshes(
                new Requirement.Turning(1, centre),
                new Requirement.Turning(0, Point.ORIGIN),
                -1 / ratio,
                new Requirement.Rolled(0, -travel * ratio, (int) (16 * pitches), "the whole travel"),
                0,
                pair.gearPlay(),
                0.003);
        return Mechanisms.assembly(
                Mechanisms.motion(
                        2,
                        List.of(
                                s -> Placement.turn(s * travel),
                                s -> Placement.turnAbout(centre, -s * travel * ratio))),
                List.of(Mechanisms.member("ring", 1, ring, 0, 3), Mechanisms.member("pinion", 2, pinion, 0, 3)),
                meshes);
    }

    @ParameterizedTest
    @ValueSource(ints = {9, 12})
    void aSectorRollsAsFarAsItsTeethGoAndNoFarther(int spaces) {
        GearPair pair = GearPair.of(Forms.of(0.8, 20), Forms.of(0.8, 112)).withNormalBacklash(0.1, 0.5);
        double pitch = pair.gear().pitchAngle();
        double most = spaces
                + 1
                - 2 * SectorReach.of(pair, pair.gear().tipRadius() + 0.1).halfAngle() / pitch;
        List<Finding> held = Mechanisms.judge(sector(pair, spaces, most - 0.01)).findings();
        assertThat(held).hasSize(2).allMatch(f -> f.status() == Finding.Status.PASS);
        assertThat(held.get(0).measured()).isBetween(0.0, 0.05);
        assertThat(Spoken.of(held.get(0))).contains("whole travel");
        // Half a pitch farther, and a tooth of the pinion runs onto the rim that is not cut.
        Finding blocked =
                Mechanisms.judge(sector(pair, spaces, most + 0.5)).findings().get(0);
        assertThat(blocked.failed()).isTrue();
        assertThat(blocked.measured()).isLessThan(-0.1);
        assertThat(FindingWords.where(blocked)).contains("pinion and ring");
    }

    @Test
    void teethThatEndTooSoonLetTheDrivenGo() {
        GearPair pair = sound();
        Assembly whole = pair(pair, 30, pair.gearPlay(), -0.5);
        Region driver = whole.members().get(0).part().layers().get(0).regions().get(0);
        // Of the driver only two teeth are left, so contact ends within the pitch that is rolled through.
        Region wedge = Region.of(Shapes.discSector(Point.ORIGIN, 20, -0.2, 0.2));
        Region hub = Region.disc(Point.ORIGIN, 8);
        Region cut = Overlay.union(List.of(
                        hub,
                        Overlay.intersection(List.of(driver), List.of(wedge)).get(0)))
                .get(0);
        List<Member> members = List.of(
                Mechanisms.member("driver", 1, cut, 0, 5), whole.members().get(1));
        Assembly partly = new Assembly(
                "made-up",
                members,
                whole.motion(),
                whole.leaves(),
                whole.requirements(),
                whole.callouts(),
                whole.steps());
        List<Finding> findings = Mechanisms.judge(partly).findings();
        assertThat(findings.get(0).failed()).isFalse();
        assertThat(findings.get(1).failed()).isTrue();
    }

    @Test
    void teethWithoutPlayTouchAndDoNotOverlap() {
        for (int teeth = 17; teeth < 25; teeth++) {
            GearPair pair = GearPair.of(Forms.of(1, teeth), Forms.of(1, 40));
            Assembly tight = pair(pair, pair.centreDistance(), 0, -teeth / 40.0);
            List<Finding> findings = Mechanisms.judge(tight).findings();
            assertThat(findings).as(teeth + " teeth").allMatch(f -> !f.failed());
            assertThat(findings.get(0).measured()).isCloseTo(0, within(0.002));
        }
    }

    @Test
    void aGapThatIsAskedForIsHeld() {
        GearPair pair = sound();
        Assembly a = pair(pair, 30, pair.gearPlay(), -0.5);
        Requirement.Meshes m = (Requirement.Meshes) a.requirements().get(0);
        Requirement more = new Requirement.Meshes(m.first(), m.second(), m.ratio(), m.rolled(), 0.05, m.play(), 0.003);
        Finding tooNear = Mechanisms.judge(Mechanisms.assembly(a.motion(), a.members(), more))
                .findings()
                .get(0);
        assertThat(tooNear.failed()).isTrue();
        assertThat(tooNear.measured()).isCloseTo(0.04, within(0.002));
    }

    @Test
    void oneInTheOthersMaterialOverlaps() {
        GearPair pair = sound();
        Assembly a = pair(pair, 30, pair.gearPlay(), -0.5);
        Member slab = Mechanisms.member("driven", 2, Region.of(Mechanisms.rectangle(-30, -30, 60, 30)), 0, 5);
        Finding within = Mechanisms.judge(Mechanisms.assembly(
                        a.motion(),
                        List.of(a.members().get(0), slab),
                        a.requirements().toArray(Requirement[]::new)))
                .findings()
                .get(0);
        assertThat(within.failed()).isTrue();
        assertThat(within.measured()).isLessThan(-1);
    }
}
