package ringleaf.cli;

import java.io.PrintStream;
import ringleaf.verify.Progress;

/**
 * Counts judged states in one line of a terminal and wipes the line in the end; says nothing anywhere else. A line is
 * enough for the one long step there is, and a progress library would cost every start the time to load it.
 */
final class Counter implements Progress, AutoCloseable {
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
            String line = "\r" + name + ": " + done + " of " + total + " " + what;
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
