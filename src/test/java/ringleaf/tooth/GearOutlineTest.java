// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.tooth.ToothFormTest.form;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Outlines measured back the way one measures a cut gear. */
class GearOutlineTest {
    private static final double CHORD = 1e-5;
    private static final double CURVE = Tolerance.CURVE.length();

    private static final List<ToothForm> FORMS = List.of(
            Forms.of(1, 24),
            form(1, 12, 0.3),
            form(2, 20, 0.5),
            form(0.5, 40, -0.2).withThinning(0.05),
            Forms.of(1, 10),
            form(0.8, 112, 0));

    @Test
    void passesThroughThePublishedFlankPoints() {
        Contour gear = gear(form(1, 20, 0));
        for (double[] row : ReferenceTable.rows("flank-points.csv")) {
            for (double side : new double[] {1, -1}) {
                Point point = new Point(row[1], side * row[2]);
                assertThat(distance(gear.segments(), point)).isLessThan(CURVE + 2e-7);
            }
        }
    }

    @Test
    void spanBetweenParallelTangents() {
        for (ToothForm form : FORMS) {
            int count = ToothMeasure.spanTeeth(form);
            double half = count * form.pitchAngle() / 2;
            // Teeth 0 … k-1 turned so that the group lies about +x: the caliper's jaws are then square to y.
            double turn = -(count - 1) * form.pitchAngle() / 2;
            double top = Double.NEGATIVE_INFINITY;
            double bottom = Double.POSITIVE_INFINITY;
            for (Point point : Flattened.points(gear(form).segments(), CHORD)) {
                Point turned = point.turned(turn);
                if (Math.abs(turned.angle()) <= half && point.norm() > form.formRadius()) {
                    top = Math.max(top, turned.y());
                    bottom = Math.min(bottom, turned.y());
                }
            }
            assertThat(top - bottom).isCloseTo(ToothMeasure.span(form, count), within(2 * CURVE));
        }
    }

    @Test
    void thicknessAtDiameters() {
        for (ToothForm form : FORMS) {
            List<Point> points = Flattened.points(gear(form).segments(), CHORD);
            double low = form.formRadius();
            for (int i = 1; i < 8; i++) {
                double radius = low + (form.tipRadius() - low) * i / 8;
                double above = 0;
                double below = 0;
                for (int j = 1; j < points.size(); j++) {
                    Point p = points.get(j - 1);
                    Point q = points.get(j);
                    boolean crosses = (p.norm() - radius) * (q.norm() - radius) < 0;
                    if (crosses && Math.abs(p.angle()) < form.pitchAngle() / 2) {
                        double share = (radius - p.norm()) / (q.norm() - p.norm());
                        double angle = p.towards(q, share).angle();
                        above = angle > 0 ? angle : above;
                        below = angle < 0 ? angle : below;
                    }
                }
                double sine = Math.sin(form.pressureAngleAt(radius));
                // A normal deviation of e shows as e/cos(angle to the circle's normal) along the arc, on either flank.
                double slack = 2 * CURVE / Math.cos(Math.asin(sine)) + 2e-5;
                assertThat(radius * (above - below)).isCloseTo(form.thicknessAt(2 * radius), within(slack));
            }
        }
    }

