// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.curve.RollingPair;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** The conditions of internal pairs against outlines that are rolled, or put in from the side. */
class InternalInterferenceTest {
    /** Margins nearer to 0 than this, rad, are decided by the little backlash that the outlines are given. */
    private static final double NEAR = 0.006;

    private static InternalPair pair(int pinion, int ring) {
        return InternalPair.of(Forms.of(1, pinion), InternalForm.of(1, ring, 0, 0, BasicRack.FORM_A))
                .withCleanTips()
                .withNormalBacklash(0.02, 0.5);
    }

    @ParameterizedTest
    @ValueSource(ints = {12, 20, 40})
    void trochoidsAreToldAsTheyRoll(int pinion) {
        for (int more : new int[] {1, 2, 3, 4, 5, 6, 8, 10, 14, 20}) {
            InternalPair pair = pair(pinion, pinion + more);
            double margin = pair.trochoidMargin();
            if (Math.abs(margin) > NEAR) {
                assertThat(gapRolled(pair) > 0)
                        .as(pinion + " in " + (pinion + more) + ", margin " + margin)
                        .isEqualTo(margin > 0);
            }
        }
    }

    @Test
    void aRingOfOneToothMoreIsEngagedAllRound() {
        for (int teeth = 12; teeth <= 120; teeth += 4) {
            InternalPair pair = pair(teeth, teeth + 1);
            assertThat(pair.trochoidMargin()).as(teeth + " teeth").isNegative();
            assertThat(pair.trimmingMargin()).as(teeth + " teeth").isNegative();
        }
    }

    /** Standard teeth of 20° need more than 9 teeth difference (metric gear handbooks, internal gears; from memory). */
    @Test
    void handbookLimitOfStandardTeeth() {
        for (int pinion : new int[] {30, 40, 60}) {
            assertThat(full(pinion, pinion + 7).trochoidMargin())
                    .as(pinion + "")
                    .isNegative();
            assertThat(full(pinion, pinion + 10).trochoidMargin())
                    .as(pinion + "")
                    .isPositive();
        }
    }

    private static InternalPair full(int pinion, int ring) {
        return InternalPair.of(Forms.of(1, pinion), InternalForm.of(1, ring, 0, 0, BasicRack.FORM_A));
    }

    @ParameterizedTest
    @ValueSource(ints = {16, 20, 30})
    void trimmingIsToldAsItGoesIn(int pinion) {
        for (int more : new int[] {1, 2, 3, 4, 5, 6, 8, 10, 13, 16, 20, 24}) {
            InternalPair pair = pair(pinion, pinion + more);
            double margin = pair.trimmingMargin();
            if (Math.abs(margin) > NEAR && pair.trochoidMargin() > NEAR) {
                assertThat(goesIn(pair))
                        .as(pinion + " into " + (pinion + more) + ", margin " + margin)
                        .isEqualTo(margin > 0);
            }
        }
    }

    private static List<Segment> pinion(InternalPair pair, double distance) {
        Contour outline = GearOutline.of(pair.pinion(), Tolerance.CURVE).external();
        double phase = Forms.pinionPhase(pair, pair.ring().pitchAngle() / 2, 0);
        return outline.placed(new Placement(phase, new Point(distance, 0))).segments();
    }

    private static List<Segment> ring(InternalPair pair) {
        Contour opening = InternalOutline.of(pair.ring(), Tolerance.CURVE).opening();
        double outside = pair.ring().rootRadius() + 2;
        List<Segment> pieces = new ArrayList<>();
        for (Contour contour :
                Region.of(Contour.circle(Point.ORIGIN, outside), opening).contours()) {
            pieces.addAll(contour.segments());
        }
        return pieces;
    }

    /** Least gap over a pitch, all round; 0 where the outlines cross. */
    private static double gapRolled(InternalPair pair) {
        double a = pair.centreDistance();
        RollingPair rolling = new RollingPair(pinion(pair, a), new Point(a, 0), ring(pair), Point.ORIGIN);
        double ratio = (double) pair.pinion().teeth() / pair.ring().teeth();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 24; i++) {
            double turn = pair.pinion().pitchAngle() * i / 24;
            least = Math.min(least, rolling.at(turn, turn * ratio).gap().distance());
        }
        return least;
    }

    /** Whether the pinion slides from the middle of the ring into its place without touching. */
    private static boolean goesIn(InternalPair pair) {
        if (pair.pinion().tipRadius() >= pair.ring().tipRadius()) {
            return false;
        }
        List<Segment> ring = ring(pair);
        for (int i = 1; i <= 60; i++) {
            double distance = pair.centreDistance() * i / 60;
            RollingPair at = new RollingPair(pinion(pair, distance), new Point(distance, 0), ring, Point.ORIGIN);
            if (at.at(0, 0).gap().distance() == 0) {
                return false;
            }
        }
        return true;
    }
}
