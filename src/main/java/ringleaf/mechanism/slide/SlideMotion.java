// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Motion;
import ringleaf.part.MotionTable;

/** The horn turns evenly from where the carriage is drawn in to where it is fully out. */
record SlideMotion(SlideLayout layout, int states) implements Motion {
    double angle(int state) {
        return layout.angle((double) state / (states - 1));
    }

    /** How far the carriage has come, mm. */
    double way(int state) {
        return state == 0 ? 0 : layout.way(angle(state));
    }

    @Override
    public Placement pose(int body, int state) {
        double angle = angle(state);
        return switch (body) {
            case SlideParts.CARRIAGE -> Placement.shift(way(state), 0);
            case SlideParts.ARM -> Placement.turnAbout(layout.axis(), angle - layout.startAngle());
            case SlideParts.LINK -> link(angle);
            default -> Placement.IDENTITY;
        };
    }

    private Placement link(double angle) {
        Point first = layout.hornPin(layout.startAngle());
        Point now = layout.hornPin(angle);
        double turn = layout.crank().slant(layout.startAngle()) - layout.crank().slant(angle);
        return Placement.turnAbout(first, turn).then(Placement.shift(now.x() - first.x(), now.y() - first.y()));
    }

    MotionTable table() {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < states; i++) {
            rows.add(new double[] {Math.toDegrees(layout.startAngle() - angle(i)), way(i)});
        }
        return new MotionTable(List.of("servo_deg", "carriage_mm"), rows, "", List.of());
    }
}
