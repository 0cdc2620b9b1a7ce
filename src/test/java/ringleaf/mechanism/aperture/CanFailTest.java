// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import static org.assertj.core.api.Assertions.assertThat;
import static ringleaf.mechanism.aperture.Faults.cut;
import static ringleaf.mechanism.aperture.Faults.filled;
import static ringleaf.mechanism.aperture.Faults.heights;
import static ringleaf.mechanism.aperture.Faults.hole;
import static ringleaf.mechanism.aperture.Faults.moved;
import static ringleaf.mechanism.aperture.Faults.outlines;
import static ringleaf.mechanism.aperture.Faults.part;
import static ringleaf.mechanism.aperture.Faults.shifted;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import ringleaf.curve.Offset;
import ringleaf.curve.Shapes;
import ringleaf.geom.Contour;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.verify.Judge;
import ringleaf.verify.Options;

/**
 * A check can fail: faults are set into assemblies that hold, one at a time, and the judge of outlines, to whom nobody
 * tells, has to find each of them. What is asked stays as the design asked it.
 */
class CanFailTest {
    private static final int STATES = 5;

    private final Map<String, UnaryOperator<Assembly>> faults = new LinkedHashMap<>();

    private static String text(String preset) throws IOException {
        return Files.readString(Path.of("presets", preset + ".yaml"));
    }

    private static List<Finding> failed(Assembly assembly) {
        return Apertures.failed(Judge.judge(assembly, Options.DEFAULT).findings());
    }

    private void eachIsFound(String text) {
        Assembly right = Apertures.design(text, STATES).assembly();
        assertThat(failed(right)).isEmpty();
        StringBuilder missed = new StringBuilder();
        faults.forEach((name, fault) -> {
            if (failed(fault.apply(right)).isEmpty()) {
                missed.append(name).append('\n');
            }
        });
        assertThat(missed.toString()).as("faults that pass").isEmpty();
    }

    private void fault(String name, String part, UnaryOperator<Region> fault) {
        faults.put(name, part(part, outlines(-1, fault)));
    }

    private void fault(String name, String part, int level, UnaryOperator<Region> fault) {
        faults.put(name, part(part, outlines(level, fault)));
    }

    private void solid(String name, String part, UnaryOperator<Part> fault) {
        faults.put(name, part(part, fault));
    }

    private static UnaryOperator<Contour> circle(Point at, double radius) {
        return old -> Contour.circle(at, radius).clockwise();
    }

    private static UnaryOperator<Contour> shiftedHole(double x, double y) {
        return old -> old.placed(Placement.shift(x, y));
    }

    private static UnaryOperator<Contour> grown(double by) {
        return old ->
                Offset.of(Region.of(old.counterClockwise()), by).get(0).outer().clockwise();
    }

    private static UnaryOperator<Contour> gone() {
        return old -> null;
    }

