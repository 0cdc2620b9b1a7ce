// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.Map;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/**
 * A whole number.
 *
 * @param range what it may be; null while it was not stated
 */
record CountType(Range range) implements FieldType<Integer> {
    private static final String WANTED = "a whole number";

    @Override
    public Integer read(Node node, Place place, Reading reading) {
        Node.Scalar scalar = FieldType.scalar(node, place, WANTED, reading);
        if (scalar == null) {
            return null;
        }
        String written = Shown.quoted(scalar.text());
        if (!scalar.plain()) {
            reading.problems().at(place, "a whole number is wanted, and not a text in quotes", "remove the quotes");
            return null;
        }
        QuantityReader.Result result = QuantityReader.read(scalar.text(), Quantity.NUMBER, null);
        if (result.refused()) {
            reading.problems().at(place.shifted(result.offset()), result.reason(), result.hint());
            return null;
        }
        double value = NumberType.within(result.value(), written, null, Quantity.NUMBER, range, place, reading);
        if (value != result.value()) {
            return (int) value;
        }
        if (result.value() != Math.rint(result.value()) || scalar.text().indexOf('/') >= 0) {
            double nearest = Math.min(range.most(), Math.max(range.least(), Math.rint(result.value())));
            String hint = "the nearest that works is " + Decimal.of(nearest);
            reading.problems().nearest(place, written + " is not a whole number", hint);
            return (int) nearest;
        }
        return (int) result.value();
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> number = new LinkedHashMap<>();
        number.put("type", "integer");
        number.put("minimum", range.least());
        number.put("maximum", range.most());
        return number;
    }

    @Override
    public Numeric numeric() {
        return new Numeric(Quantity.NUMBER, true, false, range.least(), range.most());
    }

    @Override
    public String takes() {
        return "whole number";
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
        return range == null || Math.abs(range.least()) > 1e9 || Math.abs(range.most()) > 1e9;
    }

    @Override
    public FieldType<Integer> withLeast(double least, String why) {
        Range old = range == null ? new Range(least, why, Double.MAX_VALUE, why) : range;
        return new CountType(new Range(least, why, old.most(), old.whyMost()));
    }

    @Override
    public FieldType<Integer> withMost(double most, String why) {
        Range old = range == null ? new Range(-Double.MAX_VALUE, why, most, why) : range;
        return new CountType(new Range(old.least(), old.whyLeast(), most, why));
    }

    @Override
    public FieldType<Bound> bound() {
        return new BoundType(this);
    }
}
