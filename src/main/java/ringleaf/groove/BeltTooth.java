// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * The section of a belt's tooth on a straight belt: two flanks, a tip rounded at its corners or all round, and a
 * rounding at its root. Frame: the pitch line is y = 0, the tooth points to -y, its axis is x = 0; mm, rad.
 *
 * <p>The flanks run at {@code flank} to the axis; a tip radius that would leave less than no flat is taken as the
 * full round that touches both flanks and the tip, R = (s/2 cos f - h sin f) / (1 - sin f) (derived from the distance
 * of its centre from a flank).
 *
 * @param pitch of the belt
 * @param land pitch line above the belt's toothed side between its teeth
 * @param width of the tooth where its flanks meet the land, roundings left aside
 * @param height from the land to the tip
 * @param flank angle of one flank to the tooth's axis
 * @param tipRadius of the tip's corners
 * @param rootRadius of the rounding into the land
 */
public record BeltTooth(
        double pitch, double land, double width, double height, double flank, double tipRadius, double rootRadius) {
    public BeltTooth {
        double most = fullRound(width, height, flank);
        if (!(pitch > 0) || !(land > 0) || !(height > 0) || !(most > 0) || !(rootRadius >= 0) || !(tipRadius >= 0)) {
            throw new IllegalArgumentException("no tooth " + width + " wide and " + height + " high at " + flank);
        }
        tipRadius = Math.min(tipRadius, most);
        // what is left of a flank between its roundings stays above nothing
        double least = 0.02 * height;
        double free = height - tipRadius * (1 - Math.sin(flank)) - least;
        rootRadius = Math.min(rootRadius, Math.max(0, free / (1 - Math.sin(flank))));
    }

    /** A tooth whose tip is one arc from flank to flank. */
    public static BeltTooth round(
            double pitch, double land, double width, double height, double flank, double rootRadius) {
        return new BeltTooth(pitch, land, width, height, flank, fullRound(width, height, flank), rootRadius);
    }

    private static double fullRound(double width, double height, double flank) {
        return (width / 2 * Math.cos(flank) - height * Math.sin(flank)) / (1 - Math.sin(flank));
    }

    public boolean isRound() {
        return tipRadius >= fullRound(width, height, flank) * (1 - 1e-12);
    }

    /**
     * The tooth grown for room in the groove: flanks parted by {@code backlash} in all, the tip lower by
     * {@code clearance}.
     */
    public BeltTooth grown(double backlash, double clearance) {
        double wide = width + backlash;
        double high = height + clearance;
        double most = fullRound(wide, high, flank);
        double tip = isRound() ? most : Math.min(tipRadius, most);
        return new BeltTooth(pitch, land, wide, high, flank, tip, rootRadius);
    }

    /** Direction of a flank's normal against that of the land, rad: what a rounding turns by. */
    double turn() {
        return Math.PI / 2 - flank;
    }

    /** Centre of the rounding at the root, right-hand side; outside the rubber. */
    Point rootCentre() {
        double x = width / 2 - rootRadius * Math.tan(flank) + rootRadius / Math.cos(flank);
        return new Point(x, -land - rootRadius);
    }

    /** Centre of the rounding at the tip, right-hand side; on the axis for a round tooth. */
    Point tipCentre() {
        double depth = height - tipRadius;
        double x = width / 2 - depth * Math.tan(flank) - tipRadius / Math.cos(flank);
        return new Point(isRound() ? 0 : Math.max(0, x), -land - depth);
    }

    /** Where the right flank starts below its root rounding, as a depth below the land. */
    double flankFrom() {
        return rootRadius * (1 - Math.sin(flank));
    }

    /** Where the right flank ends above its tip rounding, as a depth below the land. */
    double flankTo() {
        return height - tipRadius * (1 - Math.sin(flank));
    }

    /** The point of the right flank at a depth below the land. */
    Point onFlank(double depth) {
        return new Point(width / 2 - depth * Math.tan(flank), -land - depth);
    }

    /** Half the width of the tooth with its root roundings, along the land. */
    public double halfFoot() {
        return rootCentre().x();
    }

    /** The tooth's edge from the land on the left over the tip to the land on the right, counter-clockwise about it. */
    public Path edge() {
        List<Segment> right = new ArrayList<>();
        Point land = new Point(halfFoot(), -this.land);
        Point top = onFlank(flankFrom());
        Point bottom = onFlank(flankTo());
        Point tip = new Point(tipCentre().x(), -this.land - height);
        if (rootRadius > 0) {
            right.add(Arc.around(rootCentre(), land, top, true));
        } else {
            top = land;
        }
        right.add(new Line(top, bottom));
        if (tipRadius > 0) {
            right.add(Arc.around(tipCentre(), bottom, tip, false));
        }
        Path half = new Path(right);
        List<Segment> all = new ArrayList<>(half.mirrored(new ringleaf.geom.Mirror(Math.PI / 2, Point.ORIGIN))
                .segments());
        Point left = all.get(all.size() - 1).end();
        Point first = half.reversed().start();
        if (left.distance(first) > 1e-9) {
            all.add(new Line(left, first));
        } else {
            Segment last = all.remove(all.size() - 1);
            all.add(last.withEnds(last.start(), first));
        }
        all.addAll(half.reversed().segments());
        return new Path(all);
    }
}
