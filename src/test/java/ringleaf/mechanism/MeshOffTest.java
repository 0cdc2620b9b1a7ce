// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.Forms;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.InternalPair;

/** Meshes with sizes off, against the relations of involute teeth (handbook knowledge, from memory). */
class MeshOffTest {
    private static final Material SHEET =
            new Material("cutter", "sheet", true, 3, 1, 1.5, 0.15, 0.2, 0.1, 0, 1.2, 3000, 0.02, 0.3, 0.1);

    private static GearPair pair() {
        return GearPair.of(Forms.of(1, 20), Forms.of(1, 40)).withNormalBacklash(0.2, 0.5);
    }

    private static double[][] off(SizesOff sizes) {
        double[][] off = new double[sizes.all().size()][1];
        return off;
    }

    @Test
    void asDrawnItIsThePair() {
        SizesOff sizes = new SizesOff();
        MeshOff mesh = MeshOff.outer(pair(), "", "driver", "driven", SHEET, SHEET, SHEET, sizes);
        MeshOff.Margins margins = mesh.margins(off(sizes), 0);
        assertThat(margins.backlash()).isCloseTo(pair().backlash(), within(1e-12));
        assertThat(margins.tips()).isCloseTo(0.25, within(1e-12));
        assertThat(margins.contact()).isCloseTo(pair().contact().usableRatio() - 1, within(1e-12));
        assertThat(sizes.all())
                .extracting(AsBuilt.Deviation::name)
                .containsExactly(
                        "centre-distance",
                        "driver-tooth",
                        "driver-tip",
                        "driver-root",
                        "driven-tooth",
                        "driven-tip",
                        "driven-root");
    }

    /** Axes apart by da: 2 da tan aw more play, to first order. Teeth thicker by t: t less, on the reference circles. */
    @Test
    void playFollowsDistanceAndThickness() {
        SizesOff sizes = new SizesOff();
        MeshOff mesh = MeshOff.outer(pair(), "", "driver", "driven", SHEET, SHEET, SHEET, sizes);
        double[][] off = off(sizes);
        off[0][0] = 0.01;
        double more = mesh.margins(off, 0).backlash() - pair().backlash();
        assertThat(more).isCloseTo(2 * 0.01 * Math.tan(Math.toRadians(20)), within(2e-4));
        assertThat(mesh.margins(off, 0.01).backlash()).as("leaned back").isCloseTo(pair().backlash(), within(1e-12));
        off = off(sizes);
        off[1][0] = 0.03;
        off[4][0] = -0.01;
        assertThat(mesh.margins(off, 0).backlash()).isCloseTo(pair().backlash() - 0.02, within(1e-9));
        off = off(sizes);
        off[mesh.secondTip()][0] = 0.2;
        assertThat(mesh.margins(off, 0).tips()).isCloseTo(0.05, within(1e-12));
        assertThat(mesh.margins(off, 0).contact())
                .isGreaterThan(pair().contact().usableRatio() - 1);
    }

    /** In a ring a larger distance takes play away, and tips come nearer to roots on the far side. */
    @Test
    void ringsTheOtherWay() {
        InternalPair pair = InternalPair.of(
                        Forms.of(1, 20), InternalForm.of(1, 72, 0, 0, BasicRack.ofAngle(Math.toRadians(20))))
                .withCleanTips()
                .withNormalBacklash(0.2, 0.5);
        SizesOff sizes = new SizesOff();
        MeshOff mesh = MeshOff.inner(pair, "", SHEET, sizes);
        double[][] off = off(sizes);
        assertThat(mesh.margins(off, 0).backlash()).isCloseTo(pair.backlash(), within(1e-12));
        off[0][0] = 0.05;
        assertThat(mesh.margins(off, 0).backlash()).isLessThan(pair.backlash());
        assertThat(mesh.margins(off, 0).tips())
                .isCloseTo(Math.min(pair.pinionTipClearance(), pair.ringTipClearance()) - 0.05, within(1e-9));
    }

    @Test
    void whereNoLineOfActionIsLeftNothingHolds() {
        SizesOff sizes = new SizesOff();
        MeshOff mesh = MeshOff.outer(pair(), "", "driver", "driven", SHEET, SHEET, SHEET, sizes);
        double[][] off = off(sizes);
        off[0][0] = -5;
        assertThat(mesh.margins(off, 0)).isEqualTo(new MeshOff.Margins(-1, -1, -1));
    }
}