    @Test
    void inADriveWithAPinion() throws IOException {
        String text = text("harbour-light");
        ApertureDesign d = Apertures.sizes(text);
        pins(d);
        plates(d);
        ring(d);
        blades(d);
        PinionPlan plan = d.pinionPlan().orElseThrow();
        Point c = plan.centre();
        double tip = plan.pinion().tipRadius();
        Point toRing = c.times(-1 / c.norm());
        faults.put("pinion too near", moved("pinion", Placement.shift(toRing.x() * 0.2, toRing.y() * 0.2)));
        faults.put("pinion too far", moved("pinion", Placement.shift(-toRing.x() * 0.2, -toRing.y() * 0.2)));
        faults.put(
                "pinion half a pitch off",
                moved("pinion", Placement.turnAbout(c, plan.pinion().pitchAngle() / 2)));
        faults.put(
                "pinion a tenth of a pitch off",
                moved("pinion", Placement.turnAbout(c, plan.pinion().pitchAngle() / 10)));
        solid("pinion too high", "pinion", heights(0, 0.3));
        solid("pinion in the base", "pinion", heights(-1, -1));
        // The tooth that looks at the ring in the middle of the travel, as it lies in the open pose.
        double step = plan.pinion().pitchAngle();
        double looks = plan.at() + Math.PI + plan.travel() / 2 * plan.ratio();
        double tooth = plan.phase() + step * Math.round((looks - plan.phase()) / step);
        fault(
                "pinion without a tooth",
                "pinion",
                cut(Region.of(Shapes.annulusSector(
                        c, plan.pinion().rootRadius(), tip + 0.1, tooth - 0.35 * step, tooth + 0.35 * step))));
        fault(
                "pinion's space filled",
                "pinion",
                filled(Region.disc(c.plus(Point.polar(plan.pinion().rootRadius() + 0.3, tooth + step / 2)), 0.5)));
        fault("pinion's teeth too thick", "pinion", region -> Offset.of(Region.of(region.outer()), 0.15)
                .get(0));
        fault("pinion's teeth too thin", "pinion", region -> Offset.of(Region.of(region.outer()), -0.1)
                .get(0));
        double pitch = plan.sector().pitchAngle();
        fault(
                "ring without a tooth",
                "drive-ring",
                cut(Region.of(Shapes.annulusSector(
                        Point.ORIGIN,
                        d.rim().floor(),
                        d.rim().rim() + 0.1,
                        plan.sectorCentre() - 0.35 * pitch,
                        plan.sectorCentre() + 0.35 * pitch))));
        fault(
                "ring with fewer spaces",
                "drive-ring",
                filled(Region.of(Shapes.annulusSector(
                        Point.ORIGIN,
                        d.rim().floor() - 0.1,
                        d.rim().rim(),
                        plan.sectorCentre() + 10 * pitch,
                        plan.sectorCentre() + 15 * pitch))));
        fault(
                "pocket too small",
                "spacer-ring",
                1,
                filled(Region.of(Shapes.annulusSector(c, tip + 0.1, tip + 1, plan.at() - 0.5, plan.at() + 0.5))));
        fault(
                "no stop",
                "spacer-ring",
                1,
                cut(Region.of(Shapes.annulusSector(
                        Point.ORIGIN,
                        d.rim().floor() - 0.5,
                        d.rim().wall(),
                        plan.at() + Math.PI - 0.3,
                        plan.at() + Math.PI + 0.3))));
        fault(
                "stop too wide",
                "spacer-ring",
                1,
                filled(Region.of(Shapes.annulusSector(
                        Point.ORIGIN,
                        d.rim().tabInner(),
                        d.rim().wall() + 1,
                        plan.at() + Math.PI - 0.1,
                        plan.at() + Math.PI + 0.1))));
        fault(
                "stop too narrow",
                "spacer-ring",
                1,
                cut(Region.of(Shapes.annulusSector(
                        Point.ORIGIN,
                        d.rim().floor() - 0.5,
                        d.rim().wall(),
                        plan.at() + Math.PI + 0.01,
                        plan.at() + Math.PI + 0.3))));
        fault("window of the servo too small", "servo-plate", hole(plan.servoCentre(), grown(-0.3)));
        fault("window of the servo beside its place", "servo-plate", hole(plan.servoCentre(), shiftedHole(0.6, 0)));
        fault("hole for the servo's output too small", "base-plate", hole(c, grown(-1)));
        eachIsFound(text);
    }

    @Test
    void inADriveByHandWithOwnSpacerSheets() throws IOException {
        String text = text("field-camera-stop");
        ApertureDesign d = Apertures.sizes(text);
        pins(d);
        plates(d);
        ring(d);
        blades(d);
        HandPlan hand = d.handPlan().orElseThrow();
        double end = hand.at() + hand.travel();
        fault(
                "window too narrow",
                "spacer-ring",
                1,
                filled(Region.disc(Point.polar((d.rim().wall() + d.rim().outer()) / 2, end), hand.halfWidth() + 0.8)));
        fault(
                "window too wide",
                "spacer-ring",
                1,
                cut(Region.of(Shapes.annulusSector(
                        Point.ORIGIN,
                        d.rim().wall() - 1,
                        d.rim().outer() + 1,
                        Math.min(hand.at(), end) - 0.3,
                        Math.max(hand.at(), end) + 0.3))));
        fault(
                "arm too wide",
                "drive-ring",
                filled(Region.of(Shapes.hull(
                        Point.polar(d.rim().rim() - 1, hand.at()),
                        hand.halfWidth() + 1,
                        Point.polar(d.rim().outer(), hand.at()),
                        hand.halfWidth() + 1))));
        eachIsFound(text);
    }

    private void pins(ApertureDesign d) {
        double bore = new ApertureJoints(d, 1).bores().size() / 2;
        Point pivot = d.pivot();
        fault("bore too small", "base-plate", hole(pivot, circle(pivot, bore - 0.05)));
        fault("bore too wide", "base-plate", hole(pivot, circle(pivot, bore + 0.3)));
        fault("bore beside its place", "base-plate", hole(pivot, circle(pivot.plus(new Point(0, 0.2)), bore)));
        fault("no bore", "base-plate", hole(pivot, gone()));
        Point drive = d.drivePoint();
        fault("slot too narrow", "drive-ring", hole(drive, grown(-0.05)));
        fault("slot too wide", "drive-ring", hole(drive, grown(0.2)));
        fault("slot beside its place", "drive-ring", hole(drive, shiftedHole(0.2, 0.2)));
        fault(
                "slot too short",
                "drive-ring",
                filled(Region.disc(Point.polar(d.rim().slotInner(), drive.angle()), 0.6)));
        fault("no slot", "drive-ring", hole(drive, gone()));
        solid("pivot pin too short", "pivot-pin", heights(0.6, 0));
        solid("pivot pin too long", "pivot-pin", heights(-0.6, 0));
        solid("drive pin too short", "drive-pin", heights(0, -1.6));
        solid("drive pin too long", "drive-pin", heights(0, 0.3));
        fault(
                "pins too thick",
                "pivot-pin",
                region -> Region.disc(pivot, d.spec().pinDiameter() / 2 + 0.05));
        fault("drive pins beside their places", "drive-pin", shifted(0.3, 0));
    }

