// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringleaf.report.page.ReportPage;

/** The preview as a program that speaks HTTP sees it. */
class PreviewTest {
    private static final String SPEC = """
            title: Lens turntable
            mechanisms:
              table: {kind: gear-pair, ratio: 2, module: 1, driver: {teeth: 20}}
            """;

    @TempDir
    Path folder;

    private Path spec;

    @BeforeEach
    void write() throws IOException {
        spec = folder.resolve("table.yaml");
        Files.writeString(spec, SPEC);
    }

    private static String digest(String state) {
        return state.substring(state.indexOf(":\"") + 2, state.indexOf("\",\"problem"));
    }

    private static String problem(String state) throws IOException {
        return new ObjectMapper().readTree(state).get("problem").asText();
    }

    /** What a bare request with these lines is answered with. */
    private static String raw(int port, String... lines) throws IOException {
        try (Socket socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port)) {
            socket.getOutputStream()
                    .write((String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void thePageIsServedAndNothingElse() throws Exception {
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            HttpResponse<String> page = preview.get("");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("<h1>Lens turntable</h1>").contains("new EventSource(");
            assertThat(page.headers().firstValue("content-type")).contains("text/html; charset=utf-8");
            assertThat(page.headers().firstValue("cache-control")).contains("no-store");
            assertThat(page.headers().firstValue("x-content-type-options")).contains("nosniff");
            assertThat(page.headers().firstValue("x-frame-options")).contains("DENY");
            assertThat(page.headers().firstValue("cross-origin-resource-policy"))
                    .contains("same-origin");
            assertThat(page.headers().firstValue("content-security-policy"))
                    .hasValueSatisfying(policy -> assertThat(policy).contains("frame-ancestors 'none'"));
            assertThat(page.headers().map().keySet()).doesNotContain("access-control-allow-origin");
            HttpResponse<String> head = preview.send("HEAD", "");
            assertThat(head.statusCode()).isEqualTo(200);
            assertThat(head.body()).isEmpty();
            assertThat(head.headers().firstValue("content-length"))
                    .contains(Integer.toString(page.body().getBytes(StandardCharsets.UTF_8).length));
            assertThat(digest(preview.next()))
                    .isEqualTo(page.body()
                            .substring(page.body().length() - 19, page.body().length() - 3));
            for (String path :
                    List.of("table.yaml", "report.html", "%2e%2e/table.yaml", "events/", "events%00", "?", "a?b")) {
                assertThat(preview.get(path).statusCode()).as(path).isEqualTo(path.equals("?") ? 200 : 404);
            }
            for (String method : List.of("POST", "PUT", "DELETE", "PATCH", "OPTIONS")) {
                HttpResponse<String> refused = preview.send(method, "");
                assertThat(refused.statusCode()).as(method).isEqualTo(405);
                assertThat(refused.headers().firstValue("allow")).contains("GET, HEAD");
            }
            assertThat(Ran.listing(folder).keySet()).containsExactly("/", "table.yaml");
        }
    }

    /** A name elsewhere that leads to this machine must not make a foreign page's script a reader of this one. */
    @ParameterizedTest
    @CsvSource({
        "127.0.0.1:PORT, 200",
        "localhost:PORT, 200",
        "LocalHost:PORT, 200",
        "example.com, 421",
        "example.com:PORT, 421",
        "127.0.0.1, 421",
        "127.0.0.1:PORT.example.com, 421",
        "'', 421"
    })
    void onlyItsOwnNameIsAnswered(String host, int status) throws Exception {
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            String own = host.replace("PORT", Integer.toString(preview.port()));
            String answer = raw(preview.port(), "GET / HTTP/1.1", "Host: " + own);
            assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
            assertThat(answer.contains("Lens turntable")).isEqualTo(status == 200);
            assertThat(raw(preview.port(), "GET / HTTP/1.0")).startsWith("HTTP/1.1 421 ");
            assertThat(raw(preview.port(), "GET /../../etc/passwd HTTP/1.1", "Host: 127.0.0.1:" + preview.port()))
                    .startsWith("HTTP/1.1 404 ");
        }
    }

    @Test
    void noOtherAddressOfTheMachineIsOpened() throws Exception {
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                for (InetAddress address : Collections.list(each.getInetAddresses())) {
                    if (!address.isLoopbackAddress()) {
                        assertThatThrownBy(() -> new Socket(address, preview.port()).close())
                                .as(address.toString())
                                .isInstanceOf(ConnectException.class);
                    }
                }
            }
        }
    }

    @Test
    void aSaveIsToldAndAMistakeKeepsTheLastPage() throws Exception {
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            String first = digest(preview.next());
            Files.writeString(spec, SPEC.replace("teeth: 20", "teeth: 24"));
            String second = digest(preview.next());
            assertThat(second).isNotEqualTo(first);
            assertThat(preview.get("").body()).endsWith("<!--" + second + "-->");

            Files.writeString(spec, SPEC.replace("teeth: 20", "teeth: '<b>20'"));
            String wrong = preview.next();
            assertThat(digest(wrong)).isEqualTo(second);
            assertThat(problem(wrong)).startsWith("table.yaml:3:").contains("<b>20");
            assertThat(preview.err()).contains("table.yaml:3:");
            assertThat(preview.get("").body()).endsWith("<!--" + second + "-->");

            Files.writeString(spec, SPEC);
            String mended = preview.next();
            assertThat(digest(mended)).isEqualTo(first);
            assertThat(problem(mended)).isEmpty();
        }
    }

    @Test
    void aSpecThatVanishesAndComesBackIsFollowed() throws Exception {
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            String first = digest(preview.next());
            Files.delete(spec);
            String gone = preview.next();
            assertThat(digest(gone)).isEqualTo(first);
            assertThat(problem(gone)).startsWith("cannot read table.yaml: there is no such file or folder");
            Path aside = folder.resolve(".table.yaml.new");
            Files.writeString(aside, SPEC.replace("teeth: 20", "teeth: 21"));
            Files.move(aside, spec, StandardCopyOption.ATOMIC_MOVE);
            String back = preview.next();
            assertThat(problem(back)).isEmpty();
            assertThat(digest(back)).isNotEqualTo(first);
            Files.writeString(aside, SPEC);
            Files.move(aside, spec, StandardCopyOption.ATOMIC_MOVE);
            assertThat(digest(preview.next())).isEqualTo(first);
        }
    }

    /** A whole folder that is moved away takes its watch along; looking finds it again. */
    @Test
    void aFolderThatComesAndGoesIsFollowed() throws Exception {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Files.move(spec, inner.resolve("table.yaml"));
        try (Previewed preview = Previewed.in(folder, "inner/table.yaml")) {
            String first = digest(preview.next());
            Files.move(inner, folder.resolve("elsewhere"));
            assertThat(problem(preview.next())).contains("cannot read inner/table.yaml");
            Files.move(folder.resolve("elsewhere"), inner);
            String back = preview.next();
            assertThat(problem(back)).isEmpty();
            assertThat(digest(back)).isEqualTo(first);
            Files.writeString(inner.resolve("table.yaml"), SPEC.replace("teeth: 20", "teeth: 22"));
            assertThat(digest(preview.next())).isNotEqualTo(first);
        }
    }

    @Test
    void aLinkedSpecIsFollowedToWhereItLies() throws Exception {
        Path far = Files.createDirectory(folder.resolve("far")).resolve("real.yaml");
        Files.move(spec, far);
        Files.createSymbolicLink(spec, far);
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            String first = digest(preview.next());
            Files.writeString(far, SPEC.replace("teeth: 20", "teeth: 23"));
            assertThat(digest(preview.next())).isNotEqualTo(first);
        }
    }

    @Test
    void aCatalogueBesideTheSpecIsFollowed() throws Exception {
        Files.writeString(spec, SPEC + "fabrication: {gear: {process: co2-laser, stock: acrylic-3}}\n");
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            String ready = preview.next();
            assertThat(problem(ready)).isEmpty();
            Path shared = Files.createDirectory(folder.resolve("shared"));
            Files.writeString(shared.resolve("stock.yaml"), "stock: {acrylic-3: {thickness: 4}}\n");
            String four = preview.next();
            assertThat(problem(four)).isEmpty();
            assertThat(digest(four)).isNotEqualTo(digest(ready));
            Files.writeString(shared.resolve("stock.yaml"), "stock: {acrylic-3: {thickness: thick}}\n");
            String wrong = preview.next();
            assertThat(problem(wrong)).startsWith("shared/stock.yaml:1:");
            assertThat(digest(wrong)).isEqualTo(digest(four));
            Files.delete(shared.resolve("stock.yaml"));
            assertThat(preview.next()).isEqualTo(ready);
        }
    }

    @Test
    void aDrawingThatTheSpecNamesIsFollowed() throws Exception {
        Files.writeString(folder.resolve("light.yaml"), """
                title: Light
                mechanisms:
                  shutter:
                    kind: leaf-aperture
                    full-opening: 30
                    least-opening: 12
                    blades: 9
                    blade-thickness: 0.1
                    housing: {outline: edge.svg, units: mm}
                """);
        String square =
                "<svg xmlns='http://www.w3.org/2000/svg' width='%1$dmm' height='%1$dmm' viewBox='%2$d %2$d %1$d %1$d'>"
                        + "<rect x='%2$d' y='%2$d' width='%1$d' height='%1$d'/>"
                        + "<circle cx='-44' cy='-44' r='1.1'/><circle cx='44' cy='44' r='1.1'/></svg>";
        Path edge = folder.resolve("edge.svg");
        Files.writeString(edge, String.format(java.util.Locale.ROOT, square, 100, -50));
        try (Previewed preview = Previewed.in(folder, "light.yaml")) {
            String ready = preview.next();
            Files.writeString(edge, String.format(java.util.Locale.ROOT, square, 110, -55));
            assertThat(preview.next()).isNotEqualTo(ready);
            Files.writeString(edge, String.format(java.util.Locale.ROOT, square, 100, -50));
            assertThat(preview.next()).isEqualTo(ready);
        }
    }

    @Test
    void aSpecThatIsWrongFromTheStartIsWaitedFor() throws Exception {
        Files.writeString(spec, "title: <i>Table</i>\nmechanisms: {table: {kind: gear-pai");
        try (Previewed preview = Previewed.in(folder, "table.yaml")) {
            assertThat(problem(preview.next())).startsWith("table.yaml:2:");
            assertThat(preview.get("").body()).contains("<h1>table.yaml</h1>").doesNotContain("<i>Table");
            Files.writeString(spec, SPEC.replace("Lens", "<i>Lens"));
            assertThat(problem(preview.next())).isEmpty();
            assertThat(preview.get("").body())
                    .contains("<h1>&#60;i&#62;Lens turntable</h1>")
                    .doesNotContain("<i>Lens");
        }
    }

    @Test
    void twoPreviewsOfOneSpecDoNotDisturbEachOther() throws Exception {
        try (Previewed one = Previewed.in(folder, "table.yaml");
                Previewed two = Previewed.in(folder, "table.yaml")) {
            assertThat(one.port()).isNotEqualTo(two.port());
            assertThat(one.next()).isEqualTo(two.next());
            Files.writeString(spec, SPEC.replace("teeth: 20", "teeth: 25"));
            assertThat(one.next()).isEqualTo(two.next());
            Ran busy = Ran.in(folder, "preview", "table.yaml", "--port", Integer.toString(one.port()));
            assertThat(busy.exit()).isEqualTo(3);
            assertThat(busy.err())
                    .isEqualTo(
                            "ringleaf: cannot serve on port " + one.port()
                                    + ": another program has it, maybe another preview; take another, or leave --port out for a free one\n");
        }
    }

    @Test
    void aPresetIsShownAndItIsSaidThatItStands() throws Exception {
        try (Previewed preview = Previewed.in(folder, "lens-turntable-gears")) {
            assertThat(preview.out()).contains("`ringleaf new lens-turntable-gears` writes a spec to edit");
            assertThat(problem(preview.next())).isEmpty();
        }
    }

    @Test
    void itEndsWithALineAndAWordToThePages() throws Exception {
        Previewed preview = Previewed.in(folder, "table.yaml");
        preview.next();
        assertThat(preview.end()).isZero();
        assertThat(preview.next()).isEqualTo("{}");
        assertThat(preview.out()).endsWith("preview ended\n");
        assertThat(preview.err()).isEmpty();
        assertThatThrownBy(() -> preview.get("")).isInstanceOf(ConnectException.class);
        // The port is free at once.
        try (Previewed again = Previewed.in(folder, "table.yaml", "--port", Integer.toString(preview.port()))) {
            assertThat(again.port()).isEqualTo(preview.port());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "65536", "-1", "x", "80.5", " 80", "99999999999", "٨٠"})
    void aPortIsOneOfThoseThereAre(String port) {
        Ran ran = Ran.in(folder, "preview", "table.yaml", "--port=" + port);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .startsWith("ringleaf: --port: ")
                .contains("from 1 to 65535")
                .hasLineCount(1);
    }

    @Test
    void aWrongCommandLineEndsBeforeAnythingIsServed() {
        assertThat(Ran.in(folder, "preview", "nowhere.yaml")).satisfies(ran -> {
            assertThat(ran.exit()).isEqualTo(3);
            assertThat(ran.err()).startsWith("ringleaf: cannot read nowhere.yaml");
        });
        assertThat(Ran.in(folder, "preview", "-").exit()).isEqualTo(2);
        assertThat(Ran.in(folder, "preview").exit()).isEqualTo(2);
        assertThat(Ran.in(folder, "preview", "table.yaml", "--shared", "none").exit())
                .isEqualTo(3);
        assertThat(Ran.in(folder, "preview", "table.yaml", "--set", "nonsense").exit())
                .isEqualTo(2);
        assertThat(Ran.in(folder, "preview", ".").exit()).isEqualTo(3);
    }

    /** Many saves leave nothing behind: no threads, and the page of the last is that of the first. */
    @Test
    void manyRedrawsLeaveNothingBehind() {
        Asked asked = new Asked("table.yaml", List.of(), 31, false, Optional.empty());
        Redraw redraw = new Redraw(asked, new Surroundings(folder, false, false), new ReportPage.Live("", ""));
        byte[] first = redraw.now().page();
        Set<Thread> before = Thread.getAllStackTraces().keySet();
        for (int i = 0; i < 50; i++) {
            assertThat(redraw.now().page()).isEqualTo(first);
        }
        Set<String> more = new TreeSet<>();
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            // Others are started by the tests' own surroundings.
            if (!before.contains(thread) && List.of("judge", "preview", "page").contains(thread.getName())) {
                more.add(thread.getName());
            }
        }
        assertThat(more).isEmpty();
    }

    @Test
    void anInterruptEndsTheProcessCleanly() throws Exception {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process = new ProcessBuilder(
                        java,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "ringleaf.cli.Main",
                        "preview",
                        "table.yaml")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        try (InputStream out = process.getInputStream()) {
            StringBuilder said = new StringBuilder();
            for (int c = out.read(); c >= 0 && said.indexOf("drawn: ") < 0; c = out.read()) {
                said.append((char) c);
            }
            new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                    .start()
                    .waitFor();
            said.append(new String(out.readAllBytes(), StandardCharsets.UTF_8));
            assertThat(said.toString()).endsWith("preview ended\n");
            assertThat(process.waitFor()).isZero();
        } finally {
            process.destroyForcibly();
        }
    }
}
