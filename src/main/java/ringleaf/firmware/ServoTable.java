// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Roots;
import ringleaf.mechanism.ServoLaw;
import ringleaf.spec.shared.Servo;

/**
 * Which pulse gives which output, for whole-number firmware: outputs in hundredths of a mm or a degree, pulses in
 * tenths of a microsecond, between rows a straight line in whole numbers. The error is measured at every hundredth
 * with the very arithmetic that the header has, rounding included.
 *
 * @param law what the servo moves
 * @param build how the finished thing differs from the drawing
 * @param rows in order of growing output
 * @param step between rows, but for the last, in hundredths
 * @param error the greatest error there is, mm or degrees
 * @param takeUp to be added to a pulse when the output is approached from the other side, tenths of a microsecond
 */
public record ServoTable(ServoLaw law, ServoLaw.Build build, List<TableRow> rows, long step, double error, int takeUp) {
    /** Outputs are counted in hundredths. */
    public static final double UNIT = 0.01;
    /** Pulses are counted in tenths of a microsecond. */
    public static final double PULSE_UNIT = 0.1;
    /** Most rows of a table. */
    public static final int MOST_ROWS = 512;

    /** Round steps, in hundredths, the widest first. */
    private static final long[] STEPS = {
        100_000, 50_000, 25_000, 20_000, 10_000, 5000, 2500, 2000, 1000, 500, 250, 200, 100, 50, 25, 20, 10, 5, 2, 1
    };

    public ServoTable {
        rows = List.copyOf(rows);
    }

    /**
     * The table with the widest round step whose error stays within what is asked.
     *
     * @param build how the finished thing differs from the drawing
     * @param within greatest error, mm or degrees, above 0
     * @throws IllegalArgumentException in words for people, when no table of at most {@value #MOST_ROWS} rows does
     */
    public static ServoTable of(ServoLaw law, ServoLaw.Build build, double within) {
        Placing placing = new Placing(law, build);
        double best = Double.POSITIVE_INFINITY;
        for (long step : STEPS) {
            if (placing.intervals(step) >= MOST_ROWS) {
                break;
            }
            List<TableRow> rows = placing.rows(step);
            double error = 0;
            for (TableRow row : rows) {
                error = Math.max(error, row.error());
            }
            if (error <= within) {
                return new ServoTable(law, build, rows, step, error, placing.takeUp());
            }
            best = Math.min(best, error);
        }
        double offered = Math.ceil(best * 1000) / 1000;
        throw new IllegalArgumentException("no table of up to " + MOST_ROWS + " rows keeps the error within " + within
                + " " + law.unit() + "; " + offered + " " + law.unit() + " works");
    }

    /** Least output of the table, in hundredths. */
    public long least() {
        return rows.get(0).output();
    }

    /** Greatest output of the table, in hundredths. */
    public long most() {
        return rows.get(rows.size() - 1).output();
    }

    /** Share of the way from the least to the greatest output, 0 to 100. */
    public double percent(TableRow row) {
        return 100.0 * (row.output() - least()) / (most() - least());
    }

    /** Least pulse of the servo's own travel, tenths of a microsecond. */
    public int leastPulse() {
        return (int) Math.round(Math.min(law.servo().pulseFrom(), law.servo().pulseTo()) / PULSE_UNIT);
    }

    /** Greatest pulse of the servo's own travel, tenths of a microsecond. */
    public int mostPulse() {
        return (int) Math.round(Math.max(law.servo().pulseFrom(), law.servo().pulseTo()) / PULSE_UNIT);
    }

    /** A pulse within the servo's own travel, tenths of a microsecond. */
    public int clamped(int pulse) {
        return Math.max(leastPulse(), Math.min(mostPulse(), pulse));
    }

    /**
     * The pulse for an output, as the header computes it: clamped to the table, then a line between two rows, halves
     * rounded away from the lower row.
     *
     * @param output in hundredths
     */
    public int pulse(long output) {
        long asked = Math.max(least(), Math.min(most(), output));
        int i = 1;
        while (i < rows.size() - 1 && rows.get(i).output() < asked) {
            i++;
        }
        TableRow from = rows.get(i - 1);
        TableRow to = rows.get(i);
        return interpolated(from.output(), from.pulse(), to.output(), to.pulse(), asked);
    }

