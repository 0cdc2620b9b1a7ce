// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static ringleaf.tooth.ToothFormTest.form;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;

/**
 * A second opinion that knows no involute and no root curve: a rack's tooth, drawn as a trapezoid with rounded
 * corners, is rolled along the gear in small steps, and what it sweeps is the tooth space.
 */
class GeneratedToothTest {
    private static final int STEPS = 250;

    static List<ToothForm> forms() {
        return List.of(
                Forms.of(1, 24),
                Forms.of(1, 10),
                Forms.of(1, 6),
                form(1, 12, 0.5),
                ToothForm.of(2, 17, 0.2, 0.12, Forms.FORM_C),
                ToothForm.of(1, 18, -0.3, 0, Forms.FORM_D),
                ToothForm.of(1, 30, 1.1, 0, Forms.FORM_B),
                ToothForm.of(0.8, 112, -0.1, 0.05, BasicRack.FORM_A));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void rackSweepsTheSameSpace(ToothForm form) {
        Geometry swept = swept(form);
        Path space = GearOutline.of(form, Tolerance.CURVE).toothSpace(0);
        // 0.5 µm for the arcs, 0.3 µm for the chords and steps of the sweep.
        double allowed = 0.0008;
        IndexedFacetDistance fromSwept = new IndexedFacetDistance(swept.getBoundary());
        double worst = 0;
        for (Point point : Flattened.points(space.segments(), 1e-5)) {
            worst = Math.max(worst, fromSwept.distance(Flattened.jts(point)));
        }
        assertThat(worst).as("from the outline to the sweep").isLessThan(allowed);
        IndexedFacetDistance fromSpace = new IndexedFacetDistance(Flattened.line(space.segments(), 1e-6));
        double rim = form.tipRadius() - 0.01 * form.module();
        int seen = 0;
        for (Coordinate c : swept.getCoordinates()) {
            if (Math.hypot(c.x, c.y) < rim && Math.abs(Math.atan2(c.y, c.x)) < form.pitchAngle() / 2) {
                worst = Math.max(worst, fromSpace.distance(Flattened.jts(new Point(c.x, c.y))));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(200);
        assertThat(worst).as("from the sweep to the outline").isLessThan(allowed);
    }

    /** What the rack's tooth covers of the turning gear, about the middle of one space on +x. */
    private static Geometry swept(ToothForm form) {
        Geometry tool = tool(form);
        double radius = form.referenceRadius();
        // The tool touches the blank while its contact lies within the tip circle.
        double reach = Math.sqrt(form.tipRadius() * form.tipRadius() - form.baseRadius() * form.baseRadius())
                + 2.5 * form.module();
        List<Geometry> places = new ArrayList<>();
        for (int i = -STEPS; i <= STEPS; i++) {
            double turn = reach * i / STEPS / radius;
            AffineTransformation roll = AffineTransformation.translationInstance(radius, radius * turn);
            roll.rotate(-turn);
            places.add(roll.transform(tool));
        }
        return UnaryUnionOp.union(places);
    }

    /** The tool's tooth, pointing to -x, its pitch line on x = 0. */
    private static Geometry tool(ToothForm form) {
        BasicRack rack = form.rack();
        double module = form.module();
        double slope = Math.tan(rack.pressureAngle());
        double datum = form.shift() * module;
        double half = (Math.PI * module / 2 + form.thinning()) / 2;
        double back = datum + 2.6 * module;
        double tip = datum - rack.dedendum() * module;
        double backHalf = half + (back - datum) * slope;
        double tipHalf = half - rack.dedendum() * module * slope;
        Polygon sharp = Flattened.FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(tip, -tipHalf),
            new Coordinate(back, -backHalf),
            new Coordinate(back, backHalf),
            new Coordinate(tip, tipHalf),
            new Coordinate(tip, -tipHalf)
        });
        // Shrinking and growing again rounds the corners with arcs that touch both sides.
        double rounding = rack.rounding() * module;
        BufferParameters fine = new BufferParameters(60);
        fine.setSimplifyFactor(1e-7);
        return BufferOp.bufferOp(BufferOp.bufferOp(sharp, -rounding, fine), rounding, fine);
    }
}
