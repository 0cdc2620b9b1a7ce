// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

/** Ends a command early: a message for the user and the code to end with. */
final class Stop extends RuntimeException {
    private final int exit;

    private Stop(int exit, String message) {
        super(message, null, false, false);
        this.exit = exit;
    }

    /** The command line is wrong. */
    static Stop wrong(String message) {
        return new Stop(Exit.WRONG, message);
    }

    /** Something cannot be read or written. */
    static Stop trouble(String message) {
        return new Stop(Exit.TROUBLE, message);
    }

    int exit() {
        return exit;
    }
}
