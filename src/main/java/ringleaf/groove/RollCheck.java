package ringleaf.groove;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * The second opinion on a groove: the belt's nominal tooth, with the land beside it, is rolled on from where it first
 * reaches below the rim until it sits, and off again, against the finished edge. It knows nothing of envelopes: points
 * along the tooth's edge are placed by the rolling motion and held against the edge at their own radius.
 *
 * <p>Points lie at most {@value #STEP} of the pitch apart and phases {@value #PHASE} of it; what shows only between
 * them is missed by less than the bow of the outlines over half such a step (measured by a test with finer steps).
 *
 * @param overlap deepest reach of the tooth into the pulley over all phases, mm; 0 when there is none
 * @param overlapAt contact at which it is, mm of belt from the seated tooth
 * @param play of the seated tooth along the pitch line, in all, mm
 * @param tipRoom between the seated tooth's tip and the groove's bottom, mm
 */
public record RollCheck(double overlap, double overlapAt, double play, double tipRoom) {
    private static final double STEP = 0.015;
    private static final double PHASE = 0.02;
    /** Overlaps below this are what arcs within half a micrometre of the curve may leave, mm. */
    private static final double TOUCH = 0.001;

    /** Rolls the nominal tooth through the groove. */
    public static RollCheck of(Groove groove, BeltTooth tooth) {
        GrooveEdge edge = new GrooveEdge(groove);
        Rolling rolling = new Rolling(tooth.pitch() * groove.teeth() / Angles.TURN);
        List<Point> points = points(tooth);
        double reach = rolling.reach(tooth);
        int phases = (int) Math.ceil(reach / (PHASE * tooth.pitch()));
        double worst = 0;
        double at = 0;
        // rolling off is the mirror image of rolling on, and tooth and groove are their own
        for (int i = 0; i <= phases; i++) {
            double contact = reach * i / phases;
            for (Point p : points) {
                double depth = edge.depth(rolling.place(p, contact));
                if (depth > worst) {
                    worst = depth;
                    at = contact;
                }
            }
        }
        double tip = rolling.radius() - tooth.land() - tooth.height();
        return new RollCheck(worst, at, play(edge, rolling, points), tip - edge.root());
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

    /** How far the seated tooth can turn about the pulley's axis before it touches, both ways, along the pitch line. */
    private static double play(GrooveEdge edge, Rolling rolling, List<Point> points) {
        List<Point> seated = new ArrayList<>();
        for (Point p : points) {
            Point placed = rolling.place(p, 0);
            if (placed.norm() < edge.rim() - TOUCH) {
                seated.add(placed);
            }
        }
        double low = 0;
        double high = rolling.radius() * edge.pitch() / 2;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (touches(edge, seated, middle / rolling.radius())) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return 2 * low;
    }

    private static boolean touches(GrooveEdge edge, List<Point> seated, double turn) {
        for (Point p : seated) {
            if (edge.depth(p.turned(turn)) > TOUCH) {
                return true;
            }
        }
        return false;
    }
}
