// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import ringleaf.curve.JtsShapes;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Design;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** Blades and pins laid into the jigs as a builder does it, judged on flattened outlines. */
class JigsTest {
    private static final Tolerance FINE = new Tolerance(0.0005);

    private static String spec(String style, String... more) {
        List<String> lines = new ArrayList<>(List.of(
                "full-opening: 40",
                "least-opening: 30",
                "blades: 8",
                "blade-thickness: " + (style.equals("two-holes") ? "0.15" : "0.8"),
                "pin-style: " + style,
                "clearances: {opening: 0.15, blade: 0.3, slot-end: 0.3, stop: 0.4, pivot-end: 0.1, drive-end: 0.1}",
                "jigs: {}"));
        lines.addAll(List.of(more));
        return Apertures.spec(lines.toArray(new String[0]));
    }

    private static Part part(Design design, String name) {
        return design.parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static Geometry flat(List<Region> regions) {
        List<Geometry> all = new ArrayList<>();
        for (Region region : regions) {
            all.add(JtsShapes.polygon(region, FINE));
        }
        return UnaryUnionOp.union(all);
    }

    private static Geometry overlap(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, org.locationtech.jts.operation.overlayng.OverlayNG.INTERSECTION);
    }

    private static Layer level(Part part, double z) {
        return part.layers().stream()
                .filter(l -> l.zFrom() < z && z < l.zTo())
                .findFirst()
                .orElseThrow();
    }

    private static double thickness(Part part) {
        Layer widest = part.layers().get(part.layers().size() - 1);
        return widest.height();
    }

    @ParameterizedTest
    @CsvSource({"two-holes,left", "two-holes,right", "one-glued,left", "base-posts,left", "base-posts,right"})
    void everyBladeFitsItsPocketAndEveryPinStandsInItsSocketFlush(String style, String hand) {
        String text = spec(style, "hand: " + hand);
        Design design = Apertures.design(text);
        ApertureDesign sizes = Apertures.sizes(text);
        assertThat(part(design, "pivot-jig") != null).isEqualTo(style.equals("two-holes"));
        for (boolean drive : new boolean[] {false, true}) {
            Part jig = part(design, drive ? "drive-jig" : "pivot-jig");
            if (jig != null) {
                assertThat(jig.family()).isEqualTo(Family.JIG);
                assertThat(jig.source().process()).isEqualTo("filament-print");
                check(sizes, jig, drive, hand.equals("right"));
            }
        }
    }

    private static void check(ApertureDesign sizes, Part jig, boolean drive, boolean mirrored) {
        JigSpec asked = sizes.spec().jigs().orElseThrow();
        GlueJig made = new GlueJig(sizes, asked, drive);
        Region blade = new BladeParts(sizes).region();
        double floor = made.pocketFloor();
        double length = drive ? sizes.stack().drivePinHeight() : sizes.stack().pivotPinDepth();
        double thickness = sizes.spec().thickness();
        Layer walls = level(jig, floor + thickness / 2);
        assertThat(walls.zFrom()).isCloseTo(floor, within(1e-12));
        assertThat(jig.zTo()).as("walls stand above the blade").isGreaterThan(floor + thickness);
        List<Placement> places = made.layout().places();
        assertThat(places).hasSize(asked.pockets());
        Geometry solidWalls = flat(walls.regions());
        Geometry socketLevel = flat(level(jig, GlueJig.FLOOR + 0.01).regions());
        Geometry well = flat(level(jig, floor - 0.01).regions());
        Geometry bottom = flat(level(jig, 0.1).regions());
        List<Geometry> blades = new ArrayList<>();
        for (Placement place : places) {
            Region laid = (drive ? blade.mirrored(Mirror.FLIP_Y) : blade).placed(place);
            Point pin = drive ? Mirror.FLIP_Y.apply(sizes.drivePoint()) : sizes.pivot();
            Point at = place.apply(pin);
            if (mirrored) {
                laid = laid.mirrored(Mirror.FLIP_Y);
                at = Mirror.FLIP_Y.apply(at);
            }
            Geometry flatBlade = flat(List.of(laid));
            blades.add(flatBlade);
            // the blade lies in its pocket with the stated room all round
            assertThat(overlap(flatBlade, solidWalls).getArea()).isZero();
            assertThat(flatBlade.distance(solidWalls)).isCloseTo(asked.pocketRoom(), within(2e-3));
            // it rests on the floor with most of itself
            assertThat(overlap(flatBlade, well).getArea()).isGreaterThan(0.7 * flatBlade.getArea());
            // the pin: through the blade's hole, clear of all sides of the socket, down to solid floor
            Geometry round = flat(List.of(Region.disc(at, sizes.spec().pinDiameter() / 2)));
            assertThat(overlap(round, socketLevel).getArea()).isZero();
            assertThat(round.distance(socketLevel))
                    .isCloseTo(made.socketRadius() - sizes.spec().pinDiameter() / 2, within(2e-3));
            assertThat(overlap(round, bottom).getArea()).isCloseTo(round.getArea(), within(1e-6));
            // glue that creeps through meets no jig for half a millimetre
            assertThat(round.distance(well)).isGreaterThan(0.5);
            // nothing stands over the hole where the glue goes on
            assertThat(overlap(round, solidWalls).getArea()).isZero();
        }
        assertThat(floor - GlueJig.FLOOR).as("the pin's end is flush").isCloseTo(length, within(1e-12));
        assertThat(Math.toDegrees(made.lean())).isLessThan(6);
        for (int i = 0; i < blades.size(); i++) {
            for (int k = 0; k < i; k++) {
                double web = 2 * asked.pocketRoom() + asked.making().leastWeb();
                assertThat(blades.get(i).distance(blades.get(k))).isGreaterThan(web);
            }
        }
    }

