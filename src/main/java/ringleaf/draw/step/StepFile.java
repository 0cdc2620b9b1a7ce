// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.step;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringleaf.draw.PlainText;
import ringleaf.geom.Point;
import ringleaf.space.Vector;

/** The text of an exchange file (ISO 10303-21): numbered instances, and points and directions that are used again. */
final class StepFile {
    /** There is no clock here: every file bears this date. */
    private static final String DATE = "1980-01-01T00:00:00";

    private final StringBuilder data = new StringBuilder(65536);
    private final Map<String, Integer> shared = new HashMap<>();
    private int count;

    /** Writes an instance; its number. */
    int add(String instance) {
        data.append('#').append(++count).append('=').append(instance).append(";\n");
        return count;
    }

    /** The number of an instance like this, written once. */
    private int once(String instance) {
        Integer number = shared.get(instance);
        if (number == null) {
            number = add(instance);
            shared.put(instance, number);
        }
        return number;
    }

    int point(double x, double y, double z) {
        return once("CARTESIAN_POINT(''," + triple(x, y, z) + ")");
    }

    int point(Point p, double z) {
        return point(p.x(), p.y(), z);
    }

    int direction(double x, double y, double z) {
        return once("DIRECTION(''," + triple(x, y, z) + ")");
    }

    /** A frame: its origin, and the directions of its z and x axes. */
    int frame(int point, Vector z, Vector x) {
        return once("AXIS2_PLACEMENT_3D('',#" + point + ",#" + direction(z.x(), z.y(), z.z()) + ",#"
                + direction(x.x(), x.y(), x.z()) + ")");
    }

    private static String triple(double x, double y, double z) {
        return "(" + real(x) + "," + real(y) + "," + real(z) + ")";
    }

    /** A real number to its last digit. */
    static String real(double value) {
        return Double.toString(value == 0 ? 0.0 : value);
    }

    /** Numbers of instances as a list. */
    static String list(List<Integer> numbers) {
        StringBuilder out = new StringBuilder("(");
        for (int number : numbers) {
            out.append(out.length() > 1 ? ",#" : "#").append(number);
        }
        return out.append(')').toString();
    }

    /**
     * A string in quotes: quotes and back strokes doubled, what is beyond ASCII by its code (ISO 10303-21, 6.4.3).
     */
    static String string(String text) {
        StringBuilder out = new StringBuilder("'");
        PlainText.line(text).codePoints().forEach(c -> {
            if (c == '\'' || c == '\\') {
                out.append((char) c).append((char) c);
            } else if (c < 0x7F) {
                out.append((char) c);
            } else if (c <= 0xFFFF) {
                out.append(String.format("\\X2\\%04X\\X0\\", c));
            } else {
                out.append(String.format("\\X4\\%08X\\X0\\", c));
            }
        });
        return out.append('\'').toString();
    }

    /**
     * The whole file.
     *
     * @param name of what it holds
     * @param description what it is, a line
     * @param program that made it, with its version
     */
    byte[] bytes(String name, String description, String program) {
        String text = "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((" + string(description) + "),'2;1');\nFILE_NAME("
                + string(name) + ",'" + DATE + "',(''),('')," + string(program) + "," + string(program)
                + ",'');\nFILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));\nENDSEC;\nDATA;\n" + data
                + "ENDSEC;\nEND-ISO-10303-21;\n";
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
