// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The process's own streams, in UTF-8 whatever the locale, and what is known of who reads them. */
record Streams(PrintStream out, PrintStream err, Watched watched, Surroundings surroundings) {

    /** Remembers the first thing that went wrong, which a print stream swallows. */
    static final class Watched extends FilterOutputStream {
        private IOException first;

        Watched(OutputStream to) {
            super(to);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            try {
                out.write(bytes, from, length);
            } catch (IOException e) {
                first = first == null ? e : first;
                throw e;
            }
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }
    }

    static Streams ofProcess() {
        Watched watched = new Watched(new FileOutputStream(FileDescriptor.out));
        boolean terminal = isTerminal();
        String term = System.getenv("TERM");
        String noColour = System.getenv("NO_COLOR");
        boolean colour = terminal && (noColour == null || noColour.isEmpty()) && !"dumb".equals(term);
        Path folder = Path.of(System.getProperty("user.dir"));
        return new Streams(
                print(watched),
                print(new FileOutputStream(FileDescriptor.err)),
                watched,
                new Surroundings(folder, terminal, colour));
    }

    private static PrintStream print(OutputStream to) {
        return new PrintStream(new java.io.BufferedOutputStream(to, 8192), false, StandardCharsets.UTF_8);
    }

    private static Object device(Path path) throws IOException {
        return Files.getAttribute(path, "unix:rdev");
    }

    /** Whether standard error goes to a terminal: a device of characters, but not the one that swallows everything. */
    private static boolean isTerminal() {
        if (System.console() == null) {
            return false;
        }
        try {
            Path err = Path.of("/dev/fd/2");
            int mode = (Integer) Files.getAttribute(err, "unix:mode");
            boolean characters = (mode & 0170000) == 0020000;
            return characters && !device(err).equals(device(Path.of("/dev/null")));
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
            // No such system: the console is the best that is known.
            return true;
        }
    }

    /**
     * The exit code, after everything was handed on: output that could not be written is trouble, unless the reader
     * simply stopped reading.
     */
    int finish(int exit) {
        out.flush();
        if (watched.first != null && !isBrokenPipe(watched.first)) {
            err.print("ringleaf: cannot write standard output: " + Trouble.reason(watched.first) + "\n");
            exit = Exit.TROUBLE;
        }
        err.flush();
        return exit;
    }

    private static boolean isBrokenPipe(IOException e) {
        String said = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        return said.contains("pipe");
    }
}
