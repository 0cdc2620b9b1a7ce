// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

/** What the process says when it ends. */
final class Exit {
    /** Every check passed or only warned. */
    static final int FINE = 0;
    /** A check failed. */
    static final int FAILED = 1;
    /** The spec or the command line is wrong; nothing was written. */
    static final int WRONG = 2;
    /** Something cannot be read or written. */
    static final int TROUBLE = 3;
    /** Somebody pressed Ctrl-C: what shells expect of whatever ends by that, 128 and the number of the signal. */
    static final int INTERRUPTED = 130;

    private Exit() {}
}
