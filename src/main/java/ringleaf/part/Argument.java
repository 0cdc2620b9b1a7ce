// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;

/** What the words of a {@link Saying} leave open. */
public sealed interface Argument
        permits Figure, Saying, Argument.Name, Argument.Count, Argument.Whether, Argument.Several {
    /** A name, or what stands as it was typed. */
    record Name(String text) implements Argument {}

    /** How many; words may differ for one. */
    record Count(long number) implements Argument {}

    /** Words may differ for yes and no. */
    record Whether(boolean yes) implements Argument {}

    /** Some of one sort, told with commas and an "and". */
    record Several(List<Argument> each) implements Argument {
        public Several {
            each = List.copyOf(each);
        }
    }
}
