// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.draw.format.Formats;
import ringleaf.draw.format.PartsShown;
import ringleaf.draw.page.Page;
import ringleaf.draw.page.Paper;
import ringleaf.draw.page.Pen;
import ringleaf.draw.paper.PaperItem;
import ringleaf.draw.paper.PaperPages;
import ringleaf.draw.sheet.SheetItem;
import ringleaf.draw.sheet.SheetPages;
import ringleaf.geom.Box;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Design;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** PDF pages of whole runs. */
class PagesRunTest {
    /** Half the width of lettering, mm. */
    private static final double PEN = 0.125;

    @TempDir
    Path folder;

    private static Wanted wanted(String formats) {
        return Wanted.of(Formats.ALL, option -> option.equals(Syntax.FORMATS) ? formats : null);
    }

    private PartsShown parts(String spec, String... sets) {
        Asked asked = new Asked(spec, List.of(sets), 21, false, Optional.empty());
        Run run = Run.read(asked, new Surroundings(folder, false, false), new ByteArrayInputStream(new byte[0]));
        List<Design> designs = run.design();
        return PagePlans.parts(run.document(), designs, run.prepare(designs), wanted("dxf,pdf"));
    }

    static Stream<Arguments> presets() {
        return Presets.names().stream()
                .flatMap(name -> Stream.of(Paper.values()).map(paper -> Arguments.of(name, paper)));
    }

    @ParameterizedTest
    @MethodSource("presets")
    void noTextOfADrawingMeetsAnotherOrALineOrLeavesTheFrame(String preset, Paper paper) {
        PartsShown parts = parts(preset);
        List<Page> pages = SheetPages.of(parts.sheets(), paper, "ringleaf");
        assertThat(pages).hasSizeGreaterThanOrEqualTo(parts.sheets().size());
        for (int i = 0; i < pages.size(); i++) {
            String where = preset + " " + paper + " sheet " + (i + 1);
            check(
                    pages.get(i),
                    where,
                    new Box(20, 10, pages.get(i).width() - 10, pages.get(i).height() - 10));
        }
    }

    @ParameterizedTest
    @MethodSource("presets")
    void noTextOfAPageAtTrueScaleMeetsAnother(String preset, Paper paper) {
        for (Page page : PaperPages.of("t", parts(preset).papers(), paper)) {
            List<Drawn.Lettering> texts = texts(page);
            apart(texts, preset + " " + paper);
            for (Drawn.Lettering text : texts) {
                assertThat(isWithin(text.box(), new Box(9, 9, page.width() - 9, page.height() - 9)))
                        .as(text.text())
                        .isTrue();
            }
        }
    }

    /** The vent's spec measures in inches, and so do its sheets: what they say of lengths is mm over 25.4. */
    @Test
    void sheetsOfASpecInInchesGiveInches() {
        Pattern number = Pattern.compile("\u2300([0-9.]+)");
        double largest = 0;
        for (SheetItem item : parts("cold-frame-vent").sheets()) {
            List<String> told = new ArrayList<>();
            for (Page page : SheetPages.of(List.of(item), Paper.LETTER, "tool")) {
                texts(page).forEach(text -> told.add(text.text()));
            }
            assertThat(told).contains("in").doesNotContain("mm");
            double reach =
                    Math.hypot(item.part().box().width(), item.part().box().height());
            for (String text : told) {
                for (Matcher size = number.matcher(text); size.find(); ) {
                    double inches = Double.parseDouble(size.group(1));
                    largest = Math.max(largest, inches);
                    assertThat(25.4 * inches)
                            .as(item.part().name() + ": " + text)
                            .isLessThan(1.01 * reach);
                }
            }
        }
        assertThat(largest).as("the opening of four inches").isGreaterThan(4);
    }

    private static void check(Page page, String where, Box frame) {
        List<Drawn.Lettering> texts = texts(page);
        assertThat(texts).isNotEmpty();
        apart(texts, where);
        List<Point[]> chords = chords(page);
        for (Drawn.Lettering text : texts) {
            Box box = text.box().grown(PEN);
            assertThat(isWithin(box, frame)).as(where + ": " + text.text()).isTrue();
            for (Point[] chord : chords) {
                assertThat(meets(chord, box))
                        .as(where + ": line over " + text.text() + " at " + box)
                        .isFalse();
            }
        }
    }

    private static List<Drawn.Lettering> texts(Page page) {
        List<Drawn.Lettering> texts = new ArrayList<>();
        for (Page.Content content : page.contents()) {
            for (DrawingLayer layer : content.drawing().layers()) {
                for (Drawn thing : layer.things()) {
                    if (thing instanceof Drawn.Lettering lettering) {
                        texts.add(lettering);
                    }
                }
            }
        }
        return texts;
    }

    private static void apart(List<Drawn.Lettering> texts, String where) {
        for (int i = 0; i < texts.size(); i++) {
            Box box = texts.get(i).box().grown(PEN);
            for (int j = 0; j < i; j++) {
                assertThat(texts.get(j).box().grown(PEN).meets(box))
                        .as(where + ": " + texts.get(i).text() + " over "
                                + texts.get(j).text())
                        .isFalse();
            }
        }
    }

