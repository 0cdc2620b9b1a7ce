// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.OptionalDouble;

/**
 * What the user asks of a value that is otherwise solved: exactly this, or within limits. Inner units.
 *
 * @param exactly the value itself; then there are no limits
 * @param atLeast lower limit, included
 * @param atMost upper limit, included
 */
public record Bound(OptionalDouble exactly, OptionalDouble atLeast, OptionalDouble atMost) {
    private static final Bound OPEN = new Bound(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** The value is given. */
    public static Bound of(double exactly) {
        return new Bound(OptionalDouble.of(exactly), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Nothing is asked. */
    public static Bound open() {
        return OPEN;
    }

    public boolean isExact() {
        return exactly.isPresent();
    }

    /** The lower limit, or the exact value, or the fallback. */
    public double leastOr(double fallback) {
        return exactly.orElse(atLeast.orElse(fallback));
    }

    /** The upper limit, or the exact value, or the fallback. */
    public double mostOr(double fallback) {
        return exactly.orElse(atMost.orElse(fallback));
    }

    /** Whether a value meets it, with slack for rounding in the value's unit. */
    public boolean allows(double value, double slack) {
        return value >= leastOr(value) - slack && value <= mostOr(value) + slack;
    }
}
