// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.InputStream;
import java.io.PrintStream;

/** Starts the tool. */
public final class Main {
    private Main() {}

    /** Runs the command line and ends the process with its exit code. */
    public static void main(String[] args) {
        Streams streams = Streams.ofProcess();
        int exit = run(args, System.in, streams.out(), streams.err(), streams.surroundings());
        System.exit(streams.finish(exit));
    }

    /**
     * Runs a command line.
     *
     * @return 0 when every check passed or only warned, 1 when one failed, 2 when spec or command line are wrong,
     *     3 when something cannot be read or written
     */
    public static int run(String[] args, InputStream in, PrintStream out, PrintStream err, Surroundings surroundings) {
        int exit = new CommandRun(new Console(in, out, err, surroundings)).run(args);
        out.flush();
        err.flush();
        return exit;
    }
}
