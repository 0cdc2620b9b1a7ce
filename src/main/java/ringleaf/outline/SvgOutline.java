// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;
import ringleaf.geom.Segment;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/**
 * Reads the paths, lines, circles, ellipses, rectangles and polygons of an SVG text with all transforms applied; y is turned up.
 * A document type is passed over, and entities are read that stand in it and are no more than a few names; nothing is
 * fetched from elsewhere.
 */
final class SvgOutline extends DefaultHandler {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final Set<String> SILENT = Set.of(
            "title",
            "desc",
            "metadata",
            "defs",
            "style",
            "script",
            "clipPath",
            "mask",
            "marker",
            "pattern",
            "symbol",
            "linearGradient",
            "radialGradient",
            "filter");
    private static final Set<String> GROUPS = Set.of("svg", "g", "a", "switch");

    private static final String ENTITIES = "http://www.oracle.com/xml/jaxp/properties/entityExpansionLimit";
    private static final String ENTITY_SIZE = "http://www.oracle.com/xml/jaxp/properties/totalEntitySizeLimit";
    /** What ordinary exports name in their document type: some ten name spaces. */
    private static final String MOST_ENTITIES = "1000";

    private static final String MOST_ENTITY_SIZE = "100000";

    private final SpecSource source;
    private final Set<String> layers;
    private final Problems problems;
    private final List<Piece> pieces = new ArrayList<>();
    private final Deque<Frame> open = new ArrayDeque<>();
    private Locator locator;
    /** Ids of the groups that are drawn, in their order. */
    private final Set<String> groups = new TreeSet<>();

    private int silent;
    private final double assumed;
    private Optional<Double> unit = Optional.empty();

    /** Where an element stands: its transform, and whether it is within a group that is looked at. */
    private record Frame(Affine map, boolean wanted) {}

    /**
     * A reader.
     *
     * @param layers ids of groups that are looked at; empty for all
     * @param assumed millimetres in a user unit where the file does not say so
     */
    SvgOutline(SpecSource source, Set<String> layers, double assumed, Problems problems) {
        this.assumed = assumed;
        this.source = source;
        this.layers = layers;
        this.problems = problems;
    }

    /** Millimetres in a user unit, where the file says so. */
    Optional<Double> unit() {
        return unit;
    }

