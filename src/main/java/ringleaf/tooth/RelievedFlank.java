// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import ringleaf.curve.SmoothCurve;
import ringleaf.geom.Point;

/**
 * An involute whose flank is drawn back into the tooth towards its tip, up to the tip circle.
 *
 * <p>At the roll angle t past the start t0 the point lies C = c ((t - t0)/(t1 - t0))² beside the involute, along its
 * normal; the tangent follows by differentiating (the involute's speed is rb t, its normal turns at the rate 1). A
 * point on a normal of the involute lies at the tangent length rb t - C, so the relieved flank reaches the tip circle where
 * rb t1 - c is the tip's tangent length: t1 is the involute's roll angle there and c/rb more.
 *
 * @param involute what is relieved
 * @param start t0, roll angle at which relief begins
 * @param end t1, roll angle at the tip circle
 * @param relief c at the tip circle, mm, at least 0
 */
record RelievedFlank(InvoluteCurve involute, double start, double end, double relief) implements SmoothCurve {
    static RelievedFlank of(ToothFlank flank, TipFinish finish) {
        InvoluteCurve curve = flank.involute();
        double radius = flank.form().tipRadius() - finish.reliefDepth();
        double start = radius > curve.baseRadius() ? InvoluteCurve.rollAt(curve.baseRadius(), radius) : 0;
        if (finish.relief() > 0 && start < curve.from()) {
            throw new IllegalArgumentException("tip relief that begins at radius " + radius
                    + " mm would begin below the involute, which starts at radius "
                    + flank.joint().norm() + " mm");
        }
        return new RelievedFlank(curve, start, curve.to() + finish.relief() / curve.baseRadius(), finish.relief());
    }

    private double depth(double roll) {
        double share = share(roll);
        return relief * share * share;
    }

    private double share(double roll) {
        return relief == 0 || roll <= start ? 0 : (roll - start) / (end - start);
    }

    @Override
    public double from() {
        return involute.from();
    }

    @Override
    public double to() {
        return end;
    }

    @Override
    public Point at(double roll) {
        if (relief == 0) {
            return involute.at(roll);
        }
        return involute.at(roll).plus(involute.tangent(roll).left().times(depth(roll)));
    }

    @Override
    public Point tangent(double roll) {
        if (share(roll) == 0) {
            return involute.tangent(roll);
        }
        double rate = 2 * relief * share(roll) / (end - start);
        Point along = involute.tangent(roll);
        return along.times(involute.baseRadius() * roll - depth(roll))
                .plus(along.left().times(rate));
    }

    /**
     * Signed distance of a point near the curve, mm, along the involute's normal: the point lies on that normal, which
     * touches the base circle, by its tangent length less its distance from the involute. Too long by the square of the
     * relief's slope, some parts in a hundred.
     */
    double distanceFrom(Point point) {
        double off = involute.distanceFrom(point);
        if (relief == 0) {
            return off;
        }
        double roll = InvoluteCurve.rollAt(involute.baseRadius(), point.norm()) - off / involute.baseRadius();
        return off + depth(Math.min(end, roll));
    }
}
