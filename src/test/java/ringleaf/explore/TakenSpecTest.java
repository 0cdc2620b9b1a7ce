// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ringleaf.part.Design;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.TextEdit;

/** Specs with other values in them, everything else left as it was. */
class TakenSpecTest {

    private static Optional<String> taken(String text, String... sets) {
        Variants variants = Explored.variants(text);
        Problems problems = new Problems();
        List<SetOption> options = new java.util.ArrayList<>();
        Node.Mapping meant = variants.root();
        for (String set : sets) {
            SetOption option = SetOption.parse(set, problems).orElseThrow();
            options.add(option);
            meant = option.over(meant, problems);
        }
        assertThat(problems.isEmpty()).isTrue();
        return TakenSpec.of(variants.source(), options, meant);
    }

    @Test
    void valuesAreReplacedAndCommentsStay() {
        String text = taken(Explored.SHUTTER, "shutter.full-opening=50", "shutter.blade-thickness=0.15")
                .orElseThrow();
        assertThat(text)
                .isEqualTo(Explored.SHUTTER
                        .replace("48      # clear", "50      # clear")
                        .replace("0.1  # shim", "0.15  # shim"));
    }

    @Test
    void newFieldsComeAfterTheLastOfTheirMap() {
        String text = taken(
                        Explored.SHUTTER,
                        "shutter.lap=0.8",
                        "shutter.drive.module=0.5",
                        "shutter.drive.at=90",
                        "fabrication.blade.stock=brass-0.1")
                .orElseThrow();
        assertThat(text)
                .isEqualTo(Explored.SHUTTER + "    lap: 0.8\n    drive: {module: 0.5, at: 90}\n"
                        + "fabrication: {blade: {stock: brass-0.1}}\n");
    }

    @Test
    void mapsInBracesAndTextsWithoutALastLineEndAreEdited() {
        String flow = "title: Lamp ☼\nmechanisms: {a: {kind: gear, teeth: 20 } } # end";
        assertThat(taken(flow, "a.module=2", "a.teeth=24"))
                .hasValue("title: Lamp ☼\nmechanisms: {a: {kind: gear, teeth: 24, module: 2 } } # end");
        assertThat(taken(Explored.SHUTTER.stripTrailing().replace("\n", "\r\n"), "shutter.depth={at-most: 12}"))
                .hasValueSatisfying(t -> assertThat(t).endsWith("far-end\n    depth: {at-most: 12}"));
        assertThat(taken("mechanisms:\n  a:\n    kind: gear\n    teeth: 20\n    bore:\n", "a.bore.diameter=4"))
                .hasValueSatisfying(t -> assertThat(t).contains("bore: {diameter: 4}"));
    }

    @Test
    void aliasesThatRepeatAValueAreNotTornApart() {
        String text = "mechanisms:\n  a:\n    kind: gear\n    teeth: &n 20\n  b:\n    kind: gear\n    teeth: *n\n";
        assertThat(taken(text, "b.teeth=24")).isEmpty();
    }

    @Test
    void whatIsNoMapTakesNoKeys() {
        assertThat(TextEdit.with("a: 1\n", List.of("a", "b"), "2")).isEmpty();
        assertThat(TextEdit.with("- 1\n", List.of("a"), "2")).isEmpty();
        assertThat(TextEdit.with("a: [\n", List.of("a"), "2")).isEmpty();
    }

    /** The place that is taken, written out, read again and designed by the ordinary way, has the row's figures. */
    @Test
    void aTakenSpecDesignsToTheFiguresOfItsRow() {
        Exploration.Result result =
                Explored.run(Explored.SHUTTER, "outer-diameter", 1, 2, "shutter.blades=8..10", "shutter.lap=0.5,0.9");
        for (Row row : result.rows()) {
            String text = taken(
                            Explored.SHUTTER,
                            "shutter.blades=" + result.grid().text(row.index(), 0),
                            "shutter.lap=" + result.grid().text(row.index(), 1))
                    .orElseThrow();
            Design design = Explored.design(text);
            assertThat(Explored.dimension(design, "outer-diameter")).isEqualTo(row.figures()[0]);
            assertThat(Explored.dimension(design, "depth")).isEqualTo(Explored.figure(result, row, "depth"));
            assertThat(Explored.fails(design.findings())).isEqualTo(!row.works());
        }
    }
}
