// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import ringleaf.geom.Contour;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

class RandomGearTest {
    private static final BasicRack[] RACKS = {
        BasicRack.FORM_A,
        Forms.FORM_B,
        Forms.FORM_C,
        Forms.FORM_D,
        Forms.fullClearance(Math.toRadians(25), 1, 1.2),
        new BasicRack(Math.toRadians(14.5), 1, 1.25, 0.2)
    };

    @Test
    void outlinesAreSoundWhateverTheTeeth() {
        for (long seed = 1; seed <= 40; seed++) {
            ToothForm form = random(new Random(seed));
            String name = "seed " + seed + ": " + form;
            GearOutline outline = GearOutline.of(form, Tolerance.CURVE);
            Contour gear = outline.external();
            Polygon polygon = Flattened.polygon(gear, 1e-4 * form.module());
            assertThat(polygon.isValid()).as(name).isTrue();
            assertThat(gear.isCounterClockwise()).as(name).isTrue();
            assertThat(outline.deviation()).as(name).isLessThan(Tolerance.CURVE.length());
            assertThat(gear.area()).as(name).isCloseTo(polygon.getArea(), within(2e-4 * gear.length()));
            sameBothWays(gear, name);
            sameFromToothToTooth(gear, form, name);
        }
    }

    /** Shifts that miss the undercut limit by next to nothing, where crossing curves part by less than rounding. */
    @Test
    void faintUndercutIsNoTrouble() {
        for (int teeth : new int[] {6, 9, 13, 17, 18, 33, 60}) {
            for (int digits = 1; digits < 14; digits++) {
                for (int side = -1; side <= 1; side += 2) {
                    double shift = BasicRack.FORM_A.leastShift(teeth) + side * Math.pow(10, -digits);
                    ToothForm form = ToothForm.of(0.7, teeth, shift, 0, BasicRack.FORM_A);
                    String name = form.toString();
                    form = form.withLeastTipThickness(0.01);
                    GearOutline outline = GearOutline.of(form, Tolerance.CURVE);
                    assertThat(outline.deviation()).as(name).isLessThan(Tolerance.CURVE.length());
                    assertThat(form.formRadius()).as(name).isBetween(form.baseRadius() * (1 - 1e-12), form.tipRadius());
                }
            }
        }
    }

    private static ToothForm random(Random random) {
        int teeth = 6 + random.nextInt(70);
        double module = 0.2 + 3 * random.nextDouble();
        BasicRack rack = RACKS[random.nextInt(RACKS.length)];
        double low = Math.max(-0.5, rack.leastShift(teeth) - 0.4);
        double high = Math.min(1.2, ToothForm.shiftForTip(rack, teeth, 0.25));
        double shift = low + (high - low) * random.nextDouble();
        return ToothForm.of(module, teeth, shift, 0.08 * module * random.nextDouble(), rack);
    }

    /** The mirrored gear has its corners in the same places. */
    private static void sameBothWays(Contour gear, String name) {
        List<Point> own = sorted(gear);
        List<Point> mirrored = sorted(gear.mirrored(Mirror.FLIP_Y));
        for (int i = 0; i < own.size(); i++) {
            assertThat(own.get(i).distance(mirrored.get(i))).as(name).isLessThan(1e-9);
        }
        assertThat(gear.mirrored(Mirror.FLIP_Y).area()).as(name).isCloseTo(-gear.area(), within(1e-9));
        assertThat(gear.centroid().norm()).as(name).isLessThan(1e-9);
    }

    private static List<Point> sorted(Contour contour) {
        List<Point> points = new ArrayList<>();
        for (Segment segment : contour.segments()) {
            points.add(segment.start());
        }
        points.sort(Comparator.comparingDouble((Point p) -> Math.rint(Math.cos(p.angle() - 1) * 1e9))
                .thenComparingDouble(Point::norm));
        return points;
    }

    private static void sameFromToothToTooth(Contour gear, ToothForm form, String name) {
        int each = gear.segments().size() / form.teeth();
        assertThat(each * form.teeth()).as(name).isEqualTo(gear.segments().size());
        Placement turn = Placement.turn(form.pitchAngle());
        for (int i = 0; i < gear.segments().size(); i++) {
            Segment next = gear.segments().get((i + each) % gear.segments().size());
            Segment turned = gear.segments().get(i).placed(turn);
            assertThat(turned.start().distance(next.start())).as(name).isLessThan(1e-10);
            assertThat(turned.pointAt(0.3).distance(next.pointAt(0.3))).as(name).isLessThan(1e-10);
        }
    }
}