    /** A line between two rows in whole numbers; C's division cuts towards 0, and so does this. */
    static int interpolated(long from, int fromPulse, long to, int toPulse, long asked) {
        long run = to - from;
        long rise = (long) (toPulse - fromPulse) * (asked - from);
        return (int) (fromPulse + (rise + (rise < 0 ? -run / 2 : run / 2)) / run);
    }

    /** The pulse at a turn of the servo from the start of the travel, microseconds: the travel lies in the middle. */
    public static double pulseAt(ServoLaw law, double turn) {
        Servo servo = law.servo();
        double share = (start(law) + turn) / servo.travel();
        return servo.pulseFrom() + share * (servo.pulseTo() - servo.pulseFrom());
    }

    /** The turn of the servo from the start of the travel at a pulse in microseconds, rad. */
    public static double turnAt(ServoLaw law, double pulse) {
        Servo servo = law.servo();
        double share = (pulse - servo.pulseFrom()) / (servo.pulseTo() - servo.pulseFrom());
        return share * servo.travel() - start(law);
    }

    /** What the servo turns from its own end before the travel begins, rad. */
    private static double start(ServoLaw law) {
        return Math.max(0, (law.servo().travel() - law.travel()) / 2);
    }

    /** Where rows come to lie. */
    private static final class Placing {
        private final ServoLaw law;
        private final ServoLaw.Build build;
        private final double from;
        private final double to;
        private final boolean falls;
        private final long least;
        private final long most;

        Placing(ServoLaw law, ServoLaw.Build build) {
            this.law = law;
            this.build = build;
            double[] range = range(law, build);
            from = range[0];
            to = range[1];
            double atFrom = law.output(from, build);
            double atTo = law.output(to, build);
            falls = atTo < atFrom;
            least = (long) Math.ceil(Math.min(atFrom, atTo) / UNIT - 1e-6);
            most = (long) Math.floor(Math.max(atFrom, atTo) / UNIT + 1e-6);
            if (!(most - least >= 2)) {
                throw new IllegalArgumentException(
                        "the servo moves next to nothing: from " + atFrom + " to " + atTo + " " + law.unit());
            }
        }

        long intervals(long step) {
            return (most - least + step - 1) / step;
        }

        List<TableRow> rows(long step) {
            List<Long> outputs = new ArrayList<>();
            outputs.add(least);
            // Rows stand at round outputs; the ends of the travel are as they are.
            for (long at = Math.floorDiv(least, step) * step + step; at < most; at += step) {
                outputs.add(at);
            }
            outputs.add(most);
            List<TableRow> rows = new ArrayList<>();
            for (int i = 0; i < outputs.size(); i++) {
                double turn = turn(outputs.get(i) * UNIT);
                rows.add(new TableRow(outputs.get(i), turn, pulse(turn), 0));
            }
            for (int i = 0; i + 1 < rows.size(); i++) {
                TableRow row = rows.get(i);
                rows.set(i, new TableRow(row.output(), row.turn(), row.pulse(), error(row, rows.get(i + 1))));
            }
            return rows;
        }

        private double error(TableRow row, TableRow next) {
            double worst = 0;
            for (long at = row.output(); at <= next.output(); at++) {
                int pulse = interpolated(row.output(), row.pulse(), next.output(), next.pulse(), at);
                double got = law.output(turnAt(law, pulse * PULSE_UNIT), build);
                worst = Math.max(worst, Math.abs(got - at * UNIT));
            }
            return worst;
        }

        private int pulse(double turn) {
            return (int) Math.round(pulseAt(law, turn) / PULSE_UNIT);
        }

        /** The turn that gives an output: it runs one way over the range. */
        private double turn(double output) {
            return Roots.last(turn -> law.output(turn, build) > output == falls, from, to);
        }

        /** What makes up for the play when the servo comes from the far side, tenths of a microsecond, signed. */
        int takeUp() {
            return (int) Math.round((pulseAt(law, -law.lostMotion()) - pulseAt(law, 0)) / PULSE_UNIT);
        }
    }

    /**
     * The turns of the servo that a table may use, rad: the travel of the thing as built; its closed end may use half
     * of what the stops let through when the thing stands off. Never past the servo's own ends.
     */
    public static double[] range(ServoLaw law, ServoLaw.Build build) {
        if (build.equals(ServoLaw.Build.AS_DRAWN)) {
            return new double[] {0, law.travel()};
        }
        double own = start(law);
        double from = Math.max(-own, law.start(build));
        double to = Math.min(law.travel() + own, law.travel() + law.overTravel() / 2 - build.zero());
        return new double[] {from, to};
    }
}
