// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.spec.text.Node;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Shown;

/**
 * A number with its unit.
 *
 * @param quantity what kind of number
 * @param alwaysMm whether a bare length is in mm whatever the document's units, as a module is
 * @param range what it may be; null while it was not stated
 */
record QuantityType(Quantity quantity, boolean alwaysMm, Range range) implements FieldType<Double> {

    @Override
    public Double read(Node node, Place place, Reading reading) {
        Node.Scalar scalar = FieldType.scalar(node, place, quantity.words(), reading);
        if (scalar == null) {
            return null;
        }
        Unit bare = bareUnit(reading.units());
        QuantityReader.Result result = QuantityReader.read(scalar.text(), quantity, bare);
        if (result.refused()) {
            Place exact = scalar.plain() ? place.shifted(result.offset()) : place;
            reading.problems().at(exact, result.reason(), result.hint());
            return null;
        }
        Unit used = result.unit() == null ? bare : result.unit();
        String written = Shown.quoted(scalar.text());
        return NumberType.within(result.value(), written, used, quantity, range, place, reading);
    }

    private Unit bareUnit(LengthUnit units) {
        if (quantity == Quantity.LENGTH) {
            return alwaysMm ? LengthUnit.MM.unit() : units.unit();
        }
        return quantity.takesBare() ? quantity.shown() : null;
    }

    @Override
    public Map<String, Object> schema(boolean inMillimetres) {
        Map<String, Object> text = new LinkedHashMap<>();
        text.put("type", "string");
        text.put("pattern", SchemaText.pattern(quantity));
        if (!quantity.takesBare()) {
            return text;
        }
        boolean exact = inMillimetres || alwaysMm || quantity != Quantity.LENGTH;
        Map<String, Object> number = new LinkedHashMap<>();
        number.put("type", "number");
        number.put("minimum", exact ? range.least() : SchemaText.loosest(range.least(), false));
        number.put("maximum", exact ? range.most() : SchemaText.loosest(range.most(), true));
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", List.of(number, text));
        return either;
    }

    @Override
    public Numeric numeric() {
        double least = quantity.inner(range.least());
        return new Numeric(quantity, false, alwaysMm, least, quantity.inner(range.most()));
    }

    @Override
    public String takes() {
        String words = quantity.words().substring(quantity.words().indexOf(' ') + 1);
        return alwaysMm ? words + " (bare: mm)" : words;
    }

    @Override
    public String limits() {
        return range == null ? "" : range.text(quantity);
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
        return new QuantityType(quantity, alwaysMm, new Range(least, why, old.most(), old.whyMost()));
    }

    @Override
    public FieldType<Double> withMost(double most, String why) {
        Range old = range == null ? new Range(-Double.MAX_VALUE, why, most, why) : range;
        return new QuantityType(quantity, alwaysMm, new Range(old.least(), old.whyLeast(), most, why));
    }

    @Override
    public FieldType<Bound> bound() {
        return new BoundType(this);
    }
}
