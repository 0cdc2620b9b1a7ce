// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Words;
import ringleaf.spec.text.Decimal;

/**
 * An entry of a user's own catalogue, as lines of YAML.
 *
 * @param topKey of the file: processes or stock
 * @param name of the entry
 * @param comments that stand above its values
 * @param keys of its values
 * @param values by those keys, each what stands behind the colon
 */
public record OwnEntry(String topKey, String name, List<String> comments, List<String> keys, List<String> values) {

    public OwnEntry {
        comments = List.copyOf(comments);
        keys = List.copyOf(keys);
        values = List.copyOf(values);
    }

    /** What was measured of a process. */
    public static OwnEntry process(Measured measured) {
        List<String> comments = new ArrayList<>();
        comments.add("measured on piece " + measured.coupon().id() + " of "
                + measured.coupon().stock() + ", " + measured.readings() + " readings");
        comments.add("within: how far the true value lies from it at most, in 95 of 100 such measurements");
        for (Measured.Value told : measured.told()) {
            double half = told.estimate().half();
            comments.add(told.key() + " " + number(told.estimate().value()) + (half > 0 ? " ± " + number(half) : "")
                    + (told.note().equals("%") ? " %" : " mm, " + told.note()));
        }
        return of("processes", measured.coupon().process(), comments, measured, measured.values());
    }

    /** The kerf, for the stock that was measured: it goes over that of the process. */
    public static OwnEntry stock(Measured measured) {
        List<Measured.Value> kerf = new ArrayList<>();
        for (Measured.Value value : measured.values()) {
            if (value.key().equals(Measured.KERF)) {
                kerf.add(value);
            }
        }
        List<String> comments = List.of("measured with " + measured.coupon().process() + " on piece "
                + measured.coupon().id());
        return of("stock", measured.coupon().stock(), comments, measured, kerf);
    }

    private static OwnEntry of(
            String topKey, String name, List<String> comments, Measured measured, List<Measured.Value> values) {
        List<String> keys = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (Measured.Value value : values) {
            Estimate e = value.estimate();
            keys.add(value.key());
            lines.add("{is: " + number(e.value()) + ", within: " + number(within(e)) + ", source: \"piece "
                    + measured.coupon().id() + ", " + number(e.low()) + " to " + number(e.high())
                    + " (95 %), standard uncertainty " + Decimal.of(e.u(), 2) + "; " + value.note() + "\"}");
        }
        return new OwnEntry(topKey, name, comments, keys, lines);
    }

    /** How far the interval reaches from the value on its longer side. */
    private static double within(Estimate e) {
        return Math.max(e.high() - e.value(), e.value() - e.low());
    }

    /** A ten thousandth of a millimetre is finer than anything that is measured here. */
    private static String number(double value) {
        return Words.number(value, 4);
    }

    /** The name as a key of YAML. */
    private String key() {
        boolean plain = !name.isEmpty() && Character.isLetter(name.charAt(0));
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            plain &= c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-' || c == '.';
        }
        return plain ? name : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** The lines of the whole entry, indented by two spaces. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("  " + key() + ":");
        lines.addAll(inner("    "));
        return lines;
    }

    /** The lines below the name: comments, then values. */
    List<String> inner(String indent) {
        List<String> lines = new ArrayList<>();
        for (String comment : comments) {
            lines.add(indent + "# " + comment);
        }
        for (int i = 0; i < keys.size(); i++) {
            lines.add(indent + keys.get(i) + ": " + values.get(i));
        }
        return lines;
    }
}
