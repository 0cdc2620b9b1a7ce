// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.text;

/**
 * Where something stands, so that a message can point at it.
 *
 * @param source file or option
 * @param line counted from 1; 0 when the source as a whole is meant, and within an option, which has no lines
 * @param column counted from 1 in code points; 0 when the source as a whole is meant
 * @param path the key as the reader of the message knows it, e.g. {@code drive.module}, or empty
 */
public record Place(SpecSource source, int line, int column, String path) {

    /** The same place under another name. */
    public Place named(String newPath) {
        return new Place(source, line, column, newPath);
    }

    /** A place further right in the same line; the same place when the source has no lines. */
    public Place shifted(int columns) {
        return line == 0 ? this : new Place(source, line, column + columns, path);
    }

    /** {@code file:line:column}, or the source's name alone. */
    public String label() {
        String name = Shown.cut(source.name(), 200);
        return line == 0 ? name : name + ':' + line + ':' + column;
    }
}
