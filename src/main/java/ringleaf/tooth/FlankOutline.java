// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.ArcFit;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Mirror;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * One flank of a tooth space as arcs, from the root circle to the tip, in the frame of the space.
 *
 * @param flank the exact curve without relief
 * @param exact the involute as relieved
 * @param root arcs of the root curve, as deep as the space is cut
 * @param involute arcs of the involute, from the end of the root's
 */
record FlankOutline(ToothFlank flank, RelievedFlank exact, Path root, Path involute) {
    /** Points of each arc at which its distance from the true curve is measured. */
    private static final int PLACES = 24;
    /** Starting points of the search for the nearest point of a root curve. */
    private static final int STARTS = 48;
    /** A root circle's arc shorter than this share of the module is left out: half a nanometre on module 1. */
    private static final double SHORTEST_ROOT = 5e-7;

    static FlankOutline of(ToothFlank flank, Tolerance tolerance, TipFinish finish) {
        RelievedFlank exact = RelievedFlank.of(flank, finish);
        Point joint = flank.joint();
        Path root = ArcFit.fit(flank.root(), tolerance);
        Path involute = ArcFit.fit(exact.relief() == 0 ? flank.involute() : exact, tolerance);
        Point foot = root.start();
        if (!hasRootArc(flank)) {
            foot = new Point(foot.norm(), 0);
        }
        Point inward = flank.deeper();
        Path placed = withEnds(root, foot, joint).placed(Placement.shift(-inward.x(), -inward.y()));
        return new FlankOutline(flank, exact, placed, withEnds(involute, joint, involute.end()));
    }

    private static boolean hasRootArc(ToothFlank flank) {
        RootCurve root = flank.root();
        return root.rootHalfAngle() * root.rootRadius()
                > SHORTEST_ROOT * flank.form().module();
    }

    private static Path withEnds(Path path, Point start, Point end) {
        List<Segment> pieces = new ArrayList<>(path.segments());
        int last = pieces.size() - 1;
        pieces.set(0, pieces.get(0).withEnds(start, pieces.get(0).end()));
        pieces.set(last, pieces.get(last).withEnds(pieces.get(last).start(), end));
        return new Path(pieces);
    }

    /** Half the angle of the space at the tip, rad. */
    double tipHalfAngle() {
        return involute.end().angle();
    }

    /**
     * One tooth space from the tip corner on its clockwise side over the root to the tip corner on the other, in the
     * frame of the space. {@code before} gives the clockwise side as its mirror image; both flanks are of one form but
     * may end at different radii.
     */
    static List<Segment> space(FlankOutline before, FlankOutline after) {
        List<Segment> pieces = new ArrayList<>();
        List<Segment> down = before.upwards();
        for (int i = down.size() - 1; i >= 0; i--) {
            pieces.add(down.get(i).mirrored(Mirror.FLIP_Y).reversed());
        }
        if (hasRootArc(after.flank)) {
            pieces.add(after.bottom(pieces.get(pieces.size() - 1).end()));
        }
        pieces.addAll(after.upwards());
        return pieces;
    }

    /** The arc on which both sides of the bottom meet. */
    private Arc bottom(Point from) {
        Point to = root.start();
        if (flank.deeper().equals(Point.ORIGIN)) {
            double half = to.angle();
            return new Arc(Point.ORIGIN, to.norm(), -half, 2 * half, from, to);
        }
        double half = flank.root().rootHalfAngle();
        double radius = to.y() / Math.sin(half);
        return new Arc(new Point(to.x() - radius * Math.cos(half), 0), radius, -half, 2 * half, from, to);
    }

    /** From the bottom to the tip; a root that is cut deeper is joined by a straight piece. */
    private List<Segment> upwards() {
        List<Segment> pieces = new ArrayList<>(root.segments());
        if (!root.end().equals(involute.start())) {
            pieces.add(new Line(root.end(), involute.start()));
        }
        pieces.addAll(involute.segments());
        return pieces;
    }

    /**
     * Greatest distance of the arcs from the exact curve, mm, measured at 24 points of every arc by the involute's
     * closed form and by a search on the root curve; it shares no sample with the fitting.
     */
    double deviation() {
        double worst = 0;
        Point inward = flank.deeper();
        for (Segment piece : root.segments()) {
            for (int i = 0; i <= PLACES; i++) {
                Point point = piece.pointAt((double) i / PLACES).plus(inward);
                worst = Math.max(worst, flank.root().distanceFrom(point, STARTS));
            }
        }
        for (Segment piece : involute.segments()) {
            for (int i = 0; i <= PLACES; i++) {
                Point point = piece.pointAt((double) i / PLACES);
                worst = Math.max(worst, Math.abs(exact.distanceFrom(point)));
            }
        }
        return worst;
    }
}
