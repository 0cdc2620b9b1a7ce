// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringleaf.spec.FabricationFields;
import ringleaf.spec.MechanismSpec;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.FieldSet;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Numeric;
import ringleaf.spec.field.Quantity;
import ringleaf.spec.field.Unit;
import ringleaf.spec.shared.Catalogues;

/**
 * Every field that a spec could hold, each with the values at which something may break: its bounds, the values beside
 * them and three inside; every option and every name of a catalogue.
 */
final class SweptFields {
    private final Catalogues catalogues;
    private final List<List<String>> cases = new ArrayList<>();

    private SweptFields(Catalogues catalogues) {
        this.catalogues = catalogues;
    }

    /** Options of the command line, {@code path=value}, of each case. */
    static List<List<String>> of(Run run) {
        SweptFields swept = new SweptFields(run.document().catalogues());
        for (MechanismSpec mechanism : run.document().mechanisms()) {
            swept.fields(mechanism.name(), mechanism.kind().fields(), List.of());
        }
        swept.fields("fabrication", FabricationFields.GENERAL, List.of());
        swept.fields("fabrication.plate", FabricationFields.ofFamily(), List.of());
        return swept.cases;
    }

    private void fields(String path, FieldSet fields, List<String> around) {
        for (Field<?> field : fields.fields()) {
            List<String> with = new ArrayList<>(around);
            with.addAll(needed(path, fields, field));
            field(path + "." + field.name(), field, with);
        }
    }

    private void field(String path, Field<?> field, List<String> with) {
        if (field.inner() != null && field.takes().startsWith("list")) {
            for (Field<?> inner : field.inner().fields()) {
                for (String value : values(inner)) {
                    add(with, path, "[{" + inList(field.inner(), inner, value) + "}]");
                }
            }
            return;
        }
        if (field.inner() != null) {
            fields(path, field.inner(), with);
        }
        for (String value : values(field)) {
            add(with, path, value);
        }
    }

    private void add(List<String> with, String path, String value) {
        List<String> sets = new ArrayList<>(with);
        sets.add(path + "=" + value);
        cases.add(sets);
    }

    /** What else must stand in the same map, by the examples of its fields. */
    private static List<String> needed(String path, FieldSet fields, Field<?> but) {
        List<String> sets = new ArrayList<>();
        for (Field<?> each : fields.fields()) {
            // what a mechanism itself requires stands in its spec
            if (path.chars().filter(c -> c == '.').count() > 0
                    && each.isRequired()
                    && each != but
                    && !path.startsWith("fabrication.plate")
                    && !each.examples().isEmpty()) {
                sets.add(path + "." + each.name() + "=" + each.examples().get(0));
            }
        }
        return sets;
    }

    private static String inList(FieldSet fields, Field<?> one, String value) {
        List<String> words = new ArrayList<>();
        for (Field<?> each : fields.fields()) {
            if (each == one) {
                words.add(each.name() + ": " + value);
            } else if (each.isRequired()) {
                String example = each.examples().isEmpty()
                        ? middle(each)
                        : each.examples().get(0);
                words.add(each.name() + ": " + example);
            }
        }
        return String.join(", ", words);
    }

    private static String middle(Field<?> field) {
        return field.numeric() == null ? field.options().get(0) : "10";
    }

    private Set<String> values(Field<?> field) {
        Set<String> values = new LinkedHashSet<>();
        if (field.numeric() != null) {
            numbers(field.numeric(), values);
        }
        values.addAll(field.options());
        if (!field.catalogue().isEmpty()) {
            values.addAll(names(field.catalogue()));
        }
        if (field.takes().equals("true | false")) {
            values.addAll(List.of("true", "false"));
        }
        return values;
    }

    private Collection<String> names(String catalogue) {
        return catalogues.named(catalogue.replace(".yaml", "")).names();
    }

    private static void numbers(Numeric numeric, Set<String> values) {
        Unit unit = numeric.shown(LengthUnit.MM);
        double least = unit == null ? numeric.least() : unit.from(numeric.least());
        double most = unit == null ? numeric.most() : unit.from(numeric.most());
        double beside = numeric.whole() ? 1 : Math.max(1e-3 * Math.min(Math.abs(most - least), 1), 1e-6);
        List<Double> all = new ArrayList<>(List.of(least - beside, least, least + beside));
        double low = Math.max(least, Math.min(most / 100, 0.1));
        for (int i = 1; i <= 3; i++) {
            double part = i / 4.0;
            all.add(
                    least < 0 || numeric.quantity() == Quantity.ANGLE
                            ? least + part * (most - least)
                            : low * Math.pow(most / low, part));
        }
        all.addAll(List.of(most - beside, most, most + beside));
        for (double value : all) {
            values.add(numeric.text(value, LengthUnit.MM));
        }
    }
}