    private void plates(ApertureDesign d) {
        Point screw = d.housing().screws().get(d.housing().screws().size() - 2);
        double hole = d.housing().screwHole();
        for (String plate : List.of("cover", "base-plate", "spacer-ring", "retainer")) {
            fault("screw beside its place: " + plate, plate, hole(screw, shiftedHole(0.5, 0)));
        }
        fault("screw's hole too small", "retainer", hole(screw, circle(screw, hole - 0.3)));
        fault("screw's hole too wide", "retainer", hole(screw, circle(screw, hole + 0.5)));
        fault("no hole for a screw", "retainer", hole(screw, gone()));
        fault("retainer turned over", "retainer", region -> region.mirrored(Mirror.FLIP_Y));
        fault("retainer's opening too small", "retainer", hole(Point.ORIGIN, grown(-1)));
        fault(
                "retainer's opening too wide",
                "retainer",
                hole(Point.ORIGIN, circle(Point.ORIGIN, d.rim().rim() + 0.2)));
        fault("base's opening too small", "base-plate", hole(Point.ORIGIN, grown(-1)));
        fault(
                "plate too large",
                "base-plate",
                region -> new Region(
                        Offset.of(Region.of(region.outer()), 1.5).get(0).outer(), region.holes()));
        fault(
                "plate too small",
                "base-plate",
                region -> new Region(
                        Offset.of(Region.of(region.outer()), -0.5).get(0).outer(), region.holes()));
        solid("base too thin", "base-plate", heights(0, -0.2));
        solid("base too thick", "base-plate", heights(0, 0.2));
        solid("retainer too low", "retainer", heights(-0.1, -0.1));
        solid("retainer too high", "retainer", heights(0.2, 0.2));
        solid("spacer too high", "spacer-ring", heights(0.1, 0.1));
        fault("cavity too narrow", "spacer-ring", 0, hole(Point.ORIGIN, grown(-0.4)));
        fault(
                "wall too narrow",
                "spacer-ring",
                1,
                filled(Region.of(Shapes.annulusSector(
                        Point.ORIGIN, d.rim().rim() - 0.05, d.rim().wall() + 0.5, 0.5, 0.7))));
        fault(
                "no ledge",
                "spacer-ring",
                0,
                cut(Region.disc(Point.ORIGIN, d.rim().wall())));
    }

    private void ring(ApertureDesign d) {
        faults.put("ring turned", moved("drive-ring", Placement.turn(Math.toRadians(1))));
        faults.put("ring off the axis", moved("drive-ring", Placement.shift(0.2, 0)));
        solid("ring too thick", "drive-ring", heights(0, 0.3));
        solid("ring too low", "drive-ring", heights(-0.2, -0.2));
        fault("ring's opening too small", "drive-ring", hole(Point.ORIGIN, grown(-1)));
        fault("ring's opening too wide", "drive-ring", hole(Point.ORIGIN, grown(0.5)));
        fault("ring turned over", "drive-ring", region -> region.mirrored(Mirror.FLIP_Y));
        fault(
                "rim too small",
                "drive-ring",
                cut(Region.ring(Point.ORIGIN, d.rim().rim() - 0.3, d.rim().rim() + 20)));
    }

    private void blades(ApertureDesign d) {
        double edge = d.band().innerRadius();
        fault("blades too narrow inside", "blade", cut(Region.disc(Point.ORIGIN, edge + 0.3)));
        fault(
                "blades too wide inside",
                "blade",
                filled(Region.of(Shapes.annulusSector(Point.ORIGIN, edge - 0.5, edge + 1, 0.5, 1.5))));
        fault(
                "blades too wide outside",
                "blade",
                filled(Region.of(Shapes.annulusSector(
                        Point.ORIGIN, d.band().outerRadius() - 1, d.band().outerRadius() + 1, 0.5, 1.5))));
        fault(
                "blades too short",
                "blade",
                cut(Region.of(Shapes.annulusSector(
                        Point.ORIGIN,
                        edge - 1,
                        d.band().outerRadius() + 1,
                        d.band().span() - 0.6,
                        d.band().span() + 0.5))));
        fault(
                "a hole in the blades",
                "blade",
                cut(Region.disc(Point.polar(edge + 1.2, d.band().span() / 2), 0.8)));
        fault("blades turned over", "blade", region -> region.mirrored(Mirror.FLIP_Y));
        solid("blades too thick", "blade", heights(0, d.spec().thickness()));
        faults.put("a blade out of its place", moved("blade 3", Placement.turn(Math.toRadians(4))));
        fault("pin's hole beside its place", "blade", hole(d.drivePoint(), shiftedHole(0.6, 0.3)));
    }
}
