// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/**
 * The size of teeth: a module, whose bare number is in mm, or a diametral pitch such as {@code 24dp}, teeth to an inch
 * of the reference diameter; its module is 25.4 mm over that number, by definition.
 *
 * @param length how a module is read
 */
record ModuleType(QuantityType length) implements FieldType<Double> {
    private static final String PITCH = "dp";
    private static final double INCH = 25.4;
    private static final double ROUNDING = 1e-9;
    private static final String PATTERN = "^ *[0-9]+(\\.[0-9]*)? *dp *$";

    @Override
    public Double read(Node node, Place place, Reading reading) {
        if (!(node instanceof Node.Scalar scalar) || !scalar.text().trim().endsWith(PITCH)) {
            return length.read(node, place, reading);
        }
        String text = scalar.text();
        String number = text.substring(0, text.lastIndexOf(PITCH));
        QuantityReader.Result result = QuantityReader.read(number, Quantity.NUMBER, null);
        if (result.refused() || !(result.value() > 0)) {
            String reason = result.refused() ? result.reason() : Shown.quoted(text) + " is no diametral pitch";
            reading.problems().at(place, reason, "write a diametral pitch like 24dp");
            return null;
        }
        double module = INCH / result.value();
        Range range = length.range();
        boolean fine = module < range.least() * (1 - ROUNDING);
        if (fine || module > range.most() * (1 + ROUNDING)) {
            double bound = fine ? range.least() : range.most();
            double nearest = INCH / bound;
            double whole = fine ? Math.floor(nearest) : Math.ceil(nearest);
            double shown = Math.abs(nearest - Math.rint(nearest)) < ROUNDING ? Math.rint(nearest) : whole;
            reading.problems()
                    .nearest(
                            place,
                            Shown.quoted(text) + " is a module of " + QuantityReader.shown(module, Quantity.LENGTH)
                                    + (fine ? ", below the least of " : ", above the most of ")
                                    + QuantityReader.shown(bound, Quantity.LENGTH) + " ("
                                    + (fine ? range.whyLeast() : range.whyMost()) + ")",
                            "the nearest that works is " + Decimal.of(shown) + PITCH);
            return bound;
        }
        return module;
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> pitch = new LinkedHashMap<>();
        pitch.put("type", "string");
        pitch.put("pattern", PATTERN);
        List<Object> ways = new ArrayList<>();
        if (length.schema(inMillimetres).get("anyOf") instanceof List<?> own) {
            ways.addAll(own);
        }
        ways.add(pitch);
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", ways);
        return either;
    }

    @Override
    public Numeric numeric() {
        return length.numeric();
    }

    @Override
    public String takes() {
        return length.takes() + " or diametral pitch (24dp)";
    }

    @Override
    public String limits() {
        return length.limits();
    }

    @Override
    public String reasons() {
        return length.reasons();
    }

    @Override
    public boolean lacksRange() {
        return length.lacksRange();
    }

    @Override
    public FieldType<Double> withLeast(double least, String why) {
        return new ModuleType((QuantityType) length.withLeast(least, why));
    }

    @Override
    public FieldType<Double> withMost(double most, String why) {
        return new ModuleType((QuantityType) length.withMost(most, why));
    }
}
