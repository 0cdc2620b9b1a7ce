// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.curve.Distances;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;

/** Bores as they are meant, and openings that leave the web. */
class BodyTest {
    @Test
    void aFlattedBoreMeasuresAcross() {
        Contour bore = new Bore.Flatted(6, 5).cuts().get(0);
        assertThat(bore.box().maxX()).isCloseTo(2, within(1e-12));
        assertThat(bore.box().minX()).isCloseTo(-3, within(1e-12));
        // A circle less a segment of height 1: r² acos(1 - h/r) - (r - h) sqrt(2 r h - h²).
        double segment = 9 * Math.acos(2 / 3.0) - 2 * Math.sqrt(5);
        assertThat(bore.area()).isCloseTo(9 * Math.PI - segment, within(1e-9));
    }

    @Test
    void aKeywayReachesItsDepth() {
        Bore.Keyed keyed = new Bore.Keyed(8, 2, 1);
        Contour bore = keyed.cuts().get(0);
        assertThat(bore.box().maxX()).isCloseTo(5, within(1e-9));
        assertThat(bore.box().height()).isCloseTo(8, within(1e-9));
        assertThat(keyed.reach()).isCloseTo(Math.hypot(5, 1), within(1e-12));
    }

    @Test
    void everyBoreStaysWithinItsReach() {
        for (Bore bore : List.of(
                new Bore.Round(5),
                new Bore.Flatted(5, 4),
                new Bore.Keyed(6, 2, 1),
                new Bore.Square(4),
                new Bore.Solid())) {
            for (Contour cut : bore.cuts()) {
                for (var piece : cut.segments()) {
                    for (int i = 0; i <= 8; i++) {
                        assertThat(piece.pointAt(i / 8.0).norm()).isLessThanOrEqualTo(bore.reach() + 1e-9);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 4, 5, 6, 8, 12})
    void openingsLeaveTheWeb(int count) {
        for (Lightening.Form form : List.of(Lightening.Form.HOLES, Lightening.Form.SPOKES)) {
            double web = 1.5;
            Body body = new Body(
                    new Bore.Round(6), AxleFit.running(5.85), Optional.empty(), new Lightening(form, count, 0));
            List<Contour> cuts = body.cuts(30, web);
            if (form == Lightening.Form.SPOKES && count == 12) {
                // Twelve spokes of a web each leave no window at so small a hub.
                assertThat(cuts).hasSize(1);
                continue;
            }
            assertThat(cuts.size()).as(form + " " + count).isGreaterThan(1);
            for (int i = 0; i < cuts.size(); i++) {
                for (int k = i + 1; k < cuts.size(); k++) {
                    assertThat(Distances.between(cuts.get(i), cuts.get(k)).distance())
                            .as(form + " " + count)
                            .isGreaterThanOrEqualTo(web - 1e-9);
                }
                double far = cuts.get(i).segments().stream()
                        .mapToDouble(s -> Math.max(
                                s.start().distance(Point.ORIGIN), s.pointAt(0.5).norm()))
                        .max()
                        .orElseThrow();
                assertThat(far).isLessThanOrEqualTo(30 + 1e-9);
            }
        }
    }

    @Test
    void aNarrowBandIsLeftWhole() {
        assertThat(new Lightening(Lightening.Form.HOLES, 0, 0).cuts(5, 6, 1.5)).isEmpty();
        assertThat(new Lightening(Lightening.Form.SPOKES, 24, 0).cuts(3, 20, 1.5))
                .isEmpty();
        assertThat(Lightening.NONE.cuts(5, 50, 1)).isEmpty();
    }
}
