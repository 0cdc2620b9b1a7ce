// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Locale;
import ringleaf.spec.text.Shown;

/** Says in plain words why a file could not be read or written. */
final class Trouble {
    private Trouble() {}

    /**
     * A file to be read to its end. What is there but no file, such as a pipe or a device, is refused: it might never end,
     * or never begin.
     */
    static InputStream open(Path path) throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path)) {
            throw new FileSystemException(
                    path.toString(), null, "it is a pipe or a device, which may never end, and a file is wanted");
        }
        return Files.newInputStream(path);
    }

    /** The end of a command that could not read. */
    static Stop reading(String path, IOException e) {
        return Stop.trouble("cannot read " + Shown.cut(path, 300) + ": " + reason(e));
    }

    /** The end of a command that could not write. */
    static Stop writing(String path, IOException e) {
        return Stop.trouble("cannot write " + Shown.cut(path, 300) + ": " + reason(e));
    }

    /** The reason alone, without a path. */
    static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "there is no such file or folder";
        } else if (e instanceof AccessDeniedException) {
            return "permission denied";
        } else if (e instanceof FileAlreadyExistsException) {
            return "it is in the way";
        } else if (e instanceof NotDirectoryException) {
            return "it is not a folder";
        } else if (e instanceof DirectoryNotEmptyException) {
            return "a folder that is not empty stands there";
        } else if (e instanceof FileSystemLoopException) {
            return "its symbolic links lead in a circle";
        }
        String said = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
        if (said == null || said.isBlank()) {
            return "the system gives no reason";
        }
        if (said.equals("Is a directory")) {
            return "it is a folder, and a file is wanted";
        }
        return Shown.cut(said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1), 200);
    }
}
