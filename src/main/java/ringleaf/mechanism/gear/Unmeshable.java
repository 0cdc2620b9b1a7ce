// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

/** Two gears that cannot mesh as asked; the message says why, for people. */
final class Unmeshable extends Exception {
    private static final long serialVersionUID = 1;
    private static final int DECIMALS = 3;

    Unmeshable(String message) {
        super(message, null, false, false);
    }

    /** What the teeth's own arithmetic refused, its numbers cut to what people read. */
    static String words(IllegalArgumentException refused) {
        String text = refused.getMessage() == null ? "the teeth cannot be worked out" : refused.getMessage();
        StringBuilder out = new StringBuilder(text.length());
        int decimals = -1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean digit = c >= '0' && c <= '9';
            if (c == '.' && i + 1 < text.length() && Character.isDigit(text.charAt(i + 1))) {
                decimals = 0;
            } else if (!digit) {
                decimals = -1;
            } else if (decimals >= 0) {
                decimals++;
            }
            if (decimals <= DECIMALS) {
                out.append(c);
            }
        }
        return out.toString();
    }
}
