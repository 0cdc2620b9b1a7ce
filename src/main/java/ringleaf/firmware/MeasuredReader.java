// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import ringleaf.mechanism.ServoLaw;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/**
 * Reads what was measured on a finished thing: a table of comma-separated values whose header names a column for the
 * servo ({@code servo_deg}, counted from open as in the table, or {@code pulse_us}) and one for what was measured
 * ({@code opening_mm} or {@code opening_in}; {@code angle_deg}). Empty lines and lines that begin with # do not count.
 */
public final class MeasuredReader {
    /** More lines than anybody measures by hand. */
    private static final int MOST_LINES = 10_000;

    private static final double INCH = 25.4;
    private static final int MOST_DIGITS = 24;
    /** Turns of the servo may lie this far past its own ends by rounding, rad. */
    private static final double ROUNDING = Math.toRadians(0.05);

    private final ServoLaw law;
    private final BiConsumer<Integer, String> problems;
    private final List<MeasuredPoint> points = new ArrayList<>();
    private int servoColumn = -1;
    private int outputColumn = -1;
    private boolean pulses;
    private double unit = 1;
    private int columns;

    /**
     * A reader for one law.
     *
     * @param problems takes what is wrong: the line, counted from 1, or 0 for the whole file, and the reason
     */
    public MeasuredReader(ServoLaw law, BiConsumer<Integer, String> problems) {
        this.law = law;
        this.problems = problems;
    }

    /** The measured points in the order of the file; of no use when problems were found. */
    public List<MeasuredPoint> read(String text) {
        String[] lines = text.split("\r\n|\n|\r", -1);
        if (lines.length > MOST_LINES) {
            problems.accept(0, lines.length + " lines are no table measured by hand");
            return points;
        }
        boolean headed = false;
        for (int i = 0; i < lines.length; i++) {
            String line = i == 0 && lines[i].startsWith("\uFEFF") ? lines[i].substring(1) : lines[i];
            if (line.isBlank() || line.stripLeading().startsWith("#")) {
                continue;
            }
            if (!headed) {
                if (!header(i + 1, cells(line))) {
                    return points;
                }
                headed = true;
            } else {
                row(i + 1, cells(line));
            }
        }
        if (!headed) {
            problems.accept(0, "is empty; a header such as " + example() + " and a line a measurement is wanted");
        }
        return points;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        for (String cell : line.split(",", -1)) {
            String bare = cell.strip();
            boolean quoted = bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"");
            cells.add(quoted ? bare.substring(1, bare.length() - 1).strip() : bare);
        }
        return cells;
    }

    private List<String> known() {
        return law.unit().equals("mm")
                ? List.of("servo_deg", "pulse_us", law.output() + "_mm", law.output() + "_in")
                : List.of("servo_deg", "pulse_us", law.output() + "_deg");
    }

    private String example() {
        return "servo_deg," + law.output() + "_" + law.unit();
    }

    private boolean header(int line, List<String> cells) {
        columns = cells.size();
        boolean fine = true;
        for (int i = 0; i < cells.size(); i++) {
            String name = cells.get(i).toLowerCase(Locale.ROOT);
            if (!known().contains(name)) {
                problems.accept(
                        line,
                        "there is no column " + Shown.quoted(cells.get(i)) + "; " + Nearest.hint(name, known())
                                + "; a header is e.g. " + example());
                fine = false;
            } else if (name.equals("servo_deg") || name.equals("pulse_us")) {
                fine &= once(line, servoColumn, "the servo");
                servoColumn = i;
                pulses = name.equals("pulse_us");
            } else {
                fine &= once(line, outputColumn, "what was measured");
                outputColumn = i;
                unit = name.endsWith("_in") ? INCH : 1;
            }
        }
        if (fine && (servoColumn < 0 || outputColumn < 0)) {
            problems.accept(
                    line,
                    (servoColumn < 0 ? "a column for the servo" : "a column for what was measured")
                            + " is missing; a header is e.g. " + example());
            fine = false;
        }
        return fine;
    }

    private boolean once(int line, int column, String what) {
        if (column >= 0) {
            problems.accept(line, "two columns tell " + what + "; one is wanted");
        }
        return column < 0;
    }

    private void row(int line, List<String> cells) {
        if (cells.size() != columns) {
            problems.accept(
                    line,
                    "has " + cells.size() + (cells.size() == 1 ? " value" : " values") + ", the header " + columns
                            + (cells.size() > columns ? "; decimals take a full stop, not a comma" : ""));
            return;
        }
        double servo = number(line, cells.get(servoColumn));
        double output = number(line, cells.get(outputColumn)) * unit;
        if (Double.isNaN(servo) || Double.isNaN(output)) {
            return;
        }
        double turn = pulses ? ServoTable.turnAt(law, servo) : Math.toRadians(servo);
        double least = ServoTable.turnAt(law, law.servo().pulseFrom());
        double most = ServoTable.turnAt(law, law.servo().pulseTo());
        if (turn < least - ROUNDING || turn > most + ROUNDING) {
            problems.accept(
                    line,
                    Shown.quoted(cells.get(servoColumn)) + " is outside the servo's travel, "
                            + (pulses
                                    ? shown(law.servo().pulseFrom()) + " to "
                                            + shown(law.servo().pulseTo()) + " µs"
                                    : shown(Math.toDegrees(least)) + "° to " + shown(Math.toDegrees(most))
                                            + "° from open"));
            return;
        }
        double largest =
                2 * Math.max(law.output(0, ServoLaw.Build.AS_DRAWN), law.output(law.travel(), ServoLaw.Build.AS_DRAWN));
        if (output < 0 || output > largest) {
            problems.accept(
                    line,
                    Shown.quoted(cells.get(outputColumn)) + " is no " + law.output()
                            + " of this design: as drawn it runs from "
                            + shown(law.output(0, ServoLaw.Build.AS_DRAWN)) + " to "
                            + shown(law.output(law.travel(), ServoLaw.Build.AS_DRAWN)) + " " + law.unit());
            return;
        }
        points.add(new MeasuredPoint(line, turn, output));
    }

    private double number(int line, String cell) {
        if (!cell.isEmpty() && cell.length() <= MOST_DIGITS && cell.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)")) {
            return Double.parseDouble(cell);
        }
        problems.accept(
                line,
                (cell.isEmpty() ? "a value is missing" : Shown.quoted(cell) + " is no number")
                        + "; plain decimals such as 41.35 are wanted, the unit stands in the header");
        return Double.NaN;
    }

    private static String shown(double value) {
        return ringleaf.draw.Decimals.of(value, 2);
    }
}
