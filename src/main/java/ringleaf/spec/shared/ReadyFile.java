// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;
import ringleaf.spec.text.YamlReader;

/**
 * A catalogue that lies in the jar, of which only the entries asked for are read: most of a run's time is its start,
 * and a whole catalogue costs more of it than everything else that is read.
 *
 * <p>Relies on how these files are laid out (a test holds them to it): a head with {@code sources:}, a line with the
 * top key, and each entry's name in a line of its own, indented by two spaces.
 */
final class ReadyFile {
    private final String fileName;
    private final String head;
    private final Map<String, String> blocks = new LinkedHashMap<>();
    private Map<String, String> sources;

    ReadyFile(String fileName, String topKey, String text) {
        this.fileName = fileName;
        int start = text.indexOf('\n' + topKey + ":\n") + 1;
        if (start == 0) {
            throw new IllegalStateException(fileName + " has no line " + topKey + ':');
        }
        head = text.substring(0, start);
        int from = start + topKey.length() + 2;
        String name = null;
        int blockStart = from;
        for (int at = from; at < text.length(); at = text.indexOf('\n', at) + 1) {
            if (isName(text, at)) {
                if (name != null) {
                    blocks.put(name, text.substring(blockStart, at));
                }
                name = name(text, at);
                blockStart = at;
            }
        }
        if (name != null) {
            blocks.put(name, text.substring(blockStart));
        }
    }

    private static boolean isName(String text, int at) {
        return text.startsWith("  ", at) && at + 2 < text.length() && " #\n".indexOf(text.charAt(at + 2)) < 0;
    }

    private static String name(String text, int at) {
        String line = text.substring(at + 2, text.indexOf('\n', at));
        String name = line.substring(0, line.lastIndexOf(':'));
        return name.startsWith("\"") ? name.substring(1, name.length() - 1) : name;
    }

    Set<String> names() {
        return Collections.unmodifiableSet(blocks.keySet());
    }

    /** The entry of this name, or null. */
    SourcedEntry entry(String name) {
        String block = blocks.get(name);
        if (block == null) {
            return null;
        }
        Problems problems = new Problems();
        if (sources == null) {
            Node.Mapping map = map(head, problems);
            sources = SourcedEntry.sources(map.get("sources"), problems);
        }
        Node.Entry entry = map(block, problems).entries().get(name);
        Node.Mapping values = (Node.Mapping) entry.value();
        SourcedEntry read = SourcedEntry.of(name, entry.keyPlace().named(name), values, sources, false, problems);
        problems.throwIfAny();
        return read;
    }

    private Node.Mapping map(String text, Problems problems) {
        Optional<Node> root = YamlReader.read(SpecSource.of(fileName, text), problems);
        problems.throwIfAny();
        return (Node.Mapping) root.orElseThrow();
    }
}
