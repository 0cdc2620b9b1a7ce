// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/**
 * One of a few named ways.
 *
 * @param options each with its meaning, in the order to show them
 */
record ChoiceType(Map<String, String> options) implements FieldType<String> {
    ChoiceType {
        options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
    }

    @Override
    public String read(Node node, Place place, Reading reading) {
        Node.Scalar scalar = FieldType.scalar(node, place, takes(), reading);
        if (scalar == null) {
            return null;
        }
        if (options.containsKey(scalar.text())) {
            return scalar.text();
        }
        String reason = Shown.quoted(scalar.text()) + " is not one of " + takes();
        Optional<String> near = Nearest.of(scalar.text(), options.keySet());
        if (near.isEmpty()) {
            reading.problems().at(place, reason);
            return null;
        }
        reading.problems().nearest(place, reason, Nearest.hint(scalar.text(), options.keySet()));
        return near.get();
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("enum", new ArrayList<>(options.keySet()));
        return schema;
    }

    @Override
    public String takes() {
        return String.join(" | ", options.keySet());
    }

    @Override
    public String reasons() {
        StringBuilder out = new StringBuilder();
        for (Map.Entry<String, String> option : options.entrySet()) {
            out.append(out.length() == 0 ? "" : "; ");
            out.append(option.getKey()).append(": ").append(option.getValue());
        }
        return out.toString();
    }

    @Override
    public boolean lacksRange() {
        return options.isEmpty();
    }

    @Override
    public FieldType<String> withOption(String name, String meaning) {
        Map<String, String> more = new LinkedHashMap<>(options);
        more.put(name, meaning);
        return new ChoiceType(more);
    }
}
