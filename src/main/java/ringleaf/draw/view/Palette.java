// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.part.Family;
import ringleaf.part.Part;

/**
 * Fills and outlines by family and part. The families differ in lightness as much as in hue, and no two lie apart by
 * red against green alone, so that they are told apart without full colour vision too.
 */
final class Palette {
    static final String PAPER = "#fbfaf6";
    static final String INK = "#2c3036";
    static final String QUIET_INK = "#6a7078";
    /** Lines drawn over a picture, such as a line of action. */
    static final String SIGNAL = "#b3261e";
    /** What shines through the opening. */
    static final String LIGHT = "#fff3c4";

    private static final int SPREAD = 14;
    /** Gears lie side by side and over one another, so their tints lie further apart. */
    private static final int[] GEARS = {0, 64, 28, 92};

    /**
     * How a part is painted.
     *
     * @param fill of the face
     * @param second tint to alternate with it
     * @param third tint between the two
     * @param line darkest, of the outline
     * @param side of a wall, in the shade
     */
    record Paint(String fill, String second, String third, String line, String side) {}

    private final Map<String, Paint> paints = new HashMap<>();

    Palette(List<Part> parts) {
        List<Family> seen = new ArrayList<>();
        for (Part part : parts) {
            int before = 0;
            for (Family family : seen) {
                before += family == part.family() ? 1 : 0;
            }
            seen.add(part.family());
            // Further parts of a family are a little darker each, of a dark one lighter.
            int base = base(part.family());
            boolean dark = (base >> 8 & 0xFF) < 0x60;
            int step = (dark ? 4 * SPREAD : -SPREAD) * (before % 4);
            int rgb = shifted(base, part.family() == Family.GEAR ? GEARS[before % GEARS.length] : step);
            paints.put(part.name(), paint(rgb));
        }
    }

    Paint of(Part part) {
        return paints.get(part.name());
    }

    private static Paint paint(int rgb) {
        String second = hex(shifted(rgb, -26));
        String third = hex(shifted(rgb, -13));
        return new Paint(hex(rgb), second, third, hex(scaled(rgb, 0.45)), hex(scaled(rgb, 0.72)));
    }

    private static int base(Family family) {
        return switch (family) {
            case PLATE -> 0xE3DED2;
            case SPACER -> 0xBFC5CE;
            case RING -> 0x6FA3CC;
            case BLADE -> 0xE2AE54;
            case GEAR -> 0x2F7F8C;
            case PULLEY -> 0x8A7BB0;
            case PIN -> 0x3D434B;
            case JIG -> 0xC9C3A6;
            case BOUGHT -> 0xB9BDB4;
        };
    }

    private static int shifted(int rgb, int by) {
        int out = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            out = out << 8 | Math.max(0, Math.min(255, (rgb >> shift & 0xFF) + by));
        }
        return out;
    }

    private static int scaled(int rgb, double by) {
        int out = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            out = out << 8 | (int) Math.round((rgb >> shift & 0xFF) * by);
        }
        return out;
    }

    private static String hex(int rgb) {
        String digits = Integer.toHexString(rgb);
        return "#" + "000000".substring(digits.length()) + digits;
    }
}
