// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Measures the page of a 16-blade aperture in Chromium: how soon it shows something, and how many frames a second it
 * keeps while its slider is moved in every frame. No test, as its result depends on the machine; its name keeps it out
 * of the suite. Run it by {@code mvn -q test -Dtest=ReportFrames}.
 */
class ReportFrames {
    private static final int FRAMES = 300;

    /** Moves the slider in every frame, there and back; gives frames a second, ms a move, and frames over 20 ms. */
    private static final String SWEEP = """
            const done = arguments[arguments.length - 1], count = arguments[0], slider = document.querySelector('#m0-drive');
            const last = +slider.max, times = []; let spent = 0;
            const frame = now => {
              times.push(now);
              const before = performance.now(), k = (times.length * 2) % (2 * last);
              slider.value = k > last ? 2 * last - k : k;
              slider.dispatchEvent(new Event('input', {bubbles: true}));
              spent += performance.now() - before;
              if (times.length <= count) requestAnimationFrame(frame);
              else done([1000 * count / (times[count] - times[0]), spent / (count + 1),
                times.filter((t, i) => i && t - times[i - 1] > 20).length]);
            };
            requestAnimationFrame(frame);
            """;

    /** The same for one small box that moves over the resting page: what the browser itself comes to here. */
    private static final String CEILING = """
            const done = arguments[arguments.length - 1], count = arguments[0], times = [];
            const box = document.body.appendChild(document.createElement('div'));
            box.style = 'position:fixed;left:0;top:0;width:20px;height:20px;background:red;will-change:transform';
            const frame = now => {
              times.push(now);
              box.style.transform = `translateX(${times.length % 300}px)`;
              if (times.length <= count) requestAnimationFrame(frame);
              else {
                box.remove();
                done([1000 * count / (times[count] - times[0]), 0,
                  times.filter((t, i) => i && t - times[i - 1] > 20).length]);
              }
            };
            requestAnimationFrame(frame);
            """;

    @TempDir
    Path folder;

    @Test
    void sixteenBlades() throws Exception {
        Ran ran = Ran.in(folder, "make", "harbour-light", "--set", "shutter.blades=16", "-o", "out");
        Path page = folder.resolve("out/report.html");
        assertThat(page).as(ran.err()).exists();
        System.out.println("size, bytes: " + Files.size(page));
        try (Chromium browser = Chromium.start(folder)) {
            browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(2));
            for (int i = 0; i < 5; i++) {
                browser.open(page, 1280, 900);
                List<Number> first = browser.run(
                        "return [performance.getEntriesByName('first-contentful-paint')"
                                + "[0]?.startTime ?? -1, performance.timing.loadEventEnd - performance.timing.navigationStart]");
                System.out.println("first picture, ms: " + first.get(0) + "; all ready, ms: " + first.get(1));
            }
            for (String query :
                    List.of("window", "window", "window", "window", "window", "ceiling", "ceiling", "apart", "apart")) {
                if (query.equals("apart")) {
                    browser.run("const s = document.querySelector('.pull'); s.value = 100;"
                            + "s.dispatchEvent(new Event('input'))");
                }
                Object sweep = browser.driver().executeAsyncScript(query.equals("ceiling") ? CEILING : SWEEP, FRAMES);
                System.out.println(query + ": frames a second, ms a move, frames over 20 ms: " + sweep);
            }
        }
    }
}