    /** Pieces in user units, y up. */
    List<Piece> read() {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            SAXParser parser = factory.newSAXParser();
            parser.setProperty(ENTITIES, MOST_ENTITIES);
            parser.setProperty(ENTITY_SIZE, MOST_ENTITY_SIZE);
            parser.parse(new InputSource(new StringReader(source.text())), this);
        } catch (SAXParseException e) {
            Place place = source.at(Math.max(1, e.getLineNumber()), Math.max(1, e.getColumnNumber()));
            problems.at(place, "not readable as XML: " + Shown.cut(String.valueOf(e.getMessage()), 160));
        } catch (SAXException | ParserConfigurationException | IOException e) {
            problems.of(source, "is not readable as XML (" + Shown.cut(String.valueOf(e.getMessage()), 160) + ")", "");
        }
        return pieces;
    }

    /** Ids of its groups. */
    Set<String> groups() {
        return groups;
    }

    @Override
    public InputSource resolveEntity(String publicId, String systemId) throws SAXException {
        throw new SAXParseException("it names a file from elsewhere, and none is fetched", locator);
    }

    @Override
    public void setDocumentLocator(Locator where) {
        locator = where;
    }

    private Place place(String element) {
        int column = Math.max(1, locator.getColumnNumber() - 1);
        return source.at(locator.getLineNumber(), column).named("<" + element + ">");
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) throws SAXException {
        if (open.isEmpty()) {
            if (!name.equals("svg") || !uri.equals(NAMESPACE)) {
                throw new SAXParseException("the root is <" + qualified + "> and not <svg> of SVG", locator);
            }
            root(attributes);
        }
        boolean hidden = isHidden(attributes);
        if (silent > 0 || !uri.equals(NAMESPACE) || SILENT.contains(name) || hidden) {
            silent++;
            return;
        }
        Frame above = open.isEmpty() ? new Frame(new Affine(1, 0, 0, -1, 0, 0), layers.isEmpty()) : open.peek();
        Affine own = SvgTransform.of(attributes.getValue("transform"), place(name), problems);
        String id = attributes.getValue("id");
        if (id != null && (GROUPS.contains(name) || layers.contains(id))) {
            groups.add(id);
        }
        Frame frame = new Frame(above.map.after(own), above.wanted || id != null && layers.contains(id));
        open.push(frame);
        if (frame.wanted && !GROUPS.contains(name)) {
            shape(name, attributes, frame.map);
        } else if (name.equals("svg") && open.size() > 1 && frame.wanted) {
            problems.at(place(name), "is a drawing within a drawing, which is not read", "ungroup it");
        }
    }

    /** As an attribute, or as a property of its style, which goes over it (SVG 1.1, sections 6.4 and 11.5). */
    private static boolean isHidden(Attributes attributes) {
        String display = attributes.getValue("display");
        String visibility = attributes.getValue("visibility");
        String style = attributes.getValue("style");
        for (String property : (style == null ? "" : style).split(";")) {
            String[] both = property.split(":", 2);
            if (both.length == 2 && both[0].trim().equals("display")) {
                display = both[1].trim();
            } else if (both.length == 2 && both[0].trim().equals("visibility")) {
                visibility = both[1].trim();
            }
        }
        boolean unseen = visibility != null && Set.of("hidden", "collapse").contains(visibility.trim());
        return unseen || display != null && display.trim().equals("none");
    }

    @Override
    public void endElement(String uri, String name, String qualified) {
        if (silent > 0) {
            silent--;
        } else {
            open.pop();
        }
    }

    /** {@link Curves#WITHIN} in the units of an element. */
    private double within(Affine map) {
        double scale = unit.orElse(assumed) * map.stretch();
        return scale > 0 && scale < 1e9 ? Curves.WITHIN / scale : Curves.WITHIN;
    }

    private void shape(String name, Attributes attributes, Affine map) {
        Place place = place(name);
        for (Piece piece : new SvgShapes(attributes, within(map), place, problems).of(name)) {
            for (Segment segment : piece.segments()) {
                if (segment instanceof ringleaf.geom.Arc && !map.keepsCircles()) {
                    problems.at(
                            place,
                            "its arcs are stretched or slanted by a transform: they are no arcs of circles",
                            "apply the transform in the drawing program and turn the curves into arcs");
                    return;
                }
            }
            pieces.add(new Piece(map.apply(piece), piece.closed(), place));
        }
    }

    /** A drawing is to scale when width and height are real lengths and a view box says how many units they are. */
    private void root(Attributes attributes) {
        Optional<Double> width = SvgTransform.millimetres(attributes.getValue("width"));
        Optional<Double> height = SvgTransform.millimetres(attributes.getValue("height"));
        String box = attributes.getValue("viewBox");
        if (width.isEmpty() || height.isEmpty() || box == null) {
            return;
        }
        SvgNumbers numbers = new SvgNumbers(box);
        numbers.number();
        numbers.number();
        double across = width.get() / numbers.number();
        double up = height.get() / numbers.number();
        if (!(across > 0) || !(up > 0) || !numbers.isDone()) {
            problems.at(place("svg"), "its viewBox is not four numbers with a size above 0");
        } else if (Math.abs(across - up) > 1e-4 * across) {
            problems.at(
                    place("svg"),
                    "width and height stretch the drawing:"
                            + " " + ringleaf.spec.text.Decimal.of(across, 6)
                            + " mm a unit across and " + ringleaf.spec.text.Decimal.of(up, 6) + " up",
                    "make the viewBox as high and wide as the drawing");
        } else {
            unit = Optional.of(rounded(across));
        }
    }

    /** Width over view box is a round figure in most files, but for the last bit. */
    private static double rounded(double unit) {
        double round = Math.rint(unit * 1e6) / 1e6;
        return Math.abs(round - unit) < 1e-9 * unit ? round : unit;
    }
}
