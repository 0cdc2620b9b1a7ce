// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringleaf.curve.ArcSlot;
import ringleaf.curve.Distances;
import ringleaf.curve.Shapes;
import ringleaf.draw.Drawing;
import ringleaf.draw.Drawings;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Drawings from elsewhere become the very outlines that were drawn, or are refused with their place. */
class OutlineFileTest {
    private static final OutlineFile.Reading PLAIN = reading();
    private static final OutlineFile.Asked ASKED = new OutlineFile.Asked(
            SpecSource.of("spec", "").whole().named("units"),
            SpecSource.of("spec", "").whole().named("layers"));

    private static OutlineFile.Reading reading(String... layers) {
        return new OutlineFile.Reading(Optional.empty(), List.of(layers), 0, 0, 0);
    }

    private static List<Region> read(String name, String text, OutlineFile.Reading reading) {
        Problems problems = new Problems();
        SpecSource source = SpecSource.of(name, text);
        List<Region> regions = OutlineFile.regions(source, reading, ASKED, problems);
        assertThat(problems.isEmpty()).as(problems.text()).isTrue();
        return regions;
    }

    private static String refusal(String text, OutlineFile.Reading reading) {
        Problems problems = new Problems();
        SpecSource source = SpecSource.of("bezel", text);
        assertThat(OutlineFile.regions(source, reading, ASKED, problems)).isEmpty();
        assertThat(problems.isEmpty()).isFalse();
        return problems.text();
    }

    private static String file(String name) throws IOException {
        return Files.readString(Path.of("src/test/resources/outlines/" + name));
    }

