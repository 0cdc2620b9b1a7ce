// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;

/** A format of files that are made of parts: an outline's, a solid's or a page's. */
public sealed interface Format permits OutlineFormat, SolidFormat, PageFormat, PdfFormat {
    /** The name by which it is asked for. */
    String name();

    /** What it writes, a few words for help and documents. */
    String writes();

    /** The files it may write, as paths within the output folder with one {@code *} for what differs. */
    List<String> files();

    /** What may be chosen about it on the command line. */
    default List<FormatOption> options() {
        return List.of();
    }

    /** Whether it is written where nobody asked for certain formats. */
    default boolean isUsual() {
        return false;
    }

    /** What the name stands for: itself, or others. */
    default List<Format> members() {
        return List.of(this);
    }
}
