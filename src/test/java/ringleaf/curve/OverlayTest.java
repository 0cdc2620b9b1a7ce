// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

class OverlayTest {
    private static final Region UNIT = square(0, 0, 10);

    private static Region square(double x, double y, double side) {
        return Region.of(Contour.rectangle(new Box(x, y, x + side, y + side)));
    }

    private static Region disc(double x, double y, double radius) {
        return Region.disc(new Point(x, y), radius);
    }

    private static void areas(Region a, Region b, double both, int unionCount, int differenceCount) {
        List<Region> union = Overlay.union(List.of(a, b));
        List<Region> difference = Overlay.difference(List.of(a), List.of(b));
        List<Region> intersection = Overlay.intersection(List.of(a), List.of(b));
        assertThat(OverlayJudge.area(intersection)).isCloseTo(both, within(1e-9));
        assertThat(OverlayJudge.area(union)).isCloseTo(a.area() + b.area() - both, within(1e-9));
        assertThat(OverlayJudge.area(difference)).isCloseTo(a.area() - both, within(1e-9));
        assertThat(union).hasSize(unionCount);
        assertThat(difference).hasSize(differenceCount);
    }

    @Test
    void disjointStaysTwoUntouched() {
        areas(disc(0, 0, 1), disc(5, 0, 2), 0, 2, 1);
        assertThat(Overlay.union(List.of(disc(0, 0, 1), disc(5, 0, 2)))).containsExactly(disc(0, 0, 1), disc(5, 0, 2));
    }

    @Test
    void containedBecomesAHoleOrVanishes() {
        areas(disc(0, 0, 5), disc(1, 0, 2), 4 * Math.PI, 1, 1);
        Region pierced = Overlay.difference(List.of(disc(0, 0, 5)), List.of(disc(1, 0, 2)))
                .get(0);
        assertThat(pierced.outer().isCircle()).isTrue();
        assertThat(pierced.holes()).hasSize(1);
        assertThat(pierced.holes().get(0).isCircle()).isTrue();
        areas(disc(1, 0, 2), disc(0, 0, 5), 4 * Math.PI, 1, 0);
    }

    @Test
    void sameRegionIsItself() {
        areas(UNIT, UNIT, 100, 1, 0);
        areas(disc(1, 2, 3), disc(1, 2, 3), 9 * Math.PI, 1, 0);
        assertThat(Overlay.union(List.of(disc(1, 2, 3), disc(1, 2, 3)))).containsExactly(disc(1, 2, 3));
        assertThat(Overlay.union(List.of())).isEmpty();
        assertThat(Overlay.intersection(List.of(UNIT), List.of())).isEmpty();
        assertThat(OverlayJudge.area(Overlay.difference(List.of(UNIT), List.of())))
                .isEqualTo(100);
    }

    @Test
    void crossingCirclesHaveTheLensArea() {
        // lens of two circles of radius r at distance d: 2 r² acos(d/2r) - d/2 sqrt(4r² - d²)
        double lens = 2 * 16 * Math.acos(6 / 8.0) - 3 * Math.sqrt(64 - 36);
        areas(disc(-3, 0, 4), disc(3, 0, 4), lens, 1, 1);
        Region union = Overlay.union(List.of(disc(-3, 0, 4), disc(3, 0, 4))).get(0);
        assertThat(union.outer().segments()).hasSize(2).allMatch(s -> s instanceof Arc a && a.radius() == 4);
    }

    @Test
    void circlesTouchingOutsideStayTwo() {
        areas(disc(-3, 0, 3), disc(2, 0, 2), 0, 2, 1);
        Region turned = disc(5 * Math.cos(0.7), 5 * Math.sin(0.7), 2);
        areas(disc(0, 0, 3), turned, 0, 2, 1);
    }

    @Test
    void circlesTouchingInsideGiveACrescent() {
        areas(disc(0, 0, 3), disc(1, 0, 2), 4 * Math.PI, 1, 1);
        areas(disc(0, 0, 3), disc(Math.cos(0.7), Math.sin(0.7), 2), 4 * Math.PI, 1, 1);
    }

    @Test
    void lineTouchingACircle() {
        areas(UNIT, disc(13, 5, 3), 0, 2, 1);
        areas(UNIT, disc(7, 5, 3), 9 * Math.PI, 1, 1);
    }

    @Test
    void sharedEdgesWholeAndInPart() {
        areas(UNIT, square(10, 0, 10), 0, 1, 1);
        Region wide = Overlay.union(List.of(UNIT, square(10, 0, 10))).get(0);
        assertThat(wide.outer().segments()).hasSize(4);
        areas(UNIT, square(10, 3, 4), 0, 1, 1);
        areas(UNIT, square(6, 3, 4), 16, 1, 1);
        areas(UNIT, square(6, 6, 4), 16, 1, 1);
        areas(UNIT, Region.of(Contour.rectangle(new Box(4, 0, 6, 10))), 20, 1, 2);
    }

