// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Design;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.Cutting;
import ringleaf.spec.Fabrication;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/** A design made ready for its machines, as the spec asks: kerf and tabs. */
public final class Preparation {
    static final String TABS = "tabs";

    /** How far below the tip circle a wheel's outline still counts as a tip's land, mm. */
    private static final double TIP_LAND = 0.02;

    private final Fabrication fabrication;
    private final Catalogues catalogues;
    private final Map<String, Prepared> parts = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

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
        preparation.sayReached();
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

    /** The width a process takes away in a stock, mm, unless the user has measured another. */
    static double kerf(Cutting cutting, MakingProcess process, Stock stock) {
        if (cutting.kerfWidth().isPresent()) {
            return cutting.kerfWidth().getAsDouble();
        }
        return stock.kerf(process);
    }

    private void add(Part part) {
        Optional<MakingProcess> process =
                catalogues.processes().get(part.source().process());
        Optional<Stock> stock = catalogues.stock().get(part.source().stock());
        if (process.isEmpty() || stock.isEmpty()) {
            return;
        }
        Cutting cutting = fabrication.cutting(
                part.family().label(), process.get().name(), stock.get().name());
        List<String> notes = new ArrayList<>();
        double kerf = cutting.kerf() && !process.get().makesLayers() ? kerf(cutting, process.get(), stock.get()) : 0;
        Part made = part;
        if (kerf > 0) {
            Kerf.Result result = Kerf.of(part, kerf);
            made = result.part();
            findings.addAll(result.findings());
            notes.add("kerf of " + Words.number(kerf, 4) + " mm is in: outer contours grown,"
                    + " holes shrunk by half of it; switch off any correction in the machine");
        }
        TabPlan tabs = tabs(made, process.get(), stock.get(), cutting);
        LeadPlan leads = LeadPlan.NONE;
        if (cutting.leadIn() > 0 && isBurnt(process.get())) {
            // beyond the gap the lead would run into a neighbour on the sheet
            double room = cutting.sheet().isPresent() ? cutting.sheet().get().gap() : cutting.leadIn();
            leads = new LeadPlan(Math.min(cutting.leadIn(), room), working(made));
            made = started(made, leads);
        }
        parts.put(part.name(), new Prepared(made, process.get(), stock.get(), cutting, kerf, tabs, leads, notes));
    }

    /** Only beams burn a pit where they begin: a knife does not, and etching and printing have no beginning. */
    private static boolean isBurnt(MakingProcess process) {
        return !process.makesLayers() && process.kerf() > 0;
    }

    private static Part started(Part part, LeadPlan leads) {
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : part.layers()) {
            List<Region> regions = new ArrayList<>();
            for (Region region : layer.regions()) {
                regions.add(leads.started(region));
            }
            layers.add(layer.withRegions(regions));
        }
        return part.withLayers(layers);
    }

    /** Tabs as asked for; etched sheets always have some, as nothing else would hold their parts. */
    private TabPlan tabs(Part part, MakingProcess process, Stock stock, Cutting cutting) {
        boolean etched = SheetSet.isEtched(process) && cutting.sheet().isPresent();
        if (process.makesLayers() || cutting.tabs().isEmpty() && !etched) {
            return TabPlan.NONE;
        }
        Cutting.Tabs asked = cutting.tabs().orElse(new Cutting.Tabs(2, OptionalDouble.empty()));
        double web = process.web(stock.thickness().orElse(part.zTo() - part.zFrom()));
        TabPlan plan =
                new TabPlan(asked.count(), asked.width().orElse(web), kerf(cutting, process, stock), working(part));
        int room = plan.room(part);
        if (room < asked.count()) {
            double narrower = plan.narrower(part);
            Finding.Draft draft = Finding.of(TABS).about(part.name());
            findings.add((etched && room == 0 ? draft : draft.orWarn())
                    .atLeast(room, asked.count(), "1")
                    .says(
                            "fabricate.tabs",
                            Figure.mm(plan.width(), 3),
                            !Double.isNaN(narrower),
                            Figure.typed(narrower, 2)));
        }
        return plan;
    }

    /** What the part says; of toothed wheels that say nothing, all but the lands at their tips. */
    static List<Region> working(Part part) {
        boolean toothed = part.family().isToothed();
        if (!part.working().isEmpty() || !toothed) {
            return part.working();
        }
        List<Region> roots = new ArrayList<>();
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                Point centre = region.outer().centroid();
                double reach = 0;
                for (Segment segment : region.outer().segments()) {
                    reach = Math.max(reach, segment.start().distance(centre));
                    reach = Math.max(reach, segment.pointAt(0.5).distance(centre));
                }
                roots.add(Region.disc(centre, reach - TIP_LAND));
            }
        }
        return roots;
    }

    /** One line for all parts of a kerf whose outlines the beam can follow. */
    private void sayReached() {
        Map<Double, List<String>> reached = new TreeMap<>();
        for (Prepared part : parts.values()) {
            String name = part.part().name();
            boolean slit = false;
            for (Finding finding : findings) {
                slit |= finding.check().equals(Kerf.SLITS) && finding.subjects().contains(name);
            }
            if (part.kerf() > 0 && !slit) {
                reached.computeIfAbsent(part.kerf(), k -> new ArrayList<>()).add(name);
            }
        }
        reached.forEach((kerf, names) -> findings.add(Kerf.noSlits(names, kerf)));
    }
}
