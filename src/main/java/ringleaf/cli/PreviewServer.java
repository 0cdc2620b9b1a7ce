// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Serves a page on the loopback address, and tells those who look at it when it has changed. There is nothing else to
 * be had: no files, no writing, and nothing for a request that came here under another name.
 */
final class PreviewServer implements AutoCloseable {
    private static final byte[] LOOPBACK = {127, 0, 0, 1};
    /** Pages that may wait for changes at once; more have been forgotten open. */
    private static final int MOST_WAITING = 32;
    /** A line now and then shows a page whose browser has gone. */
    private static final long STILL_HERE_MS = 5000;
    /** Patience with pages that do not take the last word. */
    private static final long LAST_WORD_MS = 2000;

    private final HttpServer server;
    private final ExecutorService threads;
    private final Showing showing;
    private final Semaphore waiting = new Semaphore(MOST_WAITING);
    private final List<String> names;

    private PreviewServer(HttpServer server, Showing showing) {
        this.server = server;
        this.showing = showing;
        int port = server.getAddress().getPort();
        this.names = List.of("127.0.0.1:" + port, "localhost:" + port);
        this.threads = Executors.newCachedThreadPool(work -> {
            Thread thread = new Thread(work, "preview");
            thread.setDaemon(true);
            return thread;
        });
        server.setExecutor(threads);
        server.createContext("/", this::answer);
    }

    /** Begins to serve; port 0 is any that is free. */
    static PreviewServer start(int port, Showing showing) {
        try {
            InetAddress loopback = InetAddress.getByAddress(LOOPBACK);
            HttpServer http = HttpServer.create(new InetSocketAddress(loopback, port), 0);
            PreviewServer server = new PreviewServer(http, showing);
            server.server.start();
            return server;
        } catch (BindException e) {
            boolean denied =
                    String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("permission");
            throw Stop.trouble("cannot serve on port " + port + ": "
                    + (denied
                            ? "the system keeps ports below 1024 to itself; take another, or leave --port out for a free one"
                            : "another program has it, maybe another preview; take another, or leave --port out for a free"
                                    + " one"));
        } catch (IOException e) {
            throw Stop.trouble("cannot serve on port " + port + ": " + Trouble.reason(e));
        }
    }

    /** Where the page is to be had. */
    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    /** Tells the pages that it is over, then ends. */
    @Override
    public void close() {
        showing.end();
        threads.shutdown();
        try {
            // Time for the last word to the pages; who does not listen is cut off.
            threads.awaitTermination(LAST_WORD_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        server.stop(0);
        threads.shutdownNow();
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            Headers headers = exchange.getResponseHeaders();
            protect(headers);
            String host = exchange.getRequestHeaders().getFirst("Host");
            String method = exchange.getRequestMethod();
            String path = exchange.getRequestURI().getRawPath();
            if (host == null || !names.contains(host.toLowerCase(Locale.ROOT))) {
                say(exchange, 421, "This preview answers to " + names.get(0) + " only.\n");
            } else if (!method.equals("GET") && !method.equals("HEAD")) {
                headers.set("Allow", "GET, HEAD");
                say(exchange, 405, "There is nothing to change here; GET only.\n");
            } else if ("/".equals(path)) {
                send(exchange, 200, "text/html; charset=utf-8", showing.page());
            } else if ("/events".equals(path)) {
                events(exchange);
            } else if ("/favicon.ico".equals(path)) {
                exchange.sendResponseHeaders(204, -1);
            } else {
                say(exchange, 404, "There is nothing here but the page itself.\n");
            }
        } catch (RuntimeException e) {
            // A request this odd gets no answer; the next one is served as before.
            exchange.close();
        }
    }

    private static void protect(Headers headers) {
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("X-Frame-Options", "DENY");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Content-Security-Policy", "frame-ancestors 'none'; base-uri 'none'; form-action 'none'");
    }

    private static void say(HttpExchange exchange, int status, String words) throws IOException {
        send(exchange, status, "text/plain; charset=utf-8", words.getBytes(StandardCharsets.UTF_8));
    }

    private static void send(HttpExchange exchange, int status, String type, byte[] body) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", type);
        if (exchange.getRequestMethod().equals("HEAD")) {
            exchange.getResponseHeaders().set("Content-Length", Integer.toString(body.length));
            exchange.sendResponseHeaders(status, -1);
            return;
        }
        exchange.sendResponseHeaders(status, body.length);
        exchange.getResponseBody().write(body);
    }

    /** Server-sent events: the state at once and after every change, until the page is closed or the preview ends. */
    private void events(HttpExchange exchange) throws IOException {
        if (!waiting.tryAcquire()) {
            say(exchange, 503, "Too many pages wait for changes; close some of them.\n");
            return;
        }
        try {
            exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
            if (exchange.getRequestMethod().equals("HEAD")) {
                exchange.sendResponseHeaders(200, -1);
                return;
            }
            exchange.sendResponseHeaders(200, 0);
            OutputStream out = exchange.getResponseBody();
            out.write("retry: 1000\n".getBytes(StandardCharsets.UTF_8));
            Showing.Moment moment = showing.moment();
            tell(out, moment);
            while (!moment.ended()) {
                Showing.Moment next = showing.after(moment.changes(), STILL_HERE_MS);
                if (next.changes() == moment.changes()) {
                    out.write(":\n\n".getBytes(StandardCharsets.UTF_8));
                    out.flush();
                } else {
                    tell(out, next);
                }
                moment = next;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            waiting.release();
        }
    }

    private static void tell(OutputStream out, Showing.Moment moment) throws IOException {
        StringBuilder event = new StringBuilder();
        if (moment.ended()) {
            event.append("event: end\ndata: {}\n\n");
        } else {
            event.append("event: state\ndata: {\"page\":\"")
                    .append(moment.digest())
                    .append("\",\"problem\":\"");
            JsonStringEncoder.getInstance().quoteAsString(moment.problem(), event);
            event.append("\"}\n\n");
        }
        out.write(event.toString().getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
