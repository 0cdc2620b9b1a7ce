// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.Decimals;
import ringleaf.draw.sheet.SheetItem;
import ringleaf.draw.sheet.SheetUnit;
import ringleaf.part.Choice;
import ringleaf.part.Design;
import ringleaf.part.Dimension;
import ringleaf.part.Part;

/**
 * What a design states of the teeth of one of its parts, found by the names of dimensions: those that begin with the
 * part's own name are its own, those without a part's name belong to all.
 */
public final class PartData {
    private static final int DECIMALS = 3;
    /** Ends of names and what a drawing calls them, in the order of the table. */
    private static final String[][] WORDS = {
        {"teeth", "teeth"},
        {"teeth-full", "teeth, full circle"},
        {"teeth-cut", "teeth cut"},
        {"profile-shift", "profile shift, modules"},
        {"reference-diameter", "reference diameter"},
        {"pitch-diameter", "pitch diameter"},
        {"outside-diameter", "outside diameter"},
        {"tip-diameter", "tip diameter"},
        {"root-diameter", "root diameter"},
        {"span", "span"},
        {"face-width", "face width"},
        {"diameter", "diameter"}
    };

    private static final String[][] SHARED = {
        {"module", "module"},
        {"pressure-angle", "pressure angle"},
        {"pitch", "pitch"},
        {"backlash", "backlash of the pair"}
    };

    private PartData() {}

    /** The lines of the table, none for a part without teeth. */
    public static List<SheetItem.Datum> of(Design design, Part part, SheetUnit unit) {
        List<SheetItem.Datum> all = new ArrayList<>();
        for (String owner : owners(part)) {
            List<SheetItem.Datum> own = new ArrayList<>();
            for (String[] word : WORDS) {
                String suffix = word[1].equals("span") ? span(design, owner) : word[1];
                dimension(design, owner + word[0]).ifPresent(d -> own.add(datum(suffix, d, unit)));
            }
            if (!own.isEmpty()) {
                String stage = stage(owner);
                if (!stage.isEmpty()) {
                    all.add(new SheetItem.Datum(
                            "as the " + owner.substring(stage.length(), owner.length() - 1) + " of stage",
                            stage.substring(6, stage.length() - 1)));
                }
                if (all.isEmpty() || !stage.isEmpty()) {
                    belt(design, all);
                    for (String[] word : SHARED) {
                        dimension(design, stage + word[0]).ifPresent(d -> all.add(datum(word[1], d, unit)));
                    }
                }
                all.addAll(own);
            }
        }
        return all;
    }

    /** The involute teeth of a part that has one kind of them; of pulleys and of wheels with two kinds there is none. */
    public static Optional<SheetItem.Involute> involute(Design design, Part part) {
        SheetItem.Involute found = null;
        for (String owner : owners(part)) {
            String stage = stage(owner);
            Optional<Dimension> teeth =
                    dimension(design, owner + "teeth").or(() -> dimension(design, owner + "teeth-full"));
            Optional<Dimension> module = dimension(design, stage + "module");
            Optional<Dimension> angle = dimension(design, stage + "pressure-angle");
            if (teeth.isPresent() && module.isPresent() && angle.isPresent()) {
                if (found != null) {
                    return Optional.empty();
                }
                found = new SheetItem.Involute(
                        (int) Math.rint(teeth.get().value()),
                        module.get().value(),
                        Math.toRadians(angle.get().value()));
            }
        }
        return Optional.ofNullable(found);
    }

    /** The beginning {@code stage-n-} of a train's names, or nothing. */
    private static String stage(String owner) {
        return owner.startsWith("stage-") ? owner.substring(0, owner.indexOf('-', 6) + 1) : "";
    }

    /** Beginnings of the names that mean this part, with their hyphens. */
    private static List<String> owners(Part part) {
        String name = part.name();
        List<String> owners = new ArrayList<>();
        switch (part.family()) {
            case GEAR -> {
                owners.add(name + "-");
                if (name.equals("gear")) {
                    owners.add("");
                } else if (name.startsWith("gear-") && isNumber(name.substring(5))) {
                    int shaft = Integer.parseInt(name.substring(5));
                    owners.add("stage-" + (shaft - 1) + "-driven-");
                    owners.add("stage-" + shaft + "-driver-");
                }
            }
            case PULLEY -> {
                if (name.equals("pulley")) {
                    owners.add("");
                } else if (name.endsWith("-pulley")) {
                    owners.add(name.substring(0, name.length() - "pulley".length()));
                }
            }
            case RING -> owners.add("sector-");
            default -> {
                // no teeth
            }
        }
        return owners;
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && text.length() < 4 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private static void belt(Design design, List<SheetItem.Datum> all) {
        for (Choice choice : design.choices()) {
            if (choice.name().equals("belt")) {
                all.add(new SheetItem.Datum("belt", choice.value()));
            }
        }
    }

    private static String span(Design design, String owner) {
        return dimension(design, owner + "span-teeth")
                .map(d -> "span over " + Decimals.of(d.value(), 0) + " teeth")
                .orElse("span");
    }

    private static Optional<Dimension> dimension(Design design, String name) {
        for (Dimension dimension : design.dimensions()) {
            if (dimension.name().equals(name)) {
                return Optional.of(dimension);
            }
        }
        return Optional.empty();
    }

    private static SheetItem.Datum datum(String name, Dimension dimension, SheetUnit unit) {
        if (dimension.unit().equals("mm") && !name.equals("module")) {
            return new SheetItem.Datum(name, unit.length(dimension.value()));
        }
        String value = Decimals.of(dimension.value(), DECIMALS);
        return new SheetItem.Datum(name, dimension.unit().equals("deg") ? value + "\u00B0" : value);
    }
}
