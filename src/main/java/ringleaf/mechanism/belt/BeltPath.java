// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.spec.shared.Belt;

/**
 * The pitch line of a belt round its wheels, run counter-clockwise in the order of the wheels: an arc and the span
 * after it for each. Lengths and angles are exact to rounding.
 *
 * <p>With the signed radius s r (s = 1 inside the loop, -1 outside) the span from one wheel to the next has the length
 * sqrt(D² - k²), k the difference of the signed radii and D the distance of the centres, and stands at atan2(k, length)
 * to the line of centres (derived from the right angles at both points of contact). For two wheels this is the open
 * belt length 2 C cos a + pi (r1 + r2) + 2 (r2 - r1) a, a = asin((r2 - r1) / C), without the usual shortening.
 */
final class BeltPath {
    private final List<Wheel> wheels;
    private final double[] wraps;
    private final Line[] spans;
    private final Arc[] arcs;
    private final double[] starts;
    private final double length;

    private BeltPath(List<Wheel> wheels, double[] wraps, Line[] spans, Arc[] arcs) {
        this.wheels = wheels;
        this.wraps = wraps;
        this.spans = spans;
        this.arcs = arcs;
        this.starts = new double[wheels.size()];
        double sum = 0;
        for (int i = 0; i < arcs.length; i++) {
            starts[i] = sum;
            sum += arcs[i].length() + spans[i].length();
        }
        this.length = sum;
    }

    /** The path, or null when two neighbours overlap or a wheel is not touched by the belt. */
    static BeltPath of(List<Wheel> wheels) {
        int n = wheels.size();
        Point[] along = new Point[n];
        double[] lengths = new double[n];
        for (int i = 0; i < n; i++) {
            Wheel a = wheels.get(i);
            Wheel b = wheels.get((i + 1) % n);
            Point way = b.centre().minus(a.centre());
            double k = b.sense() * b.radius() - a.sense() * a.radius();
            double square = way.dot(way) - k * k;
            if (!(square > 0)) {
                return null;
            }
            lengths[i] = Math.sqrt(square);
            // way = length u + k left(u)
            along[i] = new Point(lengths[i] * way.x() + k * way.y(), lengths[i] * way.y() - k * way.x()).unit();
        }
        double[] wraps = new double[n];
        for (int i = 0; i < n; i++) {
            int sense = wheels.get(i).sense();
            Point in = along[(i + n - 1) % n];
            wraps[i] = Angles.positive(sense * Math.atan2(in.cross(along[i]), in.dot(along[i])));
            // a wheel that the belt passes by would have to be wrapped the long way round
            if (wraps[i] > 1.75 * Math.PI || wraps[i] < 1e-9) {
                return null;
            }
        }
        return drawn(wheels, along, wraps);
    }

    private static BeltPath drawn(List<Wheel> wheels, Point[] along, double[] wraps) {
        int n = wheels.size();
        Point[] on = new Point[n];
        Point[] off = new Point[n];
        for (int i = 0; i < n; i++) {
            Wheel w = wheels.get(i);
            on[i] = w.centre().minus(along[(i + n - 1) % n].left().times(w.sense() * w.radius()));
            off[i] = w.centre().minus(along[i].left().times(w.sense() * w.radius()));
        }
        Arc[] arcs = new Arc[n];
        Line[] spans = new Line[n];
        for (int i = 0; i < n; i++) {
            Wheel w = wheels.get(i);
            double start = on[i].minus(w.centre()).angle();
            arcs[i] = new Arc(w.centre(), w.radius(), start, w.sense() * wraps[i], on[i], off[i]);
            spans[i] = new Line(off[i], on[(i + 1) % n]);
        }
        return new BeltPath(List.copyOf(wheels), wraps, spans, arcs);
    }

    /** The length of the pitch line round two wheels inside the loop, mm; not a number when one holds the other. */
    static double openLength(double r1, double r2, double distance) {
        double sine = (r2 - r1) / distance;
        double a = Math.asin(sine);
        return 2 * distance * Math.cos(a) + Math.PI * (r1 + r2) + 2 * (r2 - r1) * a;
    }

    List<Wheel> wheels() {
        return wheels;
    }

    /** Length of the pitch line, mm. */
    double length() {
        return length;
    }

    /** Angle over which the belt lies on a wheel, rad. */
    double wrap(int wheel) {
        return wraps[wheel];
    }

    /** Teeth of the belt that lie in the grooves of a wheel, a part of a tooth counted as such. */
    double teethInMesh(int wheel) {
        return wheels.get(wheel).teeth() * wraps[wheel] / Angles.TURN;
    }

    /** The free span after a wheel. */
    Line span(int wheel) {
        return spans[wheel];
    }

    /** Place along the pitch line of the middle of a wheel's arc, mm from the start of the first arc. */
    double middle(int wheel) {
        return starts[wheel] + arcs[wheel].length() / 2;
    }

    /** Direction, seen from a wheel's centre, of what lies at a place along the pitch line on it, rad. */
    double direction(int wheel, double place) {
        Arc arc = arcs[wheel];
        return arc.startAngle() + wheels.get(wheel).sense() * (place - starts[wheel]) / arc.radius();
    }

    /** A point of the pitch line and the direction of travel there. */
    record Spot(Point point, Point along) {}

    /** What lies at a place along the pitch line, mm from the start of the first arc, round and round. */
    Spot at(double place) {
        double s = Angles.folded(place, length);
        int i = arcs.length - 1;
        while (starts[i] > s) {
            i--;
        }
        double rest = s - starts[i];
        Segment piece = arcs[i];
        if (rest > arcs[i].length()) {
            rest -= arcs[i].length();
            piece = spans[i];
        }
        double u = Math.min(1, rest / piece.length());
        return new Spot(piece.pointAt(u), piece.tangentAt(u));
    }

    /** The line {@code out} mm beside the pitch line, towards the belt's back where positive. */
    Contour beside(double out) {
        List<Segment> pieces = new ArrayList<>();
        int n = arcs.length;
        Point[] on = new Point[n];
        Point[] off = new Point[n];
        for (int i = 0; i < n; i++) {
            Wheel w = wheels.get(i);
            double share = (w.radius() + w.sense() * out) / w.radius();
            on[i] = w.centre().towards(arcs[i].start(), share);
            off[i] = w.centre().towards(arcs[i].end(), share);
        }
        for (int i = 0; i < n; i++) {
            Arc a = arcs[i];
            double radius = a.radius() + wheels.get(i).sense() * out;
            pieces.add(new Arc(a.centre(), radius, a.startAngle(), a.sweep(), on[i], off[i]));
            pieces.add(new Line(off[i], on[(i + 1) % n]));
        }
        return new Contour(pieces);
    }

    /** All that a belt, teeth included, covers as it runs. */
    Region covered(Belt belt) {
        return Region.of(beside(belt.back()), beside(-belt.pitchLine() - belt.toothHeight()));
    }
}
