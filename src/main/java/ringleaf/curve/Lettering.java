// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;

/**
 * Upright lettering of drawings in single strokes: capitals and small letters, figures, the signs that dimensions need,
 * and accents. Letters stand as close as they are wide. Line width is meant to be a tenth of the height, as lettering
 * of type B has it (ISO 3098, from memory). A character that the font lacks is an empty box.
 */
public final class Lettering {
    /** A capital is 6 units high; letters are drawn somewhat narrower than their grid. */
    private static final double UNITS = 6;

    private static final double NARROW = 0.88;
    private static final double GAP = 1.7;
    private static final double SPACE = 2.6;
    private static final double SMALL_HEIGHT = 4;
    private static final String BOX = "00 30 36 06 00";
    /** Strokes by code point: corners as two figures (across, up), '/' for -1 and '.' for -2, strokes parted by commas. */
    private static final Map<Integer, String> SIGNS = new HashMap<>();

    private static final Map<Integer, String> ACCENTS = new HashMap<>();

    static {
        small();
        signs();
        ACCENTS.put(0x300, "02 20");
        ACCENTS.put(0x301, "00 22");
        ACCENTS.put(0x302, "00 12 20");
        ACCENTS.put(0x303, "00 11 20 31");
        ACCENTS.put(0x308, "00 01,20 21");
        ACCENTS.put(0x30A, "10 01 12 21 10");
        ACCENTS.put(0x30C, "02 10 22");
    }

    private Lettering() {}

    private static void small() {
        put('a', "34 30,33 24 14 03 01 10 20 31");
        put('b', "06 00,03 14 24 33 31 20 10 01");
        put('c', "33 24 14 03 01 10 20 31");
        put('d', "36 30,33 24 14 03 01 10 20 31");
        put('e', "02 32 33 24 14 03 01 10 20 31");
        put('f', "36 26 15 10,04 24");
        put('g', "34 3/ 2. 1. 0/,33 24 14 03 01 10 20 31");
        put('h', "06 00,03 14 24 33 30");
        put('i', "04 00,05 06");
        put('j', "14 1/ 0.,15 16");
        put('k', "06 00,34 02 30");
        put('l', "06 00");
        put('m', "04 00,03 14 23 20,23 34 43 40");
        put('n', "04 00,03 14 24 33 30");
        put('o', "10 01 03 14 24 33 31 20 10");
        put('p', "04 0.,03 14 24 33 31 20 10 01");
        put('q', "34 3.,33 24 14 03 01 10 20 31");
        put('r', "04 00,02 14 24");
        put('s', "33 24 14 03 12 22 31 20 10 01");
        put('t', "16 11 20,04 24");
        put('u', "04 01 10 20 31,34 30");
        put('v', "04 20 44");
        put('w', "04 10 23 30 44");
        put('x', "04 30,34 00");
        put('y', "04 20,44 20 1. 0.");
        put('z', "04 34 00 30");
        put('\u00DF', "0. 05 16 26 35 24 33 32 21 11");
    }

