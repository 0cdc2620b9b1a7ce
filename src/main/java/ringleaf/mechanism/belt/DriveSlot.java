// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.function.DoubleUnaryOperator;
import ringleaf.geom.Line;
import ringleaf.geom.Point;

/**
 * What is shifted in its slot to put the belt on and to tighten it: the driver, or the idler between pulleys that stand
 * fast. Lengths in mm from the place at which the belt has exactly its length.
 *
 * @param wheel that moves, as an index among the path's wheels; -1 where nothing does
 * @param tighten direction in which it tightens the belt, of length 1
 * @param inward travel towards a slack belt
 * @param outward travel towards a tight one
 * @param needed least travel inward that putting the belt on asks for
 * @param free how far inward it can go before it comes nearer than {@link #LEAST_GAP} to something
 * @param together whether the belt goes on with the pulleys as they are slid onto their axles, as there is no room to
 *     lift it over the driver's flange
 * @param taken by how much longer a belt is tight at the outward end
 */
record DriveSlot(
        int wheel,
        Point tighten,
        double inward,
        double outward,
        double needed,
        double free,
        boolean together,
        double taken) {
    /** Share of the belt's length that tightening takes up; common practice, no source. */
    static final double TAKE_UP = 0.007;
    /** How far a belt's length may differ from its name, as a share; common practice, no source. */
    static final double BELT_TOLERANCE = 0.002;
    /** What is pushed aside to put the belt on stays at least so far from everything else, mm; a choice. */
    static final double LEAST_GAP = 0.5;

    /** Steps in which the free travel is found at most; they grow short only where the room ends. */
    private static final int STEPS = 200;

    private static final double HAIR = 1e-9;

    static final DriveSlot NONE = new DriveSlot(-1, new Point(0, 0), 0, 0, 0, 0, false, 0);

    /**
     * A slot as long as it has to be: inward as far as lifting the belt over the driver's flange asks for. Where there is
     * no room for that, the belt goes on with the pulleys, and the slot reaches at least as far as a belt asks that is
     * shorter than its name by its tolerance.
     *
     * @param lifting travel at which the belt goes over the flange; infinite where no travel is enough
     * @param shorter travel that a belt asks for which is short by its tolerance
     * @param slack travel at which the belt is as slack as it need be for being slid on with the pulleys
     * @param clear room of the wheel at a travel inward
     */
    static DriveSlot of(
            int wheel,
            Point tighten,
            double lifting,
            double shorter,
            double slack,
            double outward,
            double taken,
            DoubleUnaryOperator clear) {
        double loose = Math.max(shorter, slack);
        double free = free(clear, Math.max(loose, Double.isInfinite(lifting) ? 0 : lifting));
        boolean together = lifting > free;
        double inward = Math.min(together ? loose : lifting, free);
        return new DriveSlot(wheel, tighten, inward, outward, together ? shorter : lifting, free, together, taken);
    }

    /**
     * How far the wheel can go before its room falls below the least, at most {@code most}. Room falls no faster than the
     * wheel moves, so it goes on by what is left each time.
     */
    private static double free(DoubleUnaryOperator clear, double most) {
        double travel = 0;
        for (int i = 0; i < STEPS && travel < most; i++) {
            double left = clear.applyAsDouble(travel) - LEAST_GAP;
            if (left < HAIR) {
                return travel;
            }
            travel += left;
        }
        return Math.min(travel, most);
    }

    boolean moves() {
        return wheel >= 0;
    }

    /** Travel from end to end. */
    double length() {
        return inward + outward;
    }

    /** Where a wheel that stands at {@code centre} comes to when it is {@code off} mm towards a tight belt. */
    Point moved(Point centre, double off) {
        return centre.plus(tighten.times(off));
    }

    /** The way of a wheel's centre over a part of the slot; only a point where that wheel does not move. */
    double distance(int other, Point centre, Point p, double from, double to) {
        if (other != wheel || from == to) {
            return centre.distance(p);
        }
        Line line = new Line(moved(centre, from), moved(centre, to));
        return ringleaf.curve.Distances.distance(line, p);
    }
}
