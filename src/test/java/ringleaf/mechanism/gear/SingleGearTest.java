// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static ringleaf.mechanism.gear.Gears.design;
import static ringleaf.mechanism.gear.Gears.dimension;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.curve.Containment;
import ringleaf.curve.Distances;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** One gear: circles, spans, bodies, sectors, rings. */
class SingleGearTest {
    /** Spans over k teeth, computed from the relation that the handbooks give; no backlash taken. */
    @ParameterizedTest
    @CsvSource({
        "1,20,0,3,7.6604393760",
        "1,24,0,3,7.7164615341",
        "2,24,0,3,15.4329230683",
        "3,24,0.4,4,32.8266272487",
        "0.5,120,0,14,20.7672195524"
    })
    void spans(double module, int teeth, double shift, int count, double span) {
        Design gear = design("gear", "teeth: " + teeth, "module: " + module, "profile-shift: " + shift, "backlash: 0");
        assertThat(dimension(gear, "gear-span-teeth")).isEqualTo(count);
        assertThat(dimension(gear, "gear-span")).isCloseTo(span, within(1e-9));
        assertThat(Gears.failed(gear)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'bore: {form: round, diameter: 5}',2",
        "'bore: {form: d, diameter: 5}',2",
        "'bore: {form: keyway, diameter: 6}',2",
        "'bore: {form: square, diameter: 4}',2",
        "'bore: {form: servo-horn, servo: micro-180}',6",
        "'bore: {form: none}',1"
    })
    void bores(String bore, int contours) {
        Design gear = design("gear", "teeth: 30", "module: 1", bore);
        Part part = gear.parts().get(0);
        assertThat(part.layers().get(0).regions().get(0).contours()).hasSize(contours);
        assertThat(Gears.failed(gear)).isEmpty();
    }

    @Test
    void spokesAndHolesKeepTheWeb() {
        for (String form : new String[] {"spokes", "holes"}) {
            Design whole = design("gear", "teeth: 60", "module: 1");
            Design light = design(
                    "gear",
                    "teeth: 60",
                    "module: 1",
                    "hub-screws: {screw: M3, count: 3}",
                    "lightening: {form: " + form + "}");
            assertThat(Gears.failed(light)).as(form).isEmpty();
            assertThat(area(light)).as(form).isLessThan(0.8 * area(whole));
        }
    }

    private static double area(Design gear) {
        return gear.parts().get(0).layers().get(0).regions().get(0).area();
    }

    @Test
    void ringsAndSectors() {
        Design ring = design("gear", "teeth: 60", "module: 1", "internal: true", "hub-screws: {screw: M3, count: 6}");
        assertThat(dimension(ring, "ring-diameter")).isGreaterThan(62.5);
        assertThat(Gears.failed(ring)).isEmpty();
        Design segment = design("gear", "teeth: 60", "module: 1", "sector: {teeth: 11, shape: segment}");
        Design disc = design("gear", "teeth: 60", "module: 1", "sector: {teeth: 11}");
        assertThat(area(segment)).isLessThan(0.4 * area(disc));
        assertThat(Gears.failed(segment)).isEmpty();
        assertThat(Gears.failed(disc)).isEmpty();
        Design piece = design("gear", "teeth: 60", "module: 1", "internal: true", "sector: {teeth: 10}");
        assertThat(area(piece)).isLessThan(0.2 * area(ring));
    }

    @Test
    void arcsStayWithinHalfAMicrometre() {
        for (String teeth : new String[] {"8", "17", "24", "120"}) {
            assertThat(dimension(design("gear", "teeth: " + teeth, "module: 1.25"), "outline-deviation"))
                    .isLessThanOrEqualTo(0.0005);
        }
    }

    /** A mark over an opening would be engraved on nothing. */
    @Test
    void marksStayOnTheMaterialBesideOpenings() {
        for (double module : new double[] {0.3, 0.5, 1, 2.5}) {
            Design gear = design(
                    "gear",
                    "teeth: 41",
                    "module: " + module,
                    "backlash: 0",
                    "bore: {axle: 1}",
                    "lightening: {form: spokes, count: 3, spoke-width: 0.8}");
            Layer layer = gear.parts().get(0).layers().get(0);
            Region region = layer.regions().get(0);
            double rim = region.holes().get(1).segments().stream()
                    .mapToDouble(s -> Math.max(s.start().norm(), s.pointAt(0.5).norm()))
                    .max()
                    .orElseThrow();
            for (Path mark : layer.marks()) {
                for (Segment piece : mark.segments()) {
                    assertThat(Math.min(piece.start().norm(), piece.end().norm()))
                            .isGreaterThanOrEqualTo(rim - 1e-9);
                }
            }
        }
    }

    /**
     * The corners of a keyway look at the tooth over it and not at the root circle: measured between flattened outlines, as
     * the judge does not.
     */
    @ParameterizedTest
    @CsvSource({"keyway,17,1,8", "keyway,20,1,10", "square,24,1,11", "keyway,15,2,16"})
    void webRoundABoreIsThatOfTheOutline(String form, int teeth, double module, double size) {
        Design gear = design(
                "gear", "teeth: " + teeth, "module: " + module, "bore: {form: " + form + ", diameter: " + size + "}");
        Region region = gear.parts().get(0).layers().get(0).regions().get(0);
        double apart = Double.POSITIVE_INFINITY;
        for (Segment hole : region.holes().get(0).segments()) {
            for (int i = 0; i <= 200; i++) {
                for (Segment tooth : region.outer().segments()) {
                    apart = Math.min(apart, Distances.distance(tooth, hole.pointAt(i / 200.0)));
                }
            }
        }
        Finding told = gear.findings().stream()
                .filter(f -> f.check().equals("minimum-web"))
                .findFirst()
                .orElseThrow();
        assertThat(told.measured()).isCloseTo(apart, within(2e-3));
    }

    /** A mark that would run over the keyway ends before it. */
    @Test
    void marksKeepOffHoles() {
        int seen = 0;
        for (double depth = 0.4; depth < 4; depth += 0.2) {
            Design gear = design(
                    "gear",
                    "teeth: 24",
                    "module: 1",
                    "marks: true",
                    "bore: {form: keyway, diameter: 12, key-width: 3, key-depth: " + depth + "}");
            Layer layer = gear.parts().get(0).layers().get(0);
            for (Path mark : layer.marks()) {
                seen++;
                for (int i = 0; i <= 50; i++) {
                    Point p = mark.segments().get(0).pointAt(i / 50.0);
                    assertThat(Containment.of(layer.regions().get(0), p, 0))
                            .as("depth %s, %s", depth, p)
                            .isEqualTo(Containment.INSIDE);
                }
            }
        }
        assertThat(seen).isBetween(5, 17);
    }
}
