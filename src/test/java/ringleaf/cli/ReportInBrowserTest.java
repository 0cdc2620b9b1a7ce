// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** report.html in a real browser: it moves as the table of the travel says, and answers to pointer and keyboard. */
class ReportInBrowserTest {
    private static final String HARBOUR = "harbour-light";
    private static final String GEARS = "lens-turntable-gears";
    private static final String BELT = "semaphore-arm-belt";
    private static final Pattern WHERE = Pattern.compile("^(open|closed|state (\\d+)), .*at \\((\\S+), (\\S+)\\)$");
    private static final int WIDE = 1280;
    private static final int HIGH = 900;

    @TempDir
    static Path folder;

    private static Chromium browser;

    @BeforeAll
    static void makeAndStart() throws Exception {
        browser = Chromium.start(folder);
        // Else the page glides to what a finding speaks of, and a click meanwhile goes astray.
        browser.prefer("prefers-reduced-motion", "reduce");
        for (String preset : List.of(HARBOUR, GEARS, BELT)) {
            assertThat(Ran.in(folder, "make", preset, "-o", preset).exit()).isZero();
        }
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    /** Whatever a test did: no complaint on the console, and nothing was fetched. */
    @AfterEach
    void quietAndAlone() {
        assertThat(browser.complaints()).isEmpty();
        List<?> fetched = browser.run("return performance.getEntriesByType('resource').map(e => e.name)");
        assertThat(fetched).isEmpty();
    }

    private static void open(String preset) {
        browser.open(folder.resolve(preset).resolve("report.html"), WIDE, HIGH);
    }

    private static void drive(int state) {
        browser.run(
                "const s = document.querySelector('#m0-drive'); s.value = arguments[0];"
                        + "s.dispatchEvent(new Event('input', {bubbles: true}))",
                state);
    }

    /** By name of member: what its first use's matrix does, {@code [a, b, c, d, e, f]} with y down. */
    private static Map<String, List<Number>> matrices() {
        return browser.run("const data = JSON.parse(document.querySelector('#data').textContent)[0], all = {};"
                + "for (const use of document.querySelectorAll('#m0 .mechanism-picture use[data-m]')) {"
                + "  const m = use.transform.baseVal.numberOfItems ? use.transform.baseVal.consolidate().matrix"
                + "    : new DOMMatrix();"
                + "  const name = data.members[use.dataset.m][0];"
                + "  (all[name] ??= []).push([m.a, m.b, m.c, m.d, m.e, m.f]);"
                + "}"
                + "const one = {};"
                + "for (const [name, list] of Object.entries(all)) {"
                + "  if (list.some(m => m.some((v, i) => Math.abs(v - list[0][i]) > 1e-9))) throw name + ' is torn apart';"
                + "  one[name] = list[0];"
                + "}"
                + "return one;");
    }

    /** Where a point of the part's drawing lies, y up again. */
    private static double[] moved(List<Number> matrix, double x, double y) {
        double[] m = matrix.stream().mapToDouble(Number::doubleValue).toArray();
        return new double[] {m[0] * x - m[2] * y + m[4], -(m[1] * x - m[3] * y + m[5])};
    }

    @Test
    void theSliderMovesEveryBladeAsTheTableOfTheTravelSays() throws Exception {
        open(HARBOUR);
        List<String> csv = Files.readAllLines(folder.resolve(HARBOUR + "/motion/shutter.csv"));
        double pivotRadius = new ObjectMapper()
                .readTree(folder.resolve(HARBOUR + "/design.json").toFile())
                .at("/mechanisms/shutter/dimensions/pivot-radius/value")
                .asDouble();
        for (int state : new int[] {0, 1, 63, 137, 180}) {
            drive(state);
            String[] row = csv.get(state + 1).split(",");
            double blade = Math.toRadians(Double.parseDouble(row[2]));
            Map<String, List<Number>> matrices = matrices();
            for (int i = 0; i < 14; i++) {
                double home = 2 * Math.PI * i / 14;
                // The pivot stays, and what lies 40 mm across from it is carried round it by the blade's turn.
                double[] pivot = moved(matrices.get("blade " + (i + 1)), pivotRadius, 0);
                assertThat(pivot[0]).isEqualTo(pivotRadius * Math.cos(home), within(2e-3));
                assertThat(pivot[1]).isEqualTo(pivotRadius * Math.sin(home), within(2e-3));
                double[] far = moved(matrices.get("blade " + (i + 1)), pivotRadius - 40, 0);
                assertThat(far[0]).isEqualTo(pivot[0] - 40 * Math.cos(home + blade), within(2e-3));
                assertThat(far[1]).isEqualTo(pivot[1] - 40 * Math.sin(home + blade), within(2e-3));
            }
            double ring = Math.toRadians(Double.parseDouble(row[1]));
            double[] onRing = moved(matrices.get("drive-ring"), 10, 0);
            assertThat(Math.atan2(onRing[1], onRing[0])).isEqualTo(ring, within(1e-5));
            assertThat(readout("opening diameter")).isEqualTo(Double.parseDouble(row[3]), within(6e-3));
            assertThat(readout("servo turn")).isEqualTo(Double.parseDouble(row[0]), within(6e-2));
            assertThat(readout("clearance")).isEqualTo(Double.parseDouble(row[9]), within(6e-4));
            assertThat(text(".now .place dd")).isEqualTo(row[10]);
        }
    }

    @Test
    void whileTheDriveMovesOnACanvasShowsTheSamePicture() throws Exception {
        for (boolean apart : new boolean[] {false, true}) {
            open(HARBOUR);
            browser.run(
                    "const s = document.querySelector('#m0 .pull'); s.value = arguments[0];"
                            + "s.dispatchEvent(new Event('input'))",
                    apart ? 100 : 0);
            drive(137);
            assertThat(filmed()).isFalse();
            BufferedImage still = picture();
            Map<String, List<Number>> there = matrices();
            moveOnTo(100);
            BufferedImage elsewhere = picture();
            moveOnTo(137);
            assertThat(filmed()).isTrue();
            assertThat(differing(still, picture()))
                    .as("on the canvas, soft edges apart")
                    .isLessThan(0.02);
            // What moves is a small part of the picture that is pulled apart.
            assertThat(differing(still, elsewhere)).as("the measure itself").isGreaterThan(apart ? 0.005 : 0.025);
            drive(137);
            waitFor("return document.querySelector('#m0 .film').hidden");
            assertThat(matrices()).as("the picture beneath").isEqualTo(there);
            assertThat(differing(still, picture())).as("at rest again").isLessThan(1e-4);
        }
    }

    /** Moves the drive twice within a frame and keeps it from coming to rest. */
    private static void moveOnTo(int state) {
        browser.run(
                "const s = document.querySelector('#m0-drive');"
                        + "for (const v of [arguments[0] - 1, arguments[0]]) { s.value = v; s.dispatchEvent(new Event('input')); }"
                        + "clearTimeout(ringleaf.mechanisms()[0].film.timer)",
                state);
    }

    private static boolean filmed() {
        return browser.<Boolean>run("return !document.querySelector('#m0 .film').hidden"
                + " && getComputedStyle(document.querySelector('#m0 .sheaf')).opacity === '0'");
    }

    private static BufferedImage picture() throws Exception {
        WebElement picture = browser.driver().findElement(By.cssSelector("#m0 .mechanism-picture"));
        // What stands is painted anew, so that two pictures of the same do not differ by what was painted in parts.
        browser.run("const s = document.querySelector('#m0 .mechanism-picture'); s.style.display = 'none';"
                + "s.getBoundingClientRect(); s.style.display = ''; s.getBoundingClientRect()");
        byte[] png = picture.getScreenshotAs(OutputType.BYTES);
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    /** Share of the dots one of whose colours differs by more than a quarter of full. */
    private static double differing(BufferedImage a, BufferedImage b) {
        assertThat(b.getWidth()).isEqualTo(a.getWidth());
        assertThat(b.getHeight()).isEqualTo(a.getHeight());
        int count = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int p = a.getRGB(x, y);
                int q = b.getRGB(x, y);
                int most = 0;
                for (int shift = 0; shift < 24; shift += 8) {
                    most = Math.max(most, Math.abs((p >> shift & 255) - (q >> shift & 255)));
                }
                count += most > 64 ? 1 : 0;
            }
        }
        return (double) count / (a.getWidth() * a.getHeight());
    }

