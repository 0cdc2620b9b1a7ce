// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Place;

/** How each family of parts is made: as the spec says, or the defaults. */
public final class Fabrication {
    /** The families of parts. */
    public static final List<String> FAMILIES =
            List.of("blade", "ring", "plate", "spacer", "gear", "pulley", "pin", "jig");

    private static final String SHEET = "plain-sheet";
    private static final String SHEET_PROCESS = "fibre-laser";
    private static final String PRINT = "pla";
    private static final String PRINT_PROCESS = "filament-print";
    /** Blades up to this thickness are cut from sheet by default, mm (common practice, no source). */
    public static final double SHEET_LIMIT = 0.5;

    private final Map<String, Making> given;
    private final Map<String, Values> cutting;
    private final Values general;
    private final Catalogues catalogues;
    private final Place place;

    Fabrication(
            Map<String, Making> given,
            Map<String, Values> cutting,
            Values general,
            Catalogues catalogues,
            Place place) {
        this.given = given;
        this.cutting = cutting;
        this.general = general;
        this.catalogues = catalogues;
        this.place = place;
    }

    /** What the spec says of a family. */
    public Optional<Making> given(String family) {
        check(family);
        return Optional.ofNullable(given.get(family));
    }

    /**
     * How a family is made: as given, or by default cut from plain sheet (blades up to 0.5 mm) or printed (the rest).
     *
     * @param thickness of the parts, mm; it decides only where the spec does not
     * @throws ringleaf.spec.text.SpecRefused when a user's own catalogue has spoilt a default
     */
    public Making of(String family, double thickness) {
        Optional<Making> own = given(family);
        if (own.isPresent()) {
            return own.get().ofThickness(thickness);
        }
        boolean sheet = family.equals("blade") && thickness <= SHEET_LIMIT;
        MakingProcess process = catalogues.processes().require(sheet ? SHEET_PROCESS : PRINT_PROCESS);
        Stock stock = catalogues.stock().require(sheet ? SHEET : PRINT).ofThickness(thickness);
        return new Making(process, stock, false, place);
    }

    /**
     * How the files of a part are made ready for its machine. Kerf, tabs, leads and sheets belong to process and stock:
     * what any family says that is made so holds for all parts that are, over what is said for all. Spares belong to
     * the family.
     */
    public Cutting cutting(String family, String process, String stock) {
        List<Values> said = new ArrayList<>();
        for (Map.Entry<String, Values> each : cutting.entrySet()) {
            if (isMadeSo(each.getKey(), process, stock)) {
                said.add(each.getValue());
            }
        }
        return Cutting.of(general, said, Optional.ofNullable(cutting.get(family)), place);
    }

    private boolean isMadeSo(String family, String process, String stock) {
        Making own = given.get(family);
        if (own != null) {
            return own.process().name().equals(process) && own.stock().name().equals(stock);
        }
        boolean sheet = family.equals("blade") && process.equals(SHEET_PROCESS) && stock.equals(SHEET);
        return sheet || process.equals(PRINT_PROCESS) && stock.equals(PRINT);
    }

    /** Whether anything is asked beyond nominal outlines, a file for each part. */
    public boolean isCuttingAsked() {
        for (Field<?> field : FabricationFields.GENERAL.fields()) {
            if (general.isGiven(field)) {
                return true;
            }
        }
        for (Values own : cutting.values()) {
            for (Field<?> field : FabricationFields.FAMILY.fields()) {
                if (own.isGiven(field)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void check(String family) {
        if (!FAMILIES.contains(family)) {
            throw new IllegalArgumentException(family + " is no family of parts");
        }
    }
}
