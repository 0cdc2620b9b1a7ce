// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ringleaf.curve.ArcSlot;
import ringleaf.curve.Shapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.part.Family;
import ringleaf.part.FitRow;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.tooth.BasicRack;
import ringleaf.tooth.GearOutline;
import ringleaf.tooth.ToothForm;
import ringleaf.tooth.ToothMeasure;

/** What is found on outlines whose sizes are known because they were drawn with them. */
class FeaturesTest {
    private static final Tolerance SAME = new Tolerance(0.001);

    private static Part part(Layer... layers) {
        return new Part("p", Family.PLATE, 1, new Part.Source("co2-laser", "s"), List.of(layers), List.of(), "");
    }

    private static Features features(Part part, SheetItem.FitLine... fits) {
        return Features.of(
                new SheetItem("t", "m", part, "", "", List.of(fits), List.of(), Optional.empty(), SheetUnit.MM), SAME);
    }

    private static List<String> callouts(Features features) {
        return features.found().callouts().stream()
                .map(c -> String.join(" | ", c.lines()))
                .toList();
    }

    /** A disc of 100 with a bore of 40, 8 holes of 3.4 on 80 from 10°, and 5 radial slots of 2 by 12. */
    private static Region flange() {
        List<Contour> holes = new ArrayList<>(List.of(Contour.circle(Point.ORIGIN, 20)));
        for (int i = 0; i < 8; i++) {
            holes.add(Contour.circle(Point.polar(40, Math.toRadians(10 + 45 * i)), 1.7));
        }
        for (int i = 0; i < 5; i++) {
            double angle = Math.toRadians(7 + 72 * i);
            holes.add(Shapes.obround(Point.polar(24, angle), Point.polar(34, angle), 1));
        }
        return Region.of(Contour.circle(Point.ORIGIN, 50)).withHoles(holes);
    }

    /** The same flange for who measures in inches: 100 mm are 3.9370 in (an inch is 25.4 mm: ISO 80000-3). */
    @Test
    void lengthsAreGivenInInchesWhereTheSheetIsInInches() {
        SheetItem inches = new SheetItem(
                "t",
                "m",
                part(Layer.of(flange(), 0, 3)),
                "",
                "",
                List.of(),
                List.of(),
                Optional.empty(),
                SheetUnit.INCH);
        assertThat(callouts(Features.of(inches, SAME)))
                .contains("\u23003.937", "\u23001.5748", "8x \u23000.1339 | on \u23003.1496, from 10\u00B0");
    }

    @Test
    void patternsOfAFlangeAreCounted() {
        Features features = features(part(Layer.of(flange(), 0, 3)));
        assertThat(features.bearings().round()).isTrue();
        assertThat(callouts(features))
                .containsExactlyInAnyOrder(
                        "\u2300100",
                        "\u230040",
                        "8x \u23003.4 | on \u230080, from 10\u00B0",
                        "5x slot 2 x 12 | end centres R24, R34 | from 7\u00B0");
        assertThat(features.found().places()).isEmpty();
        assertThat(features.found().isBoxed()).isFalse();
    }

    @Test
    void whereTheFlangeLiesDoesNotMatter() {
        Random random = new Random(20261125);
        for (int i = 0; i < 20; i++) {
            Placement placement =
                    new Placement(0, new Point(random.nextDouble() * 400, random.nextDouble() * 400 - 500));
            Region moved = flange().placed(placement);
            assertThat(callouts(features(part(Layer.of(moved, 0, 3)))))
                    .as("case " + i)
                    .containsExactlyElementsOf(callouts(features(part(Layer.of(flange(), 0, 3)))));
        }
    }

