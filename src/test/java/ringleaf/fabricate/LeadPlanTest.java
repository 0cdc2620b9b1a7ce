// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import ringleaf.curve.JtsShapes;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.tooth.Forms;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.ToothForm;

class LeadPlanTest {
    private static final Tolerance FINE = new Tolerance(1e-3);

    private static final Region PLATE = new Region(
            Contour.rectangle(new Box(0, 0, 60, 30)),
            List.of(
                    Contour.circle(new Point(10, 15), 4).clockwise(),
                    Contour.circle(new Point(25, 15), 0.3).clockwise(),
                    Shapes.obround(new Point(35, 15), new Point(50, 15), 2).clockwise()));

    /** Judged by a public topology library: in the scrap all the way, and well off everything that is cut. */
    private static void judge(Region started, List<Path> leads, double length) {
        Geometry material = JtsShapes.polygon(started, FINE);
        for (Path lead : leads) {
            assertThat(lead.segments()).hasSize(1);
            Segment line = lead.segments().get(0);
            assertThat(line.length()).isLessThanOrEqualTo(length + 1e-12).isGreaterThanOrEqualTo(length / 8 - 1e-12);
            LineString drawn = new GeometryFactory().createLineString(new Coordinate[] {
                new Coordinate(line.start().x(), line.start().y()),
                new Coordinate(line.end().x(), line.end().y())
            });
            assertThat(drawn.intersection(material).getLength()).isLessThan(0.01);
            double far = material.getBoundary().distance(drawn.getStartPoint());
            assertThat(far).isGreaterThanOrEqualTo(0.95 * line.length() - 2 * FINE.length());
        }
    }

    @Test
    void leadsLieInTheScrapAndContoursBeginThere() {
        LeadPlan plan = new LeadPlan(1.5, List.of());
        Region started = plan.started(PLATE);
        assertThat(started.area()).isCloseTo(PLATE.area(), within(1e-9));
        assertThat(started.perimeter()).isCloseTo(PLATE.perimeter(), within(1e-9));
        List<Path> leads = plan.leads(started, true);
        assertThat(leads).hasSize(4);
        judge(started, leads, 1.5);
        assertThat(plan.leads(started, false)).hasSize(3);
        int begun = 0;
        for (Contour contour : started.contours()) {
            for (Path lead : leads) {
                begun += lead.end().equals(contour.segments().get(0).start()) ? 1 : 0;
            }
        }
        assertThat(begun).isEqualTo(4);
        // the outer contour has its longest side cut in two, and no other piece
        assertThat(started.outer().segments()).hasSize(5);
        assertThat(started.outer().segments().get(0).start()).isEqualTo(new Point(30, 0));
    }

    @Test
    void workingEdgesAreLeftAlone() {
        Region slot = Region.of(Shapes.obround(new Point(35, 15), new Point(50, 15), 2.5));
        Region side = Region.of(Contour.rectangle(new Box(-1, -1, 61, 3)));
        LeadPlan plan = new LeadPlan(1, List.of(slot, side));
        Region started = plan.started(PLATE);
        judge(started, plan.leads(started, true), 1);
        assertThat(started.outer().segments().get(0).start()).isEqualTo(new Point(30, 30));
        // a slot slides along its sides: it is begun at one of its ends
        Point begin = started.holes().get(2).segments().get(0).start();
        assertThat(Math.abs(begin.x() - 42.5)).isCloseTo(9.5, within(1e-9));
    }

    @Test
    void wheelsAreBegunOnATip() {
        ToothForm form = Forms.of(1, 24);
        Region wheel = Region.of(GearOutline.of(form, Tolerance.CURVE).external());
        LeadPlan plan = new LeadPlan(1, List.of(Region.disc(Point.ORIGIN, form.tipRadius() - 0.02)));
        Region started = plan.started(wheel);
        judge(started, plan.leads(started, true), 1);
        assertThat(started.outer().segments().get(0).start().norm()).isCloseTo(form.tipRadius(), within(1e-9));
        assertThat(started.area()).isCloseTo(wheel.area(), within(1e-9));
    }

    @Test
    void noneAreAskedForNoneAreMade() {
        assertThat(LeadPlan.NONE.started(PLATE)).isSameAs(PLATE);
        assertThat(LeadPlan.NONE.leads(PLATE, true)).isEmpty();
        // too small for an eighth of the lead
        Region pinhole = new Region(
                Contour.rectangle(new Box(0, 0, 9, 9)),
                List.of(Contour.circle(new Point(4, 4), 0.05).clockwise()));
        LeadPlan plan = new LeadPlan(8, List.of());
        assertThat(plan.leads(plan.started(pinhole), false)).isEmpty();
    }
}