    @Test
    void whatJigsLetPinsLeanIsCountedInAndLeavesRoomInBoresAndSlots() {
        // a pin stands against opposite edges of its socket: measured on the outlines, not on the jig's own figures
        for (double bore : new double[] {0.08, 0.15, 0.23, 0.4}) {
            String text = spec("two-holes").replace("drive-end: 0.1}", "drive-end: 0.1, bore: " + bore + "}");
            ApertureDesign sizes = Apertures.sizes(text);
            Part jig = part(Apertures.design(text), "pivot-jig");
            double length = sizes.stack().pivotPinDepth();
            Layer sockets = level(jig, GlueJig.FLOOR + 0.01);
            double depth = sockets.zTo() - sockets.zFrom();
            double socket =
                    Math.sqrt(sockets.regions().get(0).holes().get(0).box().width()
                            * sockets.regions().get(0).holes().get(0).box().height());
            double lean = Math.atan((socket - sizes.spec().pinDiameter()) / depth);
            double needed = length * Math.tan(sizes.stack().pinSlope() + lean);
            Finding tilt = new StackChecks(sizes, false)
                    .all().stream()
                            .filter(f ->
                                    f.check().equals("pin-tilt") && f.subjects().contains("pivot-pin"))
                            .findFirst()
                            .orElseThrow();
            assertThat(tilt.measured()).as("bore room %s", bore).isCloseTo(needed, within(1e-9));
            assertThat(tilt.failed()).isEqualTo(needed > bore);
            assertThat(needed <= bore).as("bore room %s takes %s", bore, needed).isEqualTo(bore > 0.1);
            assertThat(socket).isGreaterThanOrEqualTo(sizes.spec().pinDiameter() + PinLean.DRILLED - 1e-9);
        }
    }

