// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.util.List;

/**
 * A named layer of a drawing.
 *
 * @param name lower case letters, digits and hyphens, starting with a letter: {@code cut}, {@code mark},
 *     {@code guide}, {@code level-1}, …
 * @param style of its lines
 * @param note a line for people on what it is, or empty
 * @param things in the order in which they are drawn
 */
public record DrawingLayer(String name, LayerStyle style, String note, List<Drawn> things) {
    public static final String CUT = "cut";
    public static final String MARK = "mark";
    public static final String GUIDE = "guide";
    private static final String LEVEL = "level-";

    public DrawingLayer {
        things = List.copyOf(things);
        checkName(name);
        if (cutsThrough(name)) {
            for (Drawn thing : things) {
                if (thing instanceof Drawn.Lettering || thing instanceof Drawn.Open open && !open.endsAtTabs()) {
                    throw new IllegalArgumentException("layer " + name + " takes closed contours only");
                }
            }
        }
    }

    /** The name of the n-th level from the bed, counted from 1. */
    public static String level(int n) {
        return LEVEL + n;
    }

    /** Whether a layer of this name is cut through or built up, so that it takes closed contours only. */
    public static boolean cutsThrough(String name) {
        return name.equals(CUT) || name.startsWith(LEVEL);
    }

    private static void checkName(String name) {
        boolean good = !name.isEmpty() && name.length() <= 64 && name.charAt(0) >= 'a' && name.charAt(0) <= 'z';
        for (int i = 0; good && i < name.length(); i++) {
            char c = name.charAt(i);
            good = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-';
        }
        if (!good) {
            throw new IllegalArgumentException("no name for a layer: " + name);
        }
    }
}
