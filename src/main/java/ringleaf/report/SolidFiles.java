// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.format.FormatFile;
import ringleaf.draw.format.SolidFormat;
import ringleaf.draw.format.Solids;
import ringleaf.geom.Tolerance;
import ringleaf.part.Part;

/** Solids of parts: a file for each, or a plate for all parts of one process and stock, as the format has it. */
public final class SolidFiles {
    /** A part with an outline, and the mechanism that it belongs to. */
    public record Item(String mechanism, Part part) {}

    private SolidFiles() {}

    /**
     * Adds the files of all formats, one format after the other.
     *
     * @param chord how far chords may leave the arcs
     * @param program the program with its version, for the files to say
     * @return the paths of each item's files, in order; none where no closed surface bounds the part
     */
    public static List<List<String>> add(
            List<Item> items, List<SolidFormat> formats, Tolerance chord, String title, String program, FileSet files) {
        List<Solids.Item> parts = new ArrayList<>();
        List<List<String>> paths = new ArrayList<>();
        for (Item item : items) {
            Part.Source source = item.part().source();
            parts.add(new Solids.Item(
                    FileNames.of(item.mechanism()) + "-"
                            + FileNames.of(item.part().name()),
                    FileNames.of(source.process()) + "-" + FileNames.of(source.stock()),
                    item.part()));
            paths.add(new ArrayList<>());
        }
        Solids solids = new Solids(parts, chord, title, program);
        for (SolidFormat format : formats) {
            for (FormatFile file : format.write(solids)) {
                String path = files.add(file.path(), file.content());
                file.of().forEach(i -> paths.get(i).add(path));
            }
        }
        return paths;
    }
}
