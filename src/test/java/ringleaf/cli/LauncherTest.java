// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher run as a user runs it, wherever it lies, whatever became of the archive of classes beside it. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));
    private static final String ARCHIVE_OPTION = "-XX:SharedArchiveFile=";
    private static final String LIGHT_OPTION = "-XX:TieredStopAtLevel=1";
    private static final List<String> OPTIONS_OF_JAVA =
            List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "_JAVA_OPTIONS");

    @TempDir
    static Path built;

    @TempDir
    Path folder;

    /** A jar of the classes under test, and what the build leaves beside it. */
    @BeforeAll
    static void build() throws Exception {
        pack(built.resolve("ringleaf.jar"));
        Process process = new ProcessBuilder(
                        JAVA_HOME.resolve("bin/java").toString(),
                        Path.of("src/launcher/Launchers.java").toAbsolutePath().toString(),
                        built.resolve("ringleaf.jar").toString(),
                        Path.of("src/launcher").toAbsolutePath().toString(),
                        "check field-camera-stop")
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes());
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(said).isEmpty();
    }

    private static void pack(Path jar) throws IOException {
        StringBuilder others = new StringBuilder();
        Manifest manifest = new Manifest();
        Path classes = null;
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            Path path = Path.of(entry).toAbsolutePath();
            if (Files.isRegularFile(path.resolve("ringleaf/cli/Main.class"))) {
                classes = path;
            } else if (Files.isRegularFile(path)) {
                others.append(path.toUri()).append(' ');
            }
        }
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.put(Attributes.Name.MAIN_CLASS, "ringleaf.cli.Main");
        main.put(Attributes.Name.CLASS_PATH, others.toString());
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                out.putNextEntry(new JarEntry(classes.relativize(file).toString()));
                Files.copy(file, out);
            }
        }
    }

    /** All that the build left, in a folder of its own, as if it had been built there but for the place. */
    private Path copied(String name) throws IOException {
        Path to = Files.createDirectories(folder.resolve(name));
        for (String file : List.of("ringleaf", "ringleaf.jar", "ringleaf.jsa")) {
            Files.copy(built.resolve(file), to.resolve(file), StandardCopyOption.COPY_ATTRIBUTES);
        }
        return to;
    }

    private ProcessBuilder tool(Path launcher, String... args) {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        Map<String, String> environment = builder.environment();
        OPTIONS_OF_JAVA.forEach(environment::remove);
        environment.put("JAVA_HOME", JAVA_HOME.toString());
        return builder.redirectOutput(folder.resolve("stdout").toFile())
                .redirectError(folder.resolve("stderr").toFile());
    }

    private Ran run(ProcessBuilder builder) throws IOException, InterruptedException {
        Process process = builder.start();
        process.getOutputStream().close();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ran(
                process.exitValue(),
                Files.readString(folder.resolve("stdout")),
                Files.readString(folder.resolve("stderr")));
    }

    /** A run like any other, with what lies beside the launcher now. */
    private void runsAlikeBeside(Path place) throws Exception {
        Ran ran = run(tool(place.resolve("ringleaf"), "presets"));
        assertThat(ran).isEqualTo(Ran.in(folder, "presets"));
    }

    /** What Java was told before the jar, by a run that waits for its spec. */
    private List<String> options(ProcessBuilder builder, boolean expectArchive) throws Exception {
        Process process = builder.start();
        try {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
            while (!process.info().command().orElse("").endsWith("/java")) {
                assertThat(process.isAlive() && System.nanoTime() < end)
                        .as("Java in the launcher's process")
                        .isTrue();
                Thread.sleep(5);
            }
            List<String> arguments = Arrays.asList(process.info().arguments().orElseThrow());
            Path maps = Path.of("/proc", Long.toString(process.pid()), "maps");
            while (expectArchive
                    && Files.exists(maps)
                    && !Files.readString(maps).contains("/ringleaf.jsa")) {
                assertThat(process.isAlive() && System.nanoTime() < end)
                        .as("the archive in use")
                        .isTrue();
                Thread.sleep(5);
            }
            assertThat(process.descendants()).as("processes beside Java's").isEmpty();
            return arguments.subList(0, arguments.indexOf("-jar"));
        } finally {
            process.destroyForcibly();
            process.waitFor();
        }
    }

    @Test
    void oneProcessWithTheArchiveAndOneCompiler() throws Exception {
        List<String> options = options(tool(built.resolve("ringleaf"), "check", "-"), true);
        assertThat(options).contains(LIGHT_OPTION, ARCHIVE_OPTION + built.resolve("ringleaf.jsa"));
    }

    @Test
    void whatMayTakeLongHasBothCompilers() throws Exception {
        List<String> options =
                options(tool(built.resolve("ringleaf"), "explore", "-", "--vary", "a.blades=3..4"), true);
        assertThat(options).doesNotContain(LIGHT_OPTION).contains(ARCHIVE_OPTION + built.resolve("ringleaf.jsa"));
    }

    @Test
    void sameCodesOutputAndFilesAsWithoutIt() throws Exception {
        Path inside = Files.createDirectories(folder.resolve("inside"));
        for (String[] args : List.of(
                new String[] {"make", "field-camera-stop", "-o", "two words"},
                new String[] {"check", "harbour-light", "--set", "shutter.depth={at-most: 5}"},
                new String[] {"check", "harbour-light", "--set", "shutter.blades=2"},
                new String[] {"make", "*.yaml", "--set", "a=\"b\\c\" $HOME 'd'"},
                new String[] {"make", ""},
                new String[] {})) {
            Ran ran = run(tool(built.resolve("ringleaf"), args));
            assertThat(ran).as(String.join(" ", args)).isEqualTo(Ran.in(inside, args));
        }
        assertThat(Ran.listing(folder.resolve("two words"))).isEqualTo(Ran.listing(inside.resolve("two words")));
    }

    @Test
    void anArchiveThatIsCutOffIsPassedOver() throws Exception {
        Path place = copied("cut");
        byte[] whole = Files.readAllBytes(place.resolve("ringleaf.jsa"));
        for (int length : new int[] {0, 1, 4096, 3_000_000, whole.length - 1}) {
            replace(place.resolve("ringleaf.jsa"), Arrays.copyOf(whole, length));
            assertThat(options(tool(place.resolve("ringleaf"), "check", "-"), false))
                    .as("%d bytes", length)
                    .noneMatch(option -> option.startsWith(ARCHIVE_OPTION));
            runsAlikeBeside(place);
        }
    }

    @Test
    void aForeignOrDamagedArchiveOfTheSameSizeEndsNoRun() throws Exception {
        Path place = copied("foreign");
        byte[] whole = Files.readAllBytes(place.resolve("ringleaf.jsa"));
        byte[] other = new byte[whole.length];
        new Random(20261130).nextBytes(other);
        replace(place.resolve("ringleaf.jsa"), other);
        runsAlikeBeside(place);
        // As of another Java, and as of a disk that errs.
        for (int at : new int[] {16, 3_000_000, whole.length - 5000}) {
            byte[] changed = whole.clone();
            Arrays.fill(changed, at, at + 400, (byte) 'x');
            replace(place.resolve("ringleaf.jsa"), changed);
            runsAlikeBeside(place);
        }
    }

    @Test
    void noArchiveAnUnreadableOneAndAnotherJar() throws Exception {
        Path place = copied("bare");
        Files.delete(place.resolve("ringleaf.jsa"));
        runsAlikeBeside(place);
        Files.createDirectory(place.resolve("ringleaf.jsa"));
        runsAlikeBeside(place);
        Path changed = copied("changed");
        try (FileSystem jar = FileSystems.newFileSystem(changed.resolve("ringleaf.jar"))) {
            Files.writeString(jar.getPath("more"), "than at the build");
        }
        assertThat(options(tool(changed.resolve("ringleaf"), "check", "-"), false))
                .noneMatch(option -> option.startsWith(ARCHIVE_OPTION));
        runsAlikeBeside(changed);
    }

    @Test
    void copiedElsewhereWithOtherTimesAndUnderAnyName() throws Exception {
        for (String name : List.of("two words", "Müllers Häuschen $HOME 'x' \"y\"", "-o", "港")) {
            Path place = copied(name);
            Files.setLastModifiedTime(place.resolve("ringleaf.jar"), FileTime.fromMillis(1_000_000_000_000L));
            runsAlikeBeside(place);
        }
    }

    @Test
    void linksAreFollowed() throws Exception {
        Path place = copied("far/away place");
        Files.createDirectories(folder.resolve("bin"));
        Files.createSymbolicLink(folder.resolve("bin/absolute"), place.resolve("ringleaf"));
        Files.createSymbolicLink(folder.resolve("bin/relative"), Path.of("../far/away place/ringleaf"));
        Files.createSymbolicLink(folder.resolve("chained"), Path.of("bin/relative"));
        Files.createSymbolicLink(folder.resolve("folder"), Path.of("far"));
        for (String launcher : List.of("bin/absolute", "bin/relative", "chained", "folder/away place/ringleaf")) {
            assertThat(run(tool(folder.resolve(launcher), "presets")))
                    .as(launcher)
                    .isEqualTo(Ran.in(folder, "presets"));
        }
        ProcessBuilder called = tool(Path.of("relative"), "presets");
        called.command(
                List.of("/bin/sh", "-c", "PATH=\"$PWD/bin:$PATH\"; relative presets && cd bin && sh relative presets"));
        Ran expected = Ran.in(folder, "presets");
        assertThat(run(called)).isEqualTo(new Ran(0, expected.out() + expected.out(), ""));
    }

    @Test
    void optionsForJavaOfOnesOwnEndNoRun() throws Exception {
        for (String own : List.of(
                "-XX:+UseG1GC",
                "-XX:+UseSerialGC",
                "-XX:+UseParallelGC",
                "-Xint",
                "-Xmx300m",
                "-XX:-TieredCompilation",
                "-Xshare:off",
                "-XX:-UseCompressedOops")) {
            ProcessBuilder builder = tool(built.resolve("ringleaf"), "presets");
            builder.environment().put("JAVA_TOOL_OPTIONS", own);
            Ran ran = run(builder);
            assertThat(ran.exit()).as(own + ": " + ran.out() + ran.err()).isZero();
            assertThat(ran.out()).isEqualTo(Ran.in(folder, "presets").out());
            assertThat(ran.err()).isEqualTo("Picked up JAVA_TOOL_OPTIONS: " + own + "\n");
        }
    }

    @Test
    void javaIsSoughtInItsHomeAndOnThePath() throws Exception {
        Path bin = Files.createDirectories(folder.resolve("only these"));
        for (String need : List.of("dirname", "readlink", "wc")) {
            callOf(onPath(need), bin.resolve(need));
        }
        ProcessBuilder builder = tool(built.resolve("ringleaf"), "presets");
        builder.environment().put("PATH", bin.toString());
        assertThat(run(builder)).as("in its home").isEqualTo(Ran.in(folder, "presets"));

        builder.environment().remove("JAVA_HOME");
        assertThat(run(builder))
                .as("nowhere")
                .isEqualTo(new Ran(
                        3,
                        "",
                        "ringleaf: there is no java; install Java 17 or newer, or set JAVA_HOME to where it is\n"));

        builder.environment().put("JAVA_HOME", folder.resolve("none").toString());
        assertThat(run(builder))
                .as("a home that is none")
                .isEqualTo(new Ran(
                        3,
                        "",
                        "ringleaf: there is no " + folder.resolve("none/bin/java")
                                + "; install Java 17 or newer, or set JAVA_HOME to where it is\n"));

        callOf(JAVA_HOME.resolve("bin/java"), bin.resolve("java"));
        builder.environment().put("JAVA_HOME", "");
        assertThat(run(builder)).as("on the path").isEqualTo(Ran.in(folder, "presets"));
    }

    @Test
    void aLauncherAloneSaysWhatItMisses() throws Exception {
        Path alone = Files.copy(built.resolve("ringleaf"), folder.resolve("alone"), StandardCopyOption.COPY_ATTRIBUTES);
        Ran ran = run(tool(alone, "presets"));
        assertThat(ran)
                .isEqualTo(new Ran(
                        3,
                        "",
                        "ringleaf: cannot read " + folder + "/ringleaf.jar, which belongs"
                                + " beside this launcher; link to the launcher to call it from elsewhere\n"));
    }

    @Test
    void whoEndsItEndsJava() throws Exception {
        Process process =
                tool(built.resolve("ringleaf"), "make", "-", "-o", "o").start();
        while (!process.info().command().orElse("").endsWith("/java") && process.isAlive()) {
            Thread.sleep(5);
        }
        ProcessHandle java = process.toHandle();
        process.destroy();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(java.isAlive()).isFalse();
        assertThat(process.exitValue()).isEqualTo(128 + 15);
        assertThat(folder.resolve("o")).doesNotExist();
    }

    private static Path onPath(String name) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .map(entry -> Path.of(entry, name))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow();
    }

    /** Written by the shell in octal, as this very Java may not spell such a name. */
    @Test
    void namesWithOtherLettersAreFoundInAPlainLocale() throws Exception {
        String name = "$(printf '\\303\\274\\303\\244.yaml')";
        String script = "printf 'title: S\\nmechanisms:\\n  s: {kind: slide, stroke: 20}\\n' >\"" + name + "\" && exec "
                + built.resolve("ringleaf") + " check \"" + name + "\"";
        for (String locale : List.of("C", "POSIX", "")) {
            ProcessBuilder builder = new ProcessBuilder("sh", "-c", script).directory(folder.toFile());
            builder.environment().keySet().removeIf(key -> key.startsWith("LC_") || key.equals("LANG"));
            if (!locale.isEmpty()) {
                builder.environment().put("LC_ALL", locale);
            }
            builder.redirectErrorStream(true);
            Process process = builder.start();
            String said = new String(process.getInputStream().readAllBytes());
            assertThat(process.waitFor()).as(locale + ": " + said).isZero();
            assertThat(said).startsWith("PASS");
        }
    }

    private static void callOf(Path program, Path from) throws IOException {
        Files.writeString(from, "#!/bin/sh\nexec '" + program + "' \"$@\"\n");
        from.toFile().setExecutable(true);
    }

    private static void replace(Path file, byte[] bytes) throws IOException {
        Files.delete(file);
        Files.write(file, bytes);
    }
}
