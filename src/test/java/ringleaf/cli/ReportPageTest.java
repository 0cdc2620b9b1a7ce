// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** report.html as a file: what is in it, and what is not. */
class ReportPageTest {
    @TempDir
    Path folder;

    private String made(String preset, String... options) throws Exception {
        List<String> args = new ArrayList<>(List.of("make", preset, "-o", "out"));
        args.addAll(List.of(options));
        Ran ran = Ran.in(folder, args.toArray(String[]::new));
        assertThat(ran.showsATrace()).as(ran.err()).isFalse();
        return Files.readString(folder.resolve("out/report.html"));
    }

    private static String resource(String name) throws Exception {
        try (InputStream in = ReportPageTest.class.getResourceAsStream("/ringleaf/report/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The page allows the script whose digest stands in its frame; this says which that is when the script changed. */
    @Test
    void theFrameAllowsTheScriptAsItIs() throws Exception {
        byte[] digest =
                MessageDigest.getInstance("SHA-256").digest(resource("page.js").getBytes(StandardCharsets.UTF_8));
        assertThat(resource("page.html"))
                .contains("'sha256-" + Base64.getEncoder().encodeToString(digest) + "'");
    }

    @Test
    void resourcesAreAsciiAndEndNoElementThatHoldsThem() throws Exception {
        for (String name : new String[] {"page.html", "page.css", "page.js"}) {
            assertThat(resource(name)).as(name).matches("[\\n\\x20-\\x7e]*");
        }
        assertThat(resource("page.js")).doesNotContain("</", "<!--");
        assertThat(resource("page.css")).doesNotContain("</", "@import", "url(");
    }

    @Test
    void aPageOfSixteenBladesIsSmallAndNeedsNothingElse() throws Exception {
        String page = made("harbour-light", "--set", "shutter.blades=16");
        assertThat(page.length()).isLessThan(300_000);
        assertThat(page.contains("default-src 'none'")).isTrue();
        String rest = page.replace("'http://www.w3.org/2000/svg'", "");
        for (String fetching : new String[] {" src=", "http:", "https:", "<link", "<img", "url(h"}) {
            assertThat(rest.contains(fetching)).as(fetching).isFalse();
        }
        assertThat(page.split("class=\"t[012]\"", -1)).as("each blade once").hasSize(17);
        assertThat(page.split("id=\"m0-o", -1).length).as("each outline once").isLessThan(20);
    }

    @Test
    void whatFailedStandsFirstAndSaysNotToCut() throws Exception {
        String page = made("harbour-light", "--set", "shutter.outer-diameter=100");
        assertThat(
                        page.contains(
                                "<strong>Fail: do not cut this.</strong> Outer-diameter 110.8 mm where at most 100 mm is allowed"))
                .isTrue();
        assertThat(page.contains("What would mend it")).isTrue();
        assertThat(page.indexOf(" failed</h4>")).isBetween(0, page.indexOf(" passed</summary>"));
        // Part files are held back, so none is linked.
        assertThat(page.contains("href=\"parts/")).isFalse();
    }

    /** What slides has a way in mm, what turns an angle. */
    @Test
    void theTravelIsToldInItsOwnUnits() throws Exception {
        assertThat(made("lens-slide").contains("carriage 25 mm, servo 80&#176;"))
                .isTrue();
        assertThat(made("lamp-carriage-rack").contains(", rack 30 mm, pinion 143.24&#176;"))
                .isTrue();
        assertThat(made("semaphore-arm-belt").contains(", belt 16.67 mm,")).isTrue();
    }

    @Test
    void theSameBytesEveryTime() throws Exception {
        assertThat(made("lens-turntable-gears")).isEqualTo(made("lens-turntable-gears"));
    }

    @Test
    void stateCountsFromFewToManyStayReadable() throws Exception {
        assertThat(made("harbour-light", "--states", "3").length()).isLessThan(200_000);
        String many = made("harbour-light", "--states", "3601");
        assertThat(many.length()).isLessThan(400_000);
        assertThat(many.contains("3600]")).isTrue();
    }
}
