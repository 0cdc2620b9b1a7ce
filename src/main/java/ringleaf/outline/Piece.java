// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.List;
import ringleaf.geom.Segment;
import ringleaf.spec.text.Place;

/**
 * A chain of pieces as it was drawn.
 *
 * @param segments in mm, y up, each starting where the one before ended, on the same point value
 * @param closed whether it is closed by itself
 * @param place in the file
 */
record Piece(List<Segment> segments, boolean closed, Place place) {
    Piece {
        segments = List.copyOf(segments);
    }
}
