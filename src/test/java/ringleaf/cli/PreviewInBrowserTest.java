// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The preview in a real browser: it follows the spec, says what is wrong, keeps what one looks at, and outlives its end. */
class PreviewInBrowserTest {
    /** More looks than this only at what hangs. */
    private static final int LOOKS = 4000;

    private static final String SPEC = """
            title: Shutter
            mechanisms:
              shutter: {kind: leaf-aperture, full-opening: 30, least-opening: 12, blades: 8, blade-thickness: 0.1}
            """;
    private static final String SHOWN = "getComputedStyle(document.querySelector('#banner')).display !== 'none'"
            + " && !document.querySelector('#banner').hidden";
    private static final String BANNER = "return document.querySelector('#banner').textContent";

    @TempDir
    static Path folder;

    private static Chromium browser;
    private Path spec;

    @BeforeAll
    static void start() {
        browser = Chromium.start(folder);
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void write() throws Exception {
        spec = folder.resolve("shutter.yaml");
        Files.writeString(spec, SPEC);
    }

    private static void await(String condition) {
        for (int i = 0; i < LOOKS; i++) {
            if (browser.<Boolean>run("return !!(" + condition + ")")) {
                return;
            }
            try {
                Thread.sleep(25);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        throw new AssertionError(condition + " never held; the banner says: " + browser.run(BANNER));
    }

    private static void awaitBlades(int count) {
        await("document.querySelectorAll('#m0 .mechanism-picture .leaves g[id] > use').length >= " + count
                + " && document.querySelector('.layers').textContent.includes('" + count + " \u00d7 blade')");
    }

    @Test
    void aSaveRedrawsAndKeepsWhatOneLooksAt() throws Exception {
        try (Previewed preview = Previewed.in(folder, "shutter.yaml")) {
            browser.size(1000, 700);
            browser.driver().get(preview.address());
            awaitBlades(8);
            browser.run("window.untouched = true; const s = document.querySelector('#m0-drive'); s.value = s.max / 2;"
                    + "s.dispatchEvent(new Event('input', {bubbles: true}));"
                    + "document.querySelector('.layers input').click(); scrollTo(0, 160);");
            String share = "(s => s.value / s.max)(document.querySelector('#m0-drive'))";
            Number before = browser.run("return " + share);
            Files.writeString(spec, SPEC.replace("blades: 8", "blades: 9"));
            awaitBlades(9);
            assertThat(browser.<Boolean>run("return window.untouched"))
                    .as("the page was not loaded anew")
                    .isTrue();
            assertThat(browser.<Number>run("return " + share).doubleValue()).isEqualTo(before.doubleValue());
            assertThat(browser.<Boolean>run("return document.querySelector('.layers input').checked"))
                    .isFalse();
            assertThat(browser.<Number>run("return scrollY").intValue()).isEqualTo(160);
            assertThat(browser.<String>run("return document.title")).isEqualTo("Shutter");
            assertThat(browser.complaints()).isEmpty();
            List<String> fetched = browser.run("return performance.getEntriesByType('resource').map(e => e.name)");
            assertThat(fetched).allSatisfy(name -> assertThat(name).startsWith(preview.address()));
        }
    }

    @Test
    void aMistakeIsShownAsTextAndGoes() throws Exception {
        try (Previewed preview = Previewed.in(folder, "shutter.yaml")) {
            browser.driver().get(preview.address());
            awaitBlades(8);
            Files.writeString(spec, SPEC.replace("blades: 8", "blades: '<img src=x onerror=alert(1)>'"));
            await(SHOWN);
            assertThat(browser.<String>run(BANNER))
                    .startsWith("shutter.yaml:3:")
                    .contains("<img src=x onerror=alert(1)>")
                    .contains("^")
                    .endsWith("The last good design stays in view.");
            assertThat(browser.<String>run("return document.querySelector('#banner').getAttribute('role')"))
                    .isEqualTo("alert");
            assertThat(browser.<Number>run("return document.querySelectorAll('#banner *').length")
                            .intValue())
                    .isZero();
            awaitBlades(8);
            Files.writeString(spec, SPEC.replace("title: Shutter", "title: <b>Shutter"));
            await("!(" + SHOWN + ") && document.title === '<b>Shutter'");
            assertThat(browser.<Number>run("return document.querySelectorAll('h1 b').length")
                            .intValue())
                    .isZero();
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void aPageLeftOpenTellsTheEndAndGoesOnLater() throws Exception {
        int port;
        try (Previewed preview = Previewed.in(folder, "shutter.yaml")) {
            port = preview.port();
            browser.driver().get(preview.address());
            awaitBlades(8);
            await("performance.getEntriesByType('resource').length >= 0 && !(" + SHOWN + ")");
            preview.next();
        }
        await(SHOWN);
        assertThat(browser.<String>run(BANNER))
                .startsWith("The preview has ended.")
                .contains("--port " + port);
        awaitBlades(8);
        Files.writeString(spec, SPEC.replace("blades: 8", "blades: 10"));
        try (Previewed again = Previewed.in(folder, "shutter.yaml", "--port", Integer.toString(port))) {
            assertThat(again.port()).isEqualTo(port);
            awaitBlades(10);
            await("!(" + SHOWN + ")");
        }
        await(SHOWN);
    }

    @Test
    void aSpecThatIsWrongFromTheStartAppearsWhenItIsMended() throws Exception {
        Files.writeString(spec, "title: Shutter\nmechanisms: [");
        try (Previewed preview = Previewed.in(folder, "shutter.yaml")) {
            browser.driver().get(preview.address());
            await(SHOWN);
            assertThat(browser.<String>run(BANNER))
                    .startsWith("shutter.yaml:2:")
                    .doesNotContain("last good");
            Files.writeString(spec, SPEC);
            awaitBlades(8);
            await("!(" + SHOWN + ")");
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
