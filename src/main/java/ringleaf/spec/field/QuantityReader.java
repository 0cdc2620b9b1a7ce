// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/**
 * Reads a number with its unit: decimals, fractions, mixed numbers, and sums and differences of those.
 *
 * <p>Numbers are read as the nearest double and multiplied once by their unit, so an inch keeps 25.4 mm exactly. What
 * other programs would read in silence as something else (octal, base 60, decimal commas) is refused with a reason.
 */
public final class QuantityReader {
    private static final int LONGEST = 80;

    private final String text;
    private final Quantity quantity;
    private final Unit bare;
    private int at;

    /**
     * What came of the reading.
     *
     * @param value inner value; meaningless when there is a reason
     * @param unit of the first term, or null when it was bare
     * @param reason why it is refused, or empty
     * @param hint what would help, or empty
     * @param offset place within the text that the reason is about, in code points
     */
    public record Result(double value, Unit unit, String reason, String hint, int offset) {
        public boolean refused() {
            return !reason.isEmpty();
        }
    }

    private static final class Refusal extends Exception {
        final String hint;
        final int offset;

        Refusal(String reason, String hint, int offset) {
            super(reason, null, false, false);
            this.hint = hint;
            this.offset = offset;
        }
    }

    private QuantityReader(String text, Quantity quantity, Unit bare) {
        this.text = text;
        this.quantity = quantity;
        this.bare = bare;
    }

    /**
     * Reads a text.
     *
     * @param bare what a number without a unit is in; ignored where the quantity needs a unit, null for plain numbers
     */
    public static Result read(String text, Quantity quantity, Unit bare) {
        QuantityReader reader = new QuantityReader(text, quantity, bare);
        try {
            NumberSpelling.check(text, quantity, LONGEST);
            return reader.sum();
        } catch (NumberSpelling.Misspelt e) {
            return new Result(Double.NaN, null, e.getMessage(), e.hint(), e.offset());
        } catch (Refusal e) {
            int offset = text.codePointCount(0, Math.min(e.offset, text.length()));
            return new Result(Double.NaN, null, e.getMessage(), e.hint, offset);
        }
    }

    private Result sum() throws Refusal {
        skipSpaces();
        double value = 0;
        Unit first = null;
        boolean isFirst = true;
        double sign = sign();
        while (true) {
            Unit[] used = new Unit[1];
            value += sign * term(used);
            first = isFirst ? used[0] : first;
            isFirst = false;
            skipSpaces();
            if (at == text.length()) {
                break;
            }
            char c = text.charAt(at);
            if (c != '+' && c != '-') {
                throw refusal("a + or - is missing before " + Shown.quoted(text.substring(at)), "", at);
            }
            if (!quantity.takesSums()) {
                throw refusal(quantity.words() + " is a single number here, not a sum", "", at);
            }
            sign = c == '+' ? 1 : -1;
            at++;
            skipSpaces();
        }
        if (Double.isInfinite(value) || Double.isNaN(value)) {
            throw refusal(Shown.quoted(text) + " is too large a number", "", 0);
        }
        return new Result(value, first, "", "", 0);
    }

