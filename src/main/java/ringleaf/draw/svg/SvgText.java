// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.svg;

import java.nio.charset.StandardCharsets;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * An SVG tree as text. Own, because the DOM keeps attributes in hash order and adds defaults that nobody asked for:
 * here attributes stand in a fixed order and only those that were set.
 */
final class SvgText {
    /** Attributes that come first, in this order; all others follow by name. */
    private static final String[] FIRST = {
        "xmlns", "version", "id", "class", "width", "height", "viewBox", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy",
        "r", "d"
    };

    private final StringBuilder out = new StringBuilder(8192);

    private final boolean links;

    private SvgText(boolean links) {
        this.links = links;
    }

    /**
     * The file.
     *
     * @param links whether anything in it refers to something else in it
     */
    static byte[] of(Element root, boolean links) {
        SvgText text = new SvgText(links);
        text.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        text.element(root, 0);
        return text.out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void element(Element element, int depth) {
        indent(depth);
        out.append('<').append(element.getTagName());
        if (depth == 0) {
            out.append(" xmlns=\"http://www.w3.org/2000/svg\"");
            if (links) {
                out.append(" xmlns:xlink=\"http://www.w3.org/1999/xlink\"");
            }
        }
        attributes(element);
        Node child = element.getFirstChild();
        if (child == null) {
            out.append("/>\n");
            return;
        }
        out.append('>');
        if (child.getNodeType() == Node.TEXT_NODE) {
            escape(child.getNodeValue());
        } else {
            out.append('\n');
            for (; child != null; child = child.getNextSibling()) {
                element((Element) child, depth + 1);
            }
            indent(depth);
        }
        out.append("</").append(element.getTagName()).append(">\n");
    }

    private void attributes(Element element) {
        NamedNodeMap map = element.getAttributes();
        Attr[] sorted = new Attr[map.getLength()];
        int count = 0;
        for (int i = 0; i < map.getLength(); i++) {
            Attr attr = (Attr) map.item(i);
            if (!attr.getSpecified() || attr.getName().startsWith("xmlns")) {
                continue;
            }
            int place = count++;
            while (place > 0 && before(attr, sorted[place - 1])) {
                sorted[place] = sorted[place - 1];
                place--;
            }
            sorted[place] = attr;
        }
        for (int i = 0; i < count; i++) {
            out.append(' ').append(sorted[i].getName()).append("=\"");
            escape(sorted[i].getValue());
            out.append('"');
        }
    }

    private static boolean before(Attr a, Attr b) {
        int byRank = rank(a.getName()) - rank(b.getName());
        return byRank < 0 || byRank == 0 && a.getName().compareTo(b.getName()) < 0;
    }

    private static int rank(String name) {
        for (int i = 0; i < FIRST.length; i++) {
            if (FIRST[i].equals(name)) {
                return i;
            }
        }
        return FIRST.length;
    }

    private void indent(int depth) {
        for (int i = 0; i < depth; i++) {
            out.append(' ');
        }
    }

    private void escape(String text) {
        if (text.indexOf('&') < 0 && text.indexOf('<') < 0 && text.indexOf('>') < 0 && text.indexOf('"') < 0) {
            out.append(text);
            return;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
    }
}
