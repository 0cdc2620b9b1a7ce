// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Trial;
import ringleaf.part.Dimension;
import ringleaf.part.Words;
import ringleaf.spec.Fabrication;
import ringleaf.spec.FabricationFields;
import ringleaf.spec.Making;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.field.Bound;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Named;
import ringleaf.spec.field.Numeric;
import ringleaf.spec.field.Unit;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Stock;

/** Lists what could be changed in a mechanism: every field that was given or has a default. */
final class Knobs {
    private final Kind kind;
    private final MechanismSpec mechanism;
    private final LengthUnit units;
    private final Fabrication fabrication;
    private final Trial trial;
    private final Variants.Reader reader;
    private final List<Knob> found = new ArrayList<>();
    /** Groups that the spec leaves out and that change nothing when they stand there empty. */
    private final List<String> harmless;

    /**
     * A list.
     *
     * @param trial of the mechanism as it is; it tells what defaults came to
     * @param harmless names of groups that may be written out although the spec has none
     */
    Knobs(Variants.Variant variant, String name, Trial trial, Variants.Reader reader, List<String> harmless) {
        this.mechanism = variant.mechanisms().get(variant.indexOf(name));
        this.kind = variant.kinds().get(variant.indexOf(name));
        this.units = variant.document().orElseThrow().units();
        this.fabrication = variant.document().orElseThrow().fabrication();
        this.trial = trial;
        this.reader = reader;
        this.harmless = harmless;
    }

    List<Knob> all() {
        List<String> root = List.of("mechanisms", mechanism.name());
        fields(kind.fields(), Optional.of(mechanism.values()), root);
        stocks();
        return found;
    }

    /** Sheet of another thickness that is sold, for families that are given one; with the thickness the spec tells. */
    private void stocks() {
        for (String family : Fabrication.FAMILIES) {
            Optional<Making> making = fabrication.given(family);
            if (making.isEmpty() || making.get().stock().thickness().isEmpty()) {
                continue;
            }
            Field<?> thickness = kind.fields().find(family + "-thickness");
            boolean told = thickness != null && mechanism.values().isGiven(thickness);
            List<String> names = new ArrayList<>();
            Map<String, Attempts.Setting> along = new HashMap<>();
            for (Stock other :
                    reader.thicker(making.get().stock(), making.get().process().name())) {
                names.add(other.name());
                if (told) {
                    List<String> keys = List.of(SpecPath.MECHANISMS, mechanism.name(), thickness.name());
                    String text = Words.number(other.thickness().orElseThrow(), 3) + "mm";
                    along.put(other.name(), new Attempts.Setting(keys, text));
                }
            }
            if (!names.isEmpty()) {
                SpecPath path = new SpecPath(
                        List.of("fabrication", family, "stock"),
                        FabricationFields.ofFamily().find("stock"));
                String now = making.get().stock().name();
                found.add(new Knob(
                        path, null, Double.NaN, now, names, false, false, new double[0], Double.NaN, units, along));
            }
        }
    }

    /** Groups that a spec leaves out. */
    static List<String> leftOut(MechanismSpec mechanism) {
        List<String> groups = new ArrayList<>();
        for (Field<?> field : mechanism.values().fields().fields()) {
            if (field.inner() != null
                    && field.catalogue().isEmpty()
                    && !mechanism.values().isGiven(field)) {
                groups.add(field.name());
            }
        }
        return groups;
    }

    private void fields(FieldSet fields, Optional<Values> values, List<String> above) {
        for (Field<?> field : fields.fields()) {
            List<String> keys = new ArrayList<>(above);
            keys.add(field.name());
            Object given = values.isPresent() ? values.get().given(field).orElse(null) : null;
            if (field.inner() != null && field.catalogue().isEmpty()) {
                if (given instanceof Values inner) {
                    fields(field.inner(), Optional.of(inner), keys);
                } else if (given == null && harmless.contains(field.name())) {
                    fields(field.inner(), Optional.empty(), keys);
                }
            } else if (field.numeric() != null) {
                number(field, given, keys);
            } else if (!field.options().isEmpty()) {
                names(field, given, keys, field.options());
            } else if (!field.catalogue().isEmpty()) {
                names(field, given, keys, reader.names(field.catalogue()));
                if (given instanceof Named named && named.own().isPresent()) {
                    fields(field.inner(), named.own(), keys);
                }
            }
        }
    }

