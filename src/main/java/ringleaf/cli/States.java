// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import ringleaf.spec.text.Shown;

/** How many states of the travel are swept. */
final class States {
    static final int LEAST = 3;
    static final int MOST = 3601;
    static final int USUAL = 181;

    private States() {}

    /** The number that was typed; the usual one for null. */
    static int of(String typed) {
        if (typed == null) {
            return USUAL;
        }
        long states = Digits.of(typed);
        if (states < LEAST || states > MOST) {
            throw Stop.wrong("--states: " + Shown.quoted(typed) + " is no whole number from " + LEAST
                    + " (open, half, closed) to " + MOST + " (a finer sweep finds nothing new)");
        }
        return (int) states;
    }
}
