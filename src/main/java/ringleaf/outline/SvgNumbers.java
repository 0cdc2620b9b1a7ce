// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

/** Takes numbers and letters one by one from an attribute, as SVG's grammars part them. */
final class SvgNumbers {
    private final String text;
    private int at;

    SvgNumbers(String text) {
        this.text = text;
    }

    /** Where reading stands, counted from 1. */
    int position() {
        return at + 1;
    }

    boolean isDone() {
        skip();
        return at >= text.length();
    }

    /** The next letter without taking it; 0 where a number or nothing comes. */
    char letter() {
        skip();
        char next = at < text.length() ? text.charAt(at) : 0;
        return Character.isLetter(next) ? next : 0;
    }

    char takeLetter() {
        char letter = letter();
        at++;
        return letter;
    }

    /** The next number; not a number where none stands. */
    double number() {
        skip();
        int from = at;
        sign();
        digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits();
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            int mark = at++;
            sign();
            int digits = at;
            digits();
            at = at == digits ? mark : at;
        }
        try {
            double value = Double.parseDouble(text.substring(from, at));
            return Math.abs(value) < 1e9 ? value : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** A flag of an arc is one figure, and the next number may follow without a gap. */
    double flag() {
        skip();
        char next = at < text.length() ? text.charAt(at++) : 0;
        return next == '0' ? 0 : next == '1' ? 1 : Double.NaN;
    }

    private void sign() {
        if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
            at++;
        }
    }

    private void digits() {
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
    }

    private void skip() {
        while (at < text.length() && (text.charAt(at) <= ' ' || text.charAt(at) == ',')) {
            at++;
        }
    }
}
