// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

class RimCutsTest {
    /** The same figure cut by the general boolean, which knows nothing of how this one is strung together. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 2.5, 4, 6})
    void isWhatTheBooleanCuts(double turn) {
        Arc plain = Arc.of(Point.ORIGIN, 40, turn, 5);
        Contour outline = Contour.of(plain, new Line(plain.end(), plain.start()));
        Contour cut = new RimCuts(plain)
                .scallop(turn + 4, 0.7)
                .notch(turn + 1, turn + 2.2, 37)
                .in(outline);
        List<Region> general = Overlay.difference(
                List.of(Region.of(outline)),
                List.of(
                        Region.disc(Point.polar(40, turn + 4), 0.7),
                        Region.of(Shapes.annulusSector(Point.ORIGIN, 37, 41, turn + 1, turn + 2.2))));
        assertThat(general).hasSize(1);
        assertThat(cut.area()).isCloseTo(general.get(0).outer().area(), within(1e-9));
        assertThat(cut.length()).isCloseTo(general.get(0).outer().length(), within(1e-9));
        assertThat(cut.centroid().distance(general.get(0).outer().centroid())).isLessThan(1e-10);
    }

    @org.junit.jupiter.api.Test
    void cutsThatMeetAreRefused() {
        Arc plain = Arc.of(Point.ORIGIN, 40, 0, 5);
        Contour outline = Contour.of(plain, new Line(plain.end(), plain.start()));
        RimCuts cuts = new RimCuts(plain).notch(1, 2, 38).notch(1.5, 3, 38);
        assertThatThrownBy(() -> cuts.in(outline)).isInstanceOf(IllegalArgumentException.class);
    }
}
