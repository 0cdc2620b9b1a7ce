// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Problems;

/** Reads what a drive keeps clear of; what covers the driver's axis leaves no drive at all. */
final class ObstacleReader {
    private final Values values;
    private final Problems problems;

    ObstacleReader(Values values, Problems problems) {
        this.values = values;
        this.problems = problems;
    }

    /**
     * The obstacles of the spec.
     *
     * @param room about the driver's axis that is wanted free, mm
     */
    List<DriveSpec.Obstacle> read(double room) {
        List<DriveSpec.Obstacle> all = new ArrayList<>();
        for (Values one : values.given(DriveFields.OBSTACLES).orElse(List.of())) {
            if (one.isComplete()) {
                Point centre = new Point(one.require(DriveFields.X), one.require(DriveFields.Y));
                double diameter = one.require(DriveFields.OBSTACLE_DIAMETER);
                if (centre.norm() <= diameter / 2) {
                    double free = Math.floor(20 * (centre.norm() - room)) / 10;
                    problems.at(
                            one.where(DriveFields.OBSTACLE_DIAMETER),
                            Words.mm(diameter) + " about " + Words.number(centre.x(), 2) + ", "
                                    + Words.number(centre.y(), 2) + " covers the driver's axis at 0, 0",
                            free >= 0.1
                                    ? "the nearest that works is " + Words.number(free, 1) + "mm"
                                    : "place it further off");
                }
                all.add(new DriveSpec.Obstacle(centre, diameter));
            }
        }
        return all;
    }
}
