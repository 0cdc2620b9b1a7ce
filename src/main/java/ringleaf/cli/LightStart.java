package ringleaf.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Hands a usual {@code make} or {@code check} on to a second process of the same Java that compiles lightly and takes
 * its classes from the archive that the build left beside the jar. Such a run is over before the dearest compiler has
 * paid for itself, yet nothing but the command line can tell Java of either; even with the second start it takes some
 * four tenths less time. Done only where the tool was started as {@code java -jar}, without options for Java, so nothing
 * that the user asked of Java is lost; where no process can be started, this one does the work.
 */
final class LightStart {
    /** Set in the second process, and by whoever wants one process only. */
    static final String ONE_PROCESS = "ringleaf.one-process";
    /** The same as a variable of the environment. */
    static final String ONE_PROCESS_VARIABLE = "RINGLEAF_ONE_PROCESS";

    private static final List<String> LIGHT =
            List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData");

    private LightStart() {}

    /** The exit code of the second process; empty when this one has to do the work. */
    static Optional<Integer> run(String[] args) {
        if (args.length < 2 || !isShort(args) || System.getProperty(ONE_PROCESS) != null
                || System.getenv(ONE_PROCESS_VARIABLE) != null) {
            return Optional.empty();
        }
        ProcessHandle.Info info = ProcessHandle.current().info();
        String[] own = info.arguments().orElse(new String[0]);
        String java = info.command().orElse("");
        if (own.length < 2 || !own[0].equals("-jar") || !Path.of(java).isAbsolute()) {
            return Optional.empty();
        }
        List<String> command = new ArrayList<>(List.of(java));
        command.addAll(LIGHT);
        command.addAll(archive(own[1]));
        command.add("-D" + ONE_PROCESS + "=true");
        command.add("-jar");
        command.add(own[1]);
        command.addAll(List.of(args));
        Second second = new Second(new ProcessBuilder(command).inheritIO());
        Runtime.getRuntime().addShutdownHook(second);
        try {
            return Optional.of(second.exit());
        } catch (IOException | SecurityException e) {
            // No second process here: the run only takes a little longer.
            return Optional.empty();
        } finally {
            second.forget();
        }
    }

    /** The archive of classes that the build left beside the jar; Java passes it over where it does not fit. */
    private static List<String> archive(String jar) {
        String archive = jar.endsWith(".jar") ? jar.substring(0, jar.length() - 4) + ".jsa" : "";
        // Java takes a path separator in it for two archives.
        boolean usable = archive.indexOf(File.pathSeparatorChar) < 0 && new File(archive).isFile();
        return usable ? List.of("-XX:SharedArchiveFile=" + archive, "-Xlog:disable") : List.of();
    }

    /** What looks at everything takes long enough for the dear compiler to pay. */
    private static boolean isShort(String[] args) {
        if (!args[0].equals(MakeCommand.NAME) && !args[0].equals(CheckCommand.NAME)) {
            return false;
        }
        for (String arg : args) {
            if (arg.startsWith(Syntax.THOROUGH) || arg.startsWith(Syntax.STATES)) {
                return false;
            }
        }
        return true;
    }

    /** The second process, and what ends it when this one is told to end: it cleans up before it goes. */
    private static final class Second extends Thread {
        private final ProcessBuilder builder;
        private Process process;
        private boolean ending;

        Second(ProcessBuilder builder) {
            super("ringleaf-end");
            this.builder = builder;
        }

        int exit() throws IOException {
            begin();
            return waited();
        }

        private synchronized void begin() throws IOException {
            if (ending) {
                throw new IOException("ending already");
            }
            process = builder.start();
        }

        private int waited() {
            while (true) {
                try {
                    return process.waitFor();
                } catch (InterruptedException e) {
                    process.destroy();
                }
            }
        }

        @Override
        public void run() {
            synchronized (this) {
                ending = true;
            }
            if (process != null) {
                process.destroy();
                waited();
            }
        }

        void forget() {
            try {
                Runtime.getRuntime().removeShutdownHook(this);
            } catch (IllegalStateException e) {
                // This process is ending already, and takes the second one with it.
                return;
            }
        }
    }
}