    @Test
    void aHoleOutOfItsPlaceGoesIntoTheTable() {
        List<Contour> holes = new ArrayList<>(flange().holes());
        holes.set(1, Contour.circle(Point.polar(40, Math.toRadians(10.2)), 1.7));
        Features features = features(part(Layer.of(new Region(flange().outer(), holes), 0, 3)));
        assertThat(features.found().places()).hasSize(8);
        Found.Place first = features.found().places().get(0);
        assertThat(first.label()).isEqualTo("A1");
        assertThat(first.what()).isEqualTo("\u23003.4");
        assertThat(first.at().distance(Point.polar(40, Math.toRadians(10.2)))).isLessThan(1e-9);
    }

    @Test
    void aCrookedPlateIsTurnedLevelAndMeasuredFromItsCorner() {
        Contour outline = Shapes.roundedRectangle(new Box(0, 0, 60, 40), 4);
        Contour window = Contour.rectangle(new Box(20, 10, 45, 22));
        Region plate = Region.of(outline, Contour.circle(new Point(5, 6), 1.1), window);
        Placement crooked = new Placement(Math.toRadians(23), new Point(100, -40));
        Features features = features(part(Layer.of(plate.placed(crooked), 0, 3)));
        assertThat(features.bearings().turn()).isEqualTo(Math.toRadians(-23), within(1e-9));
        assertThat(callouts(features)).containsExactly("4x R4");
        List<Found.Place> places = features.found().places();
        Point hole = places.stream()
                .filter(p -> p.what().equals("\u23002.2"))
                .findFirst()
                .orElseThrow()
                .at()
                .minus(features.bearings().origin());
        assertThat(hole.distance(new Point(5, 6))).isLessThan(1e-9);
        assertThat(places.stream().map(Found.Place::what)).contains("25 x 12 at 0\u00B0");
    }

    /** A bore of 10 for a key of 3 by 3 in a hub: DIN 6885 gives 11.4 from the slot's floor to the far side (from memory). */
    @Test
    void keywaysAreGivenByWidthAndHeight() {
        Point low = new Point(Math.sqrt(25 - 1.5 * 1.5), -1.5);
        Point high = new Point(low.x(), 1.5);
        Contour bore = Contour.of(
                ringleaf.geom.Arc.around(Point.ORIGIN, high, low, true),
                new Line(low, new Point(6.4, -1.5)),
                new Line(new Point(6.4, -1.5), new Point(6.4, 1.5)),
                new Line(new Point(6.4, 1.5), high));
        Features features = features(part(Layer.of(Region.of(Contour.circle(Point.ORIGIN, 22), bore), 0, 3)));
        assertThat(callouts(features)).contains("\u230010, keyway 3 wide, 11.4 high at 0\u00B0");
    }

    @Test
    void boresWithFlatsAndCurvedSlotsAreKnown() {
        Point a = Point.polar(3, Math.toRadians(60));
        Point b = Point.polar(3, Math.toRadians(-60));
        Contour bore = Contour.of(ringleaf.geom.Arc.around(Point.ORIGIN, a, b, true), new Line(b, a));
        Contour slot = ArcSlot.of(Point.ORIGIN, 15, 1.25, 0.3, 0.3 + Math.toRadians(50));
        Features features = features(part(Layer.of(Region.of(Contour.circle(Point.ORIGIN, 22), bore, slot), 0, 3)));
        assertThat(callouts(features)).contains("\u23006, flat, 4.5 across at 0\u00B0");
        assertThat(features.found().places().get(0).what()).isEqualTo("slot 2.5 on R15, 50\u00B0 between end centres");
    }

    @Test
    void levelsAreNamedWhereAContourIsNotOnAll() {
        Region floor = Region.of(Contour.circle(Point.ORIGIN, 30), Contour.circle(Point.ORIGIN, 10));
        Region wall = Region.of(Contour.circle(Point.ORIGIN, 30), Contour.circle(Point.ORIGIN, 25));
        Features features = features(part(Layer.of(floor, 0, 2), Layer.of(wall, 2, 7)));
        assertThat(callouts(features)).containsExactly("\u230060", "\u230050 level 2", "\u230020 level 1");
        Section section = new Section(part(Layer.of(floor, 0, 2), Layer.of(wall, 2, 7)), 0, 0);
        assertThat(section.ends(Layer.of(wall, 2, 7))).hasSize(4);
        assertThat(section.ends(Layer.of(wall, 2, 7)).get(1)).isEqualTo(-25, within(1e-4));
    }