    @Test
    void pinsRolledIntoTheSpace() {
        for (ToothForm form : FORMS) {
            double pin = PinMeasure.bestPinDiameter(form);
            Path space = GearOutline.of(form, Tolerance.CURVE).toothSpace(0);
            LineString outline = Flattened.line(space.segments(), 1e-6);
            double low = form.rootRadius();
            double high = form.tipRadius() + 2 * pin;
            for (int i = 0; i < 60; i++) {
                double middle = (low + high) / 2;
                if (outline.distance(Flattened.jts(new Point(middle, 0))) < pin / 2) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            // The pin sits between two flanks: their deviation shows in its height over the sine of the half wedge.
            double half = Math.PI / form.teeth() - form.baseHalfAngle();
            double wedge = Math.sin(half
                    + InvoluteCurve.rollAt(form.baseRadius(), form.referenceRadius() + form.shift() * form.module()));
            assertThat(high).isCloseTo(PinMeasure.pinRadius(form, pin), within((CURVE + 1e-6) / wedge));
        }
    }

    @Test
    void deviationIsMeasuredAndSmall() {
        for (ToothForm form : FORMS) {
            assertThat(GearOutline.of(form, Tolerance.CURVE).deviation()).isBetween(CURVE / 1000, CURVE);
            double coarse = GearOutline.of(form, new Tolerance(0.02)).deviation();
            assertThat(coarse).isBetween(2 * CURVE, 0.02);
        }
    }

    @Test
    void joinsAreTangentExceptAtTrueCorners() {
        for (ToothForm form : FORMS) {
            List<Segment> pieces = gear(form).segments();
            int corners = 0;
            for (int i = 0; i < pieces.size(); i++) {
                Segment piece = pieces.get(i);
                Segment next = pieces.get((i + 1) % pieces.size());
                assertThat(piece).isInstanceOf(Arc.class);
                if (Math.abs(piece.tangentAt(1).cross(next.tangentAt(0))) > 1e-9) {
                    corners++;
                }
            }
            // Two tip edges a tooth, and where undercut two joints.
            assertThat(corners).isEqualTo(form.teeth() * (form.isUndercut() ? 4 : 2));
        }
    }

    @Test
    void tipsAndRootsAreArcsAboutTheAxis() {
        ToothForm form = Forms.of(1, 24);
        int tips = 0;
        int roots = 0;
        for (Segment piece : gear(form).segments()) {
            Arc arc = (Arc) piece;
            if (arc.centre().equals(Point.ORIGIN)) {
                boolean tip = arc.radius() == form.tipRadius();
                tips += tip ? 1 : 0;
                roots += Math.abs(arc.radius() - form.rootRadius()) < 1e-12 ? 1 : 0;
                if (tip) {
                    assertThat(arc.length()).isCloseTo(form.tipThickness(), within(2e-12));
                }
            }
        }
        assertThat(tips).isEqualTo(24);
        assertThat(roots).isEqualTo(24);
        Arc first = (Arc) gear(form).segments().get(0);
        assertThat(first.pointAt(0.5).distance(new Point(form.tipRadius(), 0))).isLessThan(1e-12);
    }

    @Test
    void fullRoundRootsMeetWithoutAnArcBetween() {
        double angle = Math.toRadians(20);
        double largest = BasicRack.largestRounding(BasicRack.FORM_A.pressureAngle(), BasicRack.FORM_A.dedendum());
        ToothForm round = ToothForm.of(1, 30, 0, 0, new BasicRack(angle, 1, 1.25, largest));
        Path space = GearOutline.of(round, Tolerance.CURVE).toothSpace(0);
        boolean meets = false;
        for (Segment piece : space.segments()) {
            meets |= piece.end().equals(new Point(round.rootRadius(), 0));
            assertThat(piece.length()).isGreaterThan(1e-4);
        }
        assertThat(meets).isTrue();
        assertThat(Flattened.polygon(gear(round), CHORD).isValid()).isTrue();
    }

    @Test
    void sectorOnTheTipCircle() {
        ToothForm form = Forms.of(0.8, 112);
        GearOutline outline = GearOutline.of(form, Tolerance.CURVE);
        double tip = form.tipRadius();
        double space = (Math.PI * tip * tip - outline.external().area()) / 112;
        for (int spaces : new int[] {1, 2, 29, 30, 111}) {
            Contour rim = outline.sectorRim(tip, spaces, 1.0);
            assertThat(rim.area()).isCloseTo(Math.PI * tip * tip - spaces * space, within(1e-9));
            assertThat(Flattened.polygon(rim, 1e-4).isValid()).isTrue();
            for (Segment piece : rim.segments()) {
                assertThat(piece.start().norm()).isLessThan(tip + 1e-12);
            }
            Arc land = (Arc) rim.segments().get(0);
            assertThat(Angles.signed(land.startAngle() + land.sweep() / 2 - 1 - Math.PI))
                    .isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void sectorInsideAWiderRim() {
        ToothForm form = Forms.of(0.8, 112).withTipRadius(45.3);
        GearOutline outline = GearOutline.of(form, Tolerance.CURVE);
        Contour rim = outline.sectorRim(45.8, 20, -2);
        Polygon polygon = Flattened.polygon(rim, 1e-4);
        assertThat(polygon.isValid()).isTrue();
        Polygon same = Flattened.polygon(outline.sectorRim(45.3, 20, -2), 1e-4);
        // Within the tip circle both are one: the wider rim only adds outside it.
        assertThat(same.difference(polygon).getArea()).isLessThan(1e-3);
        double ring = Math.PI * (45.8 * 45.8 - 45.3 * 45.3);
        double open = 20 * form.pitchAngle() / 2 * (45.8 * 45.8 - 45.3 * 45.3);
        assertThat(rim.area() - same.getArea()).isBetween(ring - open - 0.6, ring - open + 0.6);
        double widest = 0;
        for (Segment piece : rim.segments()) {
            widest = Math.max(widest, piece.start().norm());
        }
        assertThat(widest).isCloseTo(45.8, within(1e-12));
        assertThat(outline.deviation(45.8)).isBetween(outline.deviation(), CURVE);
        assertThat(Flattened.polygon(outline.sectorRim(45.8, 1, 0), 1e-4).isValid())
                .isTrue();
    }

    @Test
    void refusesWhatCannotBeCut() {
        assertThatThrownBy(() -> gear(form(3, 12, 1))).hasMessageContaining("meet at radius");
        assertThatThrownBy(() -> gear(form(1, 4, -0.6))).isInstanceOf(IllegalArgumentException.class);
        ToothForm form = Forms.of(1, 24);
        assertThatThrownBy(() -> gear(form.withTipRadius(11.2))).hasMessageContaining("no involute");
        GearOutline outline = GearOutline.of(form, Tolerance.CURVE);
        assertThatThrownBy(() -> outline.sectorRim(12, 3, 0)).hasMessageContaining("inside the tip");
        assertThatThrownBy(() -> outline.sectorRim(13, 24, 0)).hasMessageContaining("from 1 to 23");
        assertThatThrownBy(() -> outline.sectorRim(13, 0, 0)).hasMessageContaining("from 1 to 23");
        assertThatThrownBy(() -> gear(form.withThinning(-0.9))).hasMessageContaining("no room");
    }

    static Contour gear(ToothForm form) {
        return GearOutline.of(form, Tolerance.CURVE).external();
    }

    private static double distance(List<Segment> pieces, Point point) {
        LineString line = Flattened.line(pieces, 1e-7);
        return line.distance(Flattened.jts(point));
    }
}
