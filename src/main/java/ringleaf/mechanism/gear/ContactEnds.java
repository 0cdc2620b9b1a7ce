// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import ringleaf.tooth.ContactPath;
import ringleaf.tooth.ToothForm;

/**
 * Where on the line of action teeth touch, as lengths from the pitch point in the driver's sense of push, mm.
 *
 * <p>Derived from the tangent lengths of the tip circles: sqrt(ra² - rb²) from either base tangent point.
 */
final class ContactEnds {
    private ContactEnds() {}

    /** Beginning, below 0 as a rule, and end of contact, within what the involutes carry. */
    static double[] of(Mesh mesh) {
        if (mesh instanceof Mesh.Outer outer) {
            ContactPath path = outer.pair().contact();
            return new double[] {-Math.min(path.before(), path.beforeLimit()), Math.min(path.after(), path.afterLimit())
            };
        }
        double tangent = Math.tan(mesh.workingAngle());
        double base = mesh.driver().baseRadius();
        double ringBase = base * mesh.ratio();
        double end = length(mesh.driver().tipRadius(), base) - base * tangent;
        double begin = length(mesh.drivenRim().tipRadius(), ringBase) - ringBase * tangent;
        return new double[] {begin, end};
    }

    /** The points where the line touches the two base circles. */
    static double[] tangents(Mesh mesh) {
        ToothForm driver = mesh.driver();
        double tangent = Math.tan(mesh.workingAngle());
        double far = driver.baseRadius() * mesh.ratio() * tangent;
        double end = mesh instanceof Mesh.Inner ? of(mesh)[1] : far;
        return new double[] {-driver.baseRadius() * tangent, end};
    }

    private static double length(double radius, double base) {
        return Math.sqrt(Math.max(0, (radius - base) * (radius + base)));
    }
}
