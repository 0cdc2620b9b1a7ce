// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Numeric;
import ringleaf.spec.field.QuantityReader;
import ringleaf.spec.field.Unit;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;

/** One value, or a range of values evenly apart, both ends included where the step meets them. */
interface Span {
    String DOTS = "..";
    /** Further ends of a range are no values any field takes. */
    double SLACK = 1e-9;

    /** How many values. */
    long size();

    /** The text of one of them, as it would stand in a spec. */
    String text(int i);

    /**
     * A value as it was typed.
     *
     * @param written text
     */
    record One(String written) implements Span {
        @Override
        public long size() {
            return 1;
        }

        @Override
        public String text(int i) {
            return written;
        }
    }

    /**
     * Values of one unit, counted in decimals so that 0.1, 0.2, 0.3 stay what they are.
     *
     * @param unit behind each number; empty for bare ones
     */
    record Evenly(BigDecimal from, BigDecimal step, long size, String unit) implements Span {
        @Override
        public String text(int i) {
            BigDecimal value = from.add(step.multiply(BigDecimal.valueOf(i)));
            BigDecimal shown = value.round(new MathContext(12)).stripTrailingZeros();
            return (shown.signum() == 0 ? "0" : shown.toPlainString()) + unit;
        }
    }

    /** Reads a value or a range; empty when it is wrong, which is then among the problems. */
    static Optional<Span> read(String item, SpecPath path, LengthUnit units, Place place, Problems problems) {
        if (item.isEmpty()) {
            problems.at(place, "has an empty value", "two commas stand together, or one at an end");
            return Optional.empty();
        }
        int dots = item.indexOf(DOTS);
        if (dots < 0 && path.numeric() != null && item.matches("[0-9.]+ *[-–] *[0-9.]+")) {
            problems.at(
                    place,
                    Shown.quoted(item) + " is no single number",
                    "a range has two dots: " + item.replaceFirst(" *[-–] *", DOTS));
            return Optional.empty();
        }
        if (dots < 0) {
            return Optional.of(new One(item));
        }
        Numeric numeric = path.numeric();
        if (numeric == null) {
            problems.at(
                    place,
                    "the range " + Shown.quoted(item) + " is not numeric: " + path.shown() + " takes no number",
                    "write its values with commas between them");
            return Optional.empty();
        }
        return new RangeReader(item, path, numeric, units, place, problems).read();
    }

    /** Reads one range. */
    final class RangeReader {
        private final String item;
        private final SpecPath path;
        private final Numeric numeric;
        private final LengthUnit units;
        private final Place place;
        private final Problems problems;

        RangeReader(String item, SpecPath path, Numeric numeric, LengthUnit units, Place place, Problems problems) {
            this.item = item;
            this.path = path;
            this.numeric = numeric;
            this.units = units;
            this.place = place;
            this.problems = problems;
        }

        private record End(BigDecimal number, Unit unit) {
            double inner() {
                return unit == null ? number.doubleValue() : unit.inner(number.doubleValue());
            }
        }

        Optional<Span> read() {
            String range = item;
            if (range.contains("...")) {
                return refused("has three dots where two stand between ends, as in 8..24");
            }
            long count = 0;
            int star = range.lastIndexOf('*');
            if (star >= 0) {
                count = count(range.substring(star + 1).trim());
                range = range.substring(0, star);
                if (count < 2) {
                    return refused("has no whole number from 2 up behind *, where the number of values stands");
                }
            }
            String[] parts = range.split("\\.\\.", -1);
            if (parts.length > 3 || star >= 0 && parts.length > 2) {
                return refused("is no range");
            }
            End from = end(parts[0].trim());
            End to = end(parts[1].trim());
            End step = parts.length == 3 ? end(parts[2].trim()) : null;
            if (from == null || to == null || parts.length == 3 && step == null) {
                return Optional.empty();
            }
            if (to.inner() < from.inner()) {
                return refused("is reversed, so that nothing lies in it: 0 combinations; write " + parts[1].trim()
                        + DOTS + parts[0].trim());
            }
            Unit unit = from.unit();
            BigDecimal low = from.number();
            BigDecimal high = in(to, unit);
            BigDecimal by;
            if (count > 0) {
                by = high.subtract(low).divide(BigDecimal.valueOf(count - 1), MathContext.DECIMAL64);
            } else {
                by = step == null ? BigDecimal.ONE : in(step, unit);
                if (by.signum() <= 0) {
                    return refused("has a step that is not above 0");
                }
                BigDecimal steps = high.subtract(low).divide(by, MathContext.DECIMAL64);
                double most = Math.floor(steps.doubleValue() + SLACK);
                count = most < 1e15 ? (long) most + 1 : Long.MAX_VALUE / 4;
                if (step == null && Math.abs(steps.doubleValue() - most) > SLACK) {
                    if (numeric.whole()) {
                        return refused(notWhole());
                    }
                    return refused("does not come out even in steps of 1; give a step, as in "
                            + parts[0].trim() + DOTS + parts[1].trim() + "..0.1, or a number of values, as in "
                            + parts[0].trim() + DOTS + parts[1].trim() + "*5");
                }
            }
            if (numeric.whole() && !(isWhole(low) && isWhole(by))) {
                return refused(notWhole());
            }
            return Optional.of(new Evenly(low, by, count, unit == null || !written(parts[0]) ? "" : unit.spelling()));
        }

        private boolean written(String text) {
            char last = text.trim().charAt(text.trim().length() - 1);
            return !(last >= '0' && last <= '9' || last == '.');
        }

        private static boolean isWhole(BigDecimal value) {
            return value.stripTrailingZeros().scale() <= 0;
        }

        private static BigDecimal in(End end, Unit unit) {
            if (unit == null || end.unit() == null || end.unit().equals(unit)) {
                return end.number();
            }
            return new BigDecimal(unit.from(end.inner())).round(new MathContext(14));
        }

        private static long count(String text) {
            if (text.isEmpty() || text.length() > 9 || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
                return -1;
            }
            return Long.parseLong(text);
        }

        private String notWhole() {
            return "names values that are not whole, and " + path.shown() + " takes whole numbers";
        }

        private Optional<Span> refused(String reason) {
            problems.at(place, "the range " + Shown.quoted(item) + " " + reason);
            return Optional.empty();
        }

        /** An end or a step; null, after it was reported, when it is no number. */
        private End end(String text) {
            Unit bare = numeric.bare(units);
            QuantityReader.Result result = QuantityReader.read(text, numeric.quantity(), bare);
            if (result.refused()) {
                problems.at(
                        place,
                        "the range " + Shown.quoted(item) + " is not numeric: "
                                + (text.isEmpty() ? "an end is missing" : result.reason()),
                        text.isEmpty() ? "both ends stand, as in 8..24" : result.hint());
                return null;
            }
            Unit unit = result.unit() == null ? bare : result.unit();
            double number = unit == null ? result.value() : unit.from(result.value());
            return new End(new BigDecimal(Decimal.of(number, 12)), unit);
        }
    }
}
