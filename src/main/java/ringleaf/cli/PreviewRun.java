// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import ringleaf.report.page.ReportPage;
import ringleaf.spec.SetOption;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** A run of {@code preview}: a local page that shows a spec and is drawn anew whenever it is saved. */
final class PreviewRun {
    /** A spec that is being written may be half there; so long a mistake must stand before it is shown, ms. */
    private static final long MISTAKE_STANDS_MS = 120;

    private static final int LAST_PORT = 65535;

    private final Surroundings surroundings;
    private final PrintStream out;
    private final PrintStream err;

    PreviewRun(Console console) {
        surroundings = console.surroundings();
        out = console.out();
        err = console.err();
    }

    /** The port that was typed, 0 for any that is free. */
    static int port(String typed) {
        if (typed == null) {
            return 0;
        }
        long port = Digits.of(typed);
        if (port < 1 || port > LAST_PORT) {
            throw Stop.wrong("--port: " + Shown.quoted(typed) + " is no whole number from 1 to " + LAST_PORT
                    + " (there are no other ports); leave it out for one that is free");
        }
        return (int) port;
    }

    /** Serves until the process or the thread is told to end. */
    int serve(Asked asked, int port) {
        check(asked);
        String script = script();
        Redraw redraw = new Redraw(asked, surroundings, new ReportPage.Live(script, Showing.policyDigest(script)));
        try (Closing closing = new Closing()) {
            try (SpecWatch watch = SpecWatch.of(asked, surroundings)) {
                Redraw.Result first = redraw.now();
                Showing showing = new Showing(first.page() == null ? redraw.waiting() : first.page(), first.problem());
                try (PreviewServer server = PreviewServer.start(port, showing)) {
                    closing.begin();
                    greet(asked, server.address());
                    told(first);
                    follow(watch, redraw, showing);
                }
            }
            out.print("preview ended\n");
            out.flush();
        }
        return Exit.FINE;
    }

    private void greet(Asked asked, String address) {
        out.print("preview of " + Shown.cut(asked.spec(), 300) + " at " + address + "\n");
        out.print(
                isPreset(asked)
                        ? "  a preset does not change; `ringleaf new " + asked.spec() + "` writes a spec to edit\n"
                        : "  drawn anew at every save; Ctrl-C ends it\n");
    }

    /** What is wrong with the command line ends it before anything is served. */
    private void check(Asked asked) {
        if (asked.spec().equals("-")) {
            throw Stop.wrong("preview watches a file, and - is standard input; give it a file");
        }
        Problems problems = new Problems();
        for (String set : asked.sets()) {
            SetOption.parse(set, problems);
        }
        problems.throwIfAny();
        OwnCatalogues.of(asked.spec(), asked.shared(), surroundings);
        if (!Files.isRegularFile(surroundings.place(asked.spec(), "SPEC"))) {
            new SpecFinder(surroundings, InputStream.nullInputStream()).find(asked.spec(), problems);
        }
    }

    private boolean isPreset(Asked asked) {
        return Presets.has(asked.spec())
                && !Files.exists(surroundings.place(asked.spec(), "SPEC"), LinkOption.NOFOLLOW_LINKS);
    }

    private void follow(SpecWatch watch, Redraw redraw, Showing showing) {
        try {
            while (true) {
                watch.await();
                Redraw.Result result = redraw.now();
                while (result.page() == null && watch.changesWithin(MISTAKE_STANDS_MS)) {
                    result = redraw.now();
                }
                if (showing.show(result.page(), result.problem())) {
                    told(result);
                }
            }
        } catch (InterruptedException e) {
            // Told to end, by the process's end or by whoever runs this within another program: that is done now, and
            // the interrupt with it, so that the pages can still be told in peace.
            return;
        }
    }

    private void told(Redraw.Result result) {
        if (result.page() != null) {
            out.print("drawn: " + result.verdict() + "\n");
        } else {
            err.print(result.problem() + "\n");
            err.flush();
        }
        out.flush();
    }

    private static String script() {
        try (InputStream in = PreviewRun.class.getResourceAsStream("/ringleaf/cli/preview.js")) {
            if (in == null) {
                throw new IllegalStateException("preview.js is missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Ends the preview when the process is asked to end (Ctrl-C, a closed terminal, a plain kill): pages are told, the
     * last line is written, and the code is that of a command that did what was asked of it.
     */
    private static final class Closing implements AutoCloseable {
        private static final long PATIENCE_S = 3;
        private final CountDownLatch over = new CountDownLatch(1);
        private final Thread serving = Thread.currentThread();
        private final Thread hook = new Thread(this::end, "preview-end");

        void begin() {
            Runtime.getRuntime().addShutdownHook(hook);
        }

        private void end() {
            serving.interrupt();
            try {
                if (over.await(PATIENCE_S, TimeUnit.SECONDS)) {
                    Runtime.getRuntime().halt(Exit.FINE);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void close() {
            over.countDown();
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // The process is ending and the hook is at work: just what it is there for.
                over.countDown();
            }
        }
    }
}
