// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A text with a name: a file, or an option of the command line, which has no lines to show. */
public final class SpecSource {
    /** 1 MiB: a spec is some twenty lines, and what is larger is another file picked by mistake. */
    public static final int SIZE_LIMIT = 1 << 20;

    private final String name;
    private final String text;
    private final boolean option;

    private SpecSource(String name, String text, boolean option) {
        this.name = name;
        this.text = text;
        this.option = option;
    }

    /** A text that is at hand already. */
    public static SpecSource of(String name, String text) {
        return new SpecSource(name, text, false);
    }

    /** An option of the command line, named as it was typed. */
    public static SpecSource ofOption(String typed, String text) {
        return new SpecSource(typed, text, true);
    }

    /**
     * Reads a text strictly as UTF-8, with or without a byte order mark; reads no further than the size limit.
     *
     * @return empty when it is too large, empty, binary or not UTF-8, which is then among the problems
     */
    public static Optional<SpecSource> read(String name, InputStream in, Problems problems) throws IOException {
        byte[] bytes = in.readNBytes(SIZE_LIMIT + 1);
        SpecSource unread = new SpecSource(name, "", false);
        if (bytes.length > SIZE_LIMIT) {
            problems.of(
                    unread,
                    "is larger than 1 MiB, the most that is read (a spec is some twenty lines)",
                    "check that this is the file you meant");
            return Optional.empty();
        }
        return decode(unread, bytes, problems);
    }

    private static Optional<SpecSource> decode(SpecSource unread, byte[] bytes, Problems problems) {
        if (isWide(bytes)) {
            problems.of(unread, "is written in UTF-16 and not in UTF-8", "save it as UTF-8");
            return Optional.empty();
        }
        for (byte b : bytes) {
            if (b == 0) {
                problems.of(unread, "is a binary file and not a text", "check that this is the file you meant");
                return Optional.empty();
            }
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        if (result.isError()) {
            int line = 1;
            for (int i = 0; i < in.position(); i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            problems.of(
                    unread,
                    "is not UTF-8 text (byte " + (in.position() + 1) + ", in line " + line + ")",
                    "save it as UTF-8, or check that this is the file you meant");
            return Optional.empty();
        }
        String text = out.toString();
        if (!text.isEmpty() && text.charAt(0) == '\uFEFF') {
            text = text.substring(1);
        }
        SpecSource source = new SpecSource(unread.name, text, false);
        return source.isClean(problems) ? Optional.of(source) : Optional.empty();
    }

    private static boolean isWide(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int first = bytes[0] & 0xFF;
        int second = bytes[1] & 0xFF;
        return first == 0xFE && second == 0xFF || first == 0xFF && second == 0xFE;
    }

    private boolean isClean(Problems problems) {
        if (text.isBlank()) {
            problems.of(this, "is empty", "`ringleaf new` writes a spec to start from");
            return false;
        }
        int line = 1;
        int column = 1;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (c == '\n') {
                line++;
                column = 0;
            } else if (!isPrintable(c)) {
                problems.at(
                        new Place(this, line, column, ""),
                        "a control character (U+" + hex(c) + ") stands here, which YAML does not allow",
                        "remove it");
                return false;
            }
            column++;
            i += Character.charCount(c);
        }
        return true;
    }

    /** The characters that YAML 1.2 allows in a text (section 5.1, c-printable). */
    private static boolean isPrintable(int c) {
        return c >= 0x20 && c < 0x7F || c == '\t' || c == '\r' || c == 0x85 || c >= 0xA0 && c != 0xFFFE && c != 0xFFFF;
    }

    /** A code point in at least four hexadecimal digits. */
    public static String hex(int codePoint) {
        String digits = Integer.toHexString(codePoint).toUpperCase(java.util.Locale.ROOT);
        return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    }

    public String name() {
        return name;
    }

    public String text() {
        return text;
    }

    /** The source as a whole, without a line. */
    public Place whole() {
        return new Place(this, 0, 0, "");
    }

    /** A place within an option, counted from 0 in characters of its text. */
    public Place within(int offset) {
        return new Place(this, 0, 1 + text.codePointCount(0, Math.min(offset, text.length())), "");
    }

    /** A place in the text, or the whole of an option. */
    public Place at(int line, int column) {
        return option ? whole() : new Place(this, line, column, "");
    }

    /** A line of the text without its end, counted from 1; empty outside the text. */
    public String line(int number) {
        int start = 0;
        for (int i = 1; i < number; i++) {
            start = lineEnd(start);
            if (start >= text.length()) {
                return "";
            }
            start += text.charAt(start) == '\r' && start + 1 < text.length() && text.charAt(start + 1) == '\n' ? 2 : 1;
        }
        return text.substring(start, lineEnd(start));
    }

    /** YAML 1.2 breaks lines at LF, CR and both together, and so do the places that are counted here. */
    private int lineEnd(int from) {
        int i = from;
        while (i < text.length() && !isBreak(text.charAt(i))) {
            i++;
        }
        return i;
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
