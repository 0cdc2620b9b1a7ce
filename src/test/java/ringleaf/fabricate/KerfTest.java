// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import ringleaf.Spoken;
import ringleaf.curve.JtsShapes;
import ringleaf.curve.Offset;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.report.FindingWords;
import ringleaf.tooth.Forms;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.ToothForm;

class KerfTest {
    private static Part part(Region region) {
        return new Part(
                "plate",
                Family.PLATE,
                1,
                new Part.Source("co2-laser", "acrylic-3"),
                List.of(Layer.of(region, 0, 3)),
                List.of(),
                "");
    }

    private static Region kerfed(Region region, double kerf) {
        List<Region> grown = Kerf.of(part(region), kerf).part().layers().get(0).regions();
        assertThat(grown).hasSize(1);
        return grown.get(0);
    }

    /** The published example: snijlab.nl, page on kerf. A 2 x 4 rectangle, cut on the line by a beam of 0.2. */
    @Test
    void beamOnTheLineLeavesASmallerPartAndALargerOpening() {
        Region drawn = Region.of(Contour.rectangle(new Box(0, 0, 2, 4)));
        Box part = Offset.of(drawn, -0.2 / 2).get(0).box();
        assertThat(part.width()).isCloseTo(1.8, within(1e-12));
        assertThat(part.height()).isCloseTo(3.8, within(1e-12));
        Region sheet = new Region(
                Contour.rectangle(new Box(-10, -10, 12, 14)), List.of(Contour.rectangle(new Box(0, 0, 2, 4))));
        Box opening = Offset.of(sheet, -0.2 / 2).get(0).holes().get(0).box();
        assertThat(opening.width()).isCloseTo(2.2, within(1e-12));
        assertThat(opening.height()).isCloseTo(4.2, within(1e-12));
    }

    @Test
    void whatIsDrawnWithKerfComesOffTheMachineNominal() {
        Region plate = new Region(
                Shapes.roundedRectangle(new Box(0, 0, 40, 30), 4),
                List.of(Contour.circle(new Point(10, 10), 3), Contour.circle(new Point(30, 20), 1.2)));
        Region drawn = kerfed(plate, 0.23);
        Region made = Offset.of(drawn, -0.23 / 2).get(0);
        assertThat(made.area()).isCloseTo(plate.area(), within(1e-9));
        assertThat(made.holes()).hasSize(2);
        assertThat(((Arc) drawn.holes().get(1).segments().get(0)).radius()).isCloseTo(1.2 - 0.115, within(1e-12));
        for (Segment segment : drawn.outer().segments()) {
            if (segment instanceof Arc arc) {
                assertThat(arc.radius()).isCloseTo(4.115, within(1e-12));
            }
        }
    }

    /**
     * The curve parallel to an involute is an involute of the same base circle, begun elsewhere: along its tangents to
     * the base circle the distance only gets longer by the shift. So the polar angle at radius r is that of the nominal
     * flank with the base half angle greater by shift / base radius.
     */
    @Test
    void kerfedFlanksAreInvolutesOfTheSameBaseCircle() {
        double kerf = 0.18;
        for (int teeth : new int[] {24, 120}) {
            ToothForm form = Forms.of(0.8, teeth);
            Contour nominal = GearOutline.of(form, Tolerance.CURVE).external();
            Contour drawn = kerfed(Region.of(nominal), kerf).outer();
            double base = form.baseRadius();
            int checked = 0;
            double worst = 0;
            for (Segment segment : drawn.segments()) {
                for (double u = 0.1; u < 1; u += 0.2) {
                    Point p = segment.pointAt(u);
                    double r = p.norm();
                    if (r < form.formRadius() + kerf || r > form.tipRadius() - 0.02) {
                        continue;
                    }
                    double tooth = Math.rint(p.angle() / form.pitchAngle()) * form.pitchAngle();
                    double off = Math.abs(p.angle() - tooth);
                    double alpha = Math.acos(base / r);
                    double expected = form.baseHalfAngle() + kerf / 2 / base - (Math.tan(alpha) - alpha);
                    // a difference of angle, times the base radius, is the distance square to the flank
                    worst = Math.max(worst, Math.abs(off - expected) * base);
                    checked++;
                }
            }
            assertThat(checked).isGreaterThan(4 * teeth);
            assertThat(worst).isLessThan(0.0005);
        }
    }