    private static boolean isWithin(Box inner, Box outer) {
        return inner.minX() >= outer.minX()
                && inner.minY() >= outer.minY()
                && inner.maxX() <= outer.maxX()
                && inner.maxY() <= outer.maxY();
    }

    /** All lines of the page as short chords. */
    private static List<Point[]> chords(Page page) {
        List<Point[]> chords = new ArrayList<>();
        for (Page.Content content : page.contents()) {
            for (DrawingLayer layer : content.drawing().layers()) {
                if (layer.name().equals(Pen.TEXT)) {
                    continue;
                }
                for (Drawn thing : layer.things()) {
                    if (thing instanceof Drawn.Round round) {
                        add(chords, ringleaf.geom.Arc.circle(round.centre(), round.radius()));
                    } else if (thing instanceof Drawn.Closed closed) {
                        closed.contour().segments().forEach(s -> add(chords, s));
                    } else if (thing instanceof Drawn.Open open) {
                        open.path().segments().forEach(s -> add(chords, s));
                    }
                }
            }
        }
        return chords;
    }

    private static void add(List<Point[]> chords, Segment segment) {
        int n = segment.curvature() == 0 ? 1 : (int) Math.ceil(segment.length());
        for (int i = 0; i < n; i++) {
            chords.add(new Point[] {segment.pointAt((double) i / n), segment.pointAt((i + 1.0) / n)});
        }
    }

    /** Whether a chord meets a box: an end within, or it crosses a diagonal. */
    private static boolean meets(Point[] chord, Box box) {
        if (!Box.of(chord[0], chord[1]).meets(box)) {
            return false;
        }
        Point a = new Point(box.minX(), box.minY());
        Point b = new Point(box.maxX(), box.maxY());
        Point c = new Point(box.minX(), box.maxY());
        Point d = new Point(box.maxX(), box.minY());
        return holds(box, chord[0]) || holds(box, chord[1]) || cross(chord, a, b) || cross(chord, c, d);
    }

    private static boolean holds(Box box, Point p) {
        return Box.of(p, p).meets(box);
    }

    private static boolean cross(Point[] chord, Point a, Point b) {
        Point u = chord[1].minus(chord[0]);
        Point v = b.minus(a);
        return u.cross(a.minus(chord[0])) > 0 != u.cross(b.minus(chord[0])) > 0
                && v.cross(chord[0].minus(a)) > 0 != v.cross(chord[1].minus(a)) > 0;
    }

    @Test
    void bothKindsAreWrittenWhenAskedForAndOnlyThen() throws Exception {
        Ran all = Ran.in(folder, "make", "field-camera-stop", "-o", "a", "--formats", "svg,pdf");
        assertThat(all.exit()).isZero();
        assertThat(folder.resolve("a/paper.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("a/drawing.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("a/design.json")).content().contains("\"paper.pdf\"", "\"drawing.pdf\"");
        assertThat(folder.resolve("a/parts/stop-blade.svg")).isNotEmptyFile();
        Ran paper =
                Ran.in(folder, "make", "field-camera-stop", "-o", "a", "--formats", "paper", "--page-size", "letter");
        assertThat(paper.exit()).isZero();
        assertThat(folder.resolve("a/paper.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("a/drawing.pdf")).as("of the earlier run").doesNotExist();
        assertThat(folder.resolve("a/parts")).doesNotExist();
        Ran usual = Ran.in(folder, "make", "field-camera-stop", "-o", "a");
        assertThat(usual.exit()).isZero();
        assertThat(folder.resolve("a/paper.pdf")).doesNotExist();
    }

    @Test
    void reRunsGiveTheSameBytes() throws Exception {
        for (String name : List.of("a", "b")) {
            Ran.in(folder, "make", "semaphore-arm-belt", "-o", name, "--formats", "pdf");
        }
        for (String file : List.of("paper.pdf", "drawing.pdf")) {
            assertThat(Files.readAllBytes(folder.resolve("a/" + file)))
                    .isEqualTo(Files.readAllBytes(folder.resolve("b/" + file)));
        }
    }

    @Test
    void inchesGoWithLetterPaper() throws Exception {
        Ran.in(folder, "make", "cold-frame-vent", "-o", "a", "--formats", "paper");
        try (PDDocument document = Loader.loadPDF(folder.resolve("a/paper.pdf").toFile())) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612f);
        }
        Ran.in(folder, "make", "cold-frame-vent", "-o", "a", "--formats", "paper", "--page-size", "a4");
        try (PDDocument document = Loader.loadPDF(folder.resolve("a/paper.pdf").toFile())) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(595.2756f);
        }
    }

    @Test
    void drawingsSayWhatTheDesignSays() throws Exception {
        Ran.in(folder, "make", "lens-turntable-gears", "-o", "a", "--formats", "drawing,dxf");
        try (PDDocument document =
                Loader.loadPDF(folder.resolve("a/drawing.pdf").toFile())) {
            String text = new PDFTextStripper().getText(document);
            // figures of design.json: teeth, span and tip diameter of the driver, root diameter of the driven gear
            assertThat(text).contains("lens-pair driver", "17", "span over 3 teeth", "15.419", "\u00D838.888");
            assertThat(text).contains("roots \u00D850.112", "4x \u00D83.4", "parts/lens-pair-driver.dxf", "1 of 4");
        }
    }

