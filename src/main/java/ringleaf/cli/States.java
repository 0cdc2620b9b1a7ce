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
        boolean digits = !typed.isEmpty() && typed.length() <= 9;
        for (int i = 0; digits && i < typed.length(); i++) {
            digits = typed.charAt(i) >= '0' && typed.charAt(i) <= '9';
        }
        int states = digits ? Integer.parseInt(typed) : -1;
        if (states < LEAST || states > MOST) {
            throw Stop.wrong("--states: " + Shown.quoted(typed) + " is no whole number from " + LEAST
                    + " (open, half, closed) to " + MOST + " (a finer sweep finds nothing new)");
        }
        return states;
    }
}