    private static void signs() {
        put('\u00D8', "15 35 44 42 31 11 02 04 15,00 46");
        put('\u2300', "15 35 44 42 31 11 02 04 15,00 46");
        put('\u00F8', "10 01 03 14 24 33 31 20 10,00 34");
        put('\u00C6', "00 26 56,26 20 50,11 21,23 43");
        put('\u00E6', "14 24 20 10 01 12 22 32 33 24,20 30");
        put('\u00B0', "16 25 14 05 16");
        put('\u00B1', "04 44,22 26,00 40");
        put('\u00D7', "01 34,04 31");
        put('\u00B5', "04 0.,01 10 20 31,34 30");
        put('\u03BC', "04 0.,01 10 20 31,34 30");
        put('\u00B2', "05 16 25 03 23");
        put('\u00B7', "03 13");
        put('\u2013', "03 33");
        put('\u2014', "03 53");
        put('\u2212', "03 33");
        put('\u2026', "00 01,20 21,40 41");
        put('\u2192', "03 43,35 43 31");
        put('\u221A', "02 10 36 46");
        put('\'', "06 05");
        put('\u2019', "16 05");
        put('"', "06 05,16 15");
        put('%', "00 46,06 05,41 40");
        put(';', "1/ 21,24 25");
        put('<', "45 03 41");
        put('>', "05 43 01");
        put('?', "05 16 36 45 44 23 22,21 20");
        put('!', "06 02,01 00");
        put('[', "16 06 00 10");
        put(']', "06 16 10 00");
        put('{', "26 15 14 03 12 11 20");
        put('}', "06 15 14 23 12 11 00");
        put('|', "06 0/");
        put('\\', "06 40");
        put('*', "01 45,05 41,20 26");
        put('#', "10 16,30 36,02 42,04 44");
        put('&', "40 05 16 25 02 10 20 42");
        put('@', "32 23 12 21 32 33 24 14 03 01 10 30");
        put('~', "02 13 23 32 42 53");
        put('^', "04 16 24");
        put('$', "45 36 16 05 04 13 33 42 41 30 10 01,27 2/");
        put('`', "06 15");
        // narrower than the letter O
        put('0', "10 01 05 16 26 35 31 20 10");
        put(',', "1/ 21");
        put('-', "03 23");
    }

    private static void put(int c, String strokes) {
        SIGNS.put(c, strokes);
    }

    private static String sign(int c) {
        String own = SIGNS.get(c);
        if (own == null) {
            own = StrokeFont.sign(c);
        }
        return own == null ? BOX : own;
    }

    /** The width of a line of text whose capitals are {@code height} mm high. */
    public static double width(String text, double height) {
        return lay(text, height, new ArrayList<>());
    }

    /**
     * The strokes of a line of text; small letters may reach a third of the height below it, accents above it.
     *
     * @param origin lower left corner of the first letter
     * @param height of a capital, mm
     * @param angle of the line, rad
     */
    public static List<Path> strokes(String text, Point origin, double height, double angle) {
        List<Path> paths = new ArrayList<>();
        lay(text, height, paths);
        Placement placement = new Placement(angle, origin);
        List<Path> placed = new ArrayList<>(paths.size());
        for (Path path : paths) {
            placed.add(path.placed(placement));
        }
        return placed;
    }

    /** Adds the strokes of the line at the origin and returns its width. */
    private static double lay(String text, double height, List<Path> paths) {
        double unit = height / UNITS;
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD);
        double x = 0;
        double right = 0;
        double middle = 0;
        boolean small = false;
        for (int i = 0; i < plain.length(); ) {
            int c = plain.codePointAt(i);
            i += Character.charCount(c);
            String accent = ACCENTS.get(c);
            if (accent != null) {
                double up = (small ? SMALL_HEIGHT : UNITS) + 1;
                Point corner = new Point(middle - NARROW * unit * reach(accent) / 2, up * unit);
                StrokeFont.addSign(paths, accent, corner, NARROW * unit, unit);
            } else if (c == ' ') {
                x += SPACE * NARROW * unit;
                right = x;
            } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
                String sign = sign(c);
                double width = NARROW * unit * (reach(sign) - left(sign));
                Point corner = new Point(x - NARROW * unit * left(sign), 0);
                StrokeFont.addSign(paths, sign, corner, NARROW * unit, unit);
                middle = x + width / 2;
                small = c >= 'a' && c <= 'z';
                right = x + width;
                x = right + GAP * NARROW * unit;
            }
        }
        return right;
    }

    private static int reach(String sign) {
        int most = 0;
        for (int i = 0; i < sign.length(); i += 3) {
            most = Math.max(most, sign.charAt(i) - '0');
        }
        return most;
    }

    private static int left(String sign) {
        int least = sign.isEmpty() ? 0 : 9;
        for (int i = 0; i < sign.length(); i += 3) {
            least = Math.min(least, sign.charAt(i) - '0');
        }
        return least;
    }
}
