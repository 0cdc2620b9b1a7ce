// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/**
 * Lets one run at a time write into a folder. The system gives the lock back however its holder ends; the file that
 * carries it is taken away with it.
 */
final class FolderLock implements AutoCloseable {
    private static final String NAME = ".ringleaf-lock";
    private static final long PAUSE_MS = 20;
    /** Files are moved within a second; whoever takes longer is stuck or stopped. */
    private static final long PATIENCE_MS = 15_000;

    /** Folders that this process holds: the system's locks are those of a process and not of a thread. */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private FolderLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes the lock of a folder that exists, and waits for a run that holds it.
     *
     * @param shown the folder as the user wrote it
     * @param givenUp whether to wait no longer
     * @throws Stop when another run keeps it
     */
    static FolderLock take(Path folder, String shown, BooleanSupplier givenUp) throws IOException {
        Path file = folder.toRealPath().resolve(NAME);
        long end = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (true) {
            if (HELD.add(file)) {
                FolderLock lock = null;
                try {
                    lock = tried(file);
                } finally {
                    if (lock == null) {
                        HELD.remove(file);
                    }
                }
                if (lock != null) {
                    return lock;
                }
            }
            if (givenUp.getAsBoolean() || System.nanoTime() > end) {
                throw Stop.trouble("another run" + holder(file) + " is writing to " + shown
                        + "; nothing was changed; try again when it has ended");
            }
            pause();
        }
    }

    /** The lock, or null while another process has it. */
    private static FolderLock tried(Path file) throws IOException {
        try {
            Files.createFile(file);
        } catch (FileAlreadyExistsException e) {
            // left by a run that was killed, or held by one
        }
        FileChannel channel = null;
        try {
            Object key = key(file);
            channel = FileChannel.open(file, StandardOpenOption.WRITE);
            FileLock lock = channel.tryLock();
            // A lock on a file that its holder has taken away meanwhile is none.
            if (lock != null && key.equals(key(file))) {
                String process = Long.toString(ProcessHandle.current().pid());
                channel.truncate(0).write(ByteBuffer.wrap(process.getBytes(StandardCharsets.US_ASCII)));
                FolderLock held = new FolderLock(file, channel);
                channel = null;
                return held;
            }
            return null;
        } catch (NoSuchFileException e) {
            return null;
        } finally {
            if (channel != null) {
                channel.close();
            }
        }
    }

    private static Object key(Path file) throws IOException {
        Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        // where the system has no such key, a file in use cannot be taken away
        return key == null ? file : key;
    }

    /** Says which process holds it, where that can be read. */
    private static String holder(Path file) {
        try {
            // read by this process while it holds the lock itself, the file would give the lock back
            String process = HELD.contains(file) ? "" : Files.readString(file).trim();
            return process.isEmpty() ? "" : " (process " + process + ")";
        } catch (IOException e) {
            return "";
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw Stop.trouble("interrupted");
        }
    }

    @Override
    public void close() {
        try (channel) {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // The file alone hinders nobody: the lock goes with its channel.
            HELD.remove(file);
        }
        HELD.remove(file);
    }
}
