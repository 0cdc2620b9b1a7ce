// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The steps that put a run's files into their places, all of them or none. They are written down in the run's hidden
 * folder before the first: a run that is killed on its way is completed by the next one, and one that is refused on its
 * way takes its steps back, which the next run completes as well.
 */
final class Commit {
    private static final String FORWARD = "forward";
    private static final String BACK = "back";
    private static final String OLD = "old-";

    /**
     * One step.
     *
     * @param made name of the new file within the hidden folder; empty where the file is to go
     * @param isNew whether no file stood there
     * @param path within the output folder, with slashes
     */
    record Step(String made, boolean isNew, String path) {}

    private final Path folder;
    private final Path hidden;
    private final List<Step> steps;

    Commit(Path folder, Path hidden, List<Step> steps) {
        this.folder = folder;
        this.hidden = hidden;
        this.steps = steps;
    }

    /** Whether a hidden folder holds steps that a run did not finish. */
    static boolean isLeftIn(Path hidden) {
        return Files.exists(hidden.resolve(FORWARD)) || Files.exists(hidden.resolve(BACK));
    }

    /** Completes, or takes back, what a run that was killed left in its hidden folder; nothing where it left no steps. */
    static void settle(Path folder, Path hidden) throws IOException {
        if (Files.exists(hidden.resolve(BACK))) {
            read(folder, hidden, BACK).takeBack();
        } else if (Files.exists(hidden.resolve(FORWARD))) {
            Commit commit = read(folder, hidden, FORWARD);
            for (int i = 0; i < commit.steps.size(); i++) {
                commit.step(i);
            }
            Files.delete(hidden.resolve(FORWARD));
        }
    }

    /**
     * Does all steps; where one is refused, those before it are taken back.
     *
     * @throws Refused with the path that was refused
     */
    void run() throws Refused {
        String at = "";
        try {
            write();
            for (int i = 0; i < steps.size(); i++) {
                at = steps.get(i).path;
                keep(i);
                step(i);
            }
            Files.delete(hidden.resolve(FORWARD));
        } catch (IOException e) {
            boolean back = false;
            try {
                if (Files.exists(hidden.resolve(FORWARD))) {
                    move(hidden.resolve(FORWARD), hidden.resolve(BACK));
                    takeBack();
                }
                back = true;
            } catch (IOException second) {
                e.addSuppressed(second);
            }
            throw new Refused(at, back, e);
        }
    }

    /** A step was refused. */
    static final class Refused extends Exception {
        private final transient String path;
        private final boolean takenBack;

        private Refused(String path, boolean takenBack, IOException cause) {
            super(cause);
            this.path = path;
            this.takenBack = takenBack;
        }

        /** Within the folder. */
        String path() {
            return path;
        }

        /** Whether everything is as it was before. */
        boolean isTakenBack() {
            return takenBack;
        }

        IOException reason() {
            return (IOException) getCause();
        }
    }

    private void write() throws IOException {
        StringBuilder lines = new StringBuilder();
        for (Step step : steps) {
            lines.append(step.made.isEmpty() ? "-" : step.made)
                    .append(step.isNew ? " new " : " old ")
                    .append(step.path)
                    .append('\n');
        }
        Path part = hidden.resolve("steps");
        Files.writeString(part, lines);
        move(part, hidden.resolve(FORWARD));
    }

    private static Commit read(Path folder, Path hidden, String which) throws IOException {
        List<Step> steps = new ArrayList<>();
        for (String line : Files.readAllLines(hidden.resolve(which), StandardCharsets.UTF_8)) {
            String[] words = line.split(" ", 3);
            Path inside = folder.resolve(words[2]).normalize();
            if (!inside.startsWith(folder.normalize())) {
                throw new IOException(
                        "what an earlier run left in " + hidden.getFileName() + " leads out of the folder");
            }
            steps.add(new Step(words[0].equals("-") ? "" : words[0], words[1].equals("new"), words[2]));
        }
        return new Commit(folder, hidden, steps);
    }

    /** Keeps the file that stands there, so that it can be put back. */
    private void keep(int i) throws IOException {
        Step step = steps.get(i);
        Path target = folder.resolve(step.path);
        Path old = hidden.resolve(OLD + i);
        if (step.isNew || !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileSystemException(step.path, null, "a folder stands where the file should be");
        }
        try {
            Files.createLink(old, target);
        } catch (IOException | UnsupportedOperationException e) {
            Path part = hidden.resolve("part");
            Files.copy(target, part, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
            move(part, old);
        }
    }

    /** A step that was done already changes nothing. */
    private void step(int i) throws IOException {
        Step step = steps.get(i);
        Path target = folder.resolve(step.path);
        if (step.made.isEmpty()) {
            Files.deleteIfExists(target);
            deleteEmpty(target.getParent());
        } else if (Files.exists(hidden.resolve(step.made))) {
            Files.createDirectories(target.getParent());
            move(hidden.resolve(step.made), target);
        }
    }

    private void takeBack() throws IOException {
        List<Integer> backwards = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            backwards.add(i);
        }
        Collections.reverse(backwards);
        for (int i : backwards) {
            Step step = steps.get(i);
            Path target = folder.resolve(step.path);
            if (Files.exists(hidden.resolve(OLD + i), LinkOption.NOFOLLOW_LINKS)) {
                Files.createDirectories(target.getParent());
                // where the step itself was refused the very same file is there, and the move does nothing
                move(hidden.resolve(OLD + i), target);
            } else if (step.isNew && !Files.exists(hidden.resolve(step.made))) {
                Files.deleteIfExists(target);
            }
        }
        Files.delete(hidden.resolve(BACK));
    }

    private void deleteEmpty(Path parent) throws IOException {
        if (parent == null || !Files.isDirectory(parent) || Files.isSameFile(parent, folder)) {
            return;
        }
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(parent)) {
            if (entries.iterator().hasNext()) {
                return;
            }
        }
        Files.deleteIfExists(parent);
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Path beside = to.resolveSibling(OutputFolder.HIDDEN + to.getFileName());
            try {
                Files.copy(from, beside, StandardCopyOption.REPLACE_EXISTING);
                Files.move(beside, to, StandardCopyOption.ATOMIC_MOVE);
                Files.delete(from);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (NoSuchFileException e) {
            if (Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
                throw e;
            }
        }
    }
}
