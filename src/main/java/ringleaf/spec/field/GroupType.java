// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;

/**
 * Fields under a key of their own.
 *
 * @param inner the fields
 */
record GroupType(FieldSet inner) implements FieldType<Values> {

    @Override
    public Values read(Node node, Place place, Reading reading) {
        if (node instanceof Node.Mapping map) {
            return inner.bind(map, place, reading);
        }
        reading.problems()
                .at(place, "a map of keys and values is wanted, and not " + node.shape(), "write {} for all defaults");
        return null;
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        return inner.schema(inMillimetres);
    }

    @Override
    public String takes() {
        return "group";
    }
}
