package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        String written = Shown.quoted(text) + " (module " + QuantityReader.shown(module, Quantity.LENGTH) + ")";
        return NumberType.within(module, written, null, Quantity.LENGTH, length.range(), place, reading)
                ? module
                : null;
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
