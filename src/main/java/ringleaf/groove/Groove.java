// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.ArcFit;
import ringleaf.curve.Fillet;
import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Mirror;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * One groove of a pulley, about the axis +y of a frame with the pulley's axis at the origin, and the rim beside it.
 *
 * @param teeth of the pulley
 * @param rim radius of the outside
 * @param edge from the rim on the right through the groove to the rim on the left; counter-clockwise about the pulley
 * @param deviation of the arcs from the true curves, mm, measured; 0 where there is no curve
 * @param ridge whether the tooth's tip cuts away the lower flank, so that the groove has a ridge (rounded here)
 */
public record Groove(int teeth, double rim, Path edge, double deviation, boolean ridge) {
    /** A ridge is rounded by this share of the pitch, so that no sharp edge stands in the groove; a choice. */
    private static final double RIDGE = 0.005;
    /** Tangents that differ by more than this, as a length, meet at a corner. */
    private static final double CORNER = 1e-6;
    /** Shares of a rounding's radius that are tried one after another, until no crumb of a piece stays beside it. */
    private static final double[] TRIED = {1, 1.2, 0.8, 1.5, 0.6, 0.4, 0.2, 0.1};
    /** Shorter pieces than this are crumbs, mm. */
    private static final double CRUMB = 5e-4;
    /** How often the radius of a rounding is halved before a corner is left as it is. */
    private static final int SMALLER = 8;

    /** Thrown when neighbouring grooves leave no rim between them. */
    public static final class NoRim extends RuntimeException {
        NoRim(String message) {
            super(message, null, false, false);
        }
    }

    /**
     * The groove that a tooth sweeps while its belt rolls on and off, grown for room.
     *
     * @param tooth nominal, its land at the distance that leaves the pulley's rim
     * @param teeth of the pulley
     * @param backlash play of the seated tooth along the pitch line, in all, mm
     * @param clearance below the tooth's tip, mm
     */
    public static Groove generated(BeltTooth tooth, int teeth, double backlash, double clearance, Tolerance tolerance) {
        double radius = tooth.pitch() * teeth / Angles.TURN;
        Rolling rolling = new Rolling(radius);
        BeltTooth grown = tooth.grown(backlash, clearance);
        double rim = radius - tooth.land();
        if (!(rim - grown.height() > 0)) {
            throw new NoRim("the tooth is higher than the pulley's radius");
        }
        SweptSide side = SweptSide.of(grown, rolling, rim);
        List<Segment> pieces = new ArrayList<>();
        double worst = 0;
        Point at = null;
        for (SmoothCurve curve : side.branches()) {
            ArcFit.Fitted fitted = ArcFit.fitted(curve, tolerance);
            worst = Math.max(worst, fitted.deviation());
            for (Segment piece : fitted.path().segments()) {
                pieces.add(at == null ? piece : piece.withEnds(at, piece.end()));
                at = piece.end();
            }
        }
        pieces = withoutCrumbs(side.ridge() ? roundedRidges(pieces, rim, teeth, RIDGE * tooth.pitch()) : pieces);
        Path right = new Path(pieces);
        Path left = right.mirrored(new Mirror(Math.PI / 2, Point.ORIGIN)).reversed();
        List<Segment> all = new ArrayList<>(right.segments());
        Point a = right.end();
        Point b = left.start();
        List<Segment> rest = left.segments();
        if (a.distance(b) > 1e-9) {
            all.add(Arc.around(Point.ORIGIN, a, b, true));
            all.addAll(rest);
        } else {
            all.add(rest.get(0).withEnds(a, rest.get(0).end()));
            all.addAll(rest.subList(1, rest.size()));
        }
        Groove groove = new Groove(teeth, rim, new Path(all), worst, side.ridge());
        groove.checkRim();
        return groove;
    }

    /** The right side with its corners rounded, the one at the rim too; pieces that a rounding uses up fall away. */
    private static List<Segment> roundedRidges(List<Segment> side, double rim, int teeth, double radius) {
        Point from = Point.polar(rim, Math.PI / 2 - Math.PI / teeth);
        List<Segment> chain = new ArrayList<>();
        chain.add(Arc.around(Point.ORIGIN, from, side.get(0).start(), true));
        chain.addAll(side);
        for (int i = 1; i < chain.size(); i++) {
            chain = bridged(chain, i, chain.get(i - 1), chain.get(i), radius);
        }
        return chain.subList(1, chain.size());
    }

    /** A chain without pieces that are too short to be told from a point: where a curve hardly goes on before it ends. */
    private static List<Segment> withoutCrumbs(List<Segment> side) {
        List<Segment> chain = side;
        for (int i = 1; i + 1 < chain.size(); i++) {
            if (chain.get(i).length() < CRUMB) {
                chain = bridged(chain, i + 1, chain.get(i - 1), chain.get(i + 1), 0);
            }
        }
        return chain;
    }

    /** The corner before piece {@code at} rounded, between these two of the chain; as it was where none fits. */
    private static List<Segment> bridged(List<Segment> chain, int at, Segment before, Segment after, double radius) {
        double turn = before.tangentAt(1).distance(after.tangentAt(0));
        // where the corner hardly turns, a small rounding would itself be a crumb
        double usual = Math.max(radius, 2 * CRUMB / turn);
        for (int k = 0; turn > CORNER && k < TRIED.length; k++) {
            List<Segment> rounded = Fillet.bridged(chain, at, TRIED[k] * usual, CRUMB);
            if (rounded != null) {
                return rounded;
            }
        }
        return chain;
    }

