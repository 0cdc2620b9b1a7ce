// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.MotionTable;

/**
 * The whole travel measured on the outlines as cut: by how much the last gear strays from its place when every driver
 * pushes, and the least gap while all teeth stand in the middle of their play.
 *
 * @param angles of the first driver at the states, rad
 * @param turn of the last gear for a turn of the first driver, signed
 * @param errors of the last gear, rad, positive where it runs ahead in its own sense
 * @param gaps least gap, mm
 * @param gapStage number of the stage in which it is
 * @param lost states at which some driver finds no tooth to push
 */
record Rolling(double[] angles, double turn, double[] errors, double[] gaps, int[] gapStage, List<Integer> lost) {
    private static final List<String> COLUMNS =
            List.of("angle_in_deg", "angle_out_deg", "transmission_error_deg", "gap");

    private static final double HAIR = 1e-9;

    static Rolling of(TrainDesign design, TrainMotion motion) {
        int n = motion.states();
        double[] angles = new double[n];
        double[] errors = new double[n];
        double[] gaps = new double[n];
        int[] gapStage = new int[n];
        List<Integer> lost = new ArrayList<>();
        double turn = design.last().drivenTurn();
        List<RolledStage> stages = new ArrayList<>();
        for (Stage stage : design.stages()) {
            stages.add(new RolledStage(stage));
        }
        for (int i = 0; i < n; i++) {
            angles[i] = motion.driver(i);
            gaps[i] = Double.POSITIVE_INFINITY;
            boolean found = true;
            for (RolledStage stage : stages) {
                RolledStage.At at = stage.at(angles[i]);
                found &= at.meets();
                // An error at one shaft reaches the last one through the stages between.
                errors[i] += at.error() * Math.abs(turn / stage.stage().drivenTurn());
                if (at.gap() < gaps[i]) {
                    gaps[i] = at.gap();
                    gapStage[i] = stage.stage().number();
                }
            }
            if (!found) {
                lost.add(i);
            }
        }
        return new Rolling(angles, turn, errors, gaps, gapStage, lost);
    }

    /** From the least to the greatest error over the travel, rad. */
    double errorSpan() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double error : errors) {
            least = Math.min(least, error);
            most = Math.max(most, error);
        }
        return most - least;
    }

    /** The state of the least gap; the first of those that differ by rounding only. */
    int leastGap() {
        int least = 0;
        for (int i = 1; i < gaps.length; i++) {
            least = gaps[i] < gaps[least] - HAIR ? i : least;
        }
        return least;
    }

    MotionTable table() {
        List<double[]> rows = new ArrayList<>();
        List<String> places = new ArrayList<>();
        for (int i = 0; i < angles.length; i++) {
            double out = Math.toDegrees(angles[i] * turn);
            rows.add(new double[] {Math.toDegrees(angles[i]), out == 0 ? 0 : out, Math.toDegrees(errors[i]), gaps[i]});
            places.add("stage " + gapStage[i]);
        }
        return new MotionTable(COLUMNS, rows, "gap_at", places);
    }
}
