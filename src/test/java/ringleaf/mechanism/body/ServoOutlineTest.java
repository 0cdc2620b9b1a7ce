// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringleaf.curve.Containment;
import ringleaf.curve.Distances;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.Servo;
import ringleaf.spec.shared.SharedFiles;
import ringleaf.spec.text.Problems;

class ServoOutlineTest {
    private static final String[] SERVOS = {
        "sub-micro-180", "micro-120", "micro-180", "micro-270", "mini-180", "standard-180", "standard-270"
    };

    private static ServoOutline outline(String name) {
        Servo servo = new Catalogues(SharedFiles.NONE, new Problems())
                .servos()
                .get(name)
                .orElseThrow();
        return new ServoOutline(servo, new Placement(0.7, new Point(3, -5)));
    }

    /** A body with sharp corners goes into its window, wherever the servo stands. */
    @Test
    void theBodyGoesIntoItsWindow() {
        for (String name : SERVOS) {
            ServoOutline outline = outline(name);
            for (double web : new double[] {0.8, 3}) {
                Contour window = outline.seat(web).get(0);
                for (Point corner : outline.bodyCorners()) {
                    assertThat(Containment.of(window, corner, 0)).as(name).isEqualTo(Containment.INSIDE);
                    assertThat(Distances.between(Contour.circle(corner, 1e-6), window)
                                    .distance())
                            .as(name)
                            .isGreaterThan(0.1);
                }
            }
        }
    }

    /** Where the web stands there is a hole for each screw; else the window reaches round every one of them. */
    @Test
    void aWebThatCannotStandIsOpened() {
        for (String name : SERVOS) {
            ServoOutline outline = outline(name);
            int holes = outline.earHoles().size();
            assertThat(outline.isSlotted(3)).as(name).isTrue();
            assertThat(outline.seat(3)).as(name).hasSize(1);
            for (Point hole : outline.earHoles()) {
                assertThat(Containment.of(outline.seat(3).get(0), hole, 0))
                        .as(name)
                        .isEqualTo(Containment.INSIDE);
            }
            assertThat(outline.isSlotted(0.2)).as(name).isFalse();
            assertThat(outline.seat(0.2)).as(name).hasSize(1 + holes);
        }
    }

    @Test
    void distancesAreThoseOfTheBox() {
        ServoOutline outline = outline("micro-180");
        Servo servo = outline.servo();
        Point beside = outline.place().apply(new Point(0, servo.bodyWidth() / 2 + 4));
        assertThat(outline.distance(beside, outline.box(servo.bodyLength()))).isCloseTo(4, within(1e-9));
        assertThat(outline.distance(outline.place().shift(), outline.box(servo.bodyLength())))
                .isZero();
    }
}
