package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Path;
import ringleaf.geom.Region;
import ringleaf.part.Design;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.Cutting;
import ringleaf.spec.text.Problems;

/** Collects the parts that share process and stock, and lays them on sheets. */
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
     * Collects the parts of all designs that are cut from sheet and whose family asks for sheets.
     *
     * @param prepared the designs' parts, in the designs' order
     * @param problems where parts larger than their sheet, gaps below the kerf and contradictions go
     */
    public static Sheets of(List<Design> designs, List<Preparation> prepared, Problems problems) {
        Sheets sheets = new Sheets(designs.size() > 1, problems);
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

    private void add(String mechanism, Prepared part) {
        if (part.process().makesLayers() || part.cutting().sheet().isEmpty()) {
            return;
        }
        Cutting.SheetSize size = part.cutting().sheet().get();
        if (SheetSet.isEtched(part.process())) {
            size = size.withFrame(SheetSet.FRAME);
        }
        String key = part.process().name() + " " + part.stock().name();
        Group group = groups.get(key);
        if (group == null) {
            group = new Group();
            group.first = part;
            group.size = size;
            groups.put(key, group);
            check(size, part);
        } else if (!group.size.agrees(size)) {
            problems.at(
                    size.place(),
                    "asks for other sheets of " + part.stock().name() + " than another family that is cut from it",
                    "parts of one stock share their sheets");
            return;
        }
        group.kerf = Math.max(group.kerf, part.kerf());
        pieces(mechanism, part, group);
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
        double thickness = prepared.stock().thickness().orElse(0);
        for (int i = 0; i < part.layers().size(); i++) {
            Layer layer = part.layers().get(i);
            boolean top = i == part.layers().size() - 1;
            int plies = thickness > 0 ? Math.max(1, (int) Math.round(layer.height() / thickness)) : 1;
            int count = part.quantity() * plies;
            if (part.quantity() > 1 && prepared.cutting().spares() > 0) {
                count += Math.max(1, (int) Math.ceil(count * prepared.cutting().spares() - 1e-9));
            }
            for (int k = 0; k < layer.regions().size(); k++) {
                String name = (several ? mechanism + "-" : "") + part.name()
                        + (part.layers().size() > 1 ? "-level-" + (i + 1) : "")
                        + (layer.regions().size() > 1 ? "-" + (k + 1) : "");
                piece(name, layer.regions().get(k), top ? part.marks() : List.of(), count, prepared, group);
            }
        }
    }

    private void piece(String name, Region outline, List<Path> marks, int count, Prepared prepared, Group group) {
        List<Path> cuts = prepared.tabs().cuts(outline);
        group.tabWidth = Math.max(group.tabWidth, cuts.isEmpty() ? 0 : prepared.tabs().width());
        NestPiece piece = new NestPiece(name, outline, marks, cuts, count, count == 1);
        if (!Nesting.fits(piece, group.size)) {
            problems.at(
                    group.size.place(),
                    "a sheet of " + Words.number(group.size.width(), 2) + " by " + Words.number(group.size.height(), 2)
                            + " mm is too small for " + name + ", which measures "
                            + Words.number(outline.box().width(), 2) + " by "
                            + Words.number(outline.box().height(), 2) + " mm, with a margin of "
                            + Words.number(group.size.margin(), 2) + " mm",
                    "take a larger sheet or a smaller margin");
            return;
        }
        group.pieces.add(piece);
    }
}
