// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import ringleaf.OneMechanism;
import ringleaf.curve.Circle;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecRefused;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

class PlateTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    private static PlannedPlate planned(String head, String... seats) {
        List<String> lines =
                new ArrayList<>(head.lines().filter(l -> !l.isBlank()).toList());
        lines.add("seats:");
        for (String seat : seats) {
            lines.add("  - {" + seat + "}");
        }
        return (PlannedPlate) OneMechanism.planned(
                new Problems(),
                "fabrication:\n  plate: {process: co2-laser, stock: acrylic-3}\n",
                SeatPlate.NAME,
                lines.toArray(String[]::new));
    }

    private static List<String> failed(PlannedPlate planned) {
        Design design = planned.design(11);
        List<Finding> all = new ArrayList<>(design.findings());
        all.addAll(Judge.judge(design.assembly(), Options.DEFAULT).findings());
        return all.stream()
                .filter(Finding::failed)
                .map(Finding::check)
                .distinct()
                .toList();
    }

    private static Part plate(PlannedPlate planned, String name) {
        return planned.design(2).parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<Circle> holes(Part plate) {
        List<Circle> all = new ArrayList<>();
        for (Contour hole : plate.layers().get(0).regions().get(0).holes()) {
            double r = hole.box().width() / 2;
            all.add(new Circle(hole.box().centre(), r));
        }
        return all;
    }

    /** Hole patterns of two common boards as their makers' drawings give them (from memory): 58 x 23 and 58 x 49, 2.75 mm. */
    @ParameterizedTest
    @CsvSource({"board-65x30, 58, 23", "board-85x56, 58, 49", "board-51x21, 47, 11.4"})
    void boardsAreBoredAsTheirDrawingsSay(String board, double along, double across) {
        PlannedPlate planned = planned("", "board: " + board + ", at: {x: 7, y: -3}, turn: 90deg");
        List<Circle> holes = holes(plate(planned, "plate"));
        assertThat(holes).hasSize(4);
        double minX = holes.stream().mapToDouble(h -> h.centre().x()).min().orElseThrow();
        double maxX = holes.stream().mapToDouble(h -> h.centre().x()).max().orElseThrow();
        double minY = holes.stream().mapToDouble(h -> h.centre().y()).min().orElseThrow();
        double maxY = holes.stream().mapToDouble(h -> h.centre().y()).max().orElseThrow();
        assertThat(maxX - minX).isCloseTo(across, within(1e-9));
        assertThat(maxY - minY).isCloseTo(along, within(1e-9));
        assertThat((minX + maxX) / 2).isCloseTo(7, within(1e-9));
        assertThat(failed(planned)).isEmpty();
    }

    /** Area within the hull against that of JTS, over the same discs as polygons of 2000 sides. */
    @Test
    void theHullIsThatOfJts() {
        Random random = new Random(99);
        for (int i = 0; i < 20; i++) {
            List<String> seats = new ArrayList<>();
            for (int k = 0; k < 3 + random.nextInt(6); k++) {
                seats.add(String.format(
                        Locale.ROOT,
                        "wires: %.2f, at: {x: %.2f, y: %.2f}",
                        2 + 6 * random.nextDouble(),
                        100 * random.nextDouble() - 50,
                        100 * random.nextDouble() - 50));
            }
            PlateSpec spec = planned("margin: 2", seats.toArray(String[]::new)).spec();
            List<Coordinate> points = new ArrayList<>();
            for (Seat seat : spec.seats()) {
                for (Circle disc : seat.material(spec.plate())) {
                    for (int a = 0; a < 2000; a++) {
                        Point at = disc.centre().plus(Point.polar(disc.radius() + 2, 2 * Math.PI * a / 2000));
                        points.add(new Coordinate(at.x(), at.y()));
                    }
                }
            }
            Geometry hull = JTS.createMultiPointFromCoords(points.toArray(Coordinate[]::new))
                    .convexHull();
            double area = Region.of(spec.edge()).area();
            assertThat(area).isCloseTo(hull.getArea(), within(2e-6 * area));
        }
    }

    @Test
    void seatsAreRepeatedRoundACircleAndMirrored() {
        List<Circle> round =
                holes(plate(planned("", "screw: M3, polar: {radius: 20, angle: 30deg}, repeat: 5"), "plate"));
        assertThat(round).hasSize(5);
        assertThat(round).allSatisfy(h -> assertThat(h.centre().norm()).isCloseTo(20, within(1e-9)));
        List<Circle> row = holes(
                plate(planned("", "wires: 3, at: {x: 10, y: 1}, step: {x: 8}, repeat: 3, mirror: true"), "plate"));
        assertThat(row.stream().map(h -> Math.round(h.centre().x())).sorted().toList())
                .containsExactly(-26L, -18L, -10L, 10L, 18L, 26L);
    }

    /** The gap holds what stands between the plates and is a length that is sold; a millimetre less is too little. */
    @Test
    void theGapFollowsFromWhatStandsBetween() {
        String[] seats = {
            "board: board-65x30",
            "spacer: M3, at: {x: 40, y: 20}, mirror: true",
            "spacer: M3, at: {x: 40, y: -20}, mirror: true"
        };
        PlannedPlate solved = planned("plates: 2", seats);
        assertThat(failed(solved)).isEmpty();
        // 3 mm of standoff, 1.4 mm of board, 5 mm of parts
        assertThat(solved.spec().gap()).isGreaterThanOrEqualTo(9.4 + 0.5).isLessThanOrEqualTo(12);
        assertThat(failed(planned("plates: 2\ngap: 9.5", seats))).contains("clearance-above");
        assertThat(failed(planned("plates: 2\ngap: 10", seats))).doesNotContain("clearance-above");
    }

    @Test
    void whatStandsInTheWayFails() {
        assertThat(failed(planned("", "servo: micro-180", "servo: micro-180, at: {x: 0, y: 12}")))
                .contains("clearance");
        assertThat(failed(planned("", "servo: micro-180", "servo: micro-180, at: {x: 0, y: 25}")))
                .isEmpty();
        assertThat(failed(planned("", "screw: M3", "wires: 6, at: {x: 3, y: 0}")))
                .contains("seats-apart");
        assertThat(failed(planned("", "screw: M3", "wires: 6, at: {x: 6, y: 0}")))
                .contains("minimum-web");
        assertThat(failed(planned("overall-width: {at-most: 20}", "servo: micro-180")))
                .contains("overall-width");
        // a board before the plate over the heads of a servo's screws
        assertThat(failed(planned("", "servo: micro-180", "board: board-65x30, side: front, height: 10")))
                .contains("driver-reach");
    }

    /** A board's screws have 0.35 and 0.25 mm of play or so; holes further apart than both together bind. */
    @Test
    void holesTooFarOffNoLongerTakeTheScrews() {
        var built = planned("", "board: board-65x30").asBuilt().orElseThrow();
        double[][] off = new double[built.deviations().size()][1];
        double drawn = built.bench().margins(off)[0];
        assertThat(drawn).isPositive();
        off[0][0] = drawn + 0.01;
        assertThat(built.bench().margins(off)[0]).isNegative();
        off[0][0] = -drawn + 0.01;
        assertThat(built.bench().margins(off)[0]).isCloseTo(0.01, within(1e-9));
        assertThat(planned("", "wires: 4").asBuilt()).isEmpty();
    }

    @Test
    void whatContradictsItselfIsRefused() {
        refused("plates: 2", "two plates need spacers", "screw: M3");
        refused("", "spacers stand between two plates", "spacer: M3");
        refused("", "two things at once", "screw: M3, wires: 4");
        refused("", "what sits there", "at: {x: 1}");
        refused("", "would stand in one place", "screw: M3, repeat: 3");
        refused("", "there is one plate", "screw: M3, plate: rear");
        refused("", "board-65x30", "board: board-65x31");
        refused("", "said twice", "screw: M3, at: {x: 1}, polar: {radius: 3}");
        refused("", "outside a board", "board: {width: 20, holes-along: 30, hole-diameter: 2.2}");
    }

    private static void refused(String head, String reason, String... seats) {
        assertThatThrownBy(() -> planned(head, seats))
                .isInstanceOfSatisfying(
                        SpecRefused.class, r -> assertThat(r.problems().text()).contains(reason));
    }

    /** Random seats of every sort: never an exception, and every outline that passes has its webs by JTS as well. */
    @Test
    void randomPlatesAreJudgedAsJtsWould() {
        long seed = 8;
        Random random = new Random(seed);
        String[] sorts = {
            "servo: micro-180",
            "bearing: \"623\"",
            "axle: 3",
            "shaft: 6",
            "board: board-51x21",
            "contact: capsule-12",
            "standoff: M3",
            "screw: M4",
            "wires: 7",
            "window: {width: 14, height: 6}",
            "slot: {length: 14, width: 4}"
        };
        int passed = 0;
        for (int i = 0; i < 120; i++) {
            List<String> seats = new ArrayList<>();
            for (int k = 0; k < 2 + random.nextInt(3); k++) {
                seats.add(String.format(
                        Locale.ROOT,
                        "%s, at: {x: %.2f, y: %.2f}, turn: %ddeg%s",
                        sorts[random.nextInt(sorts.length)],
                        140 * random.nextDouble() - 70,
                        140 * random.nextDouble() - 70,
                        random.nextInt(360),
                        random.nextInt(4) == 0 ? ", side: front" : ""));
            }
            String outline = List.of("hull", "round", "box").get(random.nextInt(3));
            PlannedPlate planned = planned("outline: " + outline, seats.toArray(String[]::new));
            if (!failed(planned).isEmpty()) {
                continue;
            }
            passed++;
            List<Contour> holes =
                    plate(planned, "plate").layers().get(0).regions().get(0).holes();
            for (int a = 0; a < holes.size(); a++) {
                for (int b = 0; b < a; b++) {
                    double apart = polygon(holes.get(a)).distance(polygon(holes.get(b)));
                    assertThat(apart).as("seed " + seed + " " + seats).isGreaterThan(3 - 0.02);
                }
            }
        }
        assertThat(passed).isGreaterThan(40);
    }

    private static Geometry polygon(Contour contour) {
        List<Coordinate> points = new ArrayList<>();
        for (var curve : contour.segments()) {
            for (int i = 0; i < 64; i++) {
                Point at = curve.pointAt(i / 64.0);
                points.add(new Coordinate(at.x(), at.y()));
            }
        }
        points.add(points.get(0));
        return JTS.createPolygon(points.toArray(Coordinate[]::new));
    }
}