    private double sign() {
        if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
            double sign = text.charAt(at) == '-' ? -1 : 1;
            at++;
            skipSpaces();
            return sign;
        }
        return 1;
    }

    private double term(Unit[] used) throws Refusal {
        int start = at;
        double number = number();
        boolean whole = isDigits(start, at);
        if (peek() == '/' && isDigit(at + 1)) {
            number = over(number, whole, start);
        } else if (whole) {
            number += mixedPart(start);
        }
        skipSpaces();
        Unit unit = unit();
        used[0] = unit;
        if (unit == null) {
            if (!quantity.takesBare()) {
                throw refusal(
                        quantity.words() + " needs a unit (" + quantity.spellings() + ")",
                        "write it like " + quantity.samples(),
                        at);
            }
            return bare == null ? number : bare.inner(number);
        }
        return unit.inner(number);
    }

    private double number() throws Refusal {
        int start = at;
        while (isDigit(at)) {
            at++;
        }
        int wholeDigits = at - start;
        if (wholeDigits > 1 && text.charAt(start) == '0') {
            String plain = stripped(start, at);
            throw refusal(
                    text.substring(start, at) + " starts with a zero, which some programs read as octal",
                    "write " + plain,
                    start);
        }
        int fractionDigits = 0;
        if (peek() == '.') {
            int dot = at++;
            while (isDigit(at)) {
                at++;
            }
            fractionDigits = at - dot - 1;
        }
        if (wholeDigits + fractionDigits == 0) {
            at = start;
            throw refusal(
                    (start < text.length() ? Shown.quoted(text.substring(start)) : "nothing") + " is not "
                            + quantity.words() + " (" + quantity.samples() + ")",
                    "",
                    start);
        }
        exponent();
        double value = Double.parseDouble(text.substring(start, at));
        if (Double.isInfinite(value)) {
            throw refusal(Shown.quoted(text.substring(start, at)) + " is too large a number", "", start);
        }
        return value;
    }

    private void exponent() {
        if (peek() != 'e' && peek() != 'E') {
            return;
        }
        int next = at + 1;
        if (next < text.length() && (text.charAt(next) == '+' || text.charAt(next) == '-')) {
            next++;
        }
        if (!isDigit(next)) {
            return;
        }
        while (isDigit(next)) {
            next++;
        }
        at = next;
    }

    private double over(double numerator, boolean whole, int start) throws Refusal {
        int slash = at++;
        int from = at;
        while (isDigit(at)) {
            at++;
        }
        double denominator = Double.parseDouble(text.substring(from, at));
        if (!whole || peek() == '.') {
            throw refusal("a fraction is made of whole numbers, like 3/8", "", start);
        }
        if (denominator == 0) {
            throw refusal("a fraction over zero", "", slash);
        }
        return numerator / denominator;
    }

    /** The fraction of a mixed number such as {@code 2 1/2}; 0 when there is none. */
    private double mixedPart(int start) throws Refusal {
        int end = at;
        if (peek() == '-' && isDigit(at + 1) && hasSlashAfterDigits(at + 1)) {
            throw refusal(
                    Shown.quoted(text.substring(start)) + " can mean a mixed number or a difference",
                    "write a mixed number with a space (2 1/2 in), a difference with spaces and units (2in - 1/2in)",
                    start);
        }
        skipSpaces();
        int from = at;
        if (at == end || !isDigit(at) || !hasSlashAfterDigits(at)) {
            at = end;
            return 0;
        }
        while (isDigit(at)) {
            at++;
        }
        double part = over(Double.parseDouble(text.substring(from, at)), true, from);
        if (part >= 1) {
            throw refusal("the fraction of a mixed number is below 1, and not " + text.substring(from, at), "", from);
        }
        return part;
    }

    private boolean hasSlashAfterDigits(int from) {
        int i = from;
        while (isDigit(i)) {
            i++;
        }
        return i < text.length() && text.charAt(i) == '/' && isDigit(i + 1);
    }

    /** The unit that stands here, or null when none does. */
    private Unit unit() throws Refusal {
        if (at == text.length() || peek() == '+' || peek() == '-') {
            return null;
        }
        Unit longest = null;
        for (Unit unit : quantity.units()) {
            if (text.startsWith(unit.spelling(), at)
                    && (longest == null
                            || unit.spelling().length() > longest.spelling().length())) {
                longest = unit;
            }
        }
        int end = at + (longest == null ? 0 : longest.spelling().length());
        boolean goesOn = end < text.length() && Character.isLetterOrDigit(text.charAt(end));
        if (longest != null && !goesOn) {
            at = end;
            return longest;
        }
        if (longest == null && isDigit(at)) {
            return null;
        }
        throw unknownUnit();
    }

    private Refusal unknownUnit() {
        int end = at;
        while (end < text.length() && " +-".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        String typed = text.substring(at, end);
        if (quantity.units().isEmpty()) {
            return refusal("a plain number, without " + Shown.quoted(typed) + ", is wanted here", "", at);
        }
        List<String> spellings = new ArrayList<>();
        for (Unit unit : quantity.units()) {
            spellings.add(unit.spelling());
        }
        Optional<String> guess = Nearest.of(typed, spellings);
        return refusal(
                Shown.quoted(typed) + " is not a unit of " + quantity.words() + " (" + quantity.spellings() + ")",
                guess.isPresent() ? "did you mean " + guess.get() + "?" : "",
                at);
    }

    private String stripped(int from, int to) {
        int i = from;
        while (i < to - 1 && text.charAt(i) == '0') {
            i++;
        }
        return text.substring(i, to);
    }

    private boolean isDigits(int from, int to) {
        for (int i = from; i < to; i++) {
            if (!isDigit(i)) {
                return false;
            }
        }
        return to > from;
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    private boolean isDigit(int index) {
        return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }

    private void skipSpaces() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    private static Refusal refusal(String reason, String hint, int offset) {
        return new Refusal(reason, hint, offset);
    }

    /** An inner value in its shown unit, for messages and tables: {@code 5000 mm}. */
    public static String shown(double inner, Quantity quantity) {
        Unit unit = quantity.shown();
        if (unit == null) {
            return Decimal.of(inner);
        }
        String number = Decimal.of(unit.from(inner));
        return unit.spelling().equals("%") ? number + '%' : number + ' ' + unit.spelling();
    }
}
