// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Puts the files of a run into a folder, each whole or not at all.
 *
 * <p>Everything is written to a hidden folder inside first and then moved into place file by file, in the order given;
 * whatever goes wrong before the first move leaves the folder as it was. An interrupt waits for moves that have begun
 * and takes the hidden folder away otherwise.
 */
final class OutputFolder {
    private static final String HIDDEN = ".ringleaf-";
    /** A run holds its hidden folder for a second at most. */
    private static final long SWEPT_AFTER_MS = 3_600_000;

    private final Path folder;
    private final String shown;
    private final List<Path> created = new ArrayList<>();
    private Path hidden;
    private boolean interrupted;

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
     * @param stale paths of files that an earlier run wrote; those in {@code files} stay
     */
    void write(Map<String, byte[]> files, List<String> stale) {
        Thread hook = new Thread(this::interrupt, "ringleaf-interrupt");
        try {
            Runtime.getRuntime().addShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending already and waits for these files.
            hook.setName("ringleaf-interrupt-late");
        }
        try {
            prepare(files);
            commit(files, stale);
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

    private void prepare(Map<String, byte[]> files) {
        String at = shown;
        try {
            create(folder.toAbsolutePath());
            sweep();
            synchronized (this) {
                stopIfInterrupted();
                hidden = hide();
            }
            int number = 0;
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                at = shown(file.getKey());
                Path target = folder.resolve(file.getKey());
                synchronized (this) {
                    stopIfInterrupted();
                    create(target.toAbsolutePath().getParent());
                    if (Files.isDirectory(target)) {
                        throw new FileSystemException(at, null, "a folder stands where the file should be");
                    }
                    Path made = hidden.resolve(Integer.toString(number++));
                    if (!holds(target, file.getValue())) {
                        Files.write(made, file.getValue());
                    }
                }
            }
        } catch (IOException e) {
            throw Trouble.writing(at, e);
        }
    }

    private synchronized void commit(Map<String, byte[]> files, List<String> stale) {
        stopIfInterrupted();
        int number = 0;
        String at = shown;
        try {
            for (String path : files.keySet()) {
                at = shown(path);
                Path made = hidden.resolve(Integer.toString(number++));
                if (Files.exists(made)) {
                    move(made, folder.resolve(path));
                }
            }
            created.clear();
            for (String path : stale) {
                if (!files.containsKey(path)) {
                    at = shown(path);
                    remove(path);
                }
            }
        } catch (IOException e) {
            created.clear();
            throw Trouble.writing(at, e);
        }
    }

    /** Whether the very same bytes are there already: such a file stays untouched, with the time it was made. */
    private static boolean holds(Path target, byte[] bytes) throws IOException {
        return Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)
                && Files.size(target) == bytes.length
                && Arrays.equals(Files.readAllBytes(target), bytes);
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Path beside = to.resolveSibling(HIDDEN + to.getFileName());
            try {
                Files.move(from, beside, StandardCopyOption.REPLACE_EXISTING);
                Files.move(beside, to, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(beside);
            }
        }
    }

    /** Takes away a file of an earlier run, and its folder when that is empty then; nothing outside this folder. */
    private void remove(String path) throws IOException {
        Path file = folder.resolve(path);
        Path parent = file.getParent();
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || !isWithin(parent)) {
            return;
        }
        Files.delete(file);
        if (!Files.isSameFile(parent, folder) && isEmpty(parent)) {
            Files.delete(parent);
        }
    }

    private boolean isWithin(Path parent) throws IOException {
        return parent.toRealPath().startsWith(folder.toRealPath()) && !Files.isSymbolicLink(parent);
    }

    private static boolean isEmpty(Path directory) throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(directory)) {
            return !entries.iterator().hasNext();
        }
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

    /** Takes away the hidden folders of runs that were killed before they could; living ones are younger. */
    private void sweep() throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            for (Path path : entries) {
                if (path.getFileName().toString().startsWith(HIDDEN)
                        && Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                        && System.currentTimeMillis()
                                        - Files.getLastModifiedTime(path).toMillis()
                                > SWEPT_AFTER_MS) {
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