    @Test
    void webbedWallsNotchesReachUnderTheBladeAndCountIsHeld() {
        for (int count : new int[] {1, 2, 5, 8}) {
            String text = spec("two-holes", "").replace("jigs: {}", "jigs: {blades: " + count + ", stacking: false}");
            Design design = Apertures.design(text);
            assertThat(part(design, StackingJig.NAME)).isNull();
            ApertureDesign sizes = Apertures.sizes(text);
            for (String name : List.of("pivot-jig", "drive-jig")) {
                Part jig = part(design, name);
                assertThat(jig.note()).contains("holds " + count + (count == 1 ? " blade," : " blades,"));
                boolean drive = name.equals("drive-jig");
                GlueJig made = new GlueJig(sizes, sizes.spec().jigs().orElseThrow(), drive);
                Geometry well = flat(level(jig, made.pocketFloor() - 0.01).regions());
                Geometry walls = flat(level(jig, jig.zTo() - 0.1).regions());
                // all of a pocket is open from above, and its notch lies lower and reaches beyond the blade's edge
                Geometry pocket = flat(level(jig, 0.1).regions()).difference(walls);
                Geometry notch = flat(level(jig, 0.1).regions()).difference(well);
                assertThat(pocket.getNumGeometries()).isEqualTo(count);
                assertThat(notch.getNumGeometries()).isEqualTo(drive ? 3 * count : 2 * count);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"two-holes,hand,left", "one-glued,hand,right", "two-holes,pinion,left", "two-holes,pinion,right"})
    void stackingJigHoldsBladesOpenAndLetsBaseAndRingOverItsCollar(String style, String by, String hand) {
        String text = spec(style, "hand: " + hand, "drive: {by: " + by + "}");
        Design design = Apertures.design(text);
        ApertureDesign sizes = Apertures.sizes(text);
        Part jig = part(design, StackingJig.NAME);
        double bottom = sizes.stack().coverBottom();
        assertThat(jig.zTo()).isCloseTo(sizes.stack().retainerBottom(), within(1e-12));
        Geometry collar = flat(level(jig, bottom + 0.01).regions());
        Geometry foot = flat(level(jig, bottom - 0.01).regions());
        double room = sizes.spec().jigs().orElseThrow().making().runningClearance() / 2;
        for (ringleaf.part.Member member : design.assembly().members()) {
            Part part = member.part();
            for (Layer layer : part.layers()) {
                List<Region> placed = layer.regions().stream()
                        .map(region -> region.placed(member.home()))
                        .toList();
                if (layer.zTo() > bottom && layer.zFrom() < jig.zTo()) {
                    assertThat(flat(placed).distance(collar)).as(part.name()).isGreaterThan(room - 2e-3);
                }
                if (layer.zFrom() < bottom - 1e-9) {
                    assertThat(flat(placed).distance(foot))
                            .as(part.name() + " behind")
                            .isGreaterThan(1.9);
                }
            }
            assertThat(part.isDrawn() ? part.zFrom() : 0).isGreaterThanOrEqualTo(jig.zFrom() + 1.9);
        }
        Part base = part(design, "base-plate");
        Geometry seat = overlap(foot, flat(base.layers().get(0).regions()));
        assertThat(seat.getArea()).as("base rests on the foot").isGreaterThan(0.4 * foot.getArea());
        assertThat(strays(design, sizes, collar)).isLessThanOrEqualTo(1e-3);
    }

    /** How far a drive pin strays beyond the figure stated before its blade runs into the collar. */
    private static double strays(Design design, ApertureDesign sizes, Geometry collar) {
        StackingJig jig = new StackingJig(sizes, sizes.spec().jigs().orElseThrow(), List.of());
        Region blade = new BladeParts(sizes).region();
        double stated = jig.stray() / sizes.pin().length(sizes.band());
        boolean mirrored = sizes.spec().mirrored();
        double low = 0;
        double high = 0.2;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            Region turned = blade.placed(Placement.turnAbout(sizes.pivot(), middle));
            Region seen = mirrored ? turned.mirrored(Mirror.FLIP_Y) : turned;
            if (overlap(flat(List.of(seen)), collar).getArea() > 1e-4) {
                high = middle;
            } else {
                low = middle;
            }
        }
        assertThat(design.parts()).isNotEmpty();
        return Math.abs(low - stated);
    }

    /** All but what pins lean, in which jigs count. */
    private static List<Finding> apartFromLean(Design design) {
        return design.findings().stream()
                .filter(f -> !f.check().equals("pin-tilt"))
                .toList();
    }

    @Test
    void jigsAreNotPartOfTheMechanismAndTheBuildOrderSpeaksOfThem() {
        Design with = Apertures.design(spec("two-holes"));
        Design without = Apertures.design(spec("two-holes").replace("    jigs: {}\n", ""));
        assertThat(with.assembly().members()).hasSameSizeAs(without.assembly().members());
        assertThat(apartFromLean(with)).isEqualTo(apartFromLean(without)).isNotEmpty();
        assertThat(with.parts()).hasSize(without.parts().size() + 3);
        String steps = String.join("\n", with.assembly().buildOrder());
        assertThat(steps)
                .contains("Pivot jig (one notch")
                .contains("Drive jig (two notches")
                .contains("stacking jig");
        assertThat(String.join("\n", without.assembly().buildOrder())).doesNotContain("jig");
    }

    @Test
    void jigsThatCannotBeAreRefusedWithWhatWouldDo() {
        assertThat(Apertures.refusal(spec("two-holes").replace("{}", "{blades: 9}")))
                .contains("jigs.blades: 9 is more than the 8 blades")
                .contains("at most 8");
        assertThat(Apertures.refusal(spec("two-holes").replace("{}", "{blades: 0}")))
                .contains("below the least of 1");
        assertThat(Apertures.refusal(spec("two-holes", "pin-diameter: 0.6")))
                .contains("a socket for a pin of 0.6 mm is finer than filament-print makes")
                .contains("a pin-diameter of 0.85 mm would do");
        assertThat(Apertures.refusal(
                        "fabrication:\n  jig: {process: co2-laser, stock: acrylic-3}\n" + spec("two-holes")))
                .contains("jigs have blind sockets of an exact depth, and co2-laser cuts through")
                .contains("filament-print");
    }
}
