// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/** The words of a package, read when the first of them is told. */
final class WordFile {
    /** Packages by their own name; a kind lies below the mechanisms. */
    private static final List<String> ABOVE = List.of("/ringleaf/", "/ringleaf/mechanism/");

    private static final Map<String, Properties> READ = new ConcurrentHashMap<>();

    private WordFile() {}

    /** The words of a key, with their marks. */
    static String words(String key) {
        int point = key.indexOf('.');
        String words =
                READ.computeIfAbsent(key.substring(0, point), WordFile::read).getProperty(key.substring(point + 1));
        if (words == null) {
            throw new IllegalStateException("there are no words for " + key);
        }
        return words;
    }

    private static Properties read(String name) {
        Properties words = new Properties();
        for (String above : ABOVE) {
            try (InputStream in = WordFile.class.getResourceAsStream(above + name + "/words.properties")) {
                if (in != null) {
                    words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
                    return words;
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return words;
    }
}