    @Test
    void whatLiesUnderAHigherLevelIsHidden() {
        Region low = Region.of(Contour.rectangle(new Box(0, 0, 20, 20)));
        Region high = Region.of(Contour.rectangle(new Box(10, -5, 40, 25)));
        Visible visible = Visible.of(part(Layer.of(low, 0, 1), Layer.of(high, 1, 2)), SAME);
        double hidden = visible.hidden().stream().mapToDouble(s -> s.length()).sum();
        double seen = visible.seen().stream().mapToDouble(s -> s.length()).sum();
        // of the lower square, half of two sides and all of a third lie under the upper rectangle
        assertThat(hidden).isEqualTo(40, within(1e-9));
        assertThat(seen).isEqualTo(40 + 120, within(1e-9));
    }

    @Test
    void fitsStandBesideTheirHoles() {
        SheetItem.FitLine fit = new SheetItem.FitLine(
                "bore", FitRow.Shape.HOLE, 3.4, 8, "running 3.3 F8/h6", "", "", "", "", List.of());
        assertThat(callouts(features(part(Layer.of(flange(), 0, 3)), fit)))
                .contains("8x \u23003.4 | on \u230080, from 10\u00B0 | running 3.3 F8/h6");
    }

    @Test
    void radiiOfAnOutlineAreCountedAndTheirCentresPlaced() {
        Contour hull = Shapes.hull(Point.ORIGIN, 20, new Point(50, 0), 8);
        Features features = features(part(Layer.of(Region.of(hull, Contour.circle(Point.ORIGIN, 12)), 0, 3)));
        assertThat(features.bearings().round()).isTrue();
        assertThat(callouts(features)).contains("\u230024", "R8");
        Found.Place centre = features.found().places().get(0);
        assertThat(centre.what()).isEqualTo("centre of R8");
        assertThat(centre.at().distance(new Point(50, 0))).isLessThan(1e-9);
    }

