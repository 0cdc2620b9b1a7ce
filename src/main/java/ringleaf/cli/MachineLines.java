// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.LayerStyle;
import ringleaf.draw.LayerStyles;
import ringleaf.draw.Naming;
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
import ringleaf.spec.shared.Catalogues;

/** How prepared parts are drawn: names of files, colours and widths of lines, and what the file says of itself. */
final class MachineLines {
    private static final double HAIR = 0.01;
    private static final int MOST_LEVELS = 24;

    private MachineLines() {}

    /** The parts of a design as they are to be drawn; bought ones as designed. */
    static List<PartFiles.Item> items(Design design, Preparation preparation, Catalogues catalogues) {
        List<PartFiles.Item> items = new ArrayList<>();
        for (Part part : design.parts()) {
            Prepared own = preparation.parts().get(part.name());
            if (own == null) {
                items.add(new PartFiles.Item(part, "", PartDrawing.Options.USUAL, PartDrawing.Extra.NONE));
            } else {
                items.add(new PartFiles.Item(
                        own.part(), own.kerf() > 0 ? "-kerf" : "", options(own, catalogues), extra(own)));
            }
        }
        return items;
    }

    private static PartDrawing.Options options(Prepared part, Catalogues catalogues) {
        return new PartDrawing.Options(
                naming(part.cutting()), styles(part.cutting(), part.process().name(), catalogues));
    }

    private static Naming naming(Cutting cutting) {
        return Naming.valueOf(cutting.names().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** Styles of layers that differ from the usual ones. */
    static Map<String, LayerStyle> styles(Cutting cutting, String process, Catalogues catalogues) {
        Map<String, LayerStyle> styles = new LinkedHashMap<>();
        if (cutting.line().equals("by-process")) {
            int place = new ArrayList<>(catalogues.processes().names()).indexOf(process);
            styles.put(DrawingLayer.CUT, LayerStyles.process(place));
        } else if (cutting.line().equals("hairline")) {
            styles.put(DrawingLayer.CUT, LayerStyles.CUT.withWidth(HAIR));
            styles.put(DrawingLayer.MARK, LayerStyles.MARK.withWidth(HAIR));
            styles.put(DrawingLayer.GUIDE, LayerStyles.GUIDE.withWidth(HAIR));
            for (int i = 1; i <= MOST_LEVELS; i++) {
                styles.put(DrawingLayer.level(i), LayerStyles.level(i).withWidth(HAIR));
            }
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
