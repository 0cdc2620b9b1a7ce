// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

/** The figures of one state, filled in by whoever measures them. */
final class Figures {
    double clearance = Double.NaN;
    String clearanceAt = "";
    double leakArea = Double.NaN;
    double inscribed = Double.NaN;
    double neighbourOverlap = Double.NaN;
    int leafLayers;

    StateReport report(Pose pose) {
        return new StateReport(
                pose.state, pose.label, clearance, clearanceAt, leakArea, inscribed, neighbourOverlap, leafLayers);
    }
}