    private static double readout(String name) {
        for (WebElement pair : browser.driver().findElements(By.cssSelector("#m0 .now > div"))) {
            if (pair.findElement(By.tagName("dt")).getText().equals(name)) {
                return Double.parseDouble(
                        pair.findElement(By.tagName("dd")).getText().replaceAll("[^0-9.]", ""));
            }
        }
        throw new AssertionError("no readout " + name);
    }

    private static String text(String query) {
        return browser.driver().findElement(By.cssSelector("#m0 " + query)).getText();
    }

    @Test
    void gearsAndBeltsMoveAsTheirTablesSay() throws Exception {
        open(GEARS);
        List<String> csv = Files.readAllLines(folder.resolve(GEARS + "/motion/lens-pair.csv"));
        drive(100);
        double in = Double.parseDouble(csv.get(101).split(",")[0]);
        double out = Double.parseDouble(csv.get(101).split(",")[1]);
        assertThat(turned("driver")).isEqualTo(in, within(1e-3));
        // Centred in its play, the driven gear stands off the table by no more than half the backlash.
        assertThat(turned("driven")).isEqualTo(out, within(0.5));
        open(BELT);
        csv = Files.readAllLines(folder.resolve(BELT + "/motion/arm.csv"));
        drive(100);
        assertThat(turned("driver-pulley"))
                .isEqualTo(Double.parseDouble(csv.get(101).split(",")[1]), within(1e-3));
        assertThat(turned("driven-pulley"))
                .isEqualTo(Double.parseDouble(csv.get(101).split(",")[2]), within(1e-3));
    }

