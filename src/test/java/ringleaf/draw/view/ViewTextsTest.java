// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringleaf.fabricate.ThrownSpec;
import ringleaf.geom.Box;
import ringleaf.part.Member;

/** What views say can be read: nothing is cut off, no text lies on another or off the sheet. */
class ViewTextsTest {
    private static final Pattern TEXT = Pattern.compile(
            "<text x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" fill=\"[^\"]*\" font-size=\"([0-9.]+)\" text-anchor=\"([a-z]+)\"[^>]*>([^<]*)<");
    private static final Pattern VIEW_BOX = Pattern.compile("viewBox=\"([-0-9.]+) ([-0-9.]+) ([-0-9.]+) ([-0-9.]+)\"");
    /** Mean width of a sans-serif letter as a share of its size (Helvetica's small letters and figures: 0.5 to 0.56). */
    private static final double LETTER = 0.52;

    private record Text(String text, Box box) {}

    private static List<Path> presetFiles() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("presets"))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("presetFiles")
    void presets(Path file) throws IOException {
        look(ThrownSpec.design(Files.readString(file)).orElseThrow());
    }

    @Test
    void thrownSpecs() {
        int seen = 0;
        for (long seed = 300; seed < 330; seed++) {
            Optional<ThrownSpec.Made> made = ThrownSpec.design(ThrownSpec.of(seed, ""));
            made.ifPresent(ViewTextsTest::look);
            seen += made.isPresent() ? 1 : 0;
        }
        assertThat(seen).isGreaterThan(10);
    }

    private static void look(ThrownSpec.Made made) {
        Map<String, byte[]> views =
                AssemblyViews.all("A title", MovingView.of(made.design().assembly()), state -> "state " + state);
        for (Map.Entry<String, byte[]> view : views.entrySet()) {
            String svg = new String(view.getValue(), StandardCharsets.UTF_8);
            List<Text> texts = texts(svg);
            String what = view.getKey() + "\n" + made.spec();
            assertThat(texts).as(what).isNotEmpty();
            StringBuilder all = new StringBuilder();
            for (Text text : texts) {
                all.append(text.text()).append(' ');
            }
            assertThat(all.toString()).as(what).doesNotContain("\u2026");
            for (Member member : made.design().assembly().members()) {
                assertThat(all.toString())
                        .as(what)
                        .contains(member.part().source().stock());
            }
            Matcher sheet = VIEW_BOX.matcher(svg);
            assertThat(sheet.find()).isTrue();
            double left = Double.parseDouble(sheet.group(1));
            double top = Double.parseDouble(sheet.group(2));
            Box paper = new Box(
                    left, top, left + Double.parseDouble(sheet.group(3)), top + Double.parseDouble(sheet.group(4)));
            for (int i = 0; i < texts.size(); i++) {
                assertThat(paper.union(texts.get(i).box()))
                        .as(texts.get(i).text() + " is off " + what)
                        .isEqualTo(paper);
                for (int k = 0; k < i; k++) {
                    assertThat(overlap(texts.get(i).box(), texts.get(k).box()))
                            .as(texts.get(i).text() + " on " + texts.get(k).text() + " in " + what)
                            .isFalse();
                }
            }
        }
    }

    private static boolean overlap(Box a, Box b) {
        return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
    }

    private static List<Text> texts(String svg) {
        List<Text> texts = new ArrayList<>();
        for (Matcher text = TEXT.matcher(svg); text.find(); ) {
            double x = Double.parseDouble(text.group(1));
            double y = Double.parseDouble(text.group(2));
            double size = Double.parseDouble(text.group(3));
            String said =
                    text.group(5).replace("&amp;", "&").replace("&lt;", "<").replace("&gt;", ">");
            double width = LETTER * size * said.length();
            double left =
                    switch (text.group(4)) {
                        case "start" -> x;
                        case "end" -> x - width;
                        default -> x - width / 2;
                    };
            texts.add(new Text(said, new Box(left, y - 0.72 * size, left + width, y + 0.1 * size)));
        }
        return texts;
    }
}
