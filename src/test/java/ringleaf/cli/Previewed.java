// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A preview that runs on a thread of its own, and somebody who listens to it. */
final class Previewed implements AutoCloseable {
    /** Only a hang is longer. */
    private static final int PATIENCE_S = 90;

    private static final Pattern ADDRESS = Pattern.compile("at (http://127\\.0\\.0\\.1:\\d+/)\n");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final HttpClient client = HttpClient.newHttpClient();
    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    private final Thread serving;
    private final String address;
    private Thread listening;
    private volatile int exit = -1;

    private Previewed(Path folder, String... args) {
        List<String> all = new ArrayList<>(List.of("preview"));
        all.addAll(List.of(args));
        serving = new Thread(() -> exit = Main.run(
                all.toArray(String[]::new),
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new Surroundings(folder, false, false)));
        serving.setDaemon(true);
        serving.start();
        address = awaitAddress();
    }

    /** Starts a preview in a folder and listens to its events; a free port unless the arguments name one. */
    static Previewed in(Path folder, String... args) {
        Previewed previewed = new Previewed(folder, args);
        previewed.listen();
        return previewed;
    }

    private String awaitAddress() {
        for (int i = 0; i < 100 * PATIENCE_S; i++) {
            Matcher at = ADDRESS.matcher(out());
            if (at.find()) {
                return at.group(1);
            }
            if (!serving.isAlive()) {
                break;
            }
            pause();
        }
        throw new AssertionError("no address; exit " + exit + "\n" + out() + err());
    }

    private static void pause() {
        try {
            Thread.sleep(10);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private void listen() {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(address + "events")).build();
        listening = new Thread(() -> {
            try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                    client.send(request, HttpResponse.BodyHandlers.ofInputStream())
                            .body(),
                    StandardCharsets.UTF_8))) {
                for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                    lines.add(line);
                }
            } catch (IOException e) {
                lines.add("lost: " + e.getMessage());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        listening.setDaemon(true);
        listening.start();
    }

    String address() {
        return address;
    }

    int port() {
        return URI.create(address).getPort();
    }

    String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    /** The next state that the preview tells of: the data of its event. */
    String next() {
        try {
            while (true) {
                String line = lines.poll(PATIENCE_S, TimeUnit.SECONDS);
                if (line == null || line.startsWith("lost")) {
                    throw new AssertionError("no event: " + line + "\n" + out() + err());
                }
                if (line.startsWith("data: ")) {
                    return line.substring(6);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send("GET", path);
    }

    HttpResponse<String> send(String method, String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address + path))
                .method(method, HttpRequest.BodyPublishers.noBody())
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** Ends it as whoever runs it within another program would; its exit code. */
    int end() {
        serving.interrupt();
        try {
            serving.join(1000L * PATIENCE_S);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return exit;
    }

    @Override
    public void close() {
        end();
    }
}
