// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/**
 * The name of an entry of a catalogue; whether it exists there is found out when it is looked up.
 *
 * @param catalogue file the name comes from, e.g. {@code servos.yaml}
 */
record NameType(String catalogue) implements FieldType<String> {
    static final String PATTERN = "^[A-Za-z0-9][A-Za-z0-9.-]{0,39}$";

    @Override
    public String read(Node node, Place place, Reading reading) {
        Node.Scalar scalar = FieldType.scalar(node, place, "a name from " + catalogue, reading);
        if (scalar == null) {
            return null;
        }
        if (isName(scalar.text())) {
            return scalar.text();
        }
        reading.problems()
                .at(
                        place,
                        Shown.quoted(scalar.text()) + " is not a name (letters, digits, points and hyphens, at most "
                                + "40), and so not in " + catalogue);
        return null;
    }

    static boolean isName(String text) {
        if (text.isEmpty() || text.length() > 40 || !isLetterOrDigit(text.charAt(0))) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!isLetterOrDigit(c) && c != '.' && c != '-') {
                return false;
            }
        }
        return true;
    }

    private static boolean isLetterOrDigit(char c) {
        return c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }

    /** A name may look like a number: bearings are called 623. */
    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", List.of("string", "number"));
        schema.put("pattern", PATTERN);
        return schema;
    }

    @Override
    public String catalogueOfNames() {
        String file = catalogue;
        return file.endsWith(".yaml") ? file.substring(0, file.length() - ".yaml".length()) : file;
    }

    @Override
    public String takes() {
        return "name from " + catalogue;
    }
}