    private void number(Field<?> field, Object given, List<String> keys) {
        if (given instanceof Bound bound) {
            if (bound.isExact()) {
                number(field, keys, bound.exactly().getAsDouble(), true, true, true);
                return;
            }
            limit(field, keys, "at-most", bound.atMost().orElse(Double.NaN), true);
            limit(field, keys, "at-least", bound.atLeast().orElse(Double.NaN), false);
            return;
        }
        double now = given instanceof Number number ? number.doubleValue() : byDefault(field, keys);
        if (!Double.isNaN(now)) {
            number(field, keys, now, true, true, false);
        }
    }

    private void limit(Field<?> field, List<String> keys, String which, double now, boolean up) {
        if (!Double.isNaN(now)) {
            List<String> full = new ArrayList<>(keys);
            full.add(which);
            number(field, full, now, !up, up, true);
        }
    }

    private void number(Field<?> field, List<String> keys, double inner, boolean down, boolean up, boolean isLimit) {
        Numeric numeric = field.numeric();
        Unit unit = numeric.shown(units);
        double now = unit == null ? inner : unit.from(inner);
        double[] sold = kind.sold(field.name());
        for (int i = 0; i < sold.length; i++) {
            sold[i] = unit == null ? sold[i] : unit.from(sold[i]);
        }
        SpecPath path = new SpecPath(keys, field);
        double goal = isLimit ? innerValue(field.name()) : Double.NaN;
        found.add(new Knob(
                path,
                numeric,
                now,
                numeric.text(now, units),
                List.of(),
                down,
                up,
                sold,
                unit == null ? goal : unit.from(goal),
                units));
    }

    /** What the design as it is came to, in inner units. */
    private double innerValue(String name) {
        for (Dimension dimension : trial.dimensions()) {
            if (dimension.name().equals(name)) {
                return dimension.unit().equals("deg") ? Math.toRadians(dimension.value()) : dimension.value();
            }
        }
        return Double.NaN;
    }

    /**
     * The default in inner units: as declared, or what the design shows as such; a field of a group is shown by its
     * group's name and its own, and then counts wherever it came from.
     */
    private double byDefault(Field<?> field, List<String> keys) {
        if (field.hasDefaultValue()) {
            return field.defaultValue() instanceof Number number ? number.doubleValue() : Double.NaN;
        }
        String grouped = keys.size() > 3 ? String.join("-", keys.subList(2, keys.size())) : "";
        for (Dimension dimension : trial.dimensions()) {
            boolean own = dimension.name().equals(field.name()) && dimension.origin() == Dimension.Origin.DEFAULT;
            if (own || dimension.name().equals(grouped)) {
                return dimension.unit().equals("deg") ? Math.toRadians(dimension.value()) : dimension.value();
            }
        }
        return Double.NaN;
    }

    private void names(Field<?> field, Object given, List<String> keys, List<String> all) {
        String now = given instanceof String text
                ? text
                : given instanceof Named named
                        ? named.name().orElse("as written out")
                        : given == null && field.hasDefaultValue() ? field.defaultText() : "";
        // What is left to the tool or the process is one of them; trying it again does no harm.
        now = now.isEmpty() ? "left open" : now;
        List<String> others = new ArrayList<>();
        for (String name : all) {
            if (!name.equals(now)) {
                others.add(name);
            }
        }
        if (!others.isEmpty()) {
            found.add(new Knob(
                    new SpecPath(keys, field),
                    null,
                    Double.NaN,
                    now,
                    others,
                    false,
                    false,
                    new double[0],
                    Double.NaN,
                    units));
        }
    }
}
