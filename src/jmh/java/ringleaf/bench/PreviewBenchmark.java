// SPDX-License-Identifier: Apache-2.0
package ringleaf.bench;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import ringleaf.cli.Main;
import ringleaf.cli.Surroundings;

/** From the save of a spec to the word that the page has changed; the fetch of the page is not in it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PreviewBenchmark {
    private Path folder;
    private String text;
    private Thread preview;
    private Socket socket;
    private BufferedReader events;
    private int saves;

    @Setup
    public void start() throws IOException, InterruptedException {
        folder = Files.createTempDirectory("preview");
        text = Specs.text("harbour-light");
        Files.writeString(folder.resolve("light.yaml"), text);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
        preview = new Thread(() -> Main.run(
                new String[] {"preview", "light.yaml"},
                new ByteArrayInputStream(new byte[0]),
                print,
                print,
                new Surroundings(folder, false, false)));
        preview.start();
        while (!out.toString(StandardCharsets.UTF_8).contains("drawn:")) {
            Thread.sleep(20);
        }
        String said = out.toString(StandardCharsets.UTF_8);
        int from = said.indexOf("127.0.0.1:") + 10;
        int port = Integer.parseInt(said.substring(from, said.indexOf('/', from)));
        socket = new Socket("127.0.0.1", port);
        String request = "GET /events HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        events = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
        told();
    }

    @TearDown
    public void end() throws IOException, InterruptedException {
        preview.interrupt();
        preview.join();
        socket.close();
        Files.delete(folder.resolve("light.yaml"));
        Files.delete(folder);
    }

    private String told() throws IOException {
        String line = events.readLine();
        while (line != null && !line.startsWith("data: ")) {
            line = events.readLine();
        }
        return line;
    }

    /** Another size of the opening at every save, so that every page differs. */
    @Benchmark
    public String saveToRedraw() throws IOException {
        saves++;
        String opening = "full-opening: " + (64 + saves % 50 * 0.02 + 0.01);
        Files.writeString(folder.resolve("light.yaml"), text.replaceFirst("full-opening: *64(mm)?", opening));
        return told();
    }
}
