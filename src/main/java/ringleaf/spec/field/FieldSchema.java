// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** JSON Schema of a field: its type's with what the declaration says in words. */
final class FieldSchema {
    private FieldSchema() {}

    static Map<String, Object> of(Field<?> field, boolean inMillimetres) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("description", description(field));
        if (field.hasDefaultValue()) {
            schema.put("default", value(field.defaultText(), field));
        }
        if (!field.examples().isEmpty()) {
            List<Object> examples = new ArrayList<>();
            for (String example : field.examples()) {
                examples.add(value(example, field));
            }
            schema.put("examples", examples);
        }
        schema.putAll(field.type().schema(inMillimetres));
        return schema;
    }

    private static String description(Field<?> field) {
        StringBuilder out = new StringBuilder(capital(field.help())).append('.');
        if (!field.limits().isEmpty()) {
            out.append(' ').append(capital(field.limits()));
            if (!field.reasons().isEmpty()) {
                out.append(" (").append(field.reasons()).append(')');
            }
            out.append('.');
        } else if (!field.reasons().isEmpty()) {
            out.append(" (").append(field.reasons()).append(").");
        }
        if (!field.defaultText().isEmpty()) {
            out.append(" Default: ").append(field.defaultText()).append('.');
        }
        return out.toString();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** A text as the JSON value that YAML makes of it. */
    private static Object value(String text, Field<?> field) {
        if (field.type() instanceof FlagType) {
            return text.equals("true");
        }
        if (field.type() instanceof TextType || field.type() instanceof NameType) {
            return text;
        }
        QuantityReader.Result number = QuantityReader.read(text, Quantity.NUMBER, null);
        return number.refused() || text.indexOf('/') >= 0 ? text : (Object) number.value();
    }
}
