// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

/** Whole numbers as they are typed: plain digits and nothing else, whatever the locale. */
final class Digits {
    private static final int MOST = 12;

    private Digits() {}

    /** The number, or -1 where the text is no whole number or one of more than twelve digits. */
    static long of(String text) {
        boolean digits = !text.isEmpty() && text.length() <= MOST;
        for (int i = 0; digits && i < text.length(); i++) {
            digits = text.charAt(i) >= '0' && text.charAt(i) <= '9';
        }
        return digits ? Long.parseLong(text) : -1;
    }
}
