// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Segment;

/** Makes one piece again of neighbours on one carrier, and a whole circle of arcs that close. */
final class Joining {
    private Joining() {}

    /** The closed chain with as few pieces as its carriers allow. */
    static List<Segment> joined(List<Segment> closed, double near) {
        List<Segment> pieces = new ArrayList<>();
        for (Segment segment : closed) {
            Segment both = pieces.isEmpty() ? null : join(pieces.get(pieces.size() - 1), segment, near);
            if (both == null) {
                pieces.add(segment);
            } else {
                pieces.set(pieces.size() - 1, both);
            }
        }
        if (pieces.size() > 1) {
            Segment both = join(pieces.get(pieces.size() - 1), pieces.get(0), near);
            if (both != null) {
                pieces.set(0, both);
                pieces.remove(pieces.size() - 1);
            }
        }
        return pieces;
    }

    /** Both as one piece, or null when they are not on one carrier in one direction. */
    private static Segment join(Segment before, Segment after, double near) {
        boolean keepBefore = before.length() >= after.length();
        if (!Intersections.sameCarrier(keepBefore ? before : after, keepBefore ? after : before, near)) {
            return null;
        }
        if (before instanceof Arc a && after instanceof Arc b) {
            return a.sweep() * b.sweep() > 0 ? join(a, b, keepBefore) : null;
        }
        boolean onward = before.tangentAt(1).dot(after.tangentAt(0)) > 0;
        return onward ? new Line(before.start(), after.end()) : null;
    }

    private static Arc join(Arc before, Arc after, boolean keepBefore) {
        double sweep = before.sweep() + after.sweep();
        Arc carrier = keepBefore ? before : after;
        double startAngle = keepBefore ? before.startAngle() : after.startAngle() - before.sweep();
        if (before.start().equals(after.end()) && Math.abs(sweep) > Math.PI) {
            sweep = Math.signum(sweep) * Angles.TURN;
        } else if (Math.abs(sweep) >= Angles.TURN) {
            return null;
        }
        return new Arc(carrier.centre(), carrier.radius(), startAngle, sweep, before.start(), after.end());
    }
}
