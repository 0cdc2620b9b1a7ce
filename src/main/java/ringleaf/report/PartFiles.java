// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.draw.Drawing;
import ringleaf.draw.PartDrawing;
import ringleaf.draw.format.OutlineFormat;
import ringleaf.part.Design;
import ringleaf.part.Part;

/** The cut files of a mechanism: one of each format for every distinct part that is made. */
public final class PartFiles {
    private static final String FOLDER = "parts/";

    /**
     * How outlines are to be written.
     *
     * @param formats one after the other
     * @param options of formats by name, where they were given
     */
    public record Wanted(List<OutlineFormat> formats, Map<String, String> options) {}

    /**
     * A part as it is to be drawn.
     *
     * @param part with the outlines to draw
     * @param suffix of the file's name, e.g. {@code -kerf}, or empty
     * @param drawing choices about the drawing
     * @param extra what was done to the outline
     */
    public record Item(Part part, String suffix, PartDrawing.Options drawing, PartDrawing.Extra extra) {}

    private PartFiles() {}

    /**
     * Adds a file {@code parts/<mechanism>-<part>} of each format for every part to the set.
     *
     * @return by name of part, the paths that were added; what has no outline has none
     */
    public static Map<String, List<String>> add(Design design, Wanted wanted, FileSet files) {
        List<Item> items = new ArrayList<>();
        for (Part part : design.parts()) {
            items.add(new Item(part, "", PartDrawing.Options.USUAL, PartDrawing.Extra.NONE));
        }
        return add(design.name(), items, wanted, files);
    }

    /** A drawing and where its files go. */
    private record Stem(Drawing drawing, String path, List<String> own) {}

    /** Adds the files of these parts, whatever was done to their outlines: all of one format, then all of the next. */
    public static Map<String, List<String>> add(String mechanism, List<Item> items, Wanted wanted, FileSet files) {
        Map<String, List<String>> paths = new LinkedHashMap<>();
        List<Stem> stems = new ArrayList<>();
        for (Item item : items) {
            Part part = item.part();
            if (part.isDrawn()) {
                Drawing drawing = PartDrawing.of(part, item.drawing(), item.extra());
                String stem = FOLDER + FileNames.of(mechanism) + "-" + FileNames.of(part.name()) + item.suffix();
                List<String> own = new ArrayList<>();
                stems.add(new Stem(drawing, stem, own));
                paths.put(part.name(), own);
            }
        }
        for (OutlineFormat format : wanted.formats()) {
            for (Stem stem : stems) {
                byte[] bytes = format.write(stem.drawing, wanted.options());
                stem.own.add(files.add(stem.path + format.ending(), bytes));
            }
        }
        return paths;
    }
}
