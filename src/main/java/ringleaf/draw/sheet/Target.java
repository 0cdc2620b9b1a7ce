// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import ringleaf.geom.Arc;
import ringleaf.geom.Point;

/** What a leader points at: the nearest place of an arc, or a fixed point. */
sealed interface Target {
    /** Where a leader from there ends. */
    Point from(Point there);

    /** A place that stands for the whole. */
    Point middle();

    /** An arc or a circle; a leader from within its angle points at its centre. */
    record OnArc(Arc arc) implements Target {
        @Override
        public Point from(Point there) {
            double angle = there.minus(arc.centre()).angle();
            double share = arc.shareOf(angle);
            if (arc.isCircle() || share <= 1) {
                return arc.centre().plus(Point.polar(arc.radius(), angle));
            }
            Point start = arc.pointAt(0.15);
            Point end = arc.pointAt(0.85);
            return there.distance(start) < there.distance(end) ? start : end;
        }

        @Override
        public Point middle() {
            return arc.isCircle() ? arc.centre() : arc.pointAt(0.5);
        }
    }

    /** A point of an edge. */
    record At(Point point) implements Target {
        @Override
        public Point from(Point there) {
            return point;
        }

        @Override
        public Point middle() {
            return point;
        }
    }
}
