package ringleaf.report;

import java.nio.charset.StandardCharsets;

/**
 * JSON text under construction (RFC 8259), an item a line, indented by two blanks. Own and small, because every run
 * writes one such file and the library's writer costs a cold start as much as all other writing together. Who calls it
 * keeps to the grammar; strings are escaped here.
 */
final class JsonText {
    private static final String HEX = "0123456789abcdef";

    private final StringBuilder out = new StringBuilder(32_768);
    private int depth;
    /** Whether nothing stands yet in the innermost object or array. */
    private boolean first = true;
    /** Whether a name waits for its value. */
    private boolean named;

    JsonText beginObject() {
        return begin('{');
    }

    JsonText endObject() {
        return end('}');
    }

    JsonText beginArray() {
        return begin('[');
    }

    JsonText endArray() {
        return end(']');
    }

    JsonText name(String name) {
        item();
        quoted(name);
        out.append(": ");
        named = true;
        return this;
    }

    JsonText text(String value) {
        item();
        quoted(value);
        return this;
    }

    /** What is JSON already: a number, null, or a short array in one line. */
    JsonText raw(String json) {
        item();
        out.append(json);
        return this;
    }

    /** The file, UTF-8, with a line's end at its end. */
    byte[] toBytes() {
        return out.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    private JsonText begin(char bracket) {
        item();
        out.append(bracket);
        depth++;
        first = true;
        return this;
    }

    private JsonText end(char bracket) {
        depth--;
        if (!first) {
            newLine();
        }
        out.append(bracket);
        first = false;
        return this;
    }

    /** Goes to where the next item stands: behind its name, or in a line of its own. */
    private void item() {
        if (named) {
            named = false;
            return;
        }
        if (!first) {
            out.append(',');
        }
        if (depth > 0) {
            newLine();
        }
        first = false;
    }

    private void newLine() {
        out.append('\n');
        for (int i = 0; i < depth; i++) {
            out.append("  ");
        }
    }

    private void quoted(String text) {
        out.append('"');
        int done = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ' ' && c != '"' && c != '\\') {
                continue;
            }
            out.append(text, done, i).append('\\');
            done = i + 1;
            switch (c) {
                case '\n' -> out.append('n');
                case '\t' -> out.append('t');
                case '\r' -> out.append('r');
                case '\b' -> out.append('b');
                case '\f' -> out.append('f');
                case '"', '\\' -> out.append(c);
                default -> out.append("u00").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 15));
            }
        }
        out.append(text, done, text.length()).append('"');
    }
}
