// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Leaves launchers beside the jar, and an archive of the classes that usual runs need, checked and laid out so that Java
 * starts with them in less time. Run by the build (pom.xml). Where this Java cannot make such an archive there is none,
 * and the launchers do without.
 */
final class Launchers {
    private static final List<String> NAMES = List.of("ringleaf", "ringleaf.cmd");
    private static final int CHECK_FAILED = 1;

    private final Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    private final Path jar;
    /** For what runs leave behind; gone in the end. */
    private final Path scratch;

    private Launchers(Path jar, Path scratch) {
        this.jar = jar;
        this.scratch = scratch;
    }

    /**
     * Writes them.
     *
     * @param args the jar; the folder with the launchers as they are before sizes stand in them; then each run that
     *     shows which classes are needed, its words parted by blanks
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]).toAbsolutePath().normalize();
        Path templates = Path.of(args[1]);
        Path folder = jar.getParent();
        Path archive = folder.resolve("ringleaf.jsa");
        Path scratch = Files.createTempDirectory(folder, "launchers");
        try {
            new Launchers(jar, scratch).archive(archive, List.of(args).subList(2, args.length));
        } finally {
            remove(scratch);
        }
        for (String name : NAMES) {
            write(templates.resolve(name), folder.resolve(name), size(jar), size(archive));
        }
    }

    private void archive(Path archive, List<String> runs) throws IOException, InterruptedException {
        Files.deleteIfExists(archive);
        Set<String> classes = new LinkedHashSet<>();
        for (String run : runs) {
            Path list = scratch.resolve("classes");
            List<String> command = new ArrayList<>(List.of("-XX:DumpLoadedClassList=" + list, "-jar", jar.toString()));
            command.addAll(List.of(run.split(" ")));
            int exit = java(command);
            if (exit != 0 && exit != CHECK_FAILED || !Files.exists(list)) {
                System.out.println("no archive of classes: `" + run + "` ended with " + exit);
                return;
            }
            classes.addAll(Files.readAllLines(list));
            Files.delete(list);
        }
        Path list = Files.write(scratch.resolve("all-classes"), classes);
        int exit = java(List.of(
                "-Xshare:dump",
                "-XX:SharedClassListFile=" + list,
                "-XX:SharedArchiveFile=" + archive,
                "-cp",
                jar.toString()));
        if (exit != 0) {
            System.out.println("no archive of classes: writing it ended with " + exit);
            Files.deleteIfExists(archive);
        }
    }

    private int java(List<String> options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java.toString(), "-XX:TieredStopAtLevel=1"));
        command.addAll(options);
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(scratch.toFile()).redirectErrorStream(true);
        return builder.redirectOutput(scratch.resolve("said").toFile()).start().waitFor();
    }

    private static void write(Path template, Path to, long jar, long archive) throws IOException {
        String text = Files.readString(template, StandardCharsets.UTF_8)
                .replace("@jar@", Long.toString(jar))
                .replace("@archive@", Long.toString(archive));
        // The shell of Windows wants the ends of lines of its own.
        boolean windows = to.getFileName().toString().endsWith(".cmd");
        Files.writeString(to, windows ? text.replace("\n", "\r\n") : text, StandardCharsets.UTF_8);
        to.toFile().setExecutable(true, false);
    }

    /** Bytes of a file; 0 where there is none. */
    private static long size(Path file) throws IOException {
        return Files.exists(file) ? Files.size(file) : 0;
    }

    private static void remove(Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted((a, b) -> b.compareTo(a)).toList();
        }
        for (Path each : all) {
            Files.delete(each);
        }
    }
}
