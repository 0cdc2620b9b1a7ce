// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import ringleaf.geom.Point;

/** Two outlines rolled through a pitch by JTS, which knows neither involutes nor backlash. */
class RolledPairTest {
    private static final double CHORD = 1e-5;
    private static final double DIRECTION = Math.toRadians(250);

    static List<GearPair> pairs() {
        BasicRack rack = BasicRack.FORM_A;
        return List.of(
                GearPair.of(Forms.of(1, 20), Forms.of(1, 40)).withNormalBacklash(0.05, 0.5),
                GearPair.of(Forms.of(1, 20), Forms.of(1, 40)).withCentreDistance(30.1),
                GearPair.of(ToothForm.of(0.8, 12, 0.35, 0, rack), ToothForm.of(0.8, 30, -0.1, 0, rack))
                        .withNormalBacklash(0.03, 1)
                        .withTipClearance(0.2),
                GearPair.of(ToothForm.of(0.8, 24, 0.2, 0, rack), ToothForm.of(0.8, 112, -0.2, 0, rack))
                        .withNormalBacklash(0.1, 0.3));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void rollsWithTheComputedGap(GearPair pair) {
        Polygon pinion = Flattened.polygon(GearOutlineTest.gear(pair.pinion()), CHORD);
        Polygon gear = Flattened.polygon(GearOutlineTest.gear(pair.gear()), CHORD);
        assertThat(pair.contact().isClean()).isTrue();
        double half = pair.normalBacklash() / 2;
        for (int i = 0; i < 8; i++) {
            double turn = pair.gear().pitchAngle() * i / 8;
            Polygon standing = turned(gear, turn);
            Polygon meshed = meshed(pair, pinion, turn, 0);
            assertThat(standing.intersection(meshed).getArea()).isLessThan(1e-6);
            assertThat(distance(standing, meshed)).isCloseTo(half, within(0.001));
            // Turned against one flank or the other, the gap closes on that side: not a micrometre sooner or later.
            double play = pair.pinionPlay() / 2;
            double slack = 0.0015 / pair.pinion().baseRadius();
            for (int side = -1; side <= 1; side += 2) {
                Polygon near = meshed(pair, pinion, turn, side * (play - slack));
                assertThat(standing.intersects(near)).isFalse();
                Polygon far = meshed(pair, pinion, turn, side * (play + slack));
                assertThat(standing.intersects(far)).isTrue();
            }
        }
    }

    /**
     * One tooth of the gear alone, touched on its counter-clockwise flank: the gap stays closed exactly from the
     * computed beginning of contact to its end. Past an end it opens with the square of the way, so the two are told
     * apart within a fraction of a millimetre along the line of action.
     */
    @ParameterizedTest
    @MethodSource("pairs")
    void oneToothTouchesOverTheComputedAngles(GearPair pair) {
        Polygon pinion = Flattened.polygon(GearOutlineTest.gear(pair.pinion()), CHORD);
        Polygon tooth = firstTooth(pair.gear());
        ContactPath path = pair.contact();
        double base = pair.gear().baseRadius();
        double atPitchPoint = DIRECTION - pair.gear().halfAngleAt(pair.gearWorkingRadius());
        double inside = 0.03 / base;
        double outside = -0.3 / base;
        double[] starts = {path.gearAngleBefore(), path.gearAngleAfter()};
        for (int i = 0; i < 2; i++) {
            double side = i == 0 ? 1 : -1;
            assertThat(gap(pair, tooth, pinion, atPitchPoint + side * (starts[i] - inside)))
                    .isLessThan(0.0025);
            assertThat(gap(pair, tooth, pinion, atPitchPoint + side * (starts[i] - outside)))
                    .isGreaterThan(0.004);
        }
    }

    private static double gap(GearPair pair, Polygon tooth, Polygon pinion, double turn) {
        double almost = pair.pinionPlay() / 2 - 0.001 / pair.pinion().baseRadius();
        return distance(turned(tooth, turn), meshed(pair, pinion, turn, almost));
    }

    private static Polygon firstTooth(ToothForm form) {
        double half = form.pitchAngle() / 2;
        Point up = Point.polar(2 * form.tipRadius(), half);
        Polygon wedge = Flattened.FACTORY.createPolygon(
                Flattened.coordinates(List.of(Point.ORIGIN, new Point(up.x(), -up.y()), up, Point.ORIGIN)));
        return (Polygon) Flattened.polygon(GearOutlineTest.gear(form), CHORD).intersection(wedge);
    }

    private static double distance(Polygon a, Polygon b) {
        return new IndexedFacetDistance(a.getBoundary()).distance(b.getBoundary());
    }

    private static Polygon turned(Polygon polygon, double angle) {
        return (Polygon) AffineTransformation.rotationInstance(angle).transform(polygon);
    }

    /** The pinion at its place when the gear has turned by {@code turn}, and {@code more} out of the middle. */
    private static Polygon meshed(GearPair pair, Polygon pinion, double turn, double more) {
        double space = pair.gear().pitchAngle() / 2 + turn;
        AffineTransformation place = AffineTransformation.rotationInstance(pair.pinionPhase(space, DIRECTION) + more);
        Point centre = Point.polar(pair.centreDistance(), DIRECTION);
        place.translate(centre.x(), centre.y());
        return (Polygon) place.transform(pinion);
    }
}
