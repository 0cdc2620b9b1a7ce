// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.svg;

import org.apache.batik.dom.GenericDOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import ringleaf.draw.PlainText;

/**
 * An SVG 1.1 document under construction, held in Batik's DOM: its plain one, because the one with style sheets and
 * animation loads four times as many classes for the same file.
 */
public final class SvgDocument {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private static final String XLINK = "http://www.w3.org/1999/xlink";

    private final Document document;
    private boolean links;

    /**
     * An empty document.
     *
     * @param width with its unit
     * @param height with its unit
     * @param viewBox four numbers
     */
    public SvgDocument(String width, String height, String viewBox) {
        document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        // Names are this program's own; looking at each letter of each would take longer than writing them.
        document.setStrictErrorChecking(false);
        set(root(), "version", "1.1", "width", width, "height", height, "viewBox", viewBox);
    }

    public Element root() {
        return document.getDocumentElement();
    }

    /**
     * A new last child of {@code parent}; attributes are given as name, value, name, value. Values are the program's
     * own words and numbers; text from outside goes through {@link #addText}.
     */
    public Element add(Element parent, String name, String... attributes) {
        Element element = document.createElementNS(SVG, name);
        set(element, attributes);
        parent.appendChild(element);
        return element;
    }

    /** A new last child that holds text only; the text is made safe. */
    public Element addText(Element parent, String name, String text, String... attributes) {
        Element element = add(parent, name, attributes);
        element.appendChild(document.createTextNode(PlainText.line(text)));
        return element;
    }

    /** The document as a UTF-8 file: the same document gives the same bytes. */
    public byte[] toBytes() {
        return SvgText.of(root(), links);
    }

    private void set(Element element, String... attributes) {
        for (int i = 0; i < attributes.length; i += 2) {
            String name = attributes[i];
            if (name.equals("xlink:href")) {
                element.setAttributeNS(XLINK, name, attributes[i + 1]);
                links = true;
            } else {
                element.setAttributeNS(null, name, attributes[i + 1]);
            }
        }
    }
}
