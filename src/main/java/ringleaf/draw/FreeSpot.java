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
            for (int i = 0; i <= STEPS; i++) {
                // From the middle outwards, left and right in turn.
                double off = (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * spanX / STEPS;
                Point centre = new Point(room.centre().x() + off, y);
                if (isFree(centre, width / 2 + clearance, height / 2 + clearance) && (!inside || isOnPart(centre))) {
                    return centre;
                }
            }
        }
        return null;
    }

    private boolean isFree(Point centre, double halfWidth, double halfHeight) {
        double left = centre.x() - halfWidth;
        double right = centre.x() + halfWidth;
        double low = centre.y() - halfHeight;
        double high = centre.y() + halfHeight;
        for (int i = 0; i < takenEnd; i += 4) {
            if (taken[i] <= right && taken[i + 2] >= left && taken[i + 1] <= high && taken[i + 3] >= low) {
                return false;
            }
        }
        return true;
    }

    /** Even-odd rule on the chords; right for every point outside all the boxes, because each chord lies in its box. */
    private boolean isOnPart(Point p) {
        boolean in = false;
        for (int i = 0; i < chordsEnd; i += 4) {
            double ay = chords[i + 1];
            double by = chords[i + 3];
            if (ay > p.y() != by > p.y()
                    && p.x() < chords[i] + (p.y() - ay) / (by - ay) * (chords[i + 2] - chords[i])) {
                in = !in;
            }
        }
        return in;
    }
}
