// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A headless Chromium as Debian packs it. Tests that need it are skipped where it is absent, unless
 * RINGLEAF_REQUIRE_READERS=1 asks for it.
 */
final class Chromium implements AutoCloseable {
    private static final File BROWSER = new File("/usr/bin/chromium");
    private static final File DRIVER = new File("/usr/bin/chromedriver");

    private final ChromeDriver driver;

    private Chromium(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Starts one, with a profile of its own in the folder. */
    static Chromium start(Path folder) {
        boolean there = BROWSER.canExecute() && DRIVER.canExecute();
        if (!there) {
            assertThat(System.getenv("RINGLEAF_REQUIRE_READERS"))
                    .as("chromium and chromedriver are required")
                    .isNotEqualTo("1");
        }
        assumeTrue(there, "no chromium and chromedriver in /usr/bin");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(BROWSER);
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile"));
        LoggingPreferences logging = new LoggingPreferences();
        logging.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logging);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER)
                .usingAnyFreePort()
                .withLogLevel(org.openqa.selenium.chromium.ChromiumDriverLogLevel.SEVERE)
                .build();
        return new Chromium(new ChromeDriver(service, options));
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens a file as a person would from a disk, in a window of so many CSS pixels. */
    void open(Path file, int width, int height) {
        size(width, height);
        driver.get(file.toUri().toString());
    }

    void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    }

    /** Sets what the system prefers, e.g. {@code prefers-color-scheme} to {@code dark}. */
    void prefer(String feature, String value) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", feature, "value", value))));
    }

    /** Runs a script in the page and gives what it returns. */
    @SuppressWarnings("unchecked")
    <T> T run(String script, Object... arguments) {
        return (T) driver.executeScript(script, arguments);
    }

    /** What the console said since it was last asked, without mere remarks. */
    List<String> complaints() {
        List<String> said = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
            if (entry.getLevel().intValue() >= Level.WARNING.intValue()) {
                said.add(entry.getMessage());
            }
        }
        return said;
    }

    @Override
    public void close() {
        driver.quit();
    }
}
