// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How report.html looks in a real browser: nothing runs off a phone, text stands out in light and dark, and a picture of
 * every preset goes to {@code target/report-pictures} for a person to look at.
 */
class ReportLooksTest {
    private static final Path PICTURES = Path.of("target", "report-pictures");

    /**
     * The texts whose contrast is below what WCAG 2.2, success criterion 1.4.3, asks for: 4.5 to 1, and 3 to 1 for
     * large text (24 px, or 18.66 px bold). Formula: its "relative luminance" and "contrast ratio".
     */
    private static final String FAINT = """
            const rgb = text => { const m = text.match(/-?[\\d.]+(?:e-?\\d+)?/g).map(Number);
              return text.startsWith('color(') ? [m[0] * 255, m[1] * 255, m[2] * 255, m[3] ?? 1] : [m[0], m[1], m[2], m[3] ?? 1]; };
            const over = (top, below) => [0, 1, 2].map(i => top[i] * top[3] + below[i] * (1 - top[3])).concat(1);
            const ground = element => { const all = [];
              for (let e = element; e; e = e.parentElement) all.push(rgb(getComputedStyle(e).backgroundColor));
              return all.reverse().reduce((below, top) => over(top, below), [255, 255, 255, 1]); };
            const light = colour => { const [r, g, b] = colour.map(v => v / 255).map(
                v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
            const faint = [];
            const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            for (let node = walk.nextNode(); node; node = walk.nextNode()) {
              const element = node.parentElement;
              if (!node.data.trim() || element.closest('script, style, noscript') || !element.getClientRects().length) continue;
              const style = getComputedStyle(element), below = ground(element);
              const ink = over(rgb(element.closest('svg') ? style.fill : style.color), below);
              const [a, b] = [light(ink), light(below)].sort((x, y) => y - x), ratio = (a + 0.05) / (b + 0.05);
              const size = parseFloat(style.fontSize), large = size >= 24 || size >= 18.66 && +style.fontWeight >= 700;
              if (ratio < (large ? 3 : 4.5)) faint.push(ratio.toFixed(2) + ' ' + node.data.trim().slice(0, 40));
            }
            return faint;
            """;

    @TempDir
    static Path folder;

    private static Chromium browser;

    @BeforeAll
    static void makeAndStart() throws Exception {
        browser = Chromium.start(folder);
        Files.createDirectories(PICTURES);
        for (String preset : Presets.names()) {
            assertThat(Ran.in(folder, "make", preset, "-o", preset).exit()).isZero();
        }
        Ran.in(folder, "make", "harbour-light", "--set", "shutter.outer-diameter=100", "-o", "nothing-fits");
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Path page(String name) {
        return folder.resolve(name).resolve("report.html");
    }

    private static void unfold() {
        browser.run("for (const d of document.querySelectorAll('details')) d.open = true");
    }

    @Test
    void nothingRunsOffAPhone() {
        for (String preset : Presets.names()) {
            browser.open(page(preset), 390, 844);
            unfold();
            for (int width : new int[] {390, 320}) {
                browser.size(width, 844);
                long wide = browser.<Long>run("return document.documentElement.scrollWidth");
                assertThat(wide).as(preset + " at " + width).isLessThanOrEqualTo(width);
            }
        }
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void textStandsOutInLightAndDark() {
        for (String scheme : List.of("light", "dark")) {
            browser.prefer("prefers-color-scheme", scheme);
            for (String name : List.of("harbour-light", "semaphore-arm-belt", "nothing-fits")) {
                browser.open(page(name), 1280, 900);
                unfold();
                browser.run("document.querySelector('#m0 button.name').click()");
                assertThat(browser.<List<?>>run(FAINT)).as(name + ", " + scheme).isEmpty();
            }
        }
        browser.prefer("prefers-color-scheme", "light");
        browser.run("document.querySelector('h1').style.color = '#999'");
        assertThat(browser.<List<?>>run(FAINT)).as("the measure itself").hasSize(1);
    }

    @Test
    void picturesOfEveryPreset() throws Exception {
        for (String preset : Presets.names()) {
            browser.open(page(preset), 1280, 900);
            picture(preset + "-light", 4000);
            browser.prefer("prefers-color-scheme", "dark");
            browser.run(
                    "const s = document.querySelector('#m0 .pull'); s.value = 100; s.dispatchEvent(new Event('input'))");
            picture(preset + "-dark-apart", 900);
            browser.prefer("prefers-color-scheme", "light");
            browser.open(page(preset), 390, 844);
            picture(preset + "-phone", 4000);
        }
        browser.open(page("harbour-light"), 1280, 900);
        print("harbour-light");
        assertThat(browser.complaints()).isEmpty();
    }

    private static void picture(String name, int most) throws Exception {
        long high = Math.min(most, browser.<Long>run("return document.documentElement.scrollHeight"));
        Map<String, Object> clip =
                Map.of("x", 0, "y", 0, "width", browser.run("return innerWidth"), "height", high, "scale", 1);
        Map<String, Object> shot = browser.driver()
                .executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", clip));
        byte[] png = Base64.getDecoder().decode((String) shot.get("data"));
        assertThat(png.length).isGreaterThan(10_000);
        Files.write(PICTURES.resolve(name + ".png"), png);
    }

    private static void print(String name) throws Exception {
        Map<String, Object> printed = browser.driver()
                .executeCdpCommand(
                        "Page.printToPDF",
                        Map.of(
                                "printBackground",
                                true,
                                "preferCSSPageSize",
                                true,
                                "paperWidth",
                                8.27,
                                "paperHeight",
                                11.69));
        byte[] pdf = Base64.getDecoder().decode((String) printed.get("data"));
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        Files.write(PICTURES.resolve(name + "-print.pdf"), pdf);
    }
}
