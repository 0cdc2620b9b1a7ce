// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/**
 * A ratio of two turns: {@code 5:3}, {@code 5/3} or a plain number.
 *
 * @param range what it may be; null while it was not stated
 */
record RatioType(Range range) implements FieldType<Double> {
    private static final String WANTED = "a ratio like 5:3";
    private static final String PATTERN = "^ *[0-9]+(\\.[0-9]*)?( *[:/] *[0-9]+(\\.[0-9]*)?)? *$";

    @Override
    public Double read(Node node, Place place, Reading reading) {
        Node.Scalar scalar = FieldType.scalar(node, place, WANTED, reading);
        if (scalar == null) {
            return null;
        }
        String text = scalar.text();
        int colon = text.indexOf(':');
        double value;
        if (colon < 0) {
            value = number(text, place, reading);
        } else {
            double first = number(text.substring(0, colon).trim(), place, reading);
            double second = number(text.substring(colon + 1).trim(), place, reading);
            if (second == 0) {
                reading.problems().at(place, Shown.quoted(text) + " is a ratio to zero", "write " + WANTED);
                return null;
            }
            value = first / second;
        }
        if (Double.isNaN(value)) {
            return null;
        }
        return NumberType.within(value, Shown.quoted(text), null, Quantity.NUMBER, range, place, reading);
    }

    /** One of the two numbers; not a number after it was reported. */
    private static double number(String text, Place place, Reading reading) {
        QuantityReader.Result result = QuantityReader.read(text, Quantity.NUMBER, null);
        if (result.refused()) {
            reading.problems().at(place, result.reason(), "write " + WANTED);
            return Double.NaN;
        }
        return result.value();
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> number = new LinkedHashMap<>();
        number.put("type", "number");
        number.put("minimum", range.least());
        number.put("maximum", range.most());
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("type", "string");
        text.put("pattern", PATTERN);
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", List.of(number, text));
        return either;
    }

    @Override
    public Numeric numeric() {
        return new Numeric(Quantity.NUMBER, false, false, range.least(), range.most());
    }

    @Override
    public String takes() {
        return "ratio";
    }

    @Override
    public String limits() {
        return range == null ? "" : range.text(Quantity.NUMBER);
    }

    @Override
    public String reasons() {
        return range == null ? "" : range.reasons();
    }

    @Override
    public boolean lacksRange() {
        return range == null || Math.max(Math.abs(range.least()), Math.abs(range.most())) > 1e12;
    }

    @Override
    public FieldType<Double> withLeast(double least, String why) {
        Range old = range == null ? new Range(least, why, Double.MAX_VALUE, why) : range;
        return new RatioType(new Range(least, why, old.most(), old.whyMost()));
    }

    @Override
    public FieldType<Double> withMost(double most, String why) {
        Range old = range == null ? new Range(-Double.MAX_VALUE, why, most, why) : range;
        return new RatioType(new Range(old.least(), old.whyLeast(), most, why));
    }
}
