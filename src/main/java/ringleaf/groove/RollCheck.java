// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Containment;
import ringleaf.curve.Distances;
import ringleaf.curve.FreeTurn;
import ringleaf.geom.Angles;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * The second opinion on a groove: the belt's nominal tooth, with the land beside it, is rolled on from where it first
 * reaches below the rim until it sits, and off again, against the finished edge. It knows nothing of envelopes: points
 * along the tooth's edge are placed by the rolling motion and held against the groove's, and corners of the groove
 * against the tooth. The play of the seated tooth is exact on lines and arcs ({@link FreeTurn}).
 *
 * <p>Points lie at most {@value #STEP} of the pitch apart and phases {@value #PHASE} of it; what shows only between
 * them is missed by less than the bow of the outlines over half such a step (measured by a test with finer steps).
 *
 * @param overlap deepest reach of the tooth into the pulley over all phases, mm; 0 when there is none
 * @param overlapAt contact at which it is, mm of belt from the seated tooth
 * @param play of the seated tooth along the pitch line, in all, mm; below 0 where it overlaps by rounding
 * @param tipRoom between the seated tooth's tip and the groove's bottom, mm
 */
public record RollCheck(double overlap, double overlapAt, double play, double tipRoom) {
    private static final double STEP = 0.015;
    private static final double PHASE = 0.02;
    /** Overlap of a seated tooth that is told as play below 0, mm. */
    private static final double TOUCH = 0.002;

    /** Rolls the nominal tooth through the groove. */
    public static RollCheck of(Groove groove, BeltTooth tooth) {
        GrooveEdge edge = new GrooveEdge(groove);
        Rolling rolling = new Rolling(tooth.pitch() * groove.teeth() / Angles.TURN);
        List<Point> points = points(tooth);
        List<Point> corners = corners(groove);
        Region body = body(tooth);
        double reach = rolling.reach(tooth);
        int phases = (int) Math.ceil(reach / (PHASE * tooth.pitch()));
        double worst = 0;
        double at = 0;
        // rolling off is the mirror image of rolling on, and tooth and groove are their own
        for (int i = 0; i <= phases; i++) {
            double contact = reach * i / phases;
            double deepest = 0;
            for (Point p : points) {
                deepest = Math.max(deepest, edge.depth(rolling.place(p, contact)));
            }
            for (Point p : corners) {
                deepest = Math.max(deepest, depth(body, tooth, rolling.back(p, contact)));
            }
            if (deepest > worst) {
                worst = deepest;
                at = contact;
            }
        }
        double tip = rolling.radius() - tooth.land() - tooth.height();
        return new RollCheck(worst, at, play(groove, rolling, tooth), tip - edge.root());
    }

    /** Where the pieces of the groove's edge meet. */
    private static List<Point> corners(Groove groove) {
        List<Point> corners = new ArrayList<>();
        for (Segment piece : groove.edge().segments()) {
            corners.add(piece.start());
        }
        corners.add(groove.edge().end());
        return corners;
    }

    /** The tooth below its land. */
    private static Region body(BeltTooth tooth) {
        List<Segment> pieces = new ArrayList<>(tooth.edge().segments());
        pieces.add(new Line(tooth.edge().end(), tooth.edge().start()));
        return Region.of(new Contour(pieces));
    }

    /** How deep a point lies in the tooth, mm; 0 outside. */
    private static double depth(Region body, BeltTooth tooth, Point p) {
        if (p.y() > -tooth.land()
                || p.y() < -tooth.land() - tooth.height()
                || Math.abs(p.x()) > tooth.halfFoot()
                || Containment.of(body, p, 0) != Containment.INSIDE) {
            return 0;
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (Segment piece : tooth.edge().segments()) {
            nearest = Math.min(nearest, Distances.distance(piece, p));
        }
        return nearest;
    }

    /**
     * How far the seated tooth can turn about the pulley's axis before it touches, both ways, along the pitch line. The
     * land beside it turns along the rim and touches nothing; what lies within rounding of its contact with the rim or
     * with the groove's bottom is left aside, as it slides there.
     */
    private static double play(Groove groove, Rolling rolling, BeltTooth tooth) {
        Placement seated = Placement.shift(0, rolling.radius());
        List<Segment> moving = tooth.edge().placed(seated).segments();
        FreeTurn free = FreeTurn.of(
                moving,
                Point.ORIGIN,
                groove.edge().segments(),
                true,
                TOUCH / rolling.radius(),
                Math.PI / groove.teeth());
        return 2 * free.angle() * rolling.radius();
    }

    /** Points along the tooth's edge and the land, up to half a pitch to either side. */
    private static List<Point> points(BeltTooth tooth) {
        List<Point> points = new ArrayList<>();
        Path edge = tooth.edge();
        for (Segment piece : edge.segments()) {
            int n = Math.max(1, (int) Math.ceil(piece.length() / (STEP * tooth.pitch())));
            for (int i = 0; i < n; i++) {
                points.add(piece.pointAt((double) i / n));
            }
        }
        points.add(edge.end());
        for (double x = tooth.halfFoot(); x < tooth.pitch() / 2; x += 4 * STEP * tooth.pitch()) {
            points.add(new Point(x, -tooth.land()));
            points.add(new Point(-x, -tooth.land()));
        }
        return points;
    }
}
