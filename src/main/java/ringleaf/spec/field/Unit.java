// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

/**
 * A unit as it is spelled in a spec.
 *
 * @param spelling e.g. {@code mm}
 * @param times factor to the inner unit, together with {@code per}: kept apart so that inches stay exact
 * @param per divisor to the inner unit
 */
public record Unit(String spelling, double times, double per) {
    /** The number of this unit in the inner unit. */
    public double inner(double number) {
        return number * times / per;
    }

    /** The inner value in this unit. */
    public double from(double inner) {
        return inner * per / times;
    }
}
