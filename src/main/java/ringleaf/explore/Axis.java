// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.SpecSource;

/**
 * A field that is varied, with its values in the order in which they were asked for.
 *
 * @param path of the field
 * @param texts of the values, as they would stand in a spec
 * @param numbers the values in {@code unit}; empty where some are no numbers
 * @param unit mm, deg and the like; empty for plain numbers
 * @param options that lay each of them over a spec
 * @param ends places of the values that bound all others of their range: if these can be read, all can
 */
public record Axis(
        SpecPath path,
        List<String> texts,
        List<Double> numbers,
        String unit,
        List<SetOption> options,
        List<Integer> ends) {
    public Axis {
        texts = List.copyOf(texts);
        numbers = List.copyOf(numbers);
        options = List.copyOf(options);
        ends = List.copyOf(ends);
    }

    public int size() {
        return texts.size();
    }

    /** What was typed. */
    SpecSource source() {
        return options.get(0).source();
    }
}
