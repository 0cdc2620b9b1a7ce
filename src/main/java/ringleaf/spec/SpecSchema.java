// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.field.Field;
import ringleaf.spec.text.Decimal;

/**
 * Writes the JSON Schema (draft 2020-12) of a spec, for editors.
 *
 * <p>A spec that reads without a problem always meets it. The reverse is as near as a schema can come: ranges of bare
 * numbers hold exactly in a document in millimetres and are loosened in the other units; numbers with a unit are
 * checked by their form only.
 */
public final class SpecSchema {
    private static final String STRICT = "-mm";
    private static final String LOOSE = "-other-units";

    private SpecSchema() {}

    /** The schema for these kinds; the same text for the same kinds, ending with a newline. */
    public static String write(List<KindFields> kinds) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.useDefaultPrettyPrinter();
            value(json, root(kinds));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString().replace("\r\n", "\n") + '\n';
    }

    private static Map<String, Object> root(List<KindFields> kinds) {
        Map<String, Object> properties = map("title", title(), "units", RootFields.UNITS.schema(true));
        properties.put(RootFields.FABRICATION, fabrication());
        properties.put(RootFields.MECHANISMS, map("description", "the mechanisms to make, each under a name"));
        for (Field<?> field : SetupFields.ALL.fields()) {
            properties.put(field.name(), field.schema(false));
        }

        Map<String, Object> root = map("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "ringleaf spec");
        root.put("type", "object");
        root.put("properties", properties);
        root.put("required", List.of(RootFields.MECHANISMS));
        root.put("additionalProperties", false);
        Map<String, Object> unitsGiven = map("properties", map("units", map("enum", List.of("cm", "in", "thou"))));
        unitsGiven.put("required", List.of("units"));
        root.put("if", unitsGiven);
        root.put("then", map("properties", map(RootFields.MECHANISMS, reference("mechanisms" + LOOSE))));
        root.put("else", map("properties", map(RootFields.MECHANISMS, reference("mechanisms" + STRICT))));
        root.put("$defs", definitions(kinds));
        return root;
    }

    private static Map<String, Object> title() {
        Map<String, Object> title = map("description", RootFields.TITLE.help() + ".");
        title.put("examples", new ArrayList<Object>(RootFields.TITLE.examples()));
        title.put("type", List.of("string", "number", "boolean"));
        title.put("minLength", 1);
        title.put("maxLength", 80);
        title.put("pattern", "^[^/\\\\]*$");
        title.put("not", map("type", "string", "pattern", "\\.\\."));
        return title;
    }

    private static Map<String, Object> fabrication() {
        Map<String, Object> families = new LinkedHashMap<>();
        for (String family : Fabrication.FAMILIES) {
            families.put(family, reference("making"));
        }
        for (Field<?> field : FabricationFields.GENERAL.fields()) {
            families.put(field.name(), field.schema(false));
        }
        Map<String, Object> schema =
                map("description", "process and stock by family of part, and what holds for all of them");
        schema.put("type", "object");
        schema.put("properties", families);
        schema.put("additionalProperties", false);
        return schema;
    }

    private static Map<String, Object> definitions(List<KindFields> kinds) {
        Map<String, Object> definitions = map("making", RootFields.MAKING.schema(false));
        for (String variant : List.of(STRICT, LOOSE)) {
            Map<String, Object> mechanisms = map("type", "object", "minProperties", 1);
            mechanisms.put("maxProperties", SpecReader.MECHANISM_LIMIT);
            mechanisms.put("propertyNames", map("pattern", "^[a-z]([a-z0-9-]{0,38}[a-z0-9])?$"));
            mechanisms.put("additionalProperties", reference("mechanism" + variant));
            definitions.put("mechanisms" + variant, mechanisms);
            definitions.put("mechanism" + variant, mechanism(kinds, variant));
            definitions.put("place" + variant, PlaceFields.PLACE.schema(variant.equals(STRICT)));
            for (KindFields kind : kinds) {
                Map<String, Object> own = new LinkedHashMap<>();
                own.put("description", kind.summary());
                Map<String, Object> first = map(RootFields.KIND, map("const", kind.name()));
                first.put(PlaceFields.PLACE.name(), reference("place" + variant));
                own.putAll(kind.fields().schema(variant.equals(STRICT), first));
                definitions.put("kind-" + kind.name() + variant, own);
            }
        }
        return definitions;
    }

    private static Map<String, Object> mechanism(List<KindFields> kinds, String variant) {
        List<Object> names = new ArrayList<>();
        List<Object> cases = new ArrayList<>();
        for (KindFields kind : kinds) {
            names.add(kind.name());
            Map<String, Object> isKind = map("properties", map(RootFields.KIND, map("const", kind.name())));
            isKind.put("required", List.of(RootFields.KIND));
            cases.add(map("if", isKind, "then", reference("kind-" + kind.name() + variant)));
        }
        Map<String, Object> schema = map("type", "object");
        schema.put("properties", map(RootFields.KIND, map("description", "what it is", "enum", names)));
        schema.put("required", List.of(RootFields.KIND));
        if (!cases.isEmpty()) {
            schema.put("allOf", cases);
        }
        return schema;
    }

    private static Map<String, Object> reference(String definition) {
        return map("$ref", "#/$defs/" + definition);
    }

    /** A map in the order of its arguments: keys and values by turns. */
    private static Map<String, Object> map(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return map;
    }

    private static void value(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName((String) entry.getKey());
                value(json, entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                value(json, item);
            }
            json.writeEndArray();
        } else if (value instanceof Double number) {
            json.writeNumber(Decimal.of(number, 17));
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else {
            json.writeString((String) value);
        }
    }
}
