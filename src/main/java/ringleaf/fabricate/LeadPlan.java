// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.curve.Winding;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * Where the cut runs into a contour: from the scrap, which is outside of outer contours and inside of holes, square to
 * the longest piece whose middle is no working edge. A contour that is working edge all round, as that of a slot, is begun
 * where it lies farthest from its middle. Where less room is, the lead is shorter, and below an eighth there is none.
 *
 * @param length of a lead, mm; 0 for none
 * @param working regions on whose edges no cut begins
 */
public record LeadPlan(double length, List<Region> working) {
    static final LeadPlan NONE = new LeadPlan(0, List.of());

    /** A lead is shortened by halves, so often. */
    private static final int HALVINGS = 3;
    /** As far to either side of a lead, mm, no working edge lies. */
    private static final double BESIDE = 0.5;
    /** Share of its length that a lead's end keeps from everything that is cut. */
    private static final double CLEAR = 0.95;

    public LeadPlan {
        working = List.copyOf(working);
    }

    /** The same outlines, each contour begun where its lead meets it; circles have no beginning to move. */
    Region started(Region outline) {
        if (length == 0) {
            return outline;
        }
        List<Contour> holes = new ArrayList<>();
        for (Contour hole : outline.holes()) {
            holes.add(started(hole, outline));
        }
        return new Region(started(outline.outer(), outline), holes);
    }

    /**
     * The leads of outlines that were started so, towards their contours.
     *
     * @param outer whether the outer contour is cut all round, and not between tabs
     */
    public List<Path> leads(Region outline, boolean outer) {
        List<Path> leads = new ArrayList<>();
        for (Contour contour : outline.contours()) {
            if (length > 0 && (outer || contour != outline.outer())) {
                Segment first = contour.segments().get(0);
                Line lead = lead(first.start(), first.tangentAt(0), outline);
                if (lead != null) {
                    leads.add(Path.of(lead));
                }
            }
        }
        return leads;
    }

    private Contour started(Contour contour, Region outline) {
        if (contour.isCircle()) {
            return contour;
        }
        Point middle = contour.centroid();
        int best = -1;
        boolean bestFree = false;
        double most = 0;
        for (int i = 0; i < contour.segments().size(); i++) {
            Segment segment = contour.segments().get(i);
            Point p = segment.pointAt(0.5);
            double beside = Math.min(0.5, BESIDE / segment.length());
            boolean free = isFree(p) && isFree(segment.pointAt(0.5 - beside)) && isFree(segment.pointAt(0.5 + beside));
            double merit = free ? segment.length() : p.distance(middle);
            boolean better = best < 0 || free && !bestFree || free == bestFree && merit > most + 1e-9;
            if (better && lead(p, segment.tangentAt(0.5), outline) != null) {
                best = i;
                bestFree = free;
                most = merit;
            }
        }
        return best < 0 ? contour : startedAt(contour, best);
    }

    /** The contour begun in the middle of one of its pieces. */
    private static Contour startedAt(Contour contour, int piece) {
        int n = contour.segments().size();
        Segment split = contour.segments().get(piece);
        Segment back = split.part(0, 0.5);
        Segment on = split.part(0.5, 1).withEnds(back.end(), split.end());
        List<Segment> pieces = new ArrayList<>(n + 1);
        pieces.add(on);
        for (int i = 1; i < n; i++) {
            pieces.add(contour.segments().get((piece + i) % n));
        }
        pieces.add(back.withEnds(split.start(), back.end()));
        return new Contour(pieces);
    }

    /** The lead to a point of an outline, the material lying to the left; null where there is no room for it. */
    private Line lead(Point p, Point tangent, Region outline) {
        Point scrap = tangent.left().times(-1);
        double own = length;
        for (int k = 0; k <= HALVINGS; k++, own /= 2) {
            Point from = p.plus(scrap.times(own));
            if (isClear(from, own * CLEAR, outline)) {
                return new Line(from, p);
            }
        }
        return null;
    }

    /** In the scrap, where nothing is cut nearer than {@code room}. */
    private static boolean isClear(Point from, double room, Region outline) {
        // a hole that is narrower than what the room leaves out of the lead is passed through into the material
        if (Winding.of(outline, from) > 0) {
            return false;
        }
        for (Contour contour : outline.contours()) {
            for (Segment segment : contour.segments()) {
                if (Distances.distance(segment, from) < room) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isFree(Point p) {
        for (Region region : working) {
            if (Winding.of(region, p) > 0) {
                return false;
            }
        }
        return true;
    }
}