    /** Eight screws and a hole of their size beside them that shows which way plates go: only the screws are for screws. */
    @Test
    void holesOfTheSameSizeThatAreNotTheJointsAreNotCalledSo() {
        List<Point> screws = new ArrayList<>();
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            screws.add(Point.polar(40, Math.toRadians(10 + 45 * i)));
            holes.add(Contour.circle(screws.get(i), 1.1));
        }
        Point alignment = Point.polar(40, Math.toRadians(20));
        holes.add(Contour.circle(alignment, 1.1));
        Region plate = Region.of(Contour.circle(Point.ORIGIN, 50)).withHoles(holes);
        SheetItem.FitLine fit =
                new SheetItem.FitLine("screw-hole", FitRow.Shape.HOLE, 2.2, 8, "for M2", "", "", "", "", screws);
        Features features = features(part(Layer.of(plate, 0, 3)), fit);
        assertThat(callouts(features)).contains("8x \u23002.2 | on \u230080, from 10\u00B0 | for M2");
        assertThat(features.found().places())
                .filteredOn(p -> p.at().distance(alignment) < 1e-9)
                .singleElement()
                .satisfies(p -> assertThat(p.what()).isEqualTo("\u23002.2"));
    }

    /** z m cos a inv a + (k - 1/2) pi m cos a: ISO 21771, from memory; beyond about 105 teeth s_b > p_b. */
    @Test
    void teethBetweenTheJawsAreCountedWhereTheBaseToothIsWiderThanTheBasePitch() {
        for (int teeth : new int[] {17, 60, 104, 108, 120, 150, 200}) {
            ToothForm form = ToothForm.of(1, teeth, 0, 0, BasicRack.FORM_A);
            Region gear = Region.of(GearOutline.of(form, Tolerance.CURVE).external(), Contour.circle(Point.ORIGIN, 3));
            SheetItem item = new SheetItem(
                    "t",
                    "m",
                    part(Layer.of(gear, 0, 3)),
                    "",
                    "",
                    List.of(),
                    List.of(),
                    Optional.of(new SheetItem.Involute(teeth, 1, Math.toRadians(20))),
                    SheetUnit.MM);
            ToothSpan span = Features.of(item, SAME).span().orElseThrow(() -> new AssertionError(teeth + " teeth"));
            assertThat(span.span())
                    .as("%d teeth, span over %d", teeth, span.teeth())
                    .isEqualTo(ToothMeasure.span(form, span.teeth()), within(0.003));
        }
    }

    /** A ring with a notch for a stop from 40 to 75 degrees: its floor and both ends are told. */
    @Test
    void stopsAreToldWithTheirAngles() {
        Point a = Point.polar(50, Math.toRadians(40));
        Point b = Point.polar(50, Math.toRadians(75));
        Point c = Point.polar(46, Math.toRadians(75));
        Point d = Point.polar(46, Math.toRadians(40));
        Arc rim = Arc.of(Point.ORIGIN, 50, Math.toRadians(75), Math.toRadians(325));
        Arc floor = Arc.of(Point.ORIGIN, 46, Math.toRadians(40), Math.toRadians(35));
        Contour outline =
                Contour.of(rim, new Line(rim.end(), floor.start()), floor, new Line(floor.end(), rim.start()));
        assertThat(a.distance(rim.end()) + b.distance(rim.start())).isLessThan(1e-9);
        assertThat(c.distance(floor.end()) + d.distance(floor.start())).isLessThan(1e-9);
        Region ring = Region.of(outline, Contour.circle(Point.ORIGIN, 30));
        assertThat(callouts(features(part(Layer.of(ring, 0, 3)))))
                .contains("R46 | from 40\u00B0 over 35\u00B0", "\u2300100 | from 75\u00B0 over 325\u00B0");
    }

    /** A sector of 12 of 40 spaces at R45, a plain rim at the tips' R50, and a notch of 50 degrees at the roots' radius. */
    @Test
    void sectorsOfTeethAreToldWithTheirAnglesAndNotchesAreNoSpaces() {
        List<double[]> cuts = new ArrayList<>(List.of(new double[] {20, 50}));
        for (int i = 0; i < 12; i++) {
            cuts.add(new double[] {180 + 9 * i - 2, 4});
        }
        List<Segment> pieces = new ArrayList<>();
        Point start = Point.polar(45, Math.toRadians(20));
        for (int i = 0; i < cuts.size(); i++) {
            boolean last = i + 1 == cuts.size();
            double end = cuts.get(i)[0] + cuts.get(i)[1];
            double next = last ? 380 : cuts.get(i + 1)[0];
            Arc floor = Arc.of(Point.ORIGIN, 45, Math.toRadians(cuts.get(i)[0]), Math.toRadians(cuts.get(i)[1]));
            floor = floor.withEnds(start, floor.end());
            Arc rim = Arc.of(Point.ORIGIN, 50, Math.toRadians(end), Math.toRadians(next - end));
            start = last ? pieces.get(0).start() : Point.polar(45, Math.toRadians(next));
            pieces.addAll(List.of(floor, new Line(floor.end(), rim.start()), rim, new Line(rim.end(), start)));
        }
        Region ring = Region.of(new Contour(pieces), Contour.circle(Point.ORIGIN, 30));
        assertThat(callouts(features(part(Layer.of(ring, 0, 3)))))
                .contains("roots \u230090 | middles from 180\u00B0 over 99\u00B0", "R45 | from 20\u00B0 over 50\u00B0");
    }
}