    private static double turned(String member) {
        List<Number> m = matrices().get(member);
        return -Math.toDegrees(Math.atan2(m.get(1).doubleValue(), m.get(0).doubleValue()));
    }

    @Test
    void playRunsAndPauseTellsWhereItStands() throws Exception {
        browser.prefer("prefers-reduced-motion", "no-preference");
        open(HARBOUR);
        WebElement play = browser.driver().findElement(By.cssSelector("#m0 .play"));
        Map<String, List<Number>> before = matrices();
        play.click();
        assertThat(play.getText()).contains("Pause");
        waitFor("return +document.querySelector('#m0-drive').value > 8");
        play.click();
        assertThat(play.getText()).contains("Play");
        assertThat(matrices().get("blade 3")).isNotEqualTo(before.get("blade 3"));
        String said = browser.driver().findElement(By.id("said")).getDomProperty("textContent");
        assertThat(said).startsWith("state ").contains("opening diameter", "servo", "clearance");
        browser.prefer("prefers-reduced-motion", "reduce");
        Object stands = browser.run("return document.querySelector('#m0-drive').value");
        Thread.sleep(150);
        assertThat(browser.<Object>run("return document.querySelector('#m0-drive').value"))
                .isEqualTo(stands);
    }

    @Test
    void withLessMotionPlayGoesInWholeSteps() {
        open(HARBOUR);
        browser.driver().findElement(By.cssSelector("#m0 .play")).click();
        waitFor("return +document.querySelector('#m0-drive').value > 0");
        String value = browser.run("return document.querySelector('#m0-drive').value");
        // An eighth of 180 states, rounded to a state.
        assertThat(Double.parseDouble(value) % 22.5).isIn(0.0, 0.5);
    }

    private static void waitFor(String condition) {
        long end = System.nanoTime() + 20_000_000_000L;
        while (!browser.<Boolean>run(condition)) {
            assertThat(System.nanoTime()).as("waiting for: " + condition).isLessThan(end);
            Thread.onSpinWait();
        }
    }

