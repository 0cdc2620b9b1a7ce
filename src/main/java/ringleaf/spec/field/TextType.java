// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/**
 * A line of text.
 *
 * @param longest characters at most
 */
record TextType(int longest) implements FieldType<String> {

    @Override
    public String read(Node node, Place place, Reading reading) {
        Node.Scalar scalar = FieldType.scalar(node, place, "a text", reading);
        if (scalar == null) {
            return null;
        }
        String text = scalar.text();
        int count = text.codePointCount(0, text.length());
        if (text.isBlank()) {
            reading.problems().at(place, "is empty where a text is wanted");
            return null;
        }
        if (count > longest) {
            reading.problems()
                    .at(place, "is " + count + " characters long, and " + longest + " are the most (it is one line)");
            return null;
        }
        int hidden = firstHidden(text);
        if (hidden >= 0) {
            reading.problems().at(place, "holds a character that is not seen (U+" + SpecSource.hex(hidden) + ")");
            return null;
        }
        return text;
    }

    /** The first code point that a terminal or a drawing would not show; -1 when there is none. */
    static int firstHidden(String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (Shown.isHidden(c)) {
                return c;
            }
            i += Character.charCount(c);
        }
        return -1;
    }

    /** A text may look like a number: {@code title: 64} is one. */
    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", List.of("string", "number", "boolean"));
        schema.put("minLength", 1);
        schema.put("maxLength", longest);
        return schema;
    }

    @Override
    public String takes() {
        return "text";
    }

    @Override
    public String limits() {
        return "1 to " + longest + " characters";
    }
}
