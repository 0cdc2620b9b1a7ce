// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Files to be written: relative path to content, in the order of adding. Paths use {@code /}, stay within the folder
 * and hold only letters, digits, {@code . _ -}.
 */
public final class FileSet {
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    /**
     * Adds a file and returns the path under which it stands: the one given, or, where that is taken, one with
     * {@code -2}, {@code -3}, … before the suffix.
     *
     * @throws IllegalArgumentException for a path that is absolute, climbs up or holds other characters
     */
    public String add(String path, byte[] content) {
        check(path);
        String free = path;
        int dot = path.lastIndexOf('.');
        int stem = dot > path.lastIndexOf('/') ? dot : path.length();
        for (int n = 2; files.containsKey(free); n++) {
            free = path.substring(0, stem) + "-" + n + path.substring(stem);
        }
        files.put(free, content);
        return free;
    }

    /** Adds all files of another set, each as {@link #add(String, byte[])} does. */
    public void addAll(FileSet others) {
        others.files.forEach(this::add);
    }

    /** The files, in the order of adding; cannot be changed. */
    public Map<String, byte[]> files() {
        return Collections.unmodifiableMap(files);
    }

    private static void check(String path) {
        for (String step : path.split("/", -1)) {
            boolean good = !step.isEmpty() && step.charAt(0) != '.' && step.length() <= 200;
            for (int i = 0; good && i < step.length(); i++) {
                char c = step.charAt(i);
                good = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || "._-".indexOf(c) >= 0;
            }
            if (!good) {
                throw new IllegalArgumentException("no path of a file: " + path);
            }
        }
    }
}
