// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import ringleaf.draw.Decimals;
import ringleaf.draw.PlainText;
import ringleaf.mechanism.ServoLaw;

/** The servo table as a header of C99: whole numbers only, and three functions that look a pulse up. */
public final class ServoHeader {
    private static final int WIDTH = 100;
    private static final long SHORT = 65_535;

    private final String version;
    private final String title;
    private final String name;
    private final ServoTable table;
    private final StringBuilder out = new StringBuilder(6144);
    private final String upper;
    private final String output;

    private ServoHeader(String version, String title, String mechanism, ServoTable table) {
        this.version = version;
        this.title = title;
        this.name = identifier(mechanism);
        this.upper = name.toUpperCase(Locale.ROOT);
        this.table = table;
        this.output = table.law().output();
    }

    /**
     * The file, plain ASCII.
     *
     * @param version of this tool
     * @param fitted what measuring found; null for a table as drawn
     */
    public static byte[] write(String version, String title, String mechanism, ServoTable table, Fitted fitted) {
        return new ServoHeader(version, title, mechanism, table).text(fitted).getBytes(StandardCharsets.US_ASCII);
    }

    /** A name of C for a mechanism's name: letters, digits and underscores; never one that the language keeps. */
    static String identifier(String mechanism) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < mechanism.length(); i++) {
            char c = Character.toLowerCase(mechanism.charAt(i));
            boolean plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
            name.append(plain ? c : '_');
        }
        boolean letter = name.length() > 0 && name.charAt(0) >= 'a' && name.charAt(0) <= 'z';
        return letter ? name.toString() : "m_" + name;
    }

    private String text(Fitted fitted) {
        comment(fitted);
        out.append("#ifndef RINGLEAF_").append(upper).append("_SERVO_TABLE_H\n");
        out.append("#define RINGLEAF_").append(upper).append("_SERVO_TABLE_H\n\n#include <stdint.h>\n\n");
        String unit = table.law().unit();
        define("TABLE_ROWS", table.rows().size(), "");
        define(output.toUpperCase(Locale.ROOT) + "_LEAST", table.least(), "0.01 " + unit + ", 0 per cent");
        define(output.toUpperCase(Locale.ROOT) + "_MOST", table.most(), "0.01 " + unit + ", 100 per cent");
        define("PULSE_LEAST", table.leastPulse(), "0.1 us, one end of the servo's own travel");
        define("PULSE_MOST", table.mostPulse(), "0.1 us, the other end");
        define("TAKE_UP", table.takeUp(), "0.1 us, added when the servo comes from the other side");
        define("INTERPOLATION_ERROR", (long) Math.ceil(table.error() * 1000 - 1e-9), "0.001 " + unit + ", at most");
        out.append('\n');
        array(output, "0.01 " + unit + ", growing", TableRow::output);
        array("pulse", "0.1 us", TableRow::pulse);
        array("servo", "0.01 deg of the servo, from the start of the travel", this::turn);
        functions();
        out.append("#endif\n");
        return out.toString();
    }

    private long turn(TableRow row) {
        return Math.round(Math.toDegrees(row.turn()) * 100);
    }

    private void define(String what, long value, String comment) {
        out.append("#define ").append(upper).append('_').append(what).append(' ');
        out.append(value < 0 ? "(" + value + ")" : Long.toString(value));
        out.append(comment.isEmpty() ? "\n" : "  /* " + comment + " */\n");
    }

    private void array(String what, String unit, ToLongFunction<TableRow> value) {
        out.append("/* ").append(unit).append(" */\n");
        out.append("static const ")
                .append(type(value))
                .append(' ')
                .append(name)
                .append('_')
                .append(what);
        out.append("_table[").append(upper).append("_TABLE_ROWS] = {\n   ");
        int column = 3;
        for (int i = 0; i < table.rows().size(); i++) {
            String number = " " + value.applyAsLong(table.rows().get(i))
                    + (i + 1 < table.rows().size() ? "," : "");
            if (column + number.length() > WIDTH) {
                out.append("\n   ");
                column = 3;
            }
            out.append(number);
            column += number.length();
        }
        out.append("\n};\n\n");
    }

    /** The narrowest type that holds the whole column. */
    private String type(ToLongFunction<TableRow> value) {
        long most = 0;
        long least = 0;
        for (TableRow row : table.rows()) {
            most = Math.max(most, value.applyAsLong(row));
            least = Math.min(least, value.applyAsLong(row));
        }
        if (least < 0) {
            return least >= Short.MIN_VALUE && most <= Short.MAX_VALUE ? "int16_t" : "int32_t";
        }
        return most <= SHORT ? "uint16_t" : "uint32_t";
    }

    private void functions() {
        String unit = table.law().unit();
        String template = """
                /* The pulse (0.1 us) for an @output@ in 0.01 @unit@, approached as said above. Clamped to the table. */
                static inline uint32_t @name@_pulse(uint32_t @output@)
                {
                    uint32_t i = 1;
                    int64_t run, rise;
                    if (@output@ <= @least@)
                        return @name@_pulse_table[0];
                    if (@output@ >= @NAME@_@OUTPUT@_MOST)
                        return @name@_pulse_table[@NAME@_TABLE_ROWS - 1];
                    while (i < @NAME@_TABLE_ROWS - 1 && @name@_@output@_table[i] < @output@)
                        i++;
                    run = (int64_t)@name@_@output@_table[i] - (int64_t)@name@_@output@_table[i - 1];
                    rise = ((int64_t)@name@_pulse_table[i] - (int64_t)@name@_pulse_table[i - 1])
                           * ((int64_t)@output@ - (int64_t)@name@_@output@_table[i - 1]);
                    rise += rise < 0 ? -(run / 2) : run / 2;
                    return (uint32_t)((int64_t)@name@_pulse_table[i - 1] + rise / run);
                }

                /* The same from the other side: the play is taken up. Clamped to the servo's own travel. */
                static inline uint32_t @name@_pulse_other_way(uint32_t @output@)
                {
                    int32_t pulse = (int32_t)@name@_pulse(@output@) + @NAME@_TAKE_UP;
                    if (pulse < @NAME@_PULSE_LEAST)
                        pulse = @NAME@_PULSE_LEAST;
                    if (pulse > @NAME@_PULSE_MOST)
                        pulse = @NAME@_PULSE_MOST;
                    return (uint32_t)pulse;
                }

                /* The @output@ (0.01 @unit@) for tenths of a per cent, 0 to 1000, of the way from least to most. */
                static inline uint32_t @name@_@output@_at(uint32_t per_mille)
                {
                    if (per_mille > 1000)
                        per_mille = 1000;
                    return (uint32_t)(@NAME@_@OUTPUT@_LEAST
                                      + ((uint64_t)(@NAME@_@OUTPUT@_MOST - @NAME@_@OUTPUT@_LEAST) * per_mille
                                         + 500) / 1000);
                }

                """;
        // Comparing what has no sign with 0 is a warning, so a table that begins there asks for what is equal.
        String least = table.least() == 0 ? "0" : upper + "_" + output.toUpperCase(Locale.ROOT) + "_LEAST";
        out.append(template.replace("@least@", least)
                .replace("@name@", name)
                .replace("@NAME@", upper)
                .replace("@output@", output)
                .replace("@OUTPUT@", output.toUpperCase(Locale.ROOT))
                .replace("@unit@", unit));
    }

    private void comment(Fitted fitted) {
        ServoLaw law = table.law();
        List<String> lines = new ArrayList<>();
        lines.add("Servo table of " + name + (title.isEmpty() ? "" : ", " + title) + ". Made by ringleaf " + version
                + "; make it anew rather than change it by hand.");
        lines.add("");
        lines.add("Output: " + output + " in " + law.unit() + ", " + hundredths(table.least()) + " to "
                + hundredths(table.most()) + "; the servo, " + law.servo().name() + ", turns " + law.sense()
                + " (seen onto its horn) from the start of the travel. If yours turns the other way, write it in the"
                + " spec with pulse-from and pulse-to exchanged.");
        lines.add("Between rows a straight line in whole numbers misses by " + Decimals.of(table.error(), 4) + " "
                + law.unit() + " at most: measured at every 0.01 " + law.unit()
                + " with the arithmetic below, rounding to 0.1 us included. A servo's own dead band comes on top.");
        lines.add("");
        lines.addAll(direction(law));
        lines.add("");
        if (fitted != null) {
            lines.addAll(FitText.words(law, fitted));
            lines.add("");
        }
        lines.add("Pulses are meant for a servo mounted with its travel in the middle: at "
                + Decimals.of(ServoTable.pulseAt(law, 0), 1) + " us the mechanism is put on at the start of its"
                + " travel.");
        lines.add("Caution: a servo that pushes against a stop stalls, grows hot and strips teeth. Try the two ends by"
                + " hand with the linkage loose, move slowly at first, never send pulses past PULSE_LEAST and"
                + " PULSE_MOST, keep fingers out of gears and blades, and follow the servo maker's word.");
        for (String caution : law.servo().cautions()) {
            lines.add("Caution: " + caution);
        }
        out.append("/*\n");
        for (String line : lines) {
            wrap(line);
        }
        out.append(" */\n");
    }

    private List<String> direction(ServoLaw law) {
        boolean falls = law.output(law.travel(), table.build()) < law.output(0, table.build());
        String opening = falls ? "by closing" : "by opening";
        String along = law.output().equals("opening") ? opening : "from the start of the travel";
        return List.of(
                "Play: on a change of sense the servo turns " + Decimals.of(Math.toDegrees(law.lostMotion()), 2)
                        + " deg, or " + Decimals.of(Math.abs(table.takeUp()) * ServoTable.PULSE_UNIT, 1)
                        + " us, before anything moves (" + law.lostIn() + "; the servo's own gears come on top).",
                "Rule: the table holds when the output is approached " + along + ". Either approach it so always, going"
                        + " past by that much first when you come from the other side; or use " + name
                        + "_pulse_other_way(), which adds TAKE_UP, when you come from there.");
    }

    private static String hundredths(long value) {
        return Decimals.of(value * ServoTable.UNIT, 2);
    }

    private void wrap(String text) {
        String left = ascii(text);
        if (left.isEmpty()) {
            out.append(" *\n");
        }
        while (!left.isEmpty()) {
            int end = left.length();
            if (end > WIDTH - 3) {
                end = left.lastIndexOf(' ', WIDTH - 3);
                end = end <= 0 ? WIDTH - 3 : end;
            }
            out.append(" * ").append(left, 0, end).append('\n');
            left = left.substring(end).strip();
        }
    }

    /** Words of users and catalogues in a comment: nothing in them may end it or be read twice. */
    private static String ascii(String text) {
        StringBuilder plain = new StringBuilder();
        String line =
                PlainText.line(text).replace("µ", "u").replace("°", " deg").replace("±", "+/-");
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            char before = i > 0 ? line.charAt(i - 1) : ' ';
            boolean breaks = c == '/' && before == '*' || c == '*' && before == '/' || c == '?' && before == '?';
            plain.append(c < ' ' || c > '~' || c == '\\' || breaks ? '_' : c);
        }
        return plain.toString();
    }
}
