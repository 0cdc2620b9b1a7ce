// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.format.SolidFormat;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Design;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.report.SolidFiles;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/** The parts of which solids are made, and why others have none. */
final class Solids {
    private final SolidsAsked asked;
    private final Catalogues catalogues;
    /** Whether any of them is to be printed; else what is too thin to print has a solid too. */
    private final boolean toPrint;

    private final List<SolidFiles.Item> items = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();

    private Solids(SolidsAsked asked, Catalogues catalogues) {
        this.asked = asked;
        this.catalogues = catalogues;
        toPrint = asked.formats().stream().anyMatch(SolidFormat::isPrinted);
    }

    /**
     * Chooses among the parts of all designs.
     *
     * @throws Stop with every part that is asked for and can have no solid
     */
    static Solids of(List<Design> designs, SolidsAsked asked, Catalogues catalogues) {
        Solids solids = new Solids(asked, catalogues);
        boolean all = asked.parts().contains(SolidsAsked.ALL);
        for (Design design : designs) {
            for (Part part : design.parts()) {
                solids.consider(design, part, all);
            }
        }
        if (!all) {
            solids.checkNames(designs);
        }
        if (solids.items.isEmpty() && solids.wrong.isEmpty()) {
            solids.wrong.add("there is nothing to make a solid of: "
                    + (all || !asked.parts().isEmpty()
                            ? "no part is left"
                            : "no part of this spec is printed; " + SolidFormat.PARTS.name()
                                    + " all makes solids of parts cut from sheet as well"));
        }
        if (!solids.wrong.isEmpty()) {
            throw Stop.wrong(String.join("\nringleaf: ", solids.wrong));
        }
        return solids;
    }

    List<SolidFiles.Item> items() {
        return items;
    }

    /** Parts that were passed over although all were asked for, each with the reason. */
    List<String> leftOut() {
        return leftOut;
    }

    List<SolidFormat> formats() {
        return asked.formats();
    }

    /** How far chords may leave the arcs. */
    Tolerance chord() {
        return asked.chord();
    }

    private void consider(Design design, Part part, boolean all) {
        boolean named = asked.parts().contains(part.name());
        if (part.source().isBought() || !part.isDrawn()) {
            if (named) {
                wrong.add("no solid of " + part.name() + ": it is bought ("
                        + part.source().stock() + ") and not made here");
            }
            return;
        }
        Optional<MakingProcess> process =
                catalogues.processes().get(part.source().process());
        boolean printed = process.isPresent() && process.get().makesLayers();
        if (!named && !all && (!asked.parts().isEmpty() || !printed)) {
            return;
        }
        double thickness = thickness(part);
        String reason = !toPrint ? "" : printed ? tooThin(thickness, process.get()) : tooThinForAll(thickness);
        if (reason.isEmpty()) {
            items.add(new SolidFiles.Item(design.name(), part));
        } else if (named || printed) {
            wrong.add("no solid of " + part.name() + ": " + reason);
        } else {
            leftOut.add(part.name() + ": " + reason);
        }
    }

    private void checkNames(List<Design> designs) {
        List<String> known = new ArrayList<>();
        for (Design design : designs) {
            for (Part part : design.parts()) {
                if (!known.contains(part.name())) {
                    known.add(part.name());
                }
            }
        }
        for (String name : asked.parts()) {
            if (!known.contains(name)) {
                List<String> names = new ArrayList<>(known);
                names.add(SolidsAsked.ALL);
                names.add(SolidsAsked.PRINTED);
                wrong.add(SolidFormat.PARTS.name() + ": there is no part " + Shown.quoted(name) + "; "
                        + Nearest.hint(name, names));
            }
        }
    }

    /** Height of the level with the most material: a blade's, and not that of the pin it carries. */
    private static double thickness(Part part) {
        double most = -1;
        double thickness = 0;
        for (Layer layer : part.layers()) {
            double area = 0;
            for (Region region : layer.regions()) {
                area += region.area();
            }
            if (area > most) {
                most = area;
                thickness = layer.height();
            }
        }
        return thickness;
    }

    private static String tooThin(double thickness, MakingProcess process) {
        return thickness >= process.thicknessFrom() - 1e-9
                ? ""
                : Words.mm(thickness) + " is thinner than " + process.name() + " prints, "
                        + Words.mm(process.thicknessFrom()) + " at least";
    }

    /** What is cut from sheet may be printed all the same, for a trial, where some process prints it so thin. */
    private String tooThinForAll(double thickness) {
        StringBuilder finest = new StringBuilder();
        for (String name : catalogues.processes().names()) {
            Optional<MakingProcess> process = catalogues.processes().get(name);
            if (process.isPresent() && process.get().makesLayers()) {
                if (tooThin(thickness, process.get()).isEmpty()) {
                    return "";
                }
                finest.append(finest.length() == 0 ? "" : ", ").append(name).append(" from ");
                finest.append(Words.mm(process.get().thicknessFrom()));
            }
        }
        return Words.mm(thickness) + " is thinner than anything here prints (" + finest + ")";
    }
}
