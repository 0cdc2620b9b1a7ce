// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw;

import java.util.Arrays;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * Finds room for a rectangle between the lines of a drawing. Lines are held as the boxes of short pieces, so a spot
 * that is found is free for certain, while a tight one may be missed.
 */
final class FreeSpot {
    /** Steps of the search across the box. */
    private static final int STEPS = 20;
    /** Longest piece, mm, and widest sweep, rad, that get a box of their own. */
    private static final double PIECE = 2.5;

    private static final double SWEEP = Math.PI / 6;

    /** For each piece: least x, least y, greatest x, greatest y. */
    private double[] taken = new double[1024];

    private int takenEnd;
    /** For each piece of a contour: x and y of its two ends. */
    private double[] chords = new double[1024];

    private int chordsEnd;
    /** For each piece in the way at the height looked at: least and greatest x. */
    private double[] row = new double[256];

    private int rowEnd;
    /** Where the line of that height meets chords: x of each. */
    private double[] met = new double[64];

    private int metEnd;

    void add(Contour contour) {
        for (Segment segment : contour.segments()) {
            add(segment, true);
        }
    }

    void add(Path path) {
        for (Segment segment : path.segments()) {
            add(segment, false);
        }
    }

    private void add(Segment segment, boolean boundary) {
        int pieces = Math.max(1, (int) Math.ceil(segment.length() / PIECE));
        double bow = 0;
        if (segment instanceof Arc arc) {
            pieces = Math.max(pieces, (int) Math.ceil(Math.abs(arc.sweep()) / SWEEP));
            // How far the arc stands out from the chord of a piece: its box is the chord's and that much more.
            bow = arc.radius() * (1 - Math.cos(arc.sweep() / pieces / 2));
        }
        Point from = segment.start();
        for (int i = 1; i <= pieces; i++) {
            Point to = i == pieces ? segment.end() : segment.pointAt((double) i / pieces);
            add(from, to, bow, boundary);
            from = to;
        }
    }

    private void add(Point from, Point to, double bow, boolean boundary) {
        if (takenEnd == taken.length) {
            taken = Arrays.copyOf(taken, 2 * taken.length);
        }
        taken[takenEnd++] = Math.min(from.x(), to.x()) - bow;
        taken[takenEnd++] = Math.min(from.y(), to.y()) - bow;
        taken[takenEnd++] = Math.max(from.x(), to.x()) + bow;
        taken[takenEnd++] = Math.max(from.y(), to.y()) + bow;
        if (!boundary) {
            return;
        }
        if (chordsEnd == chords.length) {
            chords = Arrays.copyOf(chords, 2 * chords.length);
        }
        chords[chordsEnd++] = from.x();
        chords[chordsEnd++] = from.y();
        chords[chordsEnd++] = to.x();
        chords[chordsEnd++] = to.y();
    }

    /**
     * The centre of a free rectangle within {@code room}, the lowest one nearest to the room's middle; null if none
     * is found.
     *
     * @param clearance to the next line, mm
     * @param inside whether the rectangle must lie on the material that the contours enclose
     */
    Point find(Box room, double width, double height, double clearance, boolean inside) {
        double spanX = room.width() - width - 2 * clearance;
        double spanY = room.height() - height - 2 * clearance;
        if (spanX < 0 || spanY < 0) {
            return null;
        }
        for (int j = 0; j <= STEPS; j++) {
            double y = room.minY() + clearance + height / 2 + spanY * j / STEPS;
            lookAlong(y, height / 2 + clearance);
            for (int i = 0; i <= STEPS; i++) {
                // From the middle outwards, left and right in turn.
                double off = (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * spanX / STEPS;
                double x = room.centre().x() + off;
                if (isFree(x, width / 2 + clearance) && (!inside || isOnPart(x))) {
                    return new Point(x, y);
                }
            }
        }
        return null;
    }

    /** Notes what a rectangle with its middle on the line of height {@code y} can meet. */
    private void lookAlong(double y, double halfHeight) {
        double low = y - halfHeight;
        double high = y + halfHeight;
        rowEnd = 0;
        row = row.length < takenEnd / 2 ? new double[takenEnd / 2] : row;
        for (int i = 0; i < takenEnd; i += 4) {
            if (taken[i + 1] <= high && taken[i + 3] >= low) {
                row[rowEnd++] = taken[i];
                row[rowEnd++] = taken[i + 2];
            }
        }
        metEnd = 0;
        met = met.length < chordsEnd / 4 ? new double[chordsEnd / 4] : met;
        for (int i = 0; i < chordsEnd; i += 4) {
            double ay = chords[i + 1];
            double by = chords[i + 3];
            if (ay > y != by > y) {
                met[metEnd++] = chords[i] + (y - ay) / (by - ay) * (chords[i + 2] - chords[i]);
            }
        }
    }

    private boolean isFree(double x, double halfWidth) {
        double left = x - halfWidth;
        double right = x + halfWidth;
        for (int i = 0; i < rowEnd; i += 2) {
            if (row[i] <= right && row[i + 1] >= left) {
                return false;
            }
        }
        return true;
    }

    /** Even-odd rule on the chords; right for every point outside all the boxes, because each chord lies in its box. */
    private boolean isOnPart(double x) {
        boolean in = false;
        for (int i = 0; i < metEnd; i++) {
            in ^= x < met[i];
        }
        return in;
    }
}
