// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.curve.Overlay;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Region;
import ringleaf.part.Design;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.Cutting;
import ringleaf.spec.text.Problems;

/** Collects the parts that share process and stock, and lays them on sheets; a printer's sheet is its bed. */
public final class Sheets {
    private static final class Group {
        private Prepared first;
        private Cutting.SheetSize size;
        private double kerf;
        private double tabWidth;
        private final List<NestPiece> pieces = new ArrayList<>();
    }

    private final Map<String, Group> groups = new LinkedHashMap<>();
    private final boolean several;
    private final Problems problems;

    private Sheets(boolean several, Problems problems) {
        this.several = several;
        this.problems = problems;
    }

    /**
     * Collects the parts of all designs whose family asks for sheets.
     *
     * @param prepared the designs' parts, in the designs' order
     * @param problems where parts larger than their sheet, gaps below the kerf and contradictions go
     */
    public static Sheets of(List<Design> designs, List<Preparation> prepared, Problems problems) {
        Sheets sheets = new Sheets(designs.size() > 1, problems);
        for (Preparation each : prepared) {
            for (Prepared part : each.parts().values()) {
                sheets.claim(part);
            }
        }
        for (Group group : sheets.groups.values()) {
            sheets.check(group.size, group.first);
        }
        for (int i = 0; i < prepared.size(); i++) {
            for (Prepared part : prepared.get(i).parts().values()) {
                sheets.add(designs.get(i).name(), part);
            }
        }
        return sheets;
    }

    /** Lays everything out, in the order of the parts; no problem must have been found before. */
    public List<SheetSet> laid(Nesting.Watch watch) {
        List<SheetSet> sets = new ArrayList<>();
        for (Group group : groups.values()) {
            Nested nested = Nesting.of(group.pieces, group.size, watch);
            sets.add(new SheetSet(
                    group.first.process(),
                    group.first.stock(),
                    group.first.cutting(),
                    group.size,
                    nested,
                    BoxPacking.usedArea(group.pieces, group.size),
                    group.kerf,
                    group.tabWidth));
        }
        return sets;
    }

    /** Settles the sheets of the part's stock. */
    private void claim(Prepared part) {
        if (part.cutting().sheet().isEmpty()) {
            return;
        }
        Cutting.SheetSize size = part.cutting().sheet().get();
        if (SheetSet.isEtched(part.process())) {
            size = size.withFrame(SheetSet.FRAME);
        }
        Group group = groups.get(key(part));
        if (group == null) {
            group = new Group();
            group.first = part;
            group.size = size;
            groups.put(key(part), group);
        }
    }

    private static String key(Prepared part) {
        return part.process().name() + " " + part.stock().name();
    }

    private void add(String mechanism, Prepared part) {
        if (part.cutting().sheet().isEmpty()) {
            return;
        }
        Group group = groups.get(key(part));
        group.kerf = Math.max(group.kerf, part.kerf());
        if (part.process().makesLayers()) {
            printed(mechanism, part, group);
        } else {
            pieces(mechanism, part, group);
        }
    }

    private void check(Cutting.SheetSize size, Prepared part) {
        double kerf = Preparation.kerf(part.cutting(), part.process(), part.stock());
        if (size.gap() < kerf) {
            problems.at(
                    size.place(),
                    "a gap of " + Words.number(size.gap(), 3) + " mm is below the kerf of " + Words.number(kerf, 3)
                            + " mm of " + part.process().name() + " (neighbours would burn into each other)",
                    "the least is " + Words.number(kerf, 3) + "mm");
        }
    }

    private void pieces(String mechanism, Prepared prepared, Group group) {
        Part part = prepared.part();
        for (int i = 0; i < part.layers().size(); i++) {
            Layer layer = part.layers().get(i);
            int count = part.copies() * part.pieces().plies(i);
            for (int k = 0; k < layer.regions().size(); k++) {
                String name = (several ? mechanism + "-" : "")
                        + part.name()
                        + (part.layers().size() > 1 ? "-level-" + (i + 1) : "")
                        + (layer.regions().size() > 1 ? "-" + (k + 1) : "");
                Region region = layer.regions().get(k);
                piece(name, region, layer.marksOn(region), count, prepared, group);
            }
        }
    }

    /** What is printed lies on the bed as seen from above, with all its levels. */
    private void printed(String mechanism, Prepared prepared, Group group) {
        Part part = prepared.part();
        List<Region> all = new ArrayList<>();
        StringBuilder heights = new StringBuilder();
        for (int i = 0; i < part.layers().size(); i++) {
            Layer layer = part.layers().get(i);
            all.addAll(layer.regions());
            heights.append(i == 0 ? "" : ", ").append("level-").append(i + 1).append(" z ");
            heights.append(Words.number(layer.zFrom() - part.zFrom(), 3)).append(" to ");
            heights.append(Words.number(layer.zTo() - part.zFrom(), 3));
        }
        List<Region> footprints = part.layers().size() > 1 ? Overlay.union(all) : all;
        int count = part.copies();
        for (int k = 0; k < footprints.size(); k++) {
            String name = (several ? mechanism + "-" : "") + part.name() + (footprints.size() > 1 ? "-" + (k + 1) : "");
            List<List<Region>> levels = new ArrayList<>();
            for (Layer layer : part.layers()) {
                List<Region> own = new ArrayList<>();
                for (Region region : layer.regions()) {
                    boolean stands = footprints.size() == 1
                            || !Overlay.intersection(List.of(footprints.get(k)), List.of(region))
                                    .isEmpty();
                    own.addAll(stands ? List.of(region) : List.of());
                }
                levels.add(own);
            }
            String note = name + ": " + heights;
            add(
                    new NestPiece(name, footprints.get(k), List.of(), List.of(), List.of(), count, false, levels, note),
                    group);
        }
    }

    private void piece(String name, Region outline, List<Path> marks, int count, Prepared prepared, Group group) {
        List<Path> cuts = prepared.tabs().cuts(outline);
        group.tabWidth =
                Math.max(group.tabWidth, cuts.isEmpty() ? 0 : prepared.tabs().width());
        List<Path> leads = prepared.leads().leads(outline, cuts.isEmpty());
        add(new NestPiece(name, outline, marks, cuts, leads, count, isNamed(prepared, count), List.of(), ""), group);
    }

    private static boolean isNamed(Prepared prepared, int count) {
        return count == 1 && prepared.cutting().engravesName(prepared.part().onShow());
    }

    private void add(NestPiece piece, Group group) {
        Box box = piece.outline().box();
        if (!Nesting.fits(piece, group.size)) {
            problems.at(
                    group.size.place(),
                    "a sheet of " + Words.number(group.size.width(), 2) + " by " + Words.number(group.size.height(), 2)
                            + " mm is too small for " + piece.name() + ", which measures "
                            + Words.number(box.width(), 2) + " by " + Words.number(box.height(), 2)
                            + " mm, with a margin of "
                            + Words.number(group.size.margin(), 2) + " mm",
                    "take a larger sheet or a smaller margin");
            return;
        }
        group.pieces.add(piece);
    }
}
