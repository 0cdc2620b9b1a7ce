// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * Letters of single strokes for engraving: capitals, figures and a few signs on a grid of 4 by 6. Small letters are
 * drawn as capitals, and a character that the font lacks as an empty box.
 */
public final class StrokeFont {
    /** Grid units from a letter to the next. */
    private static final double ADVANCE = 6;

    private static final double WIDTH = 4;
    private static final double HEIGHT = 6;
    private static final String BOX = "00 40 46 06 00";
    /** Strokes of every sign: corners as two figures (across, up), strokes parted by a comma. */
    private static final String[] SIGNS = new String[128];

    static {
        put('A', "00 04 26 44 40,02 42");
        put('B', "00 06 36 45 44 33 03,33 42 41 30 00");
        put('C', "45 36 16 05 01 10 30 41");
        put('D', "00 06 26 44 42 20 00");
        put('E', "46 06 00 40,03 33");
        put('F', "46 06 00,03 33");
        put('G', "45 36 16 05 01 10 30 41 43 23");
        put('H', "00 06,03 43,46 40");
        put('I', "16 36,26 20,10 30");
        put('J', "46 41 30 10 01");
        put('K', "00 06,46 03 40");
        put('L', "06 00 40");
        put('M', "00 06 23 46 40");
        put('N', "00 06 40 46");
        put('O', "10 01 05 16 36 45 41 30 10");
        put('P', "00 06 36 45 44 33 03");
        put('Q', "10 01 05 16 36 45 41 30 10,22 40");
        put('R', "00 06 36 45 44 33 03,23 40");
        put('S', "45 36 16 05 04 13 33 42 41 30 10 01");
        put('T', "06 46,26 20");
        put('U', "06 01 10 30 41 46");
        put('V', "06 20 46");
        put('W', "06 10 24 30 46");
        put('X', "00 46,06 40");
        put('Y', "06 23 46,23 20");
        put('Z', "06 46 00 40");
        put('0', "10 01 05 16 36 45 41 30 10");
        put('1', "05 16 10,00 20");
        put('2', "05 16 36 45 44 00 40");
        put('3', "05 16 36 45 44 33 23,33 42 41 30 10 01");
        put('4', "30 36 02 42");
        put('5', "46 06 04 34 43 41 30 10 01");
        put('6', "36 16 05 01 10 30 41 42 33 03");
        put('7', "06 46 10");
        put('8', "13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33");
        put('9', "10 30 41 45 36 16 05 04 13 43");
        put('-', "13 33");
        put('+', "03 43,21 25");
        put('.', "20 21");
        put(',', "10 21");
        put(':', "21 22,24 25");
        put('/', "00 46");
        put('=', "02 42,04 44");
        put('(', "36 24 22 30");
        put(')', "16 24 22 10");
        put('_', "00 40");
        put(' ', "");
    }

    private StrokeFont() {}

    private static void put(char c, String strokes) {
        SIGNS[c] = strokes;
    }

    /** The strokes of a capital, a figure or a sign; null where there is none. */
    static String sign(int c) {
        return c < SIGNS.length ? SIGNS[c] : null;
    }

    /** The width of a line of text whose capitals are {@code height} mm high. */
    public static double width(String text, double height) {
        int count = text.codePointCount(0, text.length());
        return count == 0 ? 0 : (ADVANCE * (count - 1) + WIDTH) * height / HEIGHT;
    }

    /**
     * The strokes of a line of text.
     *
     * @param origin lower left corner of the first letter
     * @param height of a capital, mm
     */
    public static List<Path> strokes(String text, Point origin, double height) {
        double scale = height / HEIGHT;
        List<Path> paths = new ArrayList<>();
        double x = origin.x();
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            String sign = c < SIGNS.length ? SIGNS[c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c] : BOX;
            addSign(paths, sign == null ? BOX : sign, new Point(x, origin.y()), scale, scale);
            x += ADVANCE * scale;
        }
        return paths;
    }

    /**
     * Adds the strokes of a sign: pairs of digits, its corners on a grid, and a comma between strokes.
     *
     * @param corner where the grid begins
     * @param wide a step of the grid to the right, mm
     * @param high a step up, mm
     */
    static void addSign(List<Path> paths, String sign, Point corner, double wide, double high) {
        List<Segment> pieces = new ArrayList<>();
        Point before = null;
        for (int i = 0; i < sign.length(); i += 3) {
            double across = (sign.charAt(i) - '0') * wide;
            double up = (sign.charAt(i + 1) - '0') * high;
            Point at = corner.plus(new Point(across, up));
            if (before != null) {
                pieces.add(new Line(before, at));
            }
            boolean last = i + 2 >= sign.length();
            if (last || sign.charAt(i + 2) == ',') {
                paths.add(new Path(pieces));
                pieces = new ArrayList<>();
                before = null;
            } else {
                before = at;
            }
        }
    }
}