    /** The bezel that a public library wrote into the samples: 132 mm square, corners of 12 mm, five holes. */
    private static Region bezel() {
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            holes.add(Contour.circle(new Point(i % 2 == 0 ? -56 : 56, i < 2 ? -56 : 56), 1.2));
        }
        holes.add(Contour.circle(Point.ORIGIN, 33));
        return new Region(Shapes.roundedRectangle(new Box(-66, -66, 66, 66), 12), holes);
    }

    /** Same area, length and pieces, and nowhere further apart than this. */
    private static void same(Region a, Region b, double apart, String as) {
        assertThat(a.area()).as(as).isCloseTo(b.area(), within(apart * 1000));
        assertThat(a.perimeter()).as(as).isCloseTo(b.perimeter(), within(apart * 100));
        assertThat(a.holes()).as(as).hasSameSizeAs(b.holes());
        // SVG parts an arc of more than 120 degrees; what is turned in all is the same.
        assertThat(turned(a)).as(as).isCloseTo(turned(b), within(apart * 10));
        for (Contour contour : a.contours()) {
            for (Segment segment : contour.segments()) {
                for (double u : new double[] {0, 0.37, 0.81}) {
                    double least = Double.POSITIVE_INFINITY;
                    for (Contour other : b.contours()) {
                        for (Segment piece : other.segments()) {
                            least = Math.min(least, Distances.distance(piece, segment.pointAt(u)));
                        }
                    }
                    assertThat(least).as(as).isLessThan(apart);
                }
            }
        }
    }

    private static double turned(Region region) {
        double turned = 0;
        for (Contour contour : region.contours()) {
            for (Segment segment : contour.segments()) {
                turned += segment instanceof Arc arc ? Math.abs(arc.sweep()) : 0;
            }
        }
        return turned;
    }

    private static int arcs(Region region) {
        int arcs = 0;
        for (Contour contour : region.contours()) {
            for (Segment segment : contour.segments()) {
                arcs += segment instanceof Arc ? 1 : 0;
            }
        }
        return arcs;
    }

    @ParameterizedTest
    @CsvSource({"bezel-mm.dxf, cut", "bezel-inch.dxf, cut", "bezel-loose.dxf, cut"})
    void drawingsOfAPublicLibraryComeBack(String name, String layer) throws IOException {
        List<Region> regions = read(name, file(name), reading(layer));
        assertThat(regions).hasSize(1);
        same(regions.get(0), bezel(), 1e-9, name);
    }

    /** The library writes no unit into the old version, so it has to be told. */
    @Test
    void polylinesOfTheOldVersionComeBack() throws IOException {
        OutlineFile.Reading told = new OutlineFile.Reading(Optional.of(LengthUnit.MM), List.of(), 0, 0, 0);
        same(read("r12", file("bezel-r12.dxf"), told).get(0), bezel(), 1e-9, "r12");
    }

    @Test
    void unitsAreBelievedWhenDeclaredAndAskedForOtherwise() throws IOException {
        String silent = file("bezel-no-unit.dxf");
        assertThat(refusal(silent, reading("cut")))
                .contains("units: bezel does not say in which unit it is drawn; set units:");
        OutlineFile.Reading inches = new OutlineFile.Reading(Optional.of(LengthUnit.IN), List.of("cut"), 0, 0, 0);
        assertThat(read("b", silent, inches).get(0).box().width()).isCloseTo(132 * 25.4, within(1e-9));
        assertThat(refusal(file("bezel-mm.dxf"), inches)).contains("is in, and bezel says that its unit is 1 mm");
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='100' height='100' viewBox='0 0 100 100'>"
                + "<circle r='9'/></svg>";
        assertThat(refusal(svg, PLAIN)).contains("does not say in which unit");
        assertThat(refusal(svg.replace("'100' height='100'", "'100px' height='100px'"), PLAIN))
                .contains("does not say");
        String real = svg.replace("'100' height='100'", "'4in' height='4in'");
        assertThat(read("s", real, PLAIN).get(0).box().width()).isCloseTo(18 * 1.016, within(1e-9));
        assertThat(refusal(svg.replace("'100' height='100'", "'100mm' height='90mm'"), PLAIN))
                .contains("stretch the drawing");
    }

    @Test
    void ownDrawingsComeBackAsTheyWere() {
        for (long seed = 1; seed <= 30; seed++) {
            Random random = new Random(seed);
            Region region = plate(random);
            Part part = new Part(
                    "plate",
                    Family.PLATE,
                    1,
                    new Part.Source("co2-laser", "acrylic-3"),
                    List.of(Layer.of(region, 0, 3)),
                    List.of(),
                    "");
            Drawing drawing = Drawings.of(part);
            String as = "seed " + seed;
            String svg = new String(SvgWriter.write(drawing), StandardCharsets.UTF_8);
            same(read("plate.svg", svg, reading("cut")).get(0), region, 3e-6, as);
            for (DxfVersion version : DxfVersion.values()) {
                String dxf = new String(DxfWriter.write(drawing, version), StandardCharsets.UTF_8);
                same(read("plate.dxf", dxf, reading("cut")).get(0), region, 1e-8, as + " " + version);
            }
        }
    }

    private static Region plate(Random random) {
        double w = 40 + 60 * random.nextDouble();
        double h = 40 + 60 * random.nextDouble();
        Contour outer = Shapes.roundedRectangle(new Box(-w, -h, w, h), 1 + 20 * random.nextDouble());
        List<Contour> holes = new ArrayList<>();
        holes.add(Contour.circle(Point.ORIGIN, 5 + 15 * random.nextDouble()));
        holes.add(Shapes.obround(new Point(25, 3), new Point(30, 9 * random.nextDouble()), 1 + random.nextDouble()));
        holes.add(ArcSlot.of(Point.ORIGIN, 30, 1.5, 2.6, 2.7 + random.nextDouble()));
        return new Region(outer, holes);
    }

    /** Pieces in any order and sense, ends off by a little, placed and turned: the same outline. */
    @Test
    void loosePiecesAreJoinedWhateverTheirOrder() {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            Region region = plate(random);
            List<String> pieces = new ArrayList<>();
            for (Contour contour : region.contours()) {
                for (Segment segment : contour.segments()) {
                    pieces.add(entity(random.nextBoolean() ? segment : segment.reversed(), random));
                }
            }
            Collections.shuffle(pieces, random);
            String text = dxf(String.join("", pieces));
            same(read("loose", text, PLAIN).get(0), region, 0.005, "seed " + seed);
            double x = 20 * random.nextDouble();
            double turn = 6 * random.nextDouble();
            OutlineFile.Reading placed = new OutlineFile.Reading(Optional.empty(), List.of(), x, -7, turn);
            Region moved = read("loose", text, placed).get(0);
            Region wanted =
                    region.placed(ringleaf.geom.Placement.shift(-x, 7)).placed(ringleaf.geom.Placement.turn(turn));
            same(moved, wanted, 0.005, "seed " + seed);
        }
    }

    private static String entity(Segment segment, Random random) {
        double off = 0.0015 * random.nextDouble();
        if (segment instanceof Line line) {
            return "0\nLINE\n8\n0\n10\n" + (line.start().x() + off) + "\n20\n"
                    + line.start().y() + "\n11\n" + line.end().x() + "\n21\n"
                    + (line.end().y() - off) + "\n";
        }
        Arc arc = (Arc) segment;
        if (arc.isCircle()) {
            return "0\nCIRCLE\n8\n0\n10\n" + arc.centre().x() + "\n20\n"
                    + arc.centre().y() + "\n40\n" + arc.radius() + "\n";
        }
        Arc forward = arc.sweep() > 0 ? arc : arc.reversed();
        return "0\nARC\n8\n0\n10\n" + (arc.centre().x() + off) + "\n20\n"
                + arc.centre().y() + "\n40\n" + arc.radius()
                + "\n50\n" + Math.toDegrees(forward.startAngle()) + "\n51\n"
                + Math.toDegrees(forward.startAngle() + forward.sweep()) + "\n";
    }

    private static String dxf(String entities) {
        return "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + entities
                + "0\nENDSEC\n0\nEOF\n";
    }

    private static String line(double x0, double y0, double x1, double y1) {
        return "0\nLINE\n8\n0\n10\n" + x0 + "\n20\n" + y0 + "\n11\n" + x1 + "\n21\n" + y1 + "\n";
    }

    @Test
    void whatIsNoOutlineIsRefusedWithItsPlace() throws IOException {
        String open = line(0, 0, 10, 0) + line(10, 0, 10, 10) + line(10, 10, 0.3, 0);
        assertThat(refusal(dxf(open), PLAIN)).contains("is open at").contains("the nearest other end is");
        assertThat(refusal(dxf(line(0, 0, 10, 0)), PLAIN))
                .contains("is open at 10, 0 (mm of the drawing, y up); the nearest other end is 10 mm away");
        String crossing = line(0, 0, 10, 10) + line(10, 10, 10, 0) + line(10, 0, 0, 10) + line(0, 10, 0, 0);
        assertThat(refusal(dxf(crossing), PLAIN)).contains("crosses or touches itself at 5, 5");
        String square = line(0, 0, 9, 0) + line(9, 0, 9, 9) + line(9, 9, 0, 9) + line(0, 9, 0, 0);
        assertThat(refusal(dxf(square + line(9, 9, 9, 0)), PLAIN)).contains("is drawn twice (first in line");
        assertThat(refusal(dxf(square + line(0, 0, 9, 9)), PLAIN)).contains("three ends meet at");
        assertThat(refusal(dxf(square + line(0, 0, -4, -4)), PLAIN)).contains("is open at");
        String circle = "0\nCIRCLE\n8\n0\n10\n9\n20\n5\n40\n2\n";
        assertThat(refusal(dxf(square + circle), PLAIN)).contains("crosses or touches the outline of line");
        assertThat(refusal(dxf(circle + circle), PLAIN)).contains("is drawn twice");
        String fold = line(0, 0, 9, 0) + line(9, 0, 4, 0) + line(4, 0, 4, 5) + line(4, 5, 0, 0);
        assertThat(refusal(dxf(fold), PLAIN)).contains("crosses or touches itself");
        assertThat(refusal(dxf(line(1, 1, 1, 1)), PLAIN)).contains("LINE: has no length");
        assertThat(refusal(file("bezel-mm.dxf"), PLAIN)).contains("TEXT: is a TEXT; lines, arcs, circles");
        assertThat(refusal(file("bezel-mm.dxf"), reading("cuts")))
                .contains("layers: bezel draws nothing on a layer or group cuts; did you mean cut?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "REGION | is a REGION",
                "LEADER | is a LEADER",
                "3DFACE | is a 3DFACE",
                "HATCH | is a HATCH",
            })
    void otherEntitiesAreRefusedAndNotSkipped(String type, String words) {
        assertThat(refusal(dxf("0\n" + type + "\n8\n0\n10\n1\n20\n2\n"), PLAIN)).contains(words);
        assertThat(refusal(dxf("0\n" + type + "\n8\nother\n10\n1\n20\n2\n"), reading("0")))
                .contains("draws nothing on a layer or group 0; known: other");
    }

    @Test
    void brokenFilesAreRefused() throws IOException {
        String good = file("bezel-mm.dxf");
        assertThat(refusal(good.substring(0, good.length() - 12), reading("cut")))
                .contains("breaks off");
        assertThat(refusal(good.substring(0, good.indexOf("CIRCLE")), reading("cut")))
                .contains("breaks off");
        assertThat(refusal("title: x\nkind: y\n", PLAIN)).contains("bezel:1:1: a group code is wanted here");
        assertThat(refusal("0\nEOF\n", PLAIN)).contains("holds no section of entities");
        String circle = "0\nCIRCLE\n8\n0\n10\n9\n20\n5\n40\n";
        assertThat(refusal(dxf(circle + "1,5\n"), PLAIN)).contains("1,5 is no number of a drawing");
        assertThat(refusal(dxf(circle + "NaN\n"), PLAIN)).contains("NaN is no number of a drawing");
        assertThat(refusal(dxf(circle + "-2\n"), PLAIN)).contains("a radius is above 0");
        assertThat(refusal(dxf("0\nCIRCLE\n8\n0\n10\n9\n40\n2\n"), PLAIN)).contains("lacks its group 20");
        assertThat(refusal(dxf(circle + "2\n230\n-1\n"), PLAIN)).contains("plane of its own");
        assertThat(refusal(dxf("0\nPOLYLINE\n8\n0\n70\n1\n0\nVERTEX\n10\n0\n20\n0\n"), PLAIN))
                .contains("has no end");
        assertThat(refusal(good.replaceFirst("(\\$INSUNITS\\s+70\\s+)4", "$118"), reading("cut")))
                .contains("unit number 18");
    }

    private static String svg(String inside) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100 100'>\n" + inside
                + "\n</svg>";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<path d='M0 0 C 20 0 -16 0 4 0 L 4 4 Z'/> | <path>: holds a curve that turns back on itself",
                "<path d='M0 0 L 4'/> | a number is wanted at character",
                "<path d='M0 0 K 4 4'/> | there is no command K",
                "<path d='0 0 L 4 4'/> | lack a command at character 1",
                "<path d='M0 0 L 4 4 9 1'/> | is open at",
                "<text>a</text> | <text>: is not read",
                "<use href='#a'/> | <use>: is not read",
                "<ellipse rx='3' ry='0'/> | has no radius above 0",
                "<circle r='0'/> | has no radius above 0",
                "<circle r='3' transform='scale(1 2)'/> | stretched or slanted by a transform",
                "<circle r='3' transform='skewX(20)'/> | stretched or slanted by a transform",
                "<circle r='3' transform='spin(20)'/> | its transform is not readable",
                "<circle r='3em'/> | a plain number is wanted",
                "<circle r='3'> | not readable as XML",
            })
    void partsOfAnSvgThatAreNoOutlinesAreRefused(String inside, String words) {
        assertThat(refusal(svg(inside), PLAIN)).contains(words);
    }

    /** Ordinary exports name the type of their document, and their name spaces as entities; nothing is fetched. */
    @Test
    void documentTypesOfOrdinaryExportsAreRead() {
        String public11 = "<?xml version='1.0'?>\n<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' "
                + "'http://localhost:1/svg11.dtd'>\n";
        assertThat(read("s", public11 + svg("<circle r='3'/>"), PLAIN)).hasSize(1);
        String named = "<!DOCTYPE svg [<!ENTITY ns_svg 'http://www.w3.org/2000/svg'>]>\n"
                + svg("<circle r='3'/>").replace("http://www.w3.org/2000/svg", "&ns_svg;");
        assertThat(read("s", named, PLAIN)).hasSize(1);
    }

    @Test
    void entitiesOfXmlAreNotOpened() {
        String hostile =
                "<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/hostname'>]>" + svg("<desc>&a;</desc><circle r='3'/>");
        assertThat(refusal(hostile, PLAIN)).contains("not readable as XML").contains("none is fetched");
        StringBuilder grown = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 'aaaaaaaaaa'>");
        for (int i = 1; i < 12; i++) {
            grown.append("<!ENTITY a" + i + " '" + ("&a" + (i - 1) + ";").repeat(10) + "'>");
        }
        assertThat(refusal(grown + "]>" + svg("<desc>&a11;</desc><circle r='3'/>"), PLAIN))
                .contains("not readable as XML");
        assertThat(refusal("<html></html>", PLAIN)).contains("the root is <html> and not <svg>");
    }

    /** Who looks for a place looks for it in the drawing: its own units, y as it has it, wherever it is put. */
    @Test
    void placesAreThoseOfTheDrawing() {
        String open = "<path d='M10 20 H30 V50'/>";
        OutlineFile.Reading placed = new OutlineFile.Reading(Optional.empty(), List.of(), 7, 3, 1);
        assertThat(refusal(svg(open), placed)).contains("is open at 30, 50 (mm of the drawing, y down)");
        assertThat(refusal(svg(open).replace("100mm", "4in"), placed))
                .contains("is open at 30, 50 (units of 1.016 mm of the drawing, y down)");
        assertThat(refusal(dxf(line(10, 20, 30, 20) + line(30, 20, 30, 50)), placed))
                .contains("is open at 30, 50 (mm of the drawing, y up)");
        String bow = "<polygon points='0,0 10,10 10,0 0,10'/>";
        assertThat(refusal(svg(bow), placed)).contains("crosses or touches itself at 5, 5 (mm of the drawing, y down)");
    }

    /** The axis is given as the drawing counts, in an SVG down from its top. */
    @Test
    void theAxisIsWhereTheDrawingHasIt() {
        OutlineFile.Reading placed = new OutlineFile.Reading(Optional.empty(), List.of(), 40, 30, 0);
        Box box =
                read("s", svg("<circle cx='40' cy='30' r='3'/>"), placed).get(0).box();
        assertThat(box.centre().norm()).isLessThan(1e-12);
    }

    @Test
    void whatIsSwitchedOffIsLeftOut() {
        String drawn = "<circle r='9'/>";
        for (String off : List.of(
                "<circle r='3' display='none'/>",
                "<circle r='3' style='fill:none; display : none'/>",
                "<g style='display:none'><circle r='3'/><text>a</text></g>")) {
            assertThat(read("s", svg(drawn + off), PLAIN).get(0).holes())
                    .as(off)
                    .isEmpty();
        }
        String on = "<circle r='3' display='none' style='display:inline'/>";
        assertThat(read("s", svg(drawn + on), PLAIN).get(0).holes()).hasSize(1);
    }

    /** Traced drawings are read to a limit that is counted; how long that takes is measured elsewhere. */
    @Test
    void verticesAreCounted() {
        assertThat(read("s", svg(traced(OutlineFile.MOST_VERTICES)), PLAIN)
                        .get(0)
                        .outer()
                        .segments())
                .hasSize(OutlineFile.MOST_VERTICES);
        assertThat(refusal(svg(traced(OutlineFile.MOST_VERTICES + 1)), PLAIN))
                .contains("holds 100001 lines and arcs, and 100000 are the most that are read");
        StringBuilder loose = new StringBuilder();
        int count = 20_000;
        for (int i = 0; i < count; i++) {
            Point from = Point.polar(400, 2 * Math.PI * i / count);
            Point to = Point.polar(400, 2 * Math.PI * ((i + 1) % count) / count);
            loose.append(line(from.x(), from.y(), to.x(), to.y()));
        }
        assertThat(read("d", dxf(loose.toString()), PLAIN).get(0).outer().segments())
                .hasSize(count);
    }

    private static String traced(int count) {
        StringBuilder points = new StringBuilder("<polygon points='");
        for (int i = 0; i < count; i++) {
            Point p = Point.polar(400 + i % 2, 2 * Math.PI * i / count);
            points.append(p.x()).append(',').append(p.y()).append(' ');
        }
        return points + "'/>";
    }

    @Test
    void transformsAreApplied() {
        String plate = "<g transform='translate(50,50)'><g transform='rotate(90) scale(2,-2)'>"
                + "<path d='M0,0 h10 a5,5 0 0 1 0,10 h-10 z'/></g></g>";
        Region region = read("t", svg(plate), PLAIN).get(0);
        // y down: x 0..15 becomes y 50..80, y 0..10 becomes x 50..70; then y is turned up.
        assertThat(region.box().minX()).isCloseTo(50, within(1e-9));
        assertThat(region.box().maxX()).isCloseTo(70, within(1e-9));
        assertThat(region.box().minY()).isCloseTo(-80, within(1e-9));
        assertThat(region.box().maxY()).isCloseTo(-50, within(1e-9));
        assertThat(region.area()).isCloseTo(4 * (100 + Math.PI * 25 / 2), within(1e-9));
        assertThat(arcs(region)).isEqualTo(1);
        String turned = "<rect x='10' y='20' width='8' height='4' rx='1' transform='rotate(30, 14, 22)'/>";
        Region rect = read("t", svg(turned), PLAIN).get(0);
        assertThat(rect.area()).isCloseTo(32 - 4 + Math.PI, within(1e-9));
        assertThat(rect.centroid().distance(new Point(14, -22))).isLessThan(1e-9);
        String polygon = "<polygon points='0,0 4,0 4,3' transform='matrix(1 0 0.5 1 2 0)'/>";
        assertThat(read("t", svg(polygon), PLAIN).get(0).area()).isCloseTo(6, within(1e-9));
        String halves = "<path d='M -5 0 A 5 5 0 1 0 5 0 A 5 5 0 1 0 -5 0 Z'/>";
        assertThat(read("t", svg(halves), PLAIN).get(0).outer().isCircle()).isTrue();
    }

    @Test
    void groupsAreChosenByTheirIds() {
        String two = "<g id='cut'><circle r='9'/></g><g id='mark'><path d='M0 0 C 1 1 2 2 3 3'/></g>"
                + "<defs><circle r='4'/></defs>";
        assertThat(read("g", svg(two), reading("cut"))).hasSize(1);
        assertThat(refusal(svg(two), reading("cuts")))
                .contains("layers: bezel draws nothing on a layer or group cuts; did you mean cut?");
    }

    private static String dxf(String layers, String... entities) {
        return "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n70\n3\n"
                + layers + "0\nENDTAB\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + String.join("", entities)
                + "0\nENDSEC\n0\nEOF\n";
    }

    private static String circle(String layer, double radius, String more) {
        return "0\nCIRCLE\n8\n" + layer + "\n" + more + "10\n0\n20\n0\n40\n" + radius + "\n";
    }

    @Test
    void frozenLayersAndHiddenEntitiesAreLeftOutUnlessAskedFor() {
        String layers =
                "0\nLAYER\n2\ncut\n70\n0\n62\n7\n0\nLAYER\n2\nold\n70\n1\n62\n7\n0\nLAYER\n2\noff\n70\n0\n62\n-7\n";
        String text = dxf(
                layers, circle("cut", 20, ""), circle("cut", 2, "60\n1\n"), circle("old", 5, ""), circle("off", 9, ""));
        Region seen = read("d", text, PLAIN).get(0);
        assertThat(seen.holes()).isEmpty();
        assertThat(((Arc) seen.outer().segments().get(0)).radius()).isEqualTo(20);
        assertThat(read("d", text, reading("cut", "old")).get(0).holes()).hasSize(1);
        assertThat(read("s", svg("<circle r='9'/><circle r='3' visibility='hidden'/>"), PLAIN)
                        .get(0)
                        .holes())
                .isEmpty();
    }

    @Test
    void circlesOfTwoBulgesAreCircles() {
        String hole = "0\nLWPOLYLINE\n8\ncut\n90\n2\n70\n1\n10\n4\n20\n3\n42\n1\n10\n6.4\n20\n3\n42\n1\n";
        String halves = "0\nARC\n8\ncut\n10\n-5\n20\n0\n40\n1.1\n50\n0\n51\n180\n"
                + "0\nARC\n8\ncut\n10\n-5\n20\n0\n40\n1.1\n50\n180\n51\n360\n";
        Region region =
                read("d", dxf("", circle("cut", 20, ""), hole, halves), PLAIN).get(0);
        assertThat(region.holes()).hasSize(2).allMatch(Contour::isCircle);
        assertThat(region.holes().stream()
                        .mapToDouble(h -> ((Arc) h.segments().get(0)).radius())
                        .sorted()
                        .toArray())
                .containsExactly(new double[] {1.1, 1.2}, within(1e-9));
    }
}
