// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.nio.charset.StandardCharsets;
import ringleaf.draw.Decimals;

/** The servo table as comma-separated values, one row of the table a line. */
public final class ServoCsv {
    private ServoCsv() {}

    /**
     * The file, UTF-8: output, per cent of the way from least to greatest, turn of the servo from open, pulse when the
     * output is approached as the table says and from the other side, and the error of a straight line to the next row.
     */
    public static byte[] write(ServoTable table) {
        String unit = table.law().unit();
        StringBuilder out = new StringBuilder(2048);
        out.append(table.law().output())
                .append('_')
                .append(unit)
                .append(',')
                .append(table.law().output());
        out.append("_percent,servo_deg,pulse_us,pulse_us_other_way,interpolation_error_")
                .append(unit)
                .append('\n');
        for (TableRow row : table.rows()) {
            number(out, row.output() * ServoTable.UNIT, 2).append(',');
            number(out, table.percent(row), 3).append(',');
            number(out, Math.toDegrees(row.turn()), 4).append(',');
            number(out, row.pulse() * ServoTable.PULSE_UNIT, 1).append(',');
            number(out, table.clamped(row.pulse() + table.takeUp()) * ServoTable.PULSE_UNIT, 1)
                    .append(',');
            number(out, row.error(), 5).append('\n');
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static StringBuilder number(StringBuilder out, double value, int decimals) {
        Decimals.append(out, value, decimals);
        return out;
    }
}
