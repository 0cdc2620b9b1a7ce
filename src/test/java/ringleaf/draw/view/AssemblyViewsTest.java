// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.part.Assembly;
import ringleaf.part.Callout;
import ringleaf.part.View;

/** Views are whole SVG files with every word on the sheet and none over another. */
class AssemblyViewsTest {
    /** Mean width of a letter of a common sans-serif face by its size; none of the texts here is all capitals. */
    private static final double LETTER = 0.53;

    private static Map<String, byte[]> views(Assembly assembly) {
        return AssemblyViews.all("Harbour light", MovingView.of(assembly), state -> "state " + state);
    }

    private static Element root(byte[] file) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(file))
                .getDocumentElement();
    }

    @Test
    void fourViewsWithTheirStates() throws Exception {
        Map<String, byte[]> views = views(new MadeUpShutter(12, 27).build());
        assertThat(views.keySet()).containsExactly("open", "half", "closed", "exploded");
        assertThat(texts(root(views.get("half")))).contains("half: state 13");
        assertThat(texts(root(views.get("closed")))).contains("closed: state 26", "12 \u00d7 blade", "10 mm");
        assertThat(texts(root(views.get("open")))).contains("Ø64 clear opening", "fibre-laser, brass-0.15");
        assertThat(texts(root(views.get("exploded")))).contains("1 \u00d7 base-plate", "8");
    }

    @Test
    void everyReferenceIsThereAndEveryIdOnce() throws Exception {
        for (byte[] view : views(new MadeUpShutter(15, 27).build()).values()) {
            Set<String> ids = new HashSet<>();
            List<String> used = new ArrayList<>();
            NodeList all = root(view).getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                if (element.hasAttribute("id")) {
                    assertThat(ids.add(element.getAttribute("id")))
                            .as(element.getAttribute("id"))
                            .isTrue();
                }
                if (element.hasAttribute("xlink:href")) {
                    used.add(element.getAttribute("xlink:href").substring(1));
                }
                if (element.hasAttribute("clip-path")) {
                    String reference = element.getAttribute("clip-path");
                    used.add(reference.substring(5, reference.length() - 1));
                }
            }
            assertThat(used).isNotEmpty();
            assertThat(ids).containsAll(used);
        }
    }

    @Test
    void noTextLiesOverAnotherOrOffTheSheet() throws Exception {
        Assembly plain = new MadeUpShutter(12, 27).build();
        List<Callout> many = new ArrayList<>(plain.callouts());
        for (int i = 0; i < 14; i++) {
            Point to = Point.polar(20 + i, i);
            many.add(new Callout(Callout.Form.LABEL, "open", to, to, "a label with some words, number " + i));
            many.add(new Callout(Callout.Form.DIAMETER, "half", Point.ORIGIN, Point.polar(8 + 3.3 * i, i), "Ø" + i));
        }
        Assembly crowded =
                new Assembly(plain.name(), plain.members(), plain.motion(), plain.leaves(), List.of(), many, List.of());
        for (Assembly assembly : List.of(plain, crowded)) {
            for (Map.Entry<String, byte[]> view : views(assembly).entrySet()) {
                Element root = root(view.getValue());
                String[] box = root.getAttribute("viewBox").split(" ");
                Rectangle2D sheet = new Rectangle2D.Double(
                        Double.parseDouble(box[0]),
                        Double.parseDouble(box[1]),
                        Double.parseDouble(box[2]),
                        Double.parseDouble(box[3]));
                List<Rectangle2D> boxes = boxes(root);
                for (int i = 0; i < boxes.size(); i++) {
                    assertThat(sheet.contains(boxes.get(i)))
                            .as(view.getKey() + " " + boxes.get(i))
                            .isTrue();
                    for (int j = 0; j < i; j++) {
                        assertThat(boxes.get(i).intersects(boxes.get(j)))
                                .as(view.getKey() + " " + texts(root).get(i) + " and "
                                        + texts(root).get(j))
                                .isFalse();
                    }
                }
            }
        }
    }

    @Test
    void sameBytesTwiceAndInAnotherLocale() {
        Map<String, byte[]> first = views(new MadeUpShutter(12, 27).build());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            views(new MadeUpShutter(12, 27).build())
                    .forEach((name, bytes) -> assertThat(bytes).isEqualTo(first.get(name)));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void worksWithoutLeavesAndWithHostileWords() throws Exception {
        Assembly plain = new MadeUpShutter(3, 2).build();
        Callout bad =
                new Callout(Callout.Form.LABEL, "open", Point.ORIGIN, Point.ORIGIN, "<script>\u0000&\"".repeat(20));
        Assembly assembly = new Assembly(
                "a<b", plain.members(), plain.motion(), Optional.empty(), List.of(), List.of(bad), List.of());
        for (byte[] view : AssemblyViews.all("</title>\u0001", MovingView.of(assembly), s -> "")
                .values()) {
            assertThat(root(view).getElementsByTagName("script").getLength()).isZero();
        }
    }

    private static List<String> texts(Element root) {
        List<String> texts = new ArrayList<>();
        NodeList all = root.getElementsByTagName("text");
        for (int i = 0; i < all.getLength(); i++) {
            texts.add(all.item(i).getTextContent());
        }
        return texts;
    }

    private static List<Rectangle2D> boxes(Element root) {
        List<Rectangle2D> boxes = new ArrayList<>();
        NodeList all = root.getElementsByTagName("text");
        for (int i = 0; i < all.getLength(); i++) {
            Element text = (Element) all.item(i);
            double size = Double.parseDouble(text.getAttribute("font-size"));
            double width = LETTER * size * text.getTextContent().length();
            double x = Double.parseDouble(text.getAttribute("x"));
            double y = Double.parseDouble(text.getAttribute("y"));
            double left =
                    switch (text.getAttribute("text-anchor")) {
                        case "end" -> x - width;
                        case "middle" -> x - width / 2;
                        default -> x;
                    };
            // From the top of a capital to the base line.
            boxes.add(new Rectangle2D.Double(left, y - 0.72 * size, width, 0.72 * size));
        }
        return boxes;
    }

    @Test
    void anAssemblyNamesItsOwnViewsAndAWindowIsEnlarged() throws Exception {
        Assembly shutter = new MadeUpShutter(6, 5).build();
        Path line = Path.of(new Line(new Point(-1, 0), new Point(1, 0)));
        Box box = new Box(-2, -2, 2, 2);
        Assembly asking = new Assembly(
                shutter.name(),
                shutter.members(),
                shutter.motion(),
                shutter.leaves(),
                shutter.requirements(),
                List.of(new Callout(Callout.Form.LABEL, "near", new Point(1, 1), new Point(1, 1), "a corner")),
                shutter.steps(),
                List.of(View.of("far", 2), new View("near", 1, "close by", Optional.of(box), List.of(line))));
        Map<String, byte[]> views = views(asking);
        assertThat(views.keySet()).containsExactly("far", "near", "exploded");
        assertThat(texts(root(views.get("far")))).contains("far: state 2");
        // 4 mm come nearest to their size on paper at 50:1 or 20:1; the scale bar tells true lengths.
        Element near = root(views.get("near"));
        assertThat(texts(near)).contains("near: enlarged 20 times; close by", "a corner", "0.5 mm");
        NodeList groups = near.getElementsByTagName("g");
        boolean scaled = false;
        for (int i = 0; i < groups.getLength(); i++) {
            scaled |= ((Element) groups.item(i)).getAttribute("transform").equals("scale(20)");
        }
        assertThat(scaled).isTrue();
    }
}