    @Test
    void aFindingLeadsToItsStateAndPlace() {
        open(HARBOUR);
        browser.run("document.querySelector('#m0 details').open = true");
        int jumped = 0;
        for (WebElement row : browser.driver().findElements(By.cssSelector("#m0 .findings tr[data-where]"))) {
            Matcher where = WHERE.matcher(row.getDomAttribute("data-where"));
            if (!where.find()) {
                continue;
            }
            row.findElement(By.cssSelector("button.show")).click();
            String state =
                    where.group(1).equals("open") ? "0" : where.group(1).equals("closed") ? "180" : where.group(2);
            assertThat((String) browser.run("return document.querySelector('#m0-drive').value"))
                    .isEqualTo(state);
            List<Number> mark = browser.run("const m = document.querySelector('#m0 .marker'),"
                    + "b = m.ownerSVGElement.getBoundingClientRect(), c = m.getBoundingClientRect();"
                    + "return [+m.getAttribute('cx'), -m.getAttribute('cy'),"
                    + "  (c.left + c.right) / 2 - b.left, (c.top + c.bottom) / 2 - b.top, b.width, b.height]");
            assertThat(mark.get(0).doubleValue()).isEqualTo(Double.parseDouble(where.group(3)), within(6e-3));
            assertThat(mark.get(1).doubleValue()).isEqualTo(Double.parseDouble(where.group(4)), within(6e-3));
            assertThat(mark.get(2).doubleValue()).isBetween(0.0, mark.get(4).doubleValue());
            assertThat(mark.get(3).doubleValue()).isBetween(0.0, mark.get(5).doubleValue());
            List<?> lit = browser.run("return [...document.querySelectorAll('#m0 .mechanism-picture .lit')]");
            String pieces = where.group(0).replaceAll("^(open|closed|state \\d+), |,? ?at \\(.*", "");
            assertThat(lit.isEmpty() && !pieces.isEmpty()).as(where.group(0)).isFalse();
            assertThat((String) browser.run("return document.activeElement.id")).isEqualTo("m0-drive");
            browser.driver().findElement(By.cssSelector("#m0 .back")).click();
            assertThat((String) browser.run("return document.activeElement.className"))
                    .isEqualTo("show");
            jumped++;
        }
        assertThat(jumped).isGreaterThan(4);
    }

    @Test
    void layersHideAndPullApartInTheOrderOfTheirHeights() {
        open(HARBOUR);
        WebElement box =
                browser.driver().findElement(By.xpath("//section[@id='m0']//label[contains(., 'retainer')]/input"));
        box.click();
        List<?> shown = browser.run(
                "return [...document.querySelectorAll('#m0 .sheaf')].filter(g => g.dataset.part =="
                        + " arguments[0].closest('[data-part]').dataset.part).map(g => getComputedStyle(g).display)",
                box);
        assertThat(shown).isNotEmpty().allMatch("none"::equals);
        box.click();
        browser.run(
                "const s = document.querySelector('#m0 .pull'); s.value = 100; s.dispatchEvent(new Event('input'))");
        drive(70);
        // Middle of each part's box, in pixels, and the height of its lower face, mm.
        List<List<Number>> parts =
                browser.run("const data = JSON.parse(document.querySelector('#data').textContent)[0];"
                        + "return data.parts.map((p, i) => { let all = null;"
                        + "  for (const g of document.querySelectorAll(`#m0 .sheaf[data-part='${i}']`)) {"
                        + "    const b = g.getBoundingClientRect(); all = all ? [Math.min(all[0], b.top), Math.max(all[1],"
                        + " b.bottom)] : [b.top, b.bottom]; }"
                        + "  return [all[1], p[1]]; })");
        // Pieces of one height stand a little apart too, so only plates as large as each other are compared.
        List<List<Number>> plates = new ArrayList<>();
        for (String name : List.of("cover", "base-plate", "spacer-ring", "retainer")) {
            Number index = browser.run(
                    "const data = JSON.parse(document.querySelector('#data').textContent)[0];"
                            + "return data.parts.findIndex(p => p[0] === arguments[0])",
                    name);
            plates.add(parts.get(index.intValue()));
        }
        for (int i = 1; i < plates.size(); i++) {
            assertThat(plates.get(i).get(1).doubleValue())
                    .isGreaterThan(plates.get(i - 1).get(1).doubleValue());
            assertThat(plates.get(i).get(0).doubleValue())
                    .isLessThan(plates.get(i - 1).get(0).doubleValue() - 20);
        }
        browser.run("const s = document.querySelector('#m0 .pull'); s.value = 0; s.dispatchEvent(new Event('input'))");
        assertThat(browser.<Long>run("return document.querySelectorAll('#m0 .wall, #m0 .label').length"))
                .isZero();
    }