    /** A public topology library's buffer of a fine flattening, against the exact offset. */
    @Test
    void agreesWithABufferOfFineChords() {
        Tolerance fine = new Tolerance(4e-5);
        Random random = new Random(5);
        for (int i = 0; i < 6; i++) {
            double x = 4 + 10 * random.nextDouble();
            Region shape = Overlay.difference(
                            List.of(Region.of(Shapes.roundedRectangle(new Box(-20, -15, 20, 15), 3))),
                            List.of(Region.disc(new Point(x, 0), 5), Region.disc(new Point(-x, 3), 2)))
                    .get(0);
            double kerf = 0.05 + 0.3 * random.nextDouble();
            Geometry exact = JtsShapes.polygon(kerfed(shape, kerf), fine);
            BufferParameters parameters = new BufferParameters(60);
            Geometry buffer = BufferOp.bufferOp(JtsShapes.polygon(shape, fine), kerf / 2, parameters);
            assertThat(exact.symDifference(buffer).getArea()).as("trial %d", i).isLessThan(exact.getLength() * 2e-4);
        }
    }

    @Test
    void slitNarrowerThanTheKerfIsRefusedWithItsPlace() {
        Region slit = new Region(
                Contour.rectangle(new Box(0, 0, 30, 20)), List.of(Contour.rectangle(new Box(5, 9.95, 25, 10.05))));
        Kerf.Result result = Kerf.of(part(slit), 0.2);
        assertThat(result.findings()).hasSize(1);
        Finding finding = result.findings().get(0);
        assertThat(finding.status()).isEqualTo(Finding.Status.FAIL);
        assertThat(finding.measured()).isCloseTo(0.1, within(1e-9));
        assertThat(FindingWords.where(finding)).startsWith("plate, at ");
        assertThat(Kerf.of(part(slit), 0.09).findings()).noneMatch(Finding::failed);
    }

    @Test
    void notchFromOutsideAndTinyHoleAreFoundToo() {
        Region notched = Overlay.difference(
                        List.of(Region.of(Contour.rectangle(new Box(0, 0, 30, 20)))),
                        List.of(Region.of(Contour.rectangle(new Box(14.9, 10, 15.1, 25)))))
                .get(0);
        assertThat(Kerf.of(part(notched), 0.25).findings()).anyMatch(Finding::failed);
        assertThat(Kerf.of(part(notched), 0.19).findings()).noneMatch(Finding::failed);
        Region pierced =
                new Region(Contour.rectangle(new Box(0, 0, 30, 20)), List.of(Contour.circle(new Point(7, 8), 0.1)));
        Finding hole = Kerf.of(part(pierced), 0.25).findings().get(0);
        assertThat(hole.failed()).isTrue();
        assertThat(hole.measured()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void sharpInnerCornersAreReportedAndRoundOnesAreNot() {
        Region window =
                new Region(Contour.rectangle(new Box(0, 0, 30, 20)), List.of(Contour.rectangle(new Box(5, 5, 25, 15))));
        List<Finding> findings = Kerf.of(part(window), 0.2).findings();
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).status()).isEqualTo(Finding.Status.WARN);
        assertThat(Spoken.of(findings.get(0))).startsWith("4 inner corners");
        Region round = new Region(
                Contour.rectangle(new Box(0, 0, 30, 20)), List.of(Shapes.roundedRectangle(new Box(5, 5, 25, 15), 0.5)));
        assertThat(Kerf.of(part(round), 0.2).findings()).isEmpty();
    }

    @Test
    void noKerfChangesNothingAndANegativeOneIsRefused() {
        Part plate = part(Region.disc(Point.ORIGIN, 5));
        assertThat(Kerf.of(plate, 0).part()).isSameAs(plate);
        assertThatThrownBy(() -> Kerf.of(plate, -0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
