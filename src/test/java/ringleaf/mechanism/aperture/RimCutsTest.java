package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

<<<<<<< HEAD
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
=======
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.curve.Overlay;
>>>>>>> cold
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

class RimCutsTest {
<<<<<<< HEAD
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
=======
    /** Rim of radius 10 with one flat side from 20 degrees clockwise to -20. */
    private static Contour flatted() {
        Arc plain = Arc.of(Point.ORIGIN, 10, Math.toRadians(20), Math.toRadians(320));
        return Contour.of(plain, new Line(plain.end(), plain.start()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drive: {by: pinion, module: 0.8}",
                "drive: {by: pinion, module: 0.8, at: 70 deg}",
                "drive: {by: pinion, module: 1}",
                "drive: {by: hand}",
                "drive: {by: hand, at: 200 deg}"
            })
    void theRingIsTheSameAsByIntersecting(String drive) {
        for (int blades : new int[] {7, 14}) {
            ApertureDesign design = Apertures.sizes(Apertures.spec(
                    "full-opening: 64", "least-opening: 24", "blades: " + blades, "blade-thickness: 0.15", drive));
            RingPart ring = new RingPart(design);
            Contour strung = ring.part().layers().get(0).regions().get(0).outer();
            same(strung, ring.intersected());
        }
    }

    @Test
    void cutsMayComeInAnyOrder() {
        RimCuts cuts = new RimCuts(flatted());
        cuts.scallop(Math.toRadians(-60), 0.6);
        cuts.notch(8, Math.toRadians(170), Math.toRadians(190));
        cuts.scallop(Math.toRadians(60), 0.6);
        assertThat(cuts.fits()).isTrue();
        Region notch = Region.of(ringleaf.curve.Shapes.annulusSector(
                Point.ORIGIN, 8, 11, Math.toRadians(170), Math.toRadians(190)));
        List<Region> less = new ArrayList<>(List.of(notch));
        less.add(Region.disc(Point.polar(10, Math.toRadians(-60)), 0.6));
        less.add(Region.disc(Point.polar(10, Math.toRadians(60)), 0.6));
        Contour expected = Overlay.difference(List.of(Region.of(flatted())), less).get(0).outer();
        same(cuts.outline(), expected);
    }

    @Test
    void cutsThatMeetOrLeaveThePlainRimDoNotFit() {
        RimCuts over = new RimCuts(flatted());
        over.notch(8, Math.toRadians(170), Math.toRadians(190));
        over.scallop(Math.toRadians(191), 0.6);
        assertThat(over.fits()).isFalse();
        assertThatThrownBy(over::outline).isInstanceOf(IllegalStateException.class);
        for (double direction : new double[] {0, 20, -20, 21, -21}) {
            RimCuts off = new RimCuts(flatted());
            off.scallop(Math.toRadians(direction), 0.6);
            assertThat(off.fits()).as("%s degrees", direction).isFalse();
        }
    }

    /** Same area, and nothing of the one outside the other; both bounds are far above rounding, 1e-9 mm². */
    private static void same(Contour one, Contour other) {
        assertThat(one.segments()).hasSameSizeAs(other.segments());
        assertThat(one.area()).isCloseTo(other.area(), within(1e-9));
        for (int i = 0; i < one.segments().size(); i++) {
            Point start = one.segments().get(i).start();
            double nearest = Double.MAX_VALUE;
            for (int j = 0; j < other.segments().size(); j++) {
                nearest = Math.min(nearest, start.distance(other.segments().get(j).start()));
            }
            assertThat(nearest).as("corner %s", start).isLessThan(1e-9);
        }
        List<Region> left = new ArrayList<>(Overlay.difference(List.of(Region.of(one)), List.of(Region.of(other))));
        left.addAll(Overlay.difference(List.of(Region.of(other)), List.of(Region.of(one))));
        double area = 0;
        for (Region region : left) {
            area += region.area();
        }
        assertThat(area).isLessThan(1e-9);
>>>>>>> cold
    }
}
