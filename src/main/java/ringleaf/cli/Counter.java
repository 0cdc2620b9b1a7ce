// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import ringleaf.verify.Progress;

/**
 * Shows in one line of a terminal, as a bar and in figures, how far a long step has come, and wipes the line in the
 * end; says nothing anywhere else. A progress library would cost every start the time to load it.
 */
final class Counter implements Progress, AutoCloseable {
    /** Characters of the bar. */
    private static final int BAR = 24;

    private final String name;
    private final PrintStream err;
    private int written;

    private Counter(String name, PrintStream err) {
        this.name = name;
        this.err = err;
    }

    static Counter of(String name, boolean shown, PrintStream err) {
        return new Counter(name, shown ? err : null);
    }

    @Override
    public void judged(int done, int total) {
        show(done, total, "states judged");
    }

    /** Tells how many orders of laying were tried. */
    void tried(int done, int total) {
        show(done, total, "orders of laying tried");
    }

    /** Tells how much of anything is done. */
    void show(int done, int total, String what) {
        if (err != null) {
            int full = total > 0 ? (int) ((long) BAR * done / total) : BAR;
            String bar = "#".repeat(full) + ".".repeat(BAR - full);
            String line = "\r" + name + " [" + bar + "] " + done + " of " + total + " " + what;
            written = line.length() - 1;
            err.print(line);
            err.flush();
        }
    }

    @Override
    public void close() {
        if (written > 0) {
            err.print("\r" + " ".repeat(written) + "\r");
            err.flush();
        }
    }
}
