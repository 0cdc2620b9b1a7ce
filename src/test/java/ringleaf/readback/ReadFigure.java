// SPDX-License-Identifier: Apache-2.0
package ringleaf.readback;

import java.util.List;

/**
 * One thing that a reader found.
 *
 * @param layer its layer or group
 * @param closed whether the file says that it is closed
 * @param circle whether the file has it as a circle
 */
record ReadFigure(String layer, boolean closed, boolean circle, List<ReadPiece> pieces) {
    double area() {
        return pieces.stream().mapToDouble(ReadPiece::areaTerm).sum();
    }

    double length() {
        return pieces.stream().mapToDouble(ReadPiece::length).sum();
    }

    double distance(double x, double y) {
        return pieces.stream().mapToDouble(p -> p.distance(x, y)).min().orElseThrow();
    }
}
