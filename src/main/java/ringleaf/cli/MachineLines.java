package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.LayerStyle;
import ringleaf.draw.PartDrawing;
import ringleaf.fabricate.Preparation;
import ringleaf.fabricate.Prepared;
import ringleaf.geom.Path;
import ringleaf.geom.Region;
import ringleaf.part.Design;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.report.PartFiles;
import ringleaf.spec.Cutting;

/** How prepared parts are drawn: names of files, colours and widths of lines, and what the file says of itself. */
final class MachineLines {
    private static final double HAIR = 0.01;
    private static final double USUAL = 0.1;
    private static final int MARK = 0x1F5FA8;
    private static final int GUIDE = 0x8C8C8C;
    private static final int DARK = 0x101010;
    private static final int MOST_LEVELS = 12;
    /** Colours of what is cut, by process: dark enough to be seen, and told apart without red against green. */
    private static final Map<String, Integer> CUT = Map.of(
            "fibre-laser", 0xB00020,
            "co2-laser", 0xD06000,
            "photo-etch", 0x5B3A8C,
            "drag-knife", 0x00735C,
            "filament-print", 0x101010,
            "resin-print", 0x3A3A3A);

    private MachineLines() {}

    /** The parts of a design as they are to be drawn; bought ones as designed. */
    static List<PartFiles.Item> items(Design design, Preparation preparation) {
        List<PartFiles.Item> items = new ArrayList<>();
        for (Part part : design.parts()) {
            Prepared own = preparation.parts().get(part.name());
            if (own == null) {
                items.add(new PartFiles.Item(part, "", PartDrawing.Options.USUAL, PartDrawing.Extra.NONE));
            } else {
                items.add(new PartFiles.Item(own.part(), own.kerf() > 0 ? "-kerf" : "", options(own), extra(own)));
            }
        }
        return items;
    }

    private static PartDrawing.Options options(Prepared part) {
        return new PartDrawing.Options(true, styles(part.cutting(), part.process().name()));
    }

    /** Styles of layers that differ from the usual ones. */
    static Map<String, LayerStyle> styles(Cutting cutting, String process) {
        Map<String, LayerStyle> styles = new LinkedHashMap<>();
        if (cutting.line().equals("usual")) {
            return styles;
        }
        boolean hair = cutting.line().equals("hairline");
        double width = hair ? HAIR : USUAL;
        int cut = hair ? DARK : CUT.getOrDefault(process, DARK);
        styles.put(DrawingLayer.CUT, new LayerStyle(cut, width));
        styles.put(DrawingLayer.MARK, new LayerStyle(MARK, width));
        styles.put(DrawingLayer.GUIDE, new LayerStyle(GUIDE, width));
        for (int i = 1; hair && i <= MOST_LEVELS; i++) {
            styles.put(DrawingLayer.level(i), new LayerStyle(DARK, width));
        }
        return styles;
    }

    private static PartDrawing.Extra extra(Prepared part) {
        List<String> guide = new ArrayList<>();
        if (part.kerf() > 0) {
            guide.add("KERF " + Words.number(part.kerf(), 4).toUpperCase(Locale.ROOT) + " MM IS IN");
        }
        return new PartDrawing.Extra(
                part.notes(), guide, guides(part), part.cutting().scaleBar());
    }

    /** Where sheets leave tabs, for the part's own file keeps its outline closed, and where cuts begin. */
    private static List<Path> guides(Prepared part) {
        List<Path> guides = new ArrayList<>();
        for (Layer layer : part.part().layers()) {
            for (Region region : layer.regions()) {
                guides.addAll(part.tabs().bridges(region));
                guides.addAll(part.leads().leads(region, true));
            }
        }
        return guides;
    }
}
