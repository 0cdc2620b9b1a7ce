package ringleaf.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Member;
import ringleaf.part.Requirement;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.GearPair;
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
                "rolls", "play", 0, 1, Point.ORIGIN, axis, ratio, pair.pinion().pitchAngle(), 16, play, 0.003);
        return Mechanisms.assembly(
                Mechanisms.motion(
                        2,
                        List.of(
                                s -> Placement.turn(s * pair.pinion().pitchAngle()),
                                s -> Placement.turnAbout(axis, s * ratio * pair.pinion().pitchAngle()))),
                members,
                meshes);
    }

    private static GearPair sound() {
        return GearPair.of(ToothForm.of(1, 20), ToothForm.of(1, 40)).withNormalBacklash(0.08, 0.5);
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
        assertThat(findings.get(0).message()).contains("overlap");
    }

    @Test
    void aWrongRatioOverlaps() {
        GearPair pair = sound();
        assertThat(Mechanisms.judge(pair(pair, 30, pair.gearPlay(), -0.45)).failed()).isTrue();
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
}
