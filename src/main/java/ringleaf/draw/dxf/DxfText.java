// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import java.nio.charset.StandardCharsets;
import ringleaf.draw.Decimals;
import ringleaf.draw.PlainText;

/**
 * Group codes and values, a line each. Lines end with a line feed; everything is ASCII, other characters are written
 * as {@code \U+XXXX}.
 */
final class DxfText {
    /** Coordinates to 1e-9 mm: a bulge leaves nothing else to be lost. */
    static final int DECIMALS = 9;
    /** Bulges need more digits than coordinates, or the arc shifts. */
    static final int BULGE_DECIMALS = 13;

    private final StringBuilder out = new StringBuilder(16384);
    private int lastHandle;

    /** Adds a pair whose value is one of our own words. */
    DxfText put(int code, String value) {
        out.append(code).append('\n').append(value).append('\n');
        return this;
    }

    DxfText put(int code, int value) {
        out.append(code).append('\n').append(value).append('\n');
        return this;
    }

    DxfText put(int code, double value) {
        out.append(code).append('\n');
        Decimals.append(out, value, DECIMALS);
        out.append('\n');
        return this;
    }

    DxfText bulge(double value) {
        out.append(42).append('\n');
        Decimals.append(out, value, BULGE_DECIMALS);
        out.append('\n');
        return this;
    }

    /** Adds x and y under {@code code} and {@code code + 10}. */
    DxfText point(int code, double x, double y) {
        return put(code, x).put(code + 10, y);
    }

    /** Adds x, y and z under {@code code}, {@code code + 10} and {@code code + 20}. */
    DxfText point(int code, double x, double y, double z) {
        return put(code, x).put(code + 10, y).put(code + 20, z);
    }

    /** Adds text from outside, made safe, as a comment line. */
    DxfText comment(String text) {
        String line = PlainText.line(text);
        StringBuilder safe = new StringBuilder(line.length());
        for (int i = 0; i < line.length() && safe.length() < 240; i++) {
            char c = line.charAt(i);
            if (c < 0x7F) {
                safe.append(c);
            } else {
                String hex = Integer.toHexString(c).toUpperCase(java.util.Locale.ROOT);
                safe.append("\\U+").append("0000", 0, 4 - hex.length()).append(hex);
            }
        }
        return put(999, safe.toString());
    }

    /** Opens a section. */
    DxfText section(String name) {
        return put(0, "SECTION").put(2, name);
    }

    DxfText endSection() {
        return put(0, "ENDSEC");
    }

    /** A handle that was not given out before, in hexadecimal. */
    String newHandle() {
        lastHandle++;
        return Integer.toHexString(lastHandle).toUpperCase(java.util.Locale.ROOT);
    }

    /** The handle that {@link #newHandle} would give next. */
    String nextHandle() {
        return Integer.toHexString(lastHandle + 1).toUpperCase(java.util.Locale.ROOT);
    }

    /** Puts {@code head} in front of all that was written. */
    byte[] toBytes(DxfText head) {
        return (head.out.toString() + out).getBytes(StandardCharsets.US_ASCII);
    }
}
