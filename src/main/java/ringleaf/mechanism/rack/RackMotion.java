// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Motion;
import ringleaf.part.MotionTable;

/** The rack moves towards +x, evenly; the pinion turns with it. Body 0 stands, 1 is the rack, 2 the pinion. */
record RackMotion(RackLayout layout, int states) implements Motion {
    static final int RACK = 1;
    static final int PINION = 2;

    /** Way of the rack, mm. */
    double way(int state) {
        return layout.stroke() * state / (states - 1);
    }

    /** Turn of the pinion, rad. */
    double turn(int state) {
        return way(state) / layout.pinion().referenceRadius();
    }

    @Override
    public Placement pose(int body, int state) {
        return switch (body) {
            case RACK -> Placement.shift(way(state), 0);
            case PINION -> Placement.turnAbout(Point.ORIGIN, turn(state));
            default -> Placement.IDENTITY;
        };
    }

    MotionTable table() {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < states; i++) {
            rows.add(new double[] {Math.toDegrees(turn(i)), way(i)});
        }
        String turned = layout.spec().servo().isPresent() ? "servo_deg" : "pinion_deg";
        return new MotionTable(List.of(turned, "rack_mm"), rows, "", List.of());
    }
}
