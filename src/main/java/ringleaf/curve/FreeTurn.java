// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * How far an outline can turn about a point until it meets another that stands still.
 *
 * <p>Pieces are directed, with material to their left, as those of a region's contours are. Only pieces that face each
 * other can touch first: one whose outside looks where it moves, and one whose outside looks against that. So a pair
 * that overlaps a little, as two flanks of no backlash do by rounding, has a free turn a little below 0.
 *
 * <p>Exact on lines and arcs: two pieces first meet where one touches the other (the centres of two arcs are then the
 * sum or the difference of the radii apart, the centre of an arc is its radius from a line) or where an end of one runs
 * onto the other. The turn at which a point that circles the pivot reaches a distance from a point or a line is a
 * closed form, by the law of cosines. Derived; error: rounding, magnified where a touch is grazing.
 *
 * @param angle turned until the first touch, rad; below 0 where they overlap; or the greatest turn asked for, when
 *     nothing is met
 * @param at where they touch, in the frame of the outline that stands; the pivot when nothing is met
 * @param meets whether anything is met
 */
public record FreeTurn(double angle, Point at, boolean meets) {
    /** Parts of a piece at whose ends it is looked where it faces. */
    private static final int QUARTERS = 4;

    /** Slope of an outline against its way, as a sine, from which on it counts as looking there. */
    private static final double FACES = 1e-9;

    /**
     * The free turn.
     *
     * @param moving pieces that turn
     * @param pivot about which they turn
     * @param still pieces that stand
     * @param counterClockwise sense of the turn
     * @param overlap turn back, rad, from which on touches are looked for: overlaps of less are told as turns below 0
     * @param most greatest turn looked at, rad; with {@code overlap} at most a whole one
     */
    public static FreeTurn of(
            List<Segment> moving,
            Point pivot,
            List<Segment> still,
            boolean counterClockwise,
            double overlap,
            double most) {
        int sense = counterClockwise ? 1 : -1;
        Placement back = Placement.turnAbout(pivot, -sense * overlap);
        List<Segment> leading = new ArrayList<>();
        for (Segment piece : facing(moving, pivot, sense)) {
            leading.add(overlap == 0 ? piece : piece.placed(back));
        }
        FreeTurn turn = of(leading, pivot, facing(still, pivot, -sense), sense, overlap + most);
        return new FreeTurn(turn.angle - overlap, turn.at, turn.meets);
    }

    /** Those pieces of which a part looks the way that a turn takes it. */
    private static List<Segment> facing(List<Segment> pieces, Point pivot, int sense) {
        List<Segment> facing = new ArrayList<>();
        for (Segment piece : pieces) {
            for (int i = 0; i <= QUARTERS; i++) {
                double share = (double) i / QUARTERS;
                Point out = piece.tangentAt(share).times(-1).left();
                Point way = piece.pointAt(share).minus(pivot).left().times(sense);
                if (out.dot(way) > FACES * way.norm()) {
                    facing.add(piece);
                    break;
                }
            }
        }
        return facing;
    }

    private static FreeTurn of(List<Segment> moving, Point pivot, List<Segment> still, int sense, double most) {
        List<Swung> movers = swung(moving, pivot);
        List<Swung> standers = swung(still, pivot);
        double least = Double.POSITIVE_INFINITY;
        double greatest = 0;
        for (Swung mover : movers) {
            least = Math.min(least, mover.near);
            greatest = Math.max(greatest, mover.far);
        }
        TurnTouch touch = new TurnTouch(pivot, sense, most);
        for (Swung stander : standers) {
            if (stander.near > greatest || stander.far < least) {
                continue;
            }
            for (Swung mover : movers) {
                if (mayReach(mover, stander, touch.best) && mayMeet(mover, stander, touch.sense, touch.best)) {
                    touch.look(mover.piece, stander.piece);
                }
            }
        }
        return new FreeTurn(touch.best, touch.at == null ? pivot : touch.at, touch.at != null);
    }

    /** Whether the two are so near, and at such distances from the pivot, that a turn can close what parts them. */
    private static boolean mayReach(Swung mover, Swung stander, double best) {
        if (mover.near > stander.far || mover.far < stander.near) {
            return false;
        }
        double reach = mover.reach + stander.reach + best * mover.far;
        double dx = mover.middle.x() - stander.middle.x();
        double dy = mover.middle.y() - stander.middle.y();
        return dx * dx + dy * dy <= reach * reach;
    }

    private static boolean mayMeet(Swung mover, Swung stander, int sense, double best) {
        double wide = mover.half + stander.half;
        double turn = sense * (stander.direction - mover.direction);
        // Both directions lie within half a turn of 0, so one more turn is enough.
        turn = turn < 0 ? turn + Angles.TURN : turn;
        return turn - wide <= best || turn + wide >= Angles.TURN;
    }

    /**
     * A piece as seen from the pivot.
     *
     * @param middle of its chord, from the pivot
     * @param reach from there within which it lies, mm
     * @param near least distance it can have
     * @param far greatest distance it can have
     * @param direction of the middle of its chord, rad
     * @param half angle to either side within which it lies, rad
     */
    private record Swung(
            Segment piece, Point middle, double reach, double near, double far, double direction, double half) {}

    private static List<Swung> swung(List<Segment> pieces, Point pivot) {
        List<Swung> swung = new ArrayList<>(pieces.size());
        for (Segment piece : pieces) {
            // No point of a piece is farther from the middle of its chord than half its length.
            Point middle = piece.start().towards(piece.end(), 0.5).minus(pivot);
            double reach = piece.length() / 2;
            double distance = middle.norm();
            double half = distance > reach ? Math.asin(reach / distance) : Math.PI;
            swung.add(new Swung(piece, middle, reach, distance - reach, distance + reach, middle.angle(), half));
        }
        return swung;
    }
}
