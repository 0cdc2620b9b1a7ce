package ringleaf.draw;

import java.util.ArrayList;
import java.util.List;
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
    private static final int STEPS = 24;
    /** Longest piece, mm, and widest sweep, rad, that get a box of their own. */
    private static final double PIECE = 2;

    private static final double SWEEP = Math.PI / 6;

    private final List<Box> taken = new ArrayList<>();
    private final List<Point[]> chords = new ArrayList<>();

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
        if (segment instanceof Arc arc) {
            pieces = Math.max(pieces, (int) Math.ceil(Math.abs(arc.sweep()) / SWEEP));
        }
        for (int i = 0; i < pieces; i++) {
            Segment piece = segment.part((double) i / pieces, (double) (i + 1) / pieces);
            taken.add(piece.box());
            if (boundary) {
                chords.add(new Point[] {piece.start(), piece.end()});
            }
        }
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
        Box wanted = new Box(
                centre.x() - halfWidth, centre.y() - halfHeight, centre.x() + halfWidth, centre.y() + halfHeight);
        for (int i = 0; i < taken.size(); i++) {
            if (taken.get(i).meets(wanted)) {
                return false;
            }
        }
        return true;
    }

    /** Even-odd rule on the chords; right for every point outside all the boxes, because each chord lies in its box. */
    private boolean isOnPart(Point p) {
        boolean in = false;
        for (int i = 0; i < chords.size(); i++) {
            Point a = chords.get(i)[0];
            Point b = chords.get(i)[1];
            if (a.y() > p.y() != b.y() > p.y() && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                in = !in;
            }
        }
        return in;
    }
}
