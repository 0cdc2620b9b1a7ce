// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/** Yes or no, written {@code true} or {@code false}. */
record FlagType() implements FieldType<Boolean> {

    @Override
    public Boolean read(Node node, Place place, Reading reading) {
        Node.Scalar scalar = FieldType.scalar(node, place, takes(), reading);
        if (scalar == null) {
            return null;
        }
        if (scalar.plain() && scalar.text().equals("true")) {
            return Boolean.TRUE;
        }
        if (scalar.plain() && scalar.text().equals("false")) {
            return Boolean.FALSE;
        }
        reading.problems().at(place, Shown.quoted(scalar.text()) + " is neither true nor false", "write true or false");
        return null;
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "boolean");
        return schema;
    }

    @Override
    public String takes() {
        return "true | false";
    }
}
