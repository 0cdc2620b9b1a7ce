// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Reading;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** Reads how families of parts are made, and refuses what a process cannot make. */
final class FabricationReader {
    private final Catalogues catalogues;
    private final Problems problems;
    private final LengthUnit units;
    private final Map<String, Values> cutting = new LinkedHashMap<>();

    /**
     * A reader.
     *
     * @param units of bare lengths
     */
    FabricationReader(Catalogues catalogues, Problems problems, LengthUnit units) {
        this.catalogues = catalogues;
        this.units = units;
        this.problems = problems;
    }

    /** The fabrication; {@code node} is null when the spec says nothing of it. */
    Fabrication read(Node node, Place document) {
        Place fabrication = document.named(RootFields.FABRICATION);
        Map<String, Making> makings = new LinkedHashMap<>();
        Map<String, Node.Entry> general = new LinkedHashMap<>();
        if (node instanceof Node.Mapping families) {
            for (Map.Entry<String, Node.Entry> each : families.entries().entrySet()) {
                String family = each.getKey();
                Place place = each.getValue().keyPlace().named(RootFields.FABRICATION + '.' + Shown.quoted(family));
                if (FabricationFields.GENERAL.find(family) != null) {
                    general.put(family, each.getValue());
                } else {
                    String meant = family(family, families, place);
                    if (!meant.isEmpty()) {
                        making(meant, each.getValue().value(), place).ifPresent(m -> makings.put(meant, m));
                    }
                }
            }
        } else if (node != null) {
            String reason = "a map of families is wanted, and not " + node.shape();
            problems.at(node.place().named(RootFields.FABRICATION), reason, "e.g. blade: {stock: brass-0.15}");
        }
        Values all = FabricationFields.GENERAL.bind(
                new Node.Mapping(fabrication, general), fabrication, new Reading(units, problems));
        checkAgreement(makings);
        return new Fabrication(makings, cutting, all, catalogues, fabrication);
    }

    /** What is cut from one stock by one process lies on the same sheets and is burnt by the same beam. */
    private void checkAgreement(Map<String, Making> makings) {
        List<String> families = new ArrayList<>(makings.keySet());
        for (int i = 0; i < families.size(); i++) {
            for (int k = 0; k < i; k++) {
                Making one = makings.get(families.get(i));
                Making other = makings.get(families.get(k));
                boolean alike = one.process().name().equals(other.process().name())
                        && one.stock().name().equals(other.stock().name());
                Values own = cutting.get(families.get(i));
                Optional<Field<?>> field =
                        alike ? Cutting.contradicted(own, cutting.get(families.get(k))) : Optional.empty();
                if (field.isPresent()) {
                    String reason = "says something else than " + families.get(k) + " does, and both are "
                            + one.stock().name() + " from one " + one.process().name();
                    String hint =
                            "say it once, under " + families.get(k) + " or " + families.get(i) + ": it holds for both";
                    problems.at(own.where(field.get()), reason, hint);
                }
            }
        }
    }

    /** The family of this name, or the one that is meant by it, after it was reported; empty where there is none. */
    private String family(String name, Node.Mapping families, Place place) {
        if (Fabrication.FAMILIES.contains(name)) {
            return name;
        }
        String reason = "there is no such family of parts";
        String hint = Nearest.hint(name, known());
        Optional<String> near = Nearest.of(name, known());
        if (near.isEmpty()
                || !Fabrication.FAMILIES.contains(near.get())
                || families.entries().containsKey(near.get())
                || cutting.containsKey(near.get())) {
            problems.at(place, reason, hint);
            return "";
        }
        problems.nearest(place, reason, hint);
        return near.get();
    }

    private static List<String> known() {
        List<String> known = new ArrayList<>(Fabrication.FAMILIES);
        for (Field<?> field : FabricationFields.GENERAL.fields()) {
            known.add(field.name());
        }
        return known;
    }

    private Optional<Making> making(String family, Node node, Place place) {
        if (!(node instanceof Node.Mapping map)) {
            problems.at(place, "a map with process: and stock: is wanted, and not " + node.shape());
            return Optional.empty();
        }
        Values values = RootFields.MAKING.bind(map, place, new Reading(units, problems));
        cutting.put(family, values);
        Optional<String> stockName = values.given(RootFields.STOCK);
        Optional<String> processName = values.given(RootFields.PROCESS);
        Optional<Stock> stock = Optional.empty();
        if (stockName.isPresent()) {
            stock = catalogues.stock().find(stockName.get(), values.where(RootFields.STOCK));
        }
        Optional<MakingProcess> process = Optional.empty();
        if (processName.isPresent()) {
            process = catalogues.processes().find(processName.get(), values.where(RootFields.PROCESS));
        } else if (stock.isPresent()) {
            String usual = stock.get().processes().get(0);
            process = catalogues.processes().find(usual, values.where(RootFields.STOCK));
        }
        if (stock.isEmpty() || process.isEmpty()) {
            return Optional.empty();
        }
        if (!fits(process.get(), stock.get(), values)) {
            process = catalogues.processes().get(stock.get().processes().get(0));
        }
        return process.isEmpty()
                ? Optional.empty()
                : Optional.of(new Making(process.get(), stock.get(), true, values.where(RootFields.STOCK)));
    }

    private boolean fits(MakingProcess process, Stock stock, Values values) {
        Place at = values.where(values.isGiven(RootFields.PROCESS) ? RootFields.PROCESS : RootFields.STOCK);
        if (!stock.isMadeBy(process.name())) {
            String reason = process.name() + " does not make parts of " + stock.name() + " (" + stock.material() + ")";
            problems.nearest(at, reason, "what does: " + String.join(", ", stock.processes()));
            return false;
        }
        if (stock.thickness().isPresent()
                && !process.makesThickness(stock.thickness().getAsDouble())) {
            String thickness = Decimal.of(stock.thickness().getAsDouble());
            String range = Decimal.of(process.thicknessFrom()) + " to " + Decimal.of(process.thicknessTo());
            String makes = stock.name() + " is " + thickness + " mm thick, and " + process.name() + " makes " + range;
            problems.nearest(at, makes, "");
            return false;
        }
        return true;
    }
}
