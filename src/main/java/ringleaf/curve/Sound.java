// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * Regions whose contours do not cross, of one whose contours may: holes that run into one another, or out of the part.
 * What lies in the outer contour and in no hole is what they leave; a design with such a part fails its checks, and yet
 * it has to be drawn.
 */
public final class Sound {
    private final List<Segment> pieces = new ArrayList<>();
    private final STRtree tree = new STRtree();

    private Sound(Region region) {
        for (Contour contour : region.contours()) {
            for (Segment segment : contour.segments()) {
                tree.insert(envelope(segment.box()), pieces.size());
                pieces.add(segment);
            }
        }
    }

    /** The region itself where its contours do not cross, else what they leave; nothing left gives an empty list. */
    public static List<Region> of(Region region) {
        return new Sound(region).crosses() ? Overlay.union(List.of(region)) : List.of(region);
    }

    /** Whether pieces meet elsewhere than where both end. */
    private boolean crosses() {
        double touch = Overlay.touch(pieces);
        List<Point> found = new ArrayList<>(2);
        for (int i = 0; i < pieces.size(); i++) {
            Segment piece = pieces.get(i);
            for (Object item : tree.query(envelope(piece.box().grown(touch)))) {
                int other = (Integer) item;
                if (other > i) {
                    found.clear();
                    Intersections.crossings(piece, pieces.get(other), touch, found);
                    for (Point p : found) {
                        double joined = joined(touch, piece, pieces.get(other));
                        if (!endsAt(piece, p, joined) || !endsAt(pieces.get(other), p, joined)) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }

    /** How far from where two pieces join smoothly rounding may put a crossing of their carriers, mm. */
    private static double joined(double touch, Segment one, Segment other) {
        double bent = Math.max(Math.abs(one.curvature()), Math.abs(other.curvature()));
        return bent == 0 ? 2 * touch : Math.sqrt(8 * touch / bent) + 2 * touch;
    }

    private static boolean endsAt(Segment piece, Point p, double near) {
        return p.distance(piece.start()) <= near || p.distance(piece.end()) <= near;
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
    }
}