    @Test
    void pagesAreHeldBackWithTheParts() {
        Ran ran = Ran.in(
                folder, "make", "cold-frame-vent", "-o", "a", "--formats", "pdf", "--set", "vent.least-opening=10mm");
        assertThat(ran.exit()).isEqualTo(Exit.FAILED);
        assertThat(folder.resolve("a/paper.pdf")).doesNotExist();
        assertThat(folder.resolve("a/drawing.pdf")).doesNotExist();
    }

    @Test
    void wrongAsksAreRefusedAndNothingIsWritten() {
        String[][] wrong = {
            {"--formats", "pfd", "there is no format"},
            {"--formats", "paper,", "a name of a format is empty"},
            {"--page-size", "a4", "has no meaning without"},
            {"--page-size", "", "a name of a size of paper is empty"},
            {"--page-size", "A5", "there is no size of paper"}
        };
        for (String[] each : wrong) {
            Ran ran = Ran.in(folder, "make", "field-camera-stop", "-o", "a", each[0], each[1]);
            assertThat(ran.exit()).as(each[1]).isEqualTo(Exit.WRONG);
            assertThat(ran.err()).contains(each[2]);
            assertThat(folder.resolve("a")).doesNotExist();
        }
    }

    /** A part over several pages shows whole, each tile at true scale. */
    @Test
    void largePartsAreTiled() {
        PartsShown parts = parts("field-camera-stop", "stop.full-opening=240", "stop.least-opening=60");
        List<Page> pages = PaperPages.of("t", parts.papers(), Paper.A4);
        assertThat(pages.stream().filter(p -> p.contents().size() == 2).count()).isGreaterThan(4);
    }

    /** However large the parts are, no more pages are drawn than anybody tapes together; what is left out is named. */
    @Test
    void partsOfThousandsOfPagesAreNamedInstead() {
        List<PaperItem> items = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            Part part = new Part(
                    "plate " + i,
                    Family.PLATE,
                    1,
                    new Part.Source("co2-laser", "acrylic-3"),
                    List.of(Layer.of(Region.disc(Point.ORIGIN, 500.0 * (i + 1)), 0, 3)),
                    List.of(),
                    "");
            items.add(new PaperItem(part.name(), "", part));
        }
        List<Page> pages = PaperPages.of("t", items, Paper.A4);
        assertThat(pages).hasSizeLessThanOrEqualTo(202);
        assertThat(pages.stream().filter(p -> p.contents().size() == 2).count()).isGreaterThan(20);
        String told = pages.get(0).contents().get(0).drawing().layers().stream()
                .flatMap(layer -> layer.things().stream())
                .filter(Drawn.Lettering.class::isInstance)
                .map(thing -> ((Drawn.Lettering) thing).text())
                .toList()
                .toString();
        assertThat(told).contains("plate 4").doesNotContain("plate 0");
    }

    /** Spans measured on outlines against those that the design computes from the teeth. */
    @Test
    void spansOnOutlinesAreThoseOfTheTeeth() throws Exception {
        Asked asked = new Asked("lens-turntable-gears", List.of(), 21, false, Optional.empty());
        Run run = Run.read(asked, new Surroundings(folder, false, false), new ByteArrayInputStream(new byte[0]));
        List<Design> designs = run.design();
        int compared = 0;
        for (SheetItem item : PagePlans.parts(run.document(), designs, List.of(), wanted("pdf"))
                .sheets()) {
            List<SheetItem.Datum> told = new ArrayList<>(item.data());
            Optional<SheetItem.Datum> stated =
                    told.stream().filter(d -> d.name().startsWith("span")).findFirst();
            if (stated.isEmpty()) {
                continue;
            }
            told.remove(stated.get());
            SheetItem silent = new SheetItem(
                    item.title(),
                    item.mechanism(),
                    item.part(),
                    item.tolerance(),
                    item.file(),
                    item.fits(),
                    told,
                    item.involute(),
                    item.unit());
            SheetItem.Datum measured = SheetPages.span(silent).orElseThrow();
            // another tooth more between the jaws is a base pitch more
            SheetItem.Involute gear = item.involute().orElseThrow();
            double pitch = Math.PI * gear.module() * Math.cos(gear.pressureAngle());
            double more = (teeth(stated.get()) - teeth(measured)) * pitch;
            // flanks follow the involute within 0.5 µm each; texts have 3 decimals
            assertThat(Double.parseDouble(measured.value()) + more)
                    .isCloseTo(Double.parseDouble(stated.get().value()), within(0.0021));
            compared++;
        }
        assertThat(compared).isEqualTo(3);
    }

    private static int teeth(SheetItem.Datum span) {
        return Integer.parseInt(span.name().replaceAll("[^0-9]", ""));
    }
}
