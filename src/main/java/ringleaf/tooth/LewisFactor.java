// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import ringleaf.curve.Roots;
import ringleaf.geom.Point;

/**
 * How strong a tooth is as a beam: the form factor Y of Lewis, taken from the tooth's own exact outline.
 *
 * <p>Source: the construction of W. Lewis (1892), as handbooks retell it, from memory. The whole load acts on the edge
 * of the tip, along the normal of the flank, and meets the tooth's middle line in the apex; a beam of equal strength
 * under a load there is a parabola with its vertex in the apex, and the largest one inside the tooth touches the root
 * where the tooth is weakest. With the thickness t there and the distance h from the apex the stress is
 * 6 F h/(b t²) = F/(b m Y), so Y = t²/(6 h m). The load's share along the tooth (which presses it together) and the
 * stress raised by the fillet are left out, as Lewis does; the load is taken as the tangential force at the working
 * circle.
 *
 * <p>Exact but for the search: least of t²/h on 400 points of the flank, refined by Brent's method.
 *
 * @param factor Y
 * @param thickness t at the weakest section, mm
 * @param height h from the apex to it, mm
 * @param radius of the flank's point there from the axis, mm
 */
public record LewisFactor(double factor, double thickness, double height, double radius) {
    private static final int SAMPLES = 200;

    /** The factor of an external tooth. */
    public static LewisFactor of(ToothForm form) {
        ToothFlank flank = ToothFlank.of(form);
        double tip = form.tipRadius();
        double half = form.halfAngleAt(tip);
        // The normal of the flank touches the base circle; it crosses the middle line at rb/cos of its slant.
        double apex = form.baseRadius() / Math.cos(form.pressureAngleAt(tip) - half);
        Search search = new Search(form, apex);
        Point inward = flank.deeper();
        search.over(
                t -> flank.root().at(t).minus(inward),
                flank.root().from(),
                flank.root().to());
        search.over(
                flank.involute()::at, flank.involute().from(), flank.involute().to());
        return search.best;
    }

    /** Bending stress at the root, MPa: F/(b m Y). */
    public double stress(double tangentialForce, double faceWidth, double module) {
        return tangentialForce / (faceWidth * module * factor);
    }

    @FunctionalInterface
    private interface Curve {
        Point at(double t);
    }

    private static final class Search {
        private final ToothForm form;
        private final double apex;
        private LewisFactor best = new LewisFactor(Double.POSITIVE_INFINITY, 0, 0, 0);

        Search(ToothForm form, double apex) {
            this.form = form;
            this.apex = apex;
        }

        void over(Curve curve, double from, double to) {
            double step = (to - from) / SAMPLES;
            int least = 0;
            for (int i = 1; i <= SAMPLES; i++) {
                if (factor(curve, from + i * step).factor < factor(curve, from + least * step).factor) {
                    least = i;
                }
            }
            double low = from + Math.max(0, least - 1) * step;
            double high = from + Math.min(SAMPLES, least + 1) * step;
            LewisFactor found = factor(curve, Roots.least(t -> factor(curve, t).factor, low, high));
            best = found.factor < best.factor ? found : best;
        }

        private LewisFactor factor(Curve curve, double t) {
            Point p = curve.at(t);
            double radius = p.norm();
            double half = Math.PI / form.teeth() - p.angle();
            double height = apex - radius * Math.cos(half);
            double thickness = 2 * radius * Math.sin(half);
            if (!(height > 0)) {
                return new LewisFactor(Double.POSITIVE_INFINITY, thickness, height, radius);
            }
            return new LewisFactor(thickness * thickness / (6 * height * form.module()), thickness, height, radius);
        }
    }
}