    /**
     * A plain trapezoid: straight flanks, a flat bottom, roundings at rim and bottom.
     *
     * @param rim radius of the outside
     * @param depth from the rim to the bottom
     * @param width at the bottom, or at the rim
     * @param atRim where the width is measured
     * @param flank angle of one flank to the axis
     * @param rimRadius of the rounding at the rim
     * @param bottomRadius of the rounding at the bottom, less where the bottom is too narrow for it
     */
    public static Groove trapezoid(
            int teeth,
            double rim,
            double depth,
            double width,
            boolean atRim,
            double flank,
            double rimRadius,
            double bottomRadius) {
        double slope = Math.tan(flank);
        double top = atRim ? width / 2 : width / 2 + depth * slope;
        double low = top - depth * slope;
        if (!(low > 0) || !(rim > depth)) {
            throw new NoRim("the flanks meet above the bottom");
        }
        // the flank's line from (top, rim) cut with the rim circle, which falls off to the side
        Point foot = new Point(low, rim - depth);
        Point along = new Point(Math.sin(flank), Math.cos(flank));
        double b = foot.dot(along);
        double c = foot.dot(foot) - rim * rim;
        Point edge = foot.plus(along.times(-b + Math.sqrt(b * b - c)));
        Point otherEdge = new Point(-edge.x(), edge.y());
        Point otherFoot = new Point(-foot.x(), foot.y());
        Path path = Path.of(
                new Line(edge, foot),
                new Line(foot, otherFoot),
                new Line(otherFoot, edge.equals(otherEdge) ? edge : otherEdge));
        Groove sharp = new Groove(teeth, rim, path, 0, false);
        sharp.checkRim();
        double bottom = Math.min(bottomRadius, 0.98 * roomAtBottom(low, depth, flank));
        Groove groove = bottom > 0 ? sharp.filleted(bottom, p -> p.y() < edge.y() - depth / 2) : sharp;
        return rimRadius > 0 ? groove.filleted(rimRadius, p -> Math.abs(p.norm() - rim) < 1e-9 && p.x() != 0) : groove;
    }

    /** The greatest rounding of both bottom corners: its tangents fit on half the bottom and on the flank. */
    private static double roomAtBottom(double low, double depth, double flank) {
        double perRadius = Math.tan((Math.PI / 2 - flank) / 2);
        return Math.min(low, 0.7 * depth / Math.cos(flank)) / perRadius;
    }

    private void checkRim() {
        if (!(halfAngle() < Math.PI / teeth)) {
            throw new NoRim("neighbouring grooves meet and leave no rim");
        }
    }

    /** Angle from the groove's axis to where the rim ends, rad. */
    public double halfAngle() {
        return Math.PI / 2 - edge.start().angle();
    }

    /** Radius of the groove's deepest point, mm. */
    public double rootRadius() {
        double least = rim;
        for (Segment piece : edge.segments()) {
            least = Math.min(least, ringleaf.curve.Distances.distance(piece, Point.ORIGIN));
        }
        return least;
    }

    /** The same with corners rounded, those at the rim too. */
    private Groove filleted(double radius, java.util.function.Predicate<Point> which) {
        double reach = Math.PI / teeth;
        Point from = Point.polar(rim, Math.PI / 2 - reach);
        Point to = Point.polar(rim, Math.PI / 2 + reach);
        List<Segment> pieces = new ArrayList<>();
        pieces.add(Arc.around(Point.ORIGIN, from, edge.start(), true));
        pieces.addAll(edge.segments());
        pieces.add(Arc.around(Point.ORIGIN, edge.end(), to, true));
        pieces.add(new Line(to, Point.ORIGIN));
        pieces.add(new Line(Point.ORIGIN, from));
        Fillet.Rounded done = new Fillet.Rounded(new Contour(pieces), List.of());
        double r = radius;
        // a corner between pieces that are too short for the radius gets a smaller one
        for (int i = 0; i < SMALLER; i++) {
            done = Fillet.of(
                    done.contour(),
                    r,
                    p -> !p.equals(from) && !p.equals(to) && !p.equals(Point.ORIGIN) && which.test(p));
            if (done.left().isEmpty()) {
                break;
            }
            r /= 2;
        }
        List<Segment> all = done.contour().segments();
        int start = 0;
        while (!all.get(start).start().equals(from)) {
            start++;
        }
        List<Segment> own = new ArrayList<>();
        // without the rim's arcs at either end
        for (int i = 1; !all.get((start + i) % all.size()).end().equals(to); i++) {
            own.add(all.get((start + i) % all.size()));
        }
        return new Groove(teeth, rim, new Path(own), deviation, ridge);
    }

    /** The pulley's outline, counter-clockwise; the first groove lies in the direction {@code phase}. */
    public Contour outline(double phase) {
        List<Segment> all = new ArrayList<>();
        Point first = null;
        Point last = null;
        for (int k = 0; k < teeth; k++) {
            Path placed = edge.placed(Placement.turn(phase - Math.PI / 2 + k * Angles.TURN / teeth));
            if (first == null) {
                first = placed.start();
            } else {
                all.add(Arc.around(Point.ORIGIN, last, placed.start(), true));
            }
            all.addAll(placed.segments());
            last = placed.end();
        }
        all.add(Arc.around(Point.ORIGIN, last, first, true));
        return new Contour(all);
    }
}
