// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.Collections;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** A chain's end at a node, seen from the node: used to sort what meets there by direction. */
final class Spoke {
    /** Tangents nearer than this, rad, are told apart further out. */
    private static final double NEARLY_TANGENT = 1e-3;

    final int chain;
    final boolean outgoing;
    private final double angle;
    private final double curvature;
    private final double reach;

    /** @param away the chain's piece at the node, directed away from it */
    Spoke(int chain, boolean outgoing, Segment away) {
        this.chain = chain;
        this.outgoing = outgoing;
        Point tangent = away.tangentAt(0);
        this.angle = Angles.positive(tangent.angle());
        this.curvature = away.curvature();
        if (away instanceof Arc arc) {
            double half = Math.min(Math.abs(arc.sweep()), Math.PI) / 2;
            this.reach = 2 * arc.radius() * Math.sin(half);
        } else {
            this.reach = away.length();
        }
    }

    /** Direction of the point of this piece at the distance {@code far} from the node, rad against +x. */
    private double angleAt(double far) {
        return angle + Math.asin(Math.max(-1, Math.min(1, far * curvature / 2)));
    }

    /** Sorts counter-clockwise. Pieces that leave in nearly one direction are compared where both still reach. */
    static void sort(List<Spoke> spokes) {
        for (int i = 1; i < spokes.size(); i++) {
            for (int j = i; j > 0 && spokes.get(j).angle < spokes.get(j - 1).angle; j--) {
                Collections.swap(spokes, j, j - 1);
            }
        }
        turnToWidestGap(spokes);
        for (int i = 1; i < spokes.size(); i++) {
            for (int j = i; j > 0 && spokes.get(j).isBefore(spokes.get(j - 1)); j--) {
                Collections.swap(spokes, j, j - 1);
            }
        }
    }

    /** So that no bundle of nearly tangent pieces is torn at +x. */
    private static void turnToWidestGap(List<Spoke> spokes) {
        int n = spokes.size();
        int widest = 0;
        double gap = -1;
        for (int i = 0; i < n; i++) {
            double before = spokes.get((i + n - 1) % n).angle;
            double own = i == 0 ? spokes.get(i).angle + Angles.TURN : spokes.get(i).angle;
            if (own - before > gap) {
                gap = own - before;
                widest = i;
            }
        }
        Collections.rotate(spokes, -widest);
    }

    private boolean isBefore(Spoke other) {
        if (Math.abs(Angles.signed(angle - other.angle)) > NEARLY_TANGENT) {
            return false;
        }
        double far = Math.min(reach, other.reach) / 2;
        return Angles.signed(angleAt(far) - other.angleAt(far)) < 0;
    }
}
