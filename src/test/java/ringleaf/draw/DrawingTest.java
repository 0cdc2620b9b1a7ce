// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ringleaf.curve.StrokeFont;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

class DrawingTest {
    private static final Part.Source SOURCE = new Part.Source("co2-laser", "acrylic-3");
    private static final Region RING = Region.ring(Point.ORIGIN, 32, 55);

    private static Part part(int quantity, Layer... layers) {
        return new Part("base-plate", Family.PLATE, quantity, SOURCE, List.of(layers), List.of(), "");
    }

    private static List<String> names(Drawing drawing) {
        return drawing.layers().stream().map(DrawingLayer::name).toList();
    }

    @Test
    void aFlatPartIsCut() {
        assertThat(names(Drawings.of(part(3, Layer.of(RING, 0, 3))))).containsExactly("cut");
    }

    @Test
    void aSteppedPartHasLevelsFromTheBedUpAndHeightsToRead() {
        Drawing drawing = Drawings.of(part(3, Layer.of(RING, 0, 1), Layer.of(RING, 1, 3)));
        assertThat(names(drawing)).containsExactly("level-1", "level-2", "guide");
        assertThat(drawing.layers().get(1).note()).isEqualTo("z 1 to 3");
        assertThat(drawing.layers().get(2).things())
                .extracting(t -> ((Drawn.Lettering) t).text())
                .containsExactly("level-2 z 1 to 3", "level-1 z 0 to 1");
        assertThat(drawing.box()).isEqualTo(RING.box());
        // The same outline on two levels stands on both.
        assertThat(drawing.layers().get(0).things())
                .isEqualTo(drawing.layers().get(1).things());
    }

    @Test
    void aSinglePartCarriesItsNameOnItsMaterial() {
        Drawing drawing = Drawings.of(part(1, Layer.of(RING, 0, 3)));
        assertThat(names(drawing)).containsExactly("cut", "mark");
        Box text = drawing.layers().get(1).things().get(0).box();
        for (Point corner : List.of(
                new Point(text.minX(), text.minY()),
                new Point(text.maxX(), text.minY()),
                new Point(text.minX(), text.maxY()),
                new Point(text.maxX(), text.maxY()))) {
            assertThat(corner.norm()).isBetween(32.8, 54.2);
        }
        Part quiet = part(1, Layer.of(RING, 0, 3));
        assertThat(names(Drawings.of(quiet, new PartDrawing.Options(Naming.NONE, Map.of()))))
                .containsExactly("cut");
    }

    @Test
    void letteringIsLeftOutWhereThereIsNoRoom() {
        Region narrow = Region.ring(Point.ORIGIN, 54, 55);
        assertThat(names(Drawings.of(part(1, Layer.of(narrow, 0, 3))))).containsExactly("cut");
    }

    @Test
    void stylesOfLayersCanBeSet() {
        LayerStyle red = new LayerStyle(0xC02020, 1, 0.2);
        Drawing drawing = Drawings.of(
                part(2, Layer.of(RING, 0, 3)),
                new PartDrawing.Options(Naming.EVERYWHERE, Map.of(DrawingLayer.CUT, red)));
        assertThat(drawing.layers().get(0).style()).isEqualTo(red);
        assertThat(red.hex()).isEqualTo("#c02020");
        assertThat(new LayerStyle(0xAB, 5, 1).hex()).isEqualTo("#0000ab");
    }

    @Test
    void layersThatAreCutTakeClosedContoursOnly() {
        LayerStyle style = LayerStyle.black(0.1);
        Path line = Path.of(new Line(Point.ORIGIN, new Point(1, 0)));
        Drawn text = new Drawn.Lettering("A", StrokeFont.strokes("A", Point.ORIGIN, 3));
        for (String name : List.of("cut", "level-1", "level-12")) {
            for (Drawn bad : List.of(Drawn.of(line), text)) {
                assertThatThrownBy(() -> new DrawingLayer(name, style, "", List.of(bad)))
                        .isInstanceOf(IllegalArgumentException.class);
            }
        }
        assertThat(new DrawingLayer("mark", style, "", List.of(Drawn.of(line), text)).things())
                .hasSize(2);
    }

    @Test
    void layersHavePlainNamesAndOnlyOne() {
        LayerStyle style = LayerStyle.black(0.1);
        for (String bad : List.of("", "Cut", "a b", "1a", "a\nb", "a<b", "ä")) {
            assertThatThrownBy(() -> new DrawingLayer(bad, style, "", List.of()))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        DrawingLayer layer = new DrawingLayer("mark", style, "", List.of(new Drawn.Round(Point.ORIGIN, 1)));
        assertThatThrownBy(() -> new Drawing("", List.of(), List.of(layer, layer)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Drawing("", List.of(), List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void thingsAreDrawnAsWhatTheyAre() {
        Contour circle = Contour.circle(new Point(1, 2), 3);
        assertThat(Drawn.of(circle)).isEqualTo(new Drawn.Round(new Point(1, 2), 3));
        assertThat(Drawn.of(new Path(circle.segments()))).isEqualTo(new Drawn.Round(new Point(1, 2), 3));
        Contour square = Contour.rectangle(new Box(0, 0, 1, 1));
        assertThat(Drawn.of(new Path(square.segments()))).isEqualTo(new Drawn.Closed(square));
        assertThat(Drawn.of(Path.of(Arc.of(Point.ORIGIN, 1, 0, 1)))).isInstanceOf(Drawn.Open.class);
    }

    @Test
    void everySignStaysInItsCellAndHasNoEmptyStroke() {
        for (char c = ' ' + 1; c < 127; c++) {
            List<Path> strokes = StrokeFont.strokes(String.valueOf(c), new Point(10, 20), 3);
            assertThat(strokes).as("sign " + c).isNotEmpty();
            for (Path stroke : strokes) {
                assertThat(stroke.segments()).allMatch(s -> s.length() > 0);
                Box box = stroke.box();
                assertThat(box.minX() >= 10 && box.maxX() <= 12 + 1e-9).isTrue();
                assertThat(box.minY() >= 20 && box.maxY() <= 23 + 1e-9).isTrue();
            }
        }
        assertThat(StrokeFont.strokes("A B", Point.ORIGIN, 6)).hasSizeGreaterThan(3);
        assertThat(StrokeFont.width("AB", 6)).isEqualTo(10);
        assertThat(StrokeFont.width("", 6)).isZero();
    }
}
