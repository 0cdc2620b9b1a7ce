// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Words;

/**
 * A field that a spec may leave open, whose default is a first guess: other values for it, to be tried in this order
 * where the first guess does not work.
 *
 * @param path of the field within the mechanism, e.g. {@code drive.module}
 * @param values as they would be typed, the easiest to build first; those that the spec's stock or processes refuse are
 *     passed over
 */
public record Decision(String path, List<String> values) {
    public Decision {
        values = List.copyOf(values);
    }

    /** Between named ways. */
    public static Decision among(String path, String... values) {
        return new Decision(path, List.of(values));
    }

    /** Among lengths in mm. */
    public static Decision mm(String path, double... lengths) {
        List<String> values = new ArrayList<>();
        for (double length : lengths) {
            values.add(Words.number(length, 3) + "mm");
        }
        return new Decision(path, values);
    }

    /** Among plain numbers. */
    public static Decision numbers(String path, double... numbers) {
        List<String> values = new ArrayList<>();
        for (double number : numbers) {
            values.add(Words.number(number, 3));
        }
        return new Decision(path, values);
    }
}
