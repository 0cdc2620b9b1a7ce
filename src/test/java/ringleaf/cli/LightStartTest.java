package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The second process of a usual run is not to be told from the first: code, output, input, and who ends it. */
@EnabledOnOs(OS.LINUX)
class LightStartTest {
    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @TempDir
    static Path shared;

    @TempDir
    Path folder;

    private static Path jar;

    /** A jar that is nothing but a way to the classes under test. */
    @BeforeAll
    static void pack() throws IOException {
        StringBuilder classes = new StringBuilder();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            classes.append(Path.of(entry).toUri()).append(' ');
        }
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.put(Attributes.Name.MAIN_CLASS, "ringleaf.cli.Main");
        main.put(Attributes.Name.CLASS_PATH, classes.toString());
        jar = shared.resolve("ringleaf.jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
            out.finish();
        }
    }

    private ProcessBuilder tool(List<String> options, String... args) {
        List<String> command = new ArrayList<>(List.of(JAVA));
        command.addAll(options);
        command.addAll(List.of("-jar", jar.toString()));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().remove(LightStart.ONE_PROCESS_VARIABLE);
        return builder.redirectOutput(folder.resolve("stdout").toFile()).redirectError(folder.resolve("stderr").toFile());
    }

    private Ran run(ProcessBuilder builder) throws IOException, InterruptedException {
        Process process = builder.start();
        process.getOutputStream().close();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ran(
                process.exitValue(), Files.readString(folder.resolve("stdout")), Files.readString(folder.resolve("stderr")));
    }

    @Test
    void sameCodesOutputAndFiles() throws Exception {
        for (String[] args : List.of(
                new String[] {"make", "field-camera-stop", "-o", "o"},
                new String[] {"check", "harbour-light", "--set", "shutter.depth={at-most: 5}"},
                new String[] {"check", "harbour-light", "--set", "shutter.blades=2"},
                new String[] {"make", "nothing.yaml"})) {
            Ran light = run(tool(List.of(), args));
            Path inside = Files.createDirectories(folder.resolve("inside"));
            Ran plain = Ran.in(inside, args);
            assertThat(light.exit()).as(String.join(" ", args)).isEqualTo(plain.exit());
            assertThat(light.out()).isEqualTo(plain.out());
            assertThat(light.err()).isEqualTo(plain.err());
        }
        assertThat(Ran.listing(folder.resolve("o"))).isEqualTo(Ran.listing(folder.resolve("inside/o")));
    }

    @Test
    void standardInputReachesIt() throws Exception {
        Process process = tool(List.of(), "check", "-").start();
        process.getOutputStream().write(Files.readAllBytes(Path.of("presets", "field-camera-stop.yaml")));
        process.getOutputStream().close();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(folder.resolve("stderr"))).isZero();
    }

    @Test
    void whoEndsTheFirstEndsBothAndLeavesNothing() throws Exception {
        Process process = tool(List.of(), "make", "harbour-light", "-o", "o").start();
        ProcessHandle second = null;
        while (second == null && process.isAlive()) {
            second = process.descendants().findFirst().orElse(null);
        }
        assertThat(second).as("a second process").isNotNull();
        process.destroy();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isNotZero();
        assertThat(second.isAlive()).isFalse();
        assertThat(folder.resolve("o")).doesNotExist();
    }

    @Test
    void optionsForJavaAndLongRunsStayInOneProcess() throws Exception {
        assertThat(second(tool(List.of("-Xmx200m"), "check", "field-camera-stop"))).isFalse();
        assertThat(second(tool(List.of(), "check", "field-camera-stop", "--states", "181"))).isFalse();
        assertThat(second(tool(List.of(), "presets"))).isFalse();
        ProcessBuilder told = tool(List.of(), "check", "field-camera-stop");
        told.environment().put(LightStart.ONE_PROCESS_VARIABLE, "1");
        assertThat(second(told)).isFalse();
        assertThat(second(tool(List.of(), "check", "field-camera-stop"))).isTrue();
    }

    /** Whether a second process is ever seen; the run goes well either way. */
    private static boolean second(ProcessBuilder builder) throws IOException, InterruptedException {
        Process process = builder.start();
        boolean seen = false;
        while (process.isAlive()) {
            seen |= process.descendants().findAny().isPresent();
        }
        assertThat(process.waitFor()).isZero();
        return seen;
    }
}
