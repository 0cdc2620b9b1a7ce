package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.FitSize;
import ringleaf.part.Joint;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.Cutting;
import ringleaf.spec.Fabrication;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/** A design made ready for its machines, as the spec asks: kerf, tabs, and what sizes are to be expected. */
public final class Preparation {
    private final Fabrication fabrication;
    private final Catalogues catalogues;
    private final Map<String, Prepared> parts = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<FitSize> fits = new ArrayList<>();

    private Preparation(Fabrication fabrication, Catalogues catalogues) {
        this.fabrication = fabrication;
        this.catalogues = catalogues;
    }

    /** Prepares every part that is made; nothing of the design changes. */
    public static Preparation of(Design design, Fabrication fabrication, Catalogues catalogues) {
        Preparation preparation = new Preparation(fabrication, catalogues);
        for (Part part : design.parts()) {
            if (part.isDrawn() && !part.source().isBought()) {
                preparation.add(part);
            }
        }
        for (Joint joint : design.joints()) {
            preparation.add(joint);
        }
        return preparation;
    }

    /** Parts that are made, by name, in the order of the design. */
    public Map<String, Prepared> parts() {
        return parts;
    }

    /** What the machine cannot do with the outlines. */
    public List<Finding> findings() {
        return findings;
    }

    /** The joints with their sizes. */
    public List<FitSize> fits() {
        return fits;
    }

    /** The width a process takes away in a stock, mm, unless the user has measured another. */
    static double kerf(Cutting cutting, MakingProcess process, Stock stock) {
        if (cutting.kerfWidth().isPresent()) {
            return cutting.kerfWidth().getAsDouble();
        }
        boolean usual = stock.processes().get(0).equals(process.name());
        return usual && stock.kerf().isPresent() ? stock.kerf().getAsDouble() : process.kerf();
    }

    private void add(Part part) {
        Optional<MakingProcess> process = catalogues.processes().get(part.source().process());
        Optional<Stock> stock = catalogues.stock().get(part.source().stock());
        if (process.isEmpty() || stock.isEmpty()) {
            return;
        }
        Cutting cutting = fabrication.cutting(part.family());
        List<String> notes = new ArrayList<>();
        double kerf = cutting.kerf() && !process.get().makesLayers() ? kerf(cutting, process.get(), stock.get()) : 0;
        Part made = part;
        if (kerf > 0) {
            Kerf.Result result = Kerf.of(part, kerf);
            made = result.part();
            findings.addAll(result.findings());
            notes.add("kerf of " + Words.number(kerf, 4) + " mm is in: outer contours grown, holes shrunk by half of it;"
                    + " switch off any correction in the machine");
        }
        parts.put(
                part.name(),
                new Prepared(made, part, process.get(), stock.get(), cutting, kerf, List.of(), notes));
    }

    private void add(Joint joint) {
        Prepared prepared = parts.get(joint.part());
        if (prepared == null) {
            if (joint.shape() == Joint.Shape.SHAFT) {
                fits.add(Fits.bought(joint));
            }
            return;
        }
        double kerf = prepared.process().makesLayers()
                ? 0
                : kerf(prepared.cutting(), prepared.process(), prepared.stock());
        fits.add(Fits.made(joint, prepared.process(), prepared.stock(), kerf, prepared.kerf() > 0));
    }
}
