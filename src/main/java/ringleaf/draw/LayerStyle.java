// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

/**
 * How the lines of a layer look; a machine may tell layers by it.
 *
 * @param rgb colour, 0xRRGGBB
 * @param number the colour's number in DXF, 1 to 255
 * @param width of the line, mm, above 0
 */
public record LayerStyle(int rgb, int number, double width) {
    private static final int BLACK = 7;

    public LayerStyle {
        if (rgb < 0 || rgb > 0xFFFFFF || number < 1 || number > 255 || !(width > 0) || !(width < 10)) {
            throw new IllegalArgumentException("no line of colour " + rgb + " (" + number + ") and width " + width);
        }
    }

    /** A black line. */
    public static LayerStyle black(double width) {
        return new LayerStyle(0, BLACK, width);
    }

    public LayerStyle withWidth(double other) {
        return new LayerStyle(rgb, number, other);
    }

    /** The colour as {@code #rrggbb}. */
    public String hex() {
        String digits = Integer.toHexString(rgb);
        return "#" + "000000".substring(digits.length()) + digits;
    }
}
