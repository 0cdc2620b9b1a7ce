// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;

/**
 * A name from a catalogue or the same values written out.
 *
 * @param name how the name is read
 * @param inner the fields of an entry
 */
record NamedType(NameType name, FieldSet inner) implements FieldType<Named> {

    @Override
    public Named read(Node node, Place place, Reading reading) {
        if (node instanceof Node.Mapping map) {
            Values values = inner.bind(map, place, reading);
            return values == null ? null : new Named(Optional.empty(), Optional.of(values), place);
        }
        String chosen = name.read(node, place, reading);
        return chosen == null ? null : new Named(Optional.of(chosen), Optional.empty(), place);
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", List.of(name.schema(inMillimetres), inner.schema(inMillimetres)));
        return either;
    }

    @Override
    public String catalogueOfNames() {
        String file = name.catalogue();
        return file.endsWith(".yaml") ? file.substring(0, file.length() - ".yaml".length()) : file;
    }

    @Override
    public String takes() {
        return name.takes() + ", or a map";
    }
}
