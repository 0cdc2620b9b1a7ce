// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;

/** The one list of formats. */
public final class Formats {
    private static final PaperFormat PAPER = new PaperFormat();
    private static final DrawingFormat DRAWING = new DrawingFormat();
    /** Every format, in the order in which files are written and named in help. */
    public static final List<Format> ALL = List.of(
            new SvgFormat(),
            new DxfFormat(),
            new StlFormat(),
            new ThreeMfFormat(),
            new StepFormat(),
            PAPER,
            DRAWING,
            new PdfFormat(PAPER, DRAWING));

    private Formats() {}

    /** The formats of outlines, which are also those of a piece that is an outline and nothing else. */
    public static List<OutlineFormat> outlines() {
        return only(ALL, OutlineFormat.class);
    }

    /** Those of one type. */
    public static <T extends Format> List<T> only(List<? extends Format> formats, Class<T> type) {
        return formats.stream().filter(type::isInstance).map(type::cast).toList();
    }

    /** Those that are written where nobody asked for certain ones. */
    public static List<Format> usual(List<? extends Format> formats) {
        return formats.stream().<Format>map(f -> f).filter(Format::isUsual).toList();
    }

    /** The names of formats. */
    public static List<String> names(List<? extends Format> formats) {
        return formats.stream().map(Format::name).toList();
    }

    /** The options of formats, each once. */
    public static List<FormatOption> options(List<? extends Format> formats) {
        return formats.stream().flatMap(f -> f.options().stream()).distinct().toList();
    }

    /** Those of them that take an option. */
    public static List<? extends Format> taking(FormatOption option, List<? extends Format> formats) {
        return formats.stream().filter(f -> f.options().contains(option)).toList();
    }

    /** A line for each format, for help. */
    public static String text() {
        StringBuilder out = new StringBuilder();
        for (Format format : ALL) {
            out.append("  ")
                    .append(format.name())
                    .append(" ".repeat(9 - format.name().length()));
            out.append(format.writes()).append(format.isUsual() ? " (usual)\n" : "\n");
            out.append(" ".repeat(11)).append(String.join(", ", format.files()));
            for (FormatOption option : format.options()) {
                out.append(", ").append(option.name());
            }
            out.append('\n');
        }
        return out.toString();
    }

    /** Whether a file at this path may have been written in one of the formats. */
    public static boolean write(String path) {
        return ALL.stream().flatMap(f -> f.files().stream()).anyMatch(pattern -> fits(path, pattern));
    }

    /**
     * Whether a path within the output folder fits a pattern with at most one {@code *}, which stands for at least one
     * of lower case letters, digits, hyphens and dots, and does not begin with a dot.
     */
    public static boolean fits(String path, String pattern) {
        int star = pattern.indexOf('*');
        if (star < 0) {
            return path.equals(pattern);
        }
        String head = pattern.substring(0, star);
        String tail = pattern.substring(star + 1);
        return path.length() > head.length() + tail.length()
                && path.startsWith(head)
                && path.endsWith(tail)
                && path.substring(head.length(), path.length() - tail.length()).matches("[a-z0-9-][a-z0-9.-]*");
    }

    /** The table of all formats for the documents, in Markdown. */
    public static String markdown() {
        StringBuilder out = new StringBuilder("| format | what | files | options |\n|---|---|---|---|\n");
        for (Format format : ALL) {
            List<String> options =
                    format.options().stream().map(FormatOption::name).toList();
            out.append("| `").append(format.name()).append(format.isUsual() ? "` (usual) | " : "` | ");
            out.append(format.writes())
                    .append(" | ")
                    .append(code(format.files()))
                    .append(" | ");
            out.append(code(options)).append(" |\n");
        }
        return out.toString();
    }

    private static String code(List<String> words) {
        return words.isEmpty() ? "" : "`" + String.join("`, `", words) + "`";
    }
}