    @Test
    void partsLightUpInPictureAndLists() {
        open(HARBOUR);
        WebElement row = browser.driver().findElement(By.xpath("//section[@id='m0']//tr[th/button[.='drive-ring']]"));
        browser.run("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", row);
        new Actions(browser.driver())
                .moveToElement(row.findElement(By.tagName("button")))
                .perform();
        String part = row.getDomAttribute("data-part");
        assertThat(browser.<Boolean>run(
                        "return [...document.querySelectorAll('#m0 .sheaf')].every(g =>"
                                + " g.classList.contains('lit') === (g.dataset.part === arguments[0]))",
                        part))
                .isTrue();
        new Actions(browser.driver()).moveToLocation(2, 2).perform();
        browser.run(
                "window.scrollTo(0, 0); document.querySelector(`#m0 .sheaf[data-part='${arguments[0]}']`).focus()",
                part);
        assertThat(row.getDomAttribute("class")).contains("lit");
        new Actions(browser.driver()).sendKeys(Keys.ENTER).perform();
        assertThat(row.findElement(By.tagName("button")).getDomAttribute("aria-pressed"))
                .isEqualTo("true");
        assertThat(text(".bar output")).isEqualTo("1 \u00d7 drive-ring");
    }

    @Test
    void theKeyboardReachesAndNamesEverything() {
        open(HARBOUR);
        Actions keys = new Actions(browser.driver());
        keys.sendKeys(Keys.TAB).perform();
        assertThat((String) browser.run("return document.activeElement.className"))
                .isEqualTo("skip");
        boolean slider = false;
        boolean played = false;
        for (int i = 0; i < 40 && !slider; i++) {
            keys.sendKeys(Keys.TAB).perform();
            if (browser.<Boolean>run("return document.activeElement.className === 'play'")) {
                keys.sendKeys(Keys.SPACE).perform();
                keys.sendKeys(Keys.SPACE).perform();
                played = browser.<Boolean>run("return document.querySelector('#said').textContent !== ''");
            }
            slider = browser.<Boolean>run("return document.activeElement.id === 'm0-drive'");
        }
        assertThat(played).isTrue();
        assertThat(slider).isTrue();
        keys.sendKeys(Keys.HOME).perform();
        keys.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT).perform();
        assertThat((String) browser.run("return document.querySelector('#m0-drive').value"))
                .isEqualTo("2");
        assertThat(browser.driver().findElement(By.id("m0-drive")).getDomAttribute("aria-valuetext"))
                .contains("opening");
        for (WebElement element : browser.driver()
                .findElements(By.cssSelector("button, input, [tabindex='0'], svg[role=img], summary, a[href]"))) {
            if (element.isDisplayed()) {
                assertThat(element.getAccessibleName())
                        .as(element.getDomProperty("outerHTML"))
                        .isNotBlank();
            }
        }
    }

    @Test
    void namesWithMarkupInThemAreShownAsText() throws Exception {
        String title = "<img src=x onerror=alert(1)>& \"two\" 'three' \u00e9\ud83d\udd26";
        String spec = "title: \"" + title.replace("\"", "\\\"") + "\"\n"
                + "mechanisms:\n  '</script><b onclick=alert(1)>\"':\n    kind: leaf-aperture\n    full-opening: 40\n"
                + "    least-opening: 15\n    blades: 8\n    blade-thickness: 0.3\n";
        Files.writeString(folder.resolve("hostile.yaml"), spec);
        Ran ran = Ran.in(folder, "make", "hostile.yaml", "-o", "hostile");
        if (ran.exit() == Exit.WRONG) {
            // Mechanisms' names are held to letters and hyphens: then the title alone carries markup.
            assertThat(ran.err()).contains("</script>");
            Files.writeString(folder.resolve("hostile.yaml"), spec.replaceAll("'</script>.*':", "plain:"));
            ran = Ran.in(folder, "make", "hostile.yaml", "-o", "hostile");
        }
        assertThat(ran.exit()).as(ran.err()).isZero();
        open("hostile");
        assertThat(browser.driver().findElement(By.tagName("h1")).getText()).isEqualTo(title);
        assertThat(browser.<Long>run("return document.querySelectorAll('img, b').length"))
                .isZero();
        assertThat(browser.<Boolean>run("return !!document.querySelector('#m0-drive')"))
                .isTrue();
    }
}
