// SPDX-License-Identifier: Apache-2.0
package ringleaf.geom;

/**
 * A piece of a circle. It keeps its centre, radius, start angle and sweep, and also its end points, so that contours
 * join on the same point value and close exactly.
 *
 * @param centre of the circle
 * @param radius mm, above 0
 * @param startAngle direction from the centre to the start, rad
 * @param sweep turned from start to end, rad, counter-clockwise positive, 0 &lt; |sweep| &lt;= 2 pi
 * @param start the first point, on the circle within rounding
 * @param end the last point, on the circle within rounding
 */
public record Arc(Point centre, double radius, double startAngle, double sweep, Point start, Point end)
        implements Segment {

    public Arc {
        if (!(radius > 0) || !(Math.abs(sweep) > 0) || Math.abs(sweep) > Angles.TURN + 1e-9) {
            throw new IllegalArgumentException("no arc of radius " + radius + " and sweep " + sweep);
        }
    }

    /** The arc about {@code centre} from {@code startAngle} over {@code sweep}; its end points follow. */
    public static Arc of(Point centre, double radius, double startAngle, double sweep) {
        Point start = centre.plus(Point.polar(radius, startAngle));
        Point end = Math.abs(sweep) >= Angles.TURN ? start : centre.plus(Point.polar(radius, startAngle + sweep));
        return new Arc(centre, radius, startAngle, sweep, start, end);
    }

    /** A whole circle, counter-clockwise, starting on +x of its centre. */
    public static Arc circle(Point centre, double radius) {
        return of(centre, radius, 0, Angles.TURN);
    }

    /**
     * The arc about {@code centre} from {@code start} to {@code end}, both on one circle about it within rounding;
     * the radius is taken from the start. Equal ends give the whole circle.
     */
    public static Arc around(Point centre, Point start, Point end, boolean counterClockwise) {
        Point from = start.minus(centre);
        double startAngle = from.angle();
        double turn = Angles.positive(end.minus(centre).angle() - startAngle);
        double sweep;
        if (start.equals(end)) {
            sweep = counterClockwise ? Angles.TURN : -Angles.TURN;
        } else {
            sweep = counterClockwise ? turn : turn - Angles.TURN;
        }
        return new Arc(centre, from.norm(), startAngle, sweep, start, end);
    }

    /**
     * The arc between two points with the given bulge, tan(sweep/4), positive for counter-clockwise; bulge 0 is no
     * arc.
     */
    public static Arc ofBulge(Point start, Point end, double bulge) {
        Point chord = end.minus(start);
        Point mid = start.towards(end, 0.5);
        Point centre = mid.plus(chord.left().times((1 - bulge * bulge) / (4 * bulge)));
        double radius = chord.norm() * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        return new Arc(centre, radius, start.minus(centre).angle(), 4 * Math.atan(bulge), start, end);
    }

    public boolean isCircle() {
        return Math.abs(sweep) >= Angles.TURN - 1e-12;
    }

    public boolean isCounterClockwise() {
        return sweep > 0;
    }

    /** tan(sweep/4), the form in which polylines carry an arc; undefined for a whole circle. */
    public double bulge() {
        return Math.tan(sweep / 4);
    }

    /** The share of the sweep at which the direction {@code angle} lies, in [0, 2 pi/|sweep|); above 1 it is off. */
    public double shareOf(double angle) {
        double turn = sweep > 0 ? Angles.positive(angle - startAngle) : Angles.positive(startAngle - angle);
        return turn / Math.abs(sweep);
    }

    @Override
    public double length() {
        return radius * Math.abs(sweep);
    }

    @Override
    public Point pointAt(double u) {
        if (u == 0) {
            return start;
        }
        return u == 1 ? end : centre.plus(Point.polar(radius, startAngle + u * sweep));
    }

    @Override
    public Point tangentAt(double u) {
        Point out = Point.polar(1, startAngle + u * sweep);
        return sweep > 0 ? out.left() : out.left().times(-1);
    }

    @Override
    public double curvature() {
        return Math.signum(sweep) / radius;
    }

    @Override
    public Arc reversed() {
        return new Arc(centre, radius, startAngle + sweep, -sweep, end, start);
    }

    @Override
    public Box box() {
        Box box = Box.of(start, end);
        for (int quarter = 0; quarter < 4; quarter++) {
            double angle = quarter * Math.PI / 2;
            if (shareOf(angle) <= 1) {
                double c = quarter % 2 == 0 ? 1 - quarter : 0;
                double s = quarter % 2 == 1 ? 2 - quarter : 0;
                box = box.including(new Point(centre.x() + radius * c, centre.y() + radius * s));
            }
        }
        return box;
    }

    @Override
    public Arc placed(Placement placement) {
        return new Arc(
                placement.apply(centre),
                radius,
                startAngle + placement.angle(),
                sweep,
                placement.apply(start),
                placement.apply(end));
    }

    @Override
    public Arc mirrored(Mirror mirror) {
        return new Arc(
                mirror.apply(centre),
                radius,
                2 * mirror.axisAngle() - startAngle,
                -sweep,
                mirror.apply(start),
                mirror.apply(end));
    }

    @Override
    public Arc part(double from, double to) {
        return new Arc(centre, radius, startAngle + from * sweep, (to - from) * sweep, pointAt(from), pointAt(to));
    }

    @Override
    public Arc withEnds(Point newStart, Point newEnd) {
        return new Arc(centre, radius, startAngle, sweep, newStart, newEnd);
    }

    @Override
    public double areaTerm() {
        return start.cross(end) / 2 + segmentArea();
    }

    @Override
    public Point momentTerm() {
        // the chord's share, and the circular segment's: its area about the centre, and 2/3 (r sin(sweep/2))³ outwards
        double area = segmentArea();
        double half = radius * Math.sin(sweep / 2);
        Point outward = Point.polar(2 * half * half * half / 3, startAngle + sweep / 2);
        return new Line(start, end).momentTerm().plus(centre.times(area)).plus(outward);
    }

    /** Signed area between chord and arc, r² (sweep - sin sweep) / 2, without loss for flat arcs of a large radius. */
    private double segmentArea() {
        if (Math.abs(sweep) > 0.5) {
            return radius * radius * (sweep - Math.sin(sweep)) / 2;
        }
        // s - sin s = s³/3! - s⁵/5! + ...; the seventh term is below one unit in the last place
        double square = sweep * sweep;
        double term = sweep * square / 6;
        double sum = term;
        for (int k = 4; k <= 14; k += 2) {
            term *= -square / (k * (k + 1));
            sum += term;
        }
        return radius * radius * sum / 2;
    }
}
