// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import ringleaf.spec.field.Field;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Numeric;
import ringleaf.spec.field.Unit;
import ringleaf.spec.text.Node;

/** Values of a catalogue as they were written, with the unit that bare numbers stand in. */
final class Written {
    private Written() {}

    static String of(Node node, Field<?> field) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text() + (isBare(scalar.text()) ? unit(field) : "");
        }
        if (!(node instanceof Node.Sequence sequence)) {
            return "";
        }
        StringBuilder all = new StringBuilder();
        boolean bare = true;
        for (Node item : sequence.items()) {
            String text = item instanceof Node.Scalar scalar ? scalar.text() : "";
            bare &= isBare(text);
            all.append(all.length() == 0 ? "" : ", ").append(text);
        }
        return all + (bare ? unit(field) : "");
    }

    private static boolean isBare(String text) {
        return text.matches("[-+]?[0-9.]+");
    }

    private static String unit(Field<?> field) {
        Numeric numeric = field.numeric();
        if (numeric == null) {
            return field.takes().startsWith("list of length") ? " mm" : "";
        }
        Unit unit = numeric.bare(LengthUnit.MM);
        return unit == null ? "" : unit.spelling().equals("deg") ? "°" : " " + unit.spelling();
    }
}
