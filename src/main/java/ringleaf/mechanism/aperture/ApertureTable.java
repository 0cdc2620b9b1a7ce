// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.leaf.Sweep;
import ringleaf.part.MotionTable;

/** The travel as a table, one row a state, in degrees and mm, in the frame as built. */
final class ApertureTable {
    private static final List<String> COLUMNS = List.of(
            "servo_deg",
            "ring_deg",
            "blade_deg",
            "opening_diameter",
            "opening_area",
            "leak_area",
            "lap",
            "slot_pressure_deg",
            "pin_radius",
            "clearance");

    private ApertureTable() {}

    static MotionTable of(ApertureDesign design, Sweep sweep) {
        double sense = design.spec().mirrored() ? -1 : 1;
        double ratio = design.pinionPlan().map(PinionPlan::servoRatio).orElse(1.0);
        List<double[]> rows = new ArrayList<>();
        List<String> places = new ArrayList<>();
        for (int i = 0; i < sweep.states(); i++) {
            Clearest clearest = Clearest.at(design, sweep, i);
            double ring = Math.toDegrees(sweep.ringAngle[i]);
            rows.add(new double[] {
                Math.abs(ring) * ratio,
                ring == 0 ? 0 : ring * sense,
                Math.toDegrees(sweep.bladeAngle[i]),
                2 * sweep.openingRadius[i],
                sweep.openingArea[i],
                sweep.leak[i],
                sweep.lap[i],
                Math.toDegrees(sweep.pressure[i]),
                sweep.pinRadius[i],
                clearest.distance()
            });
            places.add(clearest.pair());
        }
        return new MotionTable(COLUMNS, rows, "clearance_at", places);
    }
}
