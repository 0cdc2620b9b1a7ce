// SPDX-License-Identifier: Apache-2.0
package ringleaf.firmware;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.Decimals;
import ringleaf.mechanism.ServoLaw;

/** What measuring found, in words and as a table of residuals. */
public final class FitText {
    private FitText() {}

    /** A sentence each. */
    public static List<String> words(ServoLaw law, Fitted fitted) {
        List<String> lines = new ArrayList<>();
        String unit = law.unit().equals("deg") ? "°" : " " + law.unit();
        lines.add("Corrected by " + fitted.points().size() + " measured " + law.output() + "s: zero "
                + Decimals.of(Math.toDegrees(fitted.build().zero()), 3) + "° ± "
                + Decimals.of(Math.toDegrees(fitted.zeroWithin()), 3) + "° of the servo" + pin(law, fitted)
                + " (95 % intervals).");
        lines.add("Residuals " + Decimals.of(fitted.spread(), 3) + unit + " (standard deviation), greatest "
                + Decimals.of(greatest(fitted.residuals()), 3) + unit + "; before the fit "
                + Decimals.of(fitted.before(), 3) + unit + ".");
        return lines;
    }

    private static String pin(ServoLaw law, Fitted fitted) {
        if (!law.hasPin()) {
            return "";
        }
        return fitted.pinFitted()
                ? ", drive pins " + Decimals.of(fitted.build().pinOffset(), 3) + " ± "
                        + Decimals.of(fitted.pinWithin(), 3) + " mm further from their pivots than drawn"
                : ", drive pins as drawn: these measurements do not tell where they stand";
    }

    private static double greatest(double[] residuals) {
        double most = 0;
        for (double residual : residuals) {
            most = Math.max(most, Math.abs(residual));
        }
        return most;
    }

    /** One line a measurement: line of the file, turn, measured, fitted, residual. */
    public static List<String> residuals(ServoLaw law, Fitted fitted) {
        List<String> lines = new ArrayList<>();
        lines.add("line  servo      measured   fitted     residual");
        for (int i = 0; i < fitted.points().size(); i++) {
            MeasuredPoint point = fitted.points().get(i);
            String[] cells = {
                Integer.toString(point.line()),
                Decimals.of(Math.toDegrees(point.turn()), 2) + "°",
                Decimals.of(point.output(), 3),
                Decimals.of(law.output(point.turn(), fitted.build()), 3),
                Decimals.of(fitted.residuals()[i], 3)
            };
            StringBuilder line = new StringBuilder();
            int[] widths = {6, 11, 11, 11, 0};
            for (int k = 0; k < cells.length; k++) {
                int least = k + 1 < cells.length ? 1 : 0;
                line.append(cells[k]).append(" ".repeat(Math.max(least, widths[k] - cells[k].length())));
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
