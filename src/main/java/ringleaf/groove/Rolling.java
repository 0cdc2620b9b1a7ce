// SPDX-License-Identifier: Apache-2.0
package ringleaf.groove;

import ringleaf.geom.Point;

/**
 * A straight belt whose pitch line rolls without slip on a pulley's pitch circle, seen from the pulley. Frame of the
 * pulley: its axis at the origin, the groove's axis is +y. The state is the place X of the point of contact along the
 * belt, mm, counted from the tooth's axis: 0 when the tooth is seated, and X / r is the angle of that point.
 *
 * @param radius of the pitch circle, mm
 */
record Rolling(double radius) {
    /** A point of the belt's frame in the pulley's. */
    Point place(Point p, double contact) {
        double angle = contact / radius;
        double sin = Math.sin(angle);
        double cos = Math.cos(angle);
        double out = radius + p.y();
        double along = p.x() - contact;
        return new Point(sin * out + cos * along, cos * out - sin * along);
    }

    /** A point of the pulley's frame in the belt's. */
    Point back(Point p, double contact) {
        double angle = contact / radius;
        double sin = Math.sin(angle);
        double cos = Math.cos(angle);
        return new Point(p.x() * cos - p.y() * sin + contact, p.x() * sin + p.y() * cos - radius);
    }

    /** A direction of the belt's frame in the pulley's. */
    Point direct(Point v, double contact) {
        double angle = contact / radius;
        double sin = Math.sin(angle);
        double cos = Math.cos(angle);
        return new Point(sin * v.y() + cos * v.x(), cos * v.y() - sin * v.x());
    }

    /** The greatest contact at which any of the tooth still reaches below the rim, mm. */
    double reach(BeltTooth tooth) {
        double rim = radius - tooth.land();
        double tip = rim - tooth.height();
        return Math.sqrt(Math.max(0, rim * rim - tip * tip)) + tooth.width() / 2;
    }
}
