package ringleaf.draw;

/**
 * How the lines of a layer look; a machine may tell layers by it.
 *
 * @param rgb colour, 0xRRGGBB
 * @param width of the line, mm, above 0
 */
public record LayerStyle(int rgb, double width) {
    public LayerStyle {
        if (rgb < 0 || rgb > 0xFFFFFF || !(width > 0) || !(width < 10)) {
            throw new IllegalArgumentException("no line of colour " + rgb + " and width " + width);
        }
    }

    /** The colour as {@code #rrggbb}. */
    public String hex() {
        String digits = Integer.toHexString(rgb);
        return "#" + "000000".substring(digits.length()) + digits;
    }
}
