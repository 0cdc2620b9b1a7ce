// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Puts the files of a run into a folder, all of them or none.
 *
 * <p>Everything is written to a hidden folder inside first and then moved into place by a {@link Commit}, in the order
 * given; whatever goes wrong leaves the folder as it was. One run at a time does so ({@link FolderLock}), and first
 * completes or takes back what a run that was killed left. An interrupt waits for moves that have begun and takes the
 * hidden folder away otherwise.
 */
final class OutputFolder {
    /** Begins the names of all that is here only while a run writes. */
    static final String HIDDEN = ".ringleaf-";

    private final Path folder;
    private final String shown;
    private final List<Path> created = new ArrayList<>();
    private Path hidden;
    private FolderLock lock;
    private volatile boolean interrupted;

    /**
     * A folder to write to; it need not exist.
     *
     * @param shown the folder as the user wrote it, for messages
     */
    OutputFolder(Path folder, String shown) {
        this.folder = folder;
        this.shown = shown;
    }

    /** Refuses, before any work is done, a folder that can surely not be written to. */
    void check() {
        try {
            if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(folder)) {
                folder.toRealPath();
                throw new FileSystemException(shown, null, "a file stands where the folder should be");
            }
            for (Path above = folder.toAbsolutePath().getParent(); above != null; above = above.getParent()) {
                if (Files.exists(above, LinkOption.NOFOLLOW_LINKS)) {
                    if (!Files.isDirectory(above)) {
                        above.toRealPath();
                        throw new FileSystemException(shown, null, above.getFileName() + " above it is not a folder");
                    }
                    break;
                }
            }
        } catch (IOException e) {
            throw Trouble.writing(shown, e);
        }
    }

    /**
     * Writes the files and takes away those of an earlier run that no longer belong.
     *
     * @param files by path within the folder; moved into place in this order
     * @param earlier gives the paths of files that an earlier run wrote into the folder; those in {@code files} stay
     */
    void write(Map<String, byte[]> files, Function<Path, List<String>> earlier) {
        Thread hook = new Thread(this::interrupt, "ringleaf-interrupt");
        try {
            Runtime.getRuntime().addShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending already and waits for these files.
            hook.setName("ringleaf-interrupt-late");
        }
        try {
            open();
            List<Commit.Step> steps = prepare(files);
            List<String> stale = new ArrayList<>(earlier.apply(folder));
            stale.removeAll(files.keySet());
            commit(steps, stale);
        } finally {
            clear();
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // The process is ending already, and the hook runs or has run.
                hook.setName("ringleaf-interrupt-late");
            }
        }
    }

    /** Makes the folder, and is the only run that writes into it from then on. */
    private void open() {
        try {
            create(folder.toAbsolutePath());
            FolderLock taken = FolderLock.take(folder, shown, () -> interrupted);
            synchronized (this) {
                lock = taken;
                stopIfInterrupted();
                settleOthers();
                hidden = hide();
            }
        } catch (IOException e) {
            throw Trouble.writing(shown, e);
        }
    }

    private List<Commit.Step> prepare(Map<String, byte[]> files) {
        List<Commit.Step> steps = new ArrayList<>();
        String at = shown;
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                at = shown(file.getKey());
                Path target = folder.resolve(file.getKey());
                synchronized (this) {
                    stopIfInterrupted();
                    create(target.toAbsolutePath().getParent());
                    if (Files.isDirectory(target)) {
                        throw new FileSystemException(at, null, "a folder stands where the file should be");
                    }
                    if (!holds(target, file.getValue())) {
                        String made = Integer.toString(steps.size());
                        Files.write(hidden.resolve(made), file.getValue());
                        boolean isNew = !Files.exists(target, LinkOption.NOFOLLOW_LINKS);
                        steps.add(new Commit.Step(made, isNew, file.getKey()));
                    }
                }
            }
        } catch (IOException e) {
            throw Trouble.writing(at, e);
        }
        return steps;
    }

    private synchronized void commit(List<Commit.Step> steps, List<String> stale) {
        stopIfInterrupted();
        try {
            for (String path : stale) {
                if (isOwn(path)) {
                    steps.add(new Commit.Step("", false, path));
                }
            }
            if (!steps.isEmpty()) {
                new Commit(folder, hidden, steps).run();
            }
            created.clear();
        } catch (IOException e) {
            throw Trouble.writing(shown, e);
        } catch (Commit.Refused e) {
            if (!e.isTakenBack()) {
                hidden = null;
                created.clear();
            }
            throw Stop.trouble(Trouble.writing(shown(e.path()), e.reason()).getMessage()
                    + (e.isTakenBack()
                            ? "; nothing was changed"
                            : "; " + shown + " is half as it was and half new until another run into it can end"));
        }
    }

    /** Whether the very same bytes are there already: such a file stays untouched, with the time it was made. */
    private static boolean holds(Path target, byte[] bytes) throws IOException {
        return Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)
                && Files.size(target) == bytes.length
                && Arrays.equals(Files.readAllBytes(target), bytes);
    }

    /** Whether a path that an earlier run listed is a file in this folder and nowhere else. */
    private boolean isOwn(String path) throws IOException {
        Path file = folder.resolve(path);
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && isWithin(file.getParent());
    }

    private boolean isWithin(Path parent) throws IOException {
        return parent.toRealPath().startsWith(folder.toRealPath()) && !Files.isSymbolicLink(parent);
    }

    private synchronized void create(Path directory) throws IOException {
        if (Files.isDirectory(directory)) {
            return;
        }
        Path parent = directory.getParent();
        if (parent != null && !Files.isDirectory(parent)) {
            create(parent);
        }
        try {
            Files.createDirectory(directory);
        } catch (FileAlreadyExistsException e) {
            throw new FileSystemException(directory.toString(), null, "a file stands where its folder should be");
        }
        created.add(directory);
    }

    /** A new hidden folder; a name that is taken belongs to a run beside this one. */
    private Path hide() throws IOException {
        for (long number = System.nanoTime(); ; number++) {
            Path path = folder.resolve(HIDDEN + Long.toHexString(number));
            if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
                return Files.createDirectory(path);
            }
        }
    }

    /** Brings to an end what runs that were killed have left; none of them lives, as this one holds the lock. */
    private void settleOthers() throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, HIDDEN + "*")) {
            for (Path path : entries) {
                if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
                    Commit.settle(folder, path);
                    delete(path);
                }
            }
        }
    }

    private void stopIfInterrupted() {
        if (interrupted) {
            throw Stop.trouble("interrupted; nothing was changed in " + shown);
        }
    }

    private synchronized void interrupt() {
        interrupted = true;
        clear();
    }

    /** Leaves nothing behind that is not a result. */
    private synchronized void clear() {
        if (hidden != null) {
            delete(hidden);
            hidden = null;
        }
        if (lock != null) {
            lock.close();
            lock = null;
        }
        for (int i = created.size() - 1; i >= 0; i--) {
            deleteOne(created.get(i));
        }
        created.clear();
    }

    private static void delete(Path directory) {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(directory)) {
            for (Path entry : entries) {
                deleteOne(entry);
            }
        } catch (IOException e) {
            return;
        }
        deleteOne(directory);
    }

    private static boolean deleteOne(Path path) {
        try {
            return Files.deleteIfExists(path);
        } catch (IOException e) {
            // What cannot be taken away now was reported by the trouble that led here, or does no harm.
            return false;
        }
    }

    private String shown(String path) {
        return shown.endsWith("/") ? shown + path : shown + "/" + path;
    }
}
