// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

/**
 * One thing that is wrong, and where.
 *
 * @param place what it is about
 * @param reason what is wrong, and what is allowed and why
 * @param hint what would help, e.g. the nearest value that works, or empty
 */
public record Problem(Place place, String reason, String hint) {
    private static final int WINDOW = 100;

    /** The message in one line, without the excerpt. */
    public String message() {
        StringBuilder out = new StringBuilder();
        out.append(place.label()).append(": ");
        if (!place.path().isEmpty()) {
            out.append(Shown.cut(place.path(), 120)).append(": ");
        }
        out.append(reason);
        if (!hint.isEmpty()) {
            out.append("; ").append(hint);
        }
        return out.toString();
    }

    /** The message, the line it is about and a mark under the place; lines end with a newline. */
    public String text() {
        String head = message() + '\n';
        if (place.column() == 0) {
            return head;
        }
        return head
                + (place.line() == 0
                        ? excerpt(place.source().text(), "")
                        : excerpt(place.source().line(place.line()), Integer.toString(place.line())));
    }

    private String excerpt(String text, String number) {
        int[] line = text.codePoints().toArray();
        int at = Math.min(Math.max(place.column() - 1, 0), line.length);
        int from = line.length <= WINDOW ? 0 : Math.max(0, Math.min(at - WINDOW / 2, line.length - WINDOW));
        int to = Math.min(line.length, from + WINDOW);
        StringBuilder out = new StringBuilder("  ").append(number).append(number.isEmpty() ? "| " : " | ");
        int mark = at - from;
        if (from > 0) {
            out.append('…');
            mark++;
        }
        for (int i = from; i < to; i++) {
            out.appendCodePoint(Shown.visible(line[i]));
        }
        if (to < line.length) {
            out.append('…');
        }
        out.append('\n');
        out.append(" ".repeat(number.isEmpty() ? 2 : number.length() + 3))
                .append("| ")
                .append(" ".repeat(mark))
                .append("^\n");
        return out.toString();
    }
}
