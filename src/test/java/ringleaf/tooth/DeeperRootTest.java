// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/** Roots that are cut deeper than a rolling tool would, on the outlines. */
class DeeperRootTest {
    private static final BasicRack RACK = BasicRack.FORM_A;

    private static ToothForm form(int teeth, double shift, double thinning, double deeper) {
        return ToothForm.of(1, teeth, shift, thinning, RACK.withDeeper(deeper));
    }

    private static Polygon polygon(ToothForm form) {
        Contour gear = GearOutline.of(form, Tolerance.CURVE).external();
        return Flattened.polygon(gear, 1e-5);
    }

    @ParameterizedTest
    @CsvSource({"24,0,0.2,0.24", "14,0.2,0.2,0.3", "20,0,0.05,0.1", "60,0,0.2,0.5", "10,0,0.1,0.2", "17,0.5,0,0.24"})
    void spacesAreAsMuchDeeperAndTeethAreTheSameAbove(int teeth, double shift, double thinning, double deeper) {
        ToothForm plain = form(teeth, shift, thinning, 0);
        ToothForm deep = form(teeth, shift, thinning, deeper);
        assertThat(plain.rootRadius() - deep.rootRadius()).isCloseTo(deeper, within(1e-12));
        LineString space = Flattened.line(
                GearOutline.of(deep, Tolerance.CURVE).toothSpace(0).segments(), 1e-6);
        Coordinate[] middle = {new Coordinate(0, 0), new Coordinate(2 * deep.tipRadius(), 0)};
        double bottom =
                space.intersection(Flattened.FACTORY.createLineString(middle)).getCoordinate().x;
        assertThat(bottom).as("bottom of the space").isCloseTo(deep.rootRadius(), within(2e-5));
        Polygon one = polygon(plain);
        Polygon other = polygon(deep);
        assertThat(other.difference(one).getArea())
                .as("material where there was none")
                .isLessThan(teeth * 2e-4);
        double ring = plain.formRadius() + 1e-3;
        double lost = one.difference(other)
                .difference(Flattened.jts(Point.ORIGIN).buffer(ring, 500))
                .getArea();
        assertThat(lost).as("taken from the involute").isLessThan(teeth * 2e-4);
        assertThat(GearOutline.of(deep, Tolerance.CURVE).deviation()).isLessThan(Tolerance.CURVE.length());
    }

    @ParameterizedTest
    @CsvSource({"24,0,0.2,0.24,2", "18,0.3,0.2,0.3,2", "10,0,0.1,0.2,4"})
    void joinsAreTangentWhereTheyWereBefore(int teeth, double shift, double thinning, double deeper, int perTooth) {
        List<Segment> pieces = GearOutline.of(form(teeth, shift, thinning, deeper), Tolerance.CURVE)
                .external()
                .segments();
        int corners = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Point out = pieces.get(i).tangentAt(1);
            corners += Math.abs(out.cross(pieces.get((i + 1) % pieces.size()).tangentAt(0))) > 1e-9 ? 1 : 0;
        }
        // an undercut has its corner at the end of the involute anyhow, and the other end of the straight piece
        assertThat(corners).isEqualTo(teeth * (perTooth == 4 ? 6 : perTooth));
    }

    /** A beam that is longer and no thicker is weaker. */
    @Test
    void aDeeperRootIsNoStrongerAndItsFootIsMeasured() {
        ToothForm plain = form(20, 0, 0.2, 0);
        ToothForm deep = form(20, 0, 0.2, 0.3);
        assertThat(LewisFactor.of(deep).factor())
                .isLessThan(LewisFactor.of(plain).factor());
        double least = Double.POSITIVE_INFINITY;
        for (Point p : Flattened.points(
                GearOutline.of(deep, Tolerance.CURVE).toothSpace(Math.PI / 20).segments(), 1e-4)) {
            boolean low = p.norm() < deep.formRadius() && p.angle() < 0.1;
            // the space stands half a pitch aside, so the tooth's middle is the x axis
            least = low && p.y() > 0 ? Math.min(least, 2 * p.y()) : least;
        }
        assertThat(deep.footThickness()).isCloseTo(least, within(2e-3));
        assertThatThrownBy(() -> RACK.withDeeper(-0.1)).hasMessageContaining("deeper");
    }

    @Test
    void aRingIsDeeperOutwards() {
        InternalForm plain = InternalForm.of(1, 60, 0, 0.2, RACK);
        InternalForm deep = InternalForm.of(1, 60, 0, 0.2, RACK.withDeeper(0.24));
        assertThat(deep.rootRadius() - plain.rootRadius()).isCloseTo(0.24, within(1e-12));
        double most = 0;
        for (Point p : Flattened.points(
                InternalOutline.of(deep, Tolerance.CURVE).opening().segments(), 1e-5)) {
            most = Math.max(most, p.norm());
        }
        assertThat(most).isCloseTo(deep.rootRadius(), within(1e-6));
    }
}
