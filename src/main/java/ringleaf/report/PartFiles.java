package ringleaf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.draw.Drawing;
import ringleaf.draw.PartDrawing;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;
import ringleaf.draw.svg.SvgWriter;
import ringleaf.part.Design;
import ringleaf.part.Part;

/** The cut files of a mechanism: one of each format for every distinct part that is made. */
public final class PartFiles {
    private static final String FOLDER = "parts/";

    /**
     * What is to be written.
     *
     * @param svg whether as SVG
     * @param dxf whether as DXF
     * @param version of DXF
     * @param drawing choices about the drawing of a part
     */
    public record Wanted(boolean svg, boolean dxf, DxfVersion version, PartDrawing.Options drawing) {
        public static final Wanted USUAL = new Wanted(true, true, DxfVersion.AC1015, PartDrawing.Options.USUAL);
    }

    private PartFiles() {}

    /**
     * Adds the files {@code parts/<mechanism>-<part>.svg} and {@code .dxf} to the set.
     *
     * @return by name of part, the paths that were added; what has no outline has none
     */
    public static Map<String, List<String>> add(Design design, Wanted wanted, FileSet files) {
        Map<String, List<String>> paths = new LinkedHashMap<>();
        Map<String, Drawing> drawings = new LinkedHashMap<>();
        for (Part part : design.parts()) {
            if (!part.isDrawn()) {
                continue;
            }
            drawings.put(part.name(), PartDrawing.of(part, wanted.drawing()));
            paths.put(part.name(), new ArrayList<>());
        }
        for (Map.Entry<String, Drawing> each : drawings.entrySet()) {
            if (wanted.svg()) {
                String path = path(design, each.getKey(), ".svg");
                paths.get(each.getKey()).add(files.add(path, SvgWriter.write(each.getValue())));
            }
        }
        for (Map.Entry<String, Drawing> each : drawings.entrySet()) {
            if (wanted.dxf()) {
                String path = path(design, each.getKey(), ".dxf");
                paths.get(each.getKey()).add(files.add(path, DxfWriter.write(each.getValue(), wanted.version())));
            }
        }
        return paths;
    }

    private static String path(Design design, String part, String suffix) {
        return FOLDER + FileNames.of(design.name()) + "-" + FileNames.of(part) + suffix;
    }
}
