// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ringleaf.curve.Containment;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.draw.SheetDrawing;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.Sheets;
import ringleaf.fabricate.ThrownSpec;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Part;
import ringleaf.report.SheetFiles;
import ringleaf.spec.text.Problems;

/** What is engraved lies on the piece that it belongs to, and none of it is lost on the way to the sheet. */
class SheetMarksTest {
    private static final String SHEET = "  sheet: {width: 600, height: 600, effort: 1}\n";
    private static final int SPECS = 54;

    private static final String TRAIN = """
            fabrication:
              sheet: {width: 200, height: 150, effort: 1}
              gear: {process: co2-laser, stock: acrylic-3}
            mechanisms:
              made:
                kind: gear-train
                ratio: 12.5:1
                module: 1
            """;

    private static final String STOP = """
            fabrication:
              sheet: {width: 400, height: 300, effort: 1}
              names: NAMES
              blade: {process: fibre-laser, stock: brass-0.15}
              plate: {process: co2-laser, stock: acrylic-3}
              ring: {process: co2-laser, stock: acrylic-2}
            mechanisms:
              made:
                kind: leaf-aperture
                full-opening: 30
                least-opening: 8
                blades: 10
                blade-thickness: 0.15
                drive: {by: hand}
            """;

    @Test
    void marksOfASteppedGearLieOnTheirOwnPieces() {
        ThrownSpec.Made train = ThrownSpec.design(TRAIN).orElseThrow();
        // two stages: the middle shaft carries two gears, each with the mark of its own mesh
        assertThat(look(train, TRAIN))
                .containsExactlyInAnyOrder("gear-1", "gear-2-level-1", "gear-2-level-2", "gear-3");
    }

    @Test
    void marksOfEverySpecLieOnTheirOwnPieces() {
        int marked = 0;
        for (long seed = 0; seed < SPECS; seed++) {
            String spec = ThrownSpec.of(seed, SHEET);
            marked +=
                    ThrownSpec.design(spec).map(made -> look(made, spec).size()).orElse(0) > 0 ? 1 : 0;
        }
        assertThat(marked).as("specs with marks on sheets").isGreaterThan(9);
    }

    /** Names are engraved where nobody sees them, and anywhere or nowhere only when that is asked for. */
    @Test
    void namesStayOffTheFaceThatIsSeen() {
        assertThat(engraved("where-hidden")).contains("base-plate").doesNotContain("retainer");
        assertThat(engraved("everywhere")).contains("base-plate", "retainer");
        assertThat(engraved("none")).isEmpty();
    }

    private static List<String> engraved(String names) {
        String spec = STOP.replace("NAMES", names);
        List<String> texts = new ArrayList<>();
        for (SheetFiles.Sheet sheet : sheets(ThrownSpec.design(spec).orElseThrow(), spec)) {
            for (DrawingLayer layer :
                    SheetDrawing.of(sheet.drawing(), sheet.items()).layers()) {
                for (Drawn thing : layer.things()) {
                    if (layer.name().equals(DrawingLayer.MARK) && thing instanceof Drawn.Lettering lettering) {
                        texts.add(lettering.text());
                        assertOnAPiece(sheet, lettering);
                    }
                }
            }
        }
        return texts;
    }

    private static void assertOnAPiece(SheetFiles.Sheet sheet, Drawn.Lettering lettering) {
        boolean on = false;
        for (SheetDrawing.Item item : sheet.items()) {
            boolean all = item.name().equals(lettering.text());
            for (Path stroke : lettering.strokes()) {
                for (Point place : places(stroke)) {
                    all = all && Containment.of(item.outline(), place, 0) == Containment.INSIDE;
                }
            }
            on |= all;
        }
        assertThat(on).as(lettering.text()).isTrue();
    }

    private static List<SheetFiles.Sheet> sheets(ThrownSpec.Made made, String spec) {
        Preparation prepared = Preparation.of(
                made.design(), made.document().fabrication(), made.document().catalogues());
        Problems problems = new Problems();
        Sheets sheets = Sheets.of(List.of(made.design()), List.of(prepared), problems);
        assertThat(problems.text()).as(spec).isEmpty();
        List<SheetFiles.Sheet> all = new ArrayList<>();
        SheetPlans.of(
                        "thrown",
                        sheets.laid((done, tries) -> {}),
                        made.document().catalogues())
                .forEach(stack -> all.addAll(stack.sheets()));
        return all;
    }

    /** The pieces that carry marks. */
    private static Set<String> look(ThrownSpec.Made made, String spec) {
        Set<String> marks = new TreeSet<>();
        for (SheetFiles.Sheet sheet : sheets(made, spec)) {
            for (SheetDrawing.Item item : sheet.items()) {
                for (Path mark : item.marks()) {
                    marks.add(item.name());
                    assertOn(item, mark, spec);
                }
            }
        }
        for (Part part : made.drawn()) {
            boolean cut = !part.source().process().endsWith("-print");
            assertThat(!cut || part.marks().isEmpty() || !marks.isEmpty())
                    .as("marks are lost\n" + spec)
                    .isTrue();
        }
        return marks;
    }

    private static void assertOn(SheetDrawing.Item item, Path mark, String spec) {
        for (Point place : places(mark)) {
            Region outline = item.outline();
            assertThat(Containment.of(outline, place, 0))
                    .as(item.name() + " at " + place + "\n" + spec)
                    .isEqualTo(Containment.INSIDE);
        }
    }

    private static List<Point> places(Path mark) {
        List<Point> places = new ArrayList<>();
        for (Segment piece : mark.segments()) {
            for (int i = 0; i <= 8; i++) {
                places.add(piece.pointAt(i / 8.0));
            }
        }
        return places;
    }
}