    @Test
    void touchingInAPointStaysTwoAndAHoleMayTouch() {
        areas(UNIT, square(10, 10, 5), 0, 2, 1);
        // four squares round a square hole that touch only in corners
        List<Region> around = List.of(square(0, 10, 10), square(10, 0, 10), square(20, 10, 10), square(10, 20, 10));
        assertThat(Overlay.union(around)).hasSize(4).allMatch(r -> r.holes().isEmpty());
        Region plate = square(0, 0, 10);
        Region diamond =
                Region.of(Contour.polygon(List.of(new Point(5, 2), new Point(8, 5), new Point(5, 8), new Point(0, 5))));
        List<Region> left = Overlay.difference(List.of(plate), List.of(diamond));
        assertThat(left).hasSize(1);
        assertThat(left.get(0).holes()).hasSize(1);
        assertThat(left.get(0).outer().segments()).hasSize(4);
    }

    @Test
    void piecesOfOneCircleJoinToACircleAgain() {
        Region left = Region.of(Shapes.discSector(new Point(2, 3), 4, 0.5, 3));
        Region right = Region.of(Shapes.discSector(new Point(2, 3), 4, 3, 0.5));
        List<Region> whole = Overlay.union(List.of(left, right));
        assertThat(whole).hasSize(1);
        assertThat(whole.get(0).outer().isCircle()).isTrue();
        assertThat(whole.get(0).area()).isCloseTo(16 * Math.PI, within(1e-10));
        // overlapping stretches of one circle
        Region more = Region.of(Shapes.annulusSector(new Point(2, 3), 3, 4, 2, 5));
        assertThat(OverlayJudge.area(Overlay.union(List.of(left, more)))).isCloseTo(2.5 * 8 + 2 * 3.5, within(1e-10));
    }

    @Test
    void circleCutAndHealedStaysACircle() {
        Region disc = disc(1, 1, 6);
        List<Region> halves = new ArrayList<>(Overlay.difference(List.of(disc), List.of(square(-20, -20, 21))));
        halves.addAll(Overlay.intersection(List.of(disc), List.of(square(-20, -20, 21))));
        List<Region> healed = Overlay.union(halves);
        assertThat(healed).hasSize(1);
        assertThat(healed.get(0).outer().isCircle()).isTrue();
        assertThat(healed.get(0).area()).isCloseTo(36 * Math.PI, within(1e-9));
    }

    @Test
    void bladeWithAnEarThatTouchesTheBandFromInside() {
        // a disc on the end of a band, as large as the band is wide, larger, and tangent to one of its sides
        Region band = Region.of(ArcSlot.of(Point.ORIGIN, 40, 4, 0, 2.5));
        for (double radius : new double[] {4, 4.5, 5}) {
            List<Region> blade = Overlay.union(List.of(band, disc(40, 0, radius)));
            assertThat(blade).hasSize(1);
            assertThat(blade.get(0).holes()).isEmpty();
            assertThat(blade.get(0).outer().segments()).hasSize(radius == 4 ? 4 : 6 - 2);
        }
        List<Region> tangent = Overlay.union(List.of(band, disc(38, 0, 6)));
        assertThat(tangent).hasSize(1);
        OverlayJudge.checkAll("tangent ear", List.of(band), List.of(disc(38, 0, 6)));
    }

    @Test
    void rimWithNotchesKeepsItsCarriers() {
        Region rim = Region.ring(Point.ORIGIN, 20, 30);
        List<Region> notches = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double at = i * Math.PI / 30;
            notches.add(Region.of(Shapes.obround(Point.polar(29, at), Point.polar(33, at), 0.7)));
        }
        List<Region> gear = Overlay.difference(List.of(rim), notches);
        assertThat(gear).hasSize(1);
        assertThat(gear.get(0).holes()).hasSize(1);
        assertThat(gear.get(0).holes().get(0).isCircle()).isTrue();
        assertThat(gear.get(0).outer().segments()).hasSize(60 * 4);
        List<Region> bites = Overlay.intersection(List.of(rim), notches);
        assertThat(bites).hasSize(60);
        assertThat(gear.get(0).area() + OverlayJudge.area(bites)).isCloseTo(rim.area(), within(1e-9));
    }

    @Test
    void islandsInHolesFindTheirPlaces() {
        Region outer = Region.ring(Point.ORIGIN, 8, 10);
        Region inner = Region.ring(Point.ORIGIN, 4, 6);
        Region dot = disc(0, 0, 1);
        assertThat(Overlay.union(List.of(dot, outer, inner))).hasSize(3);
        List<Region> cut = Overlay.difference(List.of(disc(0, 0, 12)), List.of(outer, inner, dot));
        assertThat(cut).hasSize(3);
        assertThat(OverlayJudge.area(cut)).isCloseTo(Math.PI * (144 - 36 - 20 - 1), within(1e-9));
    }
}
