// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * Two outlines of which the second turns about its axis, and the first about its own or slides along a line: teeth of
 * any kind, on whole circles or on a part of them, outside or inside a ring. In each position only those pieces are placed that can come within the reach of the other outline,
 * so nothing that could touch is ever left out.
 *
 * <p>Lengths in mm, turns in rad, counter-clockwise positive, counted from the place in which the outlines are given.
 */
public final class RollingPair {
    private final Moving first;
    private final Turning second;

    /**
     * @param first pieces of whole contours, material to their left, in the place they have at turn 0
     * @param firstAxis about which they turn
     * @param second pieces of whole contours likewise
     * @param secondAxis about which these turn
     */
    public RollingPair(List<Segment> first, Point firstAxis, List<Segment> second, Point secondAxis) {
        this.first = new Turning(first, firstAxis);
        this.second = new Turning(second, secondAxis);
    }

    private RollingPair(Moving first, Turning second) {
        this.first = first;
        this.second = second;
    }

    /**
     * An outline that slides past one that turns: a rack and its pinion.
     *
     * @param first pieces of whole contours, in the place they have at 0
     * @param direction of length 1 in which they slide
     */
    public static RollingPair sliding(List<Segment> first, Point direction, List<Segment> second, Point secondAxis) {
        return new RollingPair(new Sliding(first, direction), new Turning(second, secondAxis));
    }

    /** The pair when the first outline has turned by an angle, or slid by a length, and the second turned by another. */
    public Position at(double firstMove, double secondTurn) {
        return new Position(first.near(firstMove, second), first.nearTo(secondTurn, second), second.axis, second.far);
    }

    /** Radius within which the second outline can be met by the first, mm. */
    public double secondReach() {
        return Math.min(second.far, first.reachFrom(second.axis));
    }

    /**
     * The pieces of both that can come near each other, in their places.
     *
     * @param first those of the first outline
     * @param second those of the second outline
     * @param axis of the second outline
     * @param reach of the second outline from its axis, mm
     */
    public record Position(List<Segment> first, List<Segment> second, Point axis, double reach) {
        /** Overlaps of the flanks up to this deep are found as a free turn below 0, mm. */
        private static final double OVERLAP = 0.02;

        /** Times as long as another from which on a piece's box says more of it than its middle. */
        private static final double LONG = 4;

        private static double apart(Box box, double x, double y) {
            double dx = Math.max(0, Math.max(box.minX() - x, x - box.maxX()));
            double dy = Math.max(0, Math.max(box.minY() - y, y - box.maxY()));
            return Math.sqrt(dx * dx + dy * dy);
        }

        /** How far the second outline can turn in a sense until it lies on the first. */
        public FreeTurn freeTurn(boolean counterClockwise, double most) {
            return FreeTurn.of(second, axis, first, counterClockwise, OVERLAP / reach, most);
        }

        /** Least distance of the two; 0 where they cross or touch, infinite where nothing is near. */
        public Gap gap() {
            int n = second.size();
            double[] x = new double[n];
            double[] y = new double[n];
            double[] half = new double[n];
            for (int i = 0; i < n; i++) {
                Segment b = second.get(i);
                x[i] = (b.start().x() + b.end().x()) / 2;
                y[i] = (b.start().y() + b.end().y()) / 2;
                half[i] = b.length() / 2;
            }
            Gap least = Gap.NONE;
            for (Segment a : first) {
                for (Segment b : second) {
                    // Any two points bound the gap; then few pairs of pieces are worth their closed forms.
                    if (a.start().distance(b.start()) < least.distance()) {
                        least = Gap.between(a.start(), b.start());
                    }
                }
            }
            for (Segment a : first) {
                double ax = (a.start().x() + a.end().x()) / 2;
                double ay = (a.start().y() + a.end().y()) / 2;
                double own = a.length() / 2;
                Box box = a.box();
                for (int i = 0; i < n; i++) {
                    // No point of a piece is farther from the middle of its chord than half its length.
                    double reachable = least.distance() + own + half[i];
                    double dx = ax - x[i];
                    double dy = ay - y[i];
                    if (dx * dx + dy * dy < reachable * reachable
                            && (own <= LONG * half[i] || apart(box, x[i], y[i]) < least.distance() + half[i])) {
                        least = least.orNearer(Distances.between(a, second.get(i)));
                    }
                }
            }
            return least;
        }
    }

    /** The first outline, whatever way it moves. */
    private interface Moving {
        /** Its pieces that can come within the reach of the other, moved. */
        List<Segment> near(double move, Turning other);

        /** The other's pieces that can come within the reach of this one, turned. */
        List<Segment> nearTo(double turn, Turning other);

        /** Radius about a point within which it can lie, mm. */
        double reachFrom(Point point);
    }

    /** An outline that slides along a straight line. */
    private static final class Sliding implements Moving {
        /** A turn that is looked through carries what lies within this share of its reach into the outline's way. */
        private static final double CARRIED = 0.125;

        private final List<Segment> pieces;
        private final Point direction;
        private final double low;
        private final double high;

        Sliding(List<Segment> pieces, Point direction) {
            this.pieces = List.copyOf(pieces);
            this.direction = direction;
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Segment piece : pieces) {
                double start = direction.cross(piece.start());
                double end = direction.cross(piece.end());
                // no point of an arc is farther from the line of its chord than half its length
                double off = piece instanceof Arc ? piece.length() / 2 : 0;
                least = Math.min(least, Math.min(start, end) - off);
                most = Math.max(most, Math.max(start, end) + off);
            }
            low = least;
            high = most;
        }

        /** How far the middle of a piece's chord lies to the left of the line through the origin along the way, mm. */
        private double across(Segment piece) {
            return direction.cross(piece.start().towards(piece.end(), 0.5));
        }

        @Override
        public List<Segment> near(double move, Turning other) {
            Placement shift = Placement.shift(direction.x() * move, direction.y() * move);
            List<Segment> found = new ArrayList<>();
            for (Segment piece : pieces) {
                Point middle = shift.apply(piece.start().towards(piece.end(), 0.5));
                if (middle.distance(other.axis) - piece.length() / 2 <= other.far) {
                    found.add(piece.placed(shift));
                }
            }
            return found;
        }

        /** Of a wheel that turns, what lies beside the way of this outline; the wheel is looked through a small turn. */
        @Override
        public List<Segment> nearTo(double turn, Turning other) {
            Turn to = new Turn(turn, other.axis);
            double wide = CARRIED * other.far;
            List<Segment> moved = new ArrayList<>();
            for (Segment piece : other.pieces) {
                Segment turned = to.of(piece);
                double across = across(turned);
                double reach = piece.length() / 2 + wide;
                if (across + reach >= low && across - reach <= high) {
                    moved.add(turned);
                }
            }
            return moved;
        }

        @Override
        public double reachFrom(Point point) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** One outline with the distances from its axis between which it lies. */
    private static final class Turning implements Moving {
        final List<Segment> pieces;
        final Point axis;
        final double near;
        final double far;
        private final double[] x;
        private final double[] y;
        private final double[] half;

        Turning(List<Segment> pieces, Point axis) {
            this.pieces = List.copyOf(pieces);
            this.axis = axis;
            int n = pieces.size();
            x = new double[n];
            y = new double[n];
            half = new double[n];
            double least = Double.POSITIVE_INFINITY;
            double most = 0;
            for (int i = 0; i < n; i++) {
                Segment piece = pieces.get(i);
                // No point of a piece is farther from the middle of its chord than half its length.
                Point middle = piece.start().towards(piece.end(), 0.5).minus(axis);
                x[i] = middle.x();
                y[i] = middle.y();
                half[i] = piece.length() / 2;
                boolean round = piece instanceof Arc arc && arc.centre().distance(axis) < arc.radius() * 1e-9;
                double radius = round ? ((Arc) piece).radius() : middle.norm();
                double about = round ? 0 : half[i];
                least = Math.min(least, radius - about);
                most = Math.max(most, radius + about);
            }
            near = least;
            far = most;
        }

        @Override
        public List<Segment> nearTo(double turn, Turning other) {
            return other.near(turn, this);
        }

        @Override
        public double reachFrom(Point point) {
            return axis.distance(point) + far;
        }

        @Override
        public List<Segment> near(double turn, Turning other) {
            Turn to = new Turn(turn, axis);
            double dx = axis.x() - other.axis.x();
            double dy = axis.y() - other.axis.y();
            List<Segment> found = new ArrayList<>();
            for (int i = 0; i < x.length; i++) {
                double px = to.cos * x[i] - to.sin * y[i] + dx;
                double py = to.sin * x[i] + to.cos * y[i] + dy;
                double distance = Math.sqrt(px * px + py * py);
                if (distance - half[i] <= other.far && distance + half[i] >= other.near) {
                    found.add(to.of(pieces.get(i)));
                }
            }
            return found;
        }
    }

    /** A turn about an axis whose sine and cosine are worked out once for many pieces. */
    private static final class Turn {
        final double angle;
        final double cos;
        final double sin;
        private final Point about;

        Turn(double angle, Point about) {
            this.angle = angle;
            this.cos = Math.cos(angle);
            this.sin = Math.sin(angle);
            this.about = about;
        }

        Segment of(Segment piece) {
            if (piece instanceof Arc arc) {
                return new Arc(
                        of(arc.centre()),
                        arc.radius(),
                        arc.startAngle() + angle,
                        arc.sweep(),
                        of(arc.start()),
                        of(arc.end()));
            }
            return new Line(of(piece.start()), of(piece.end()));
        }

        private Point of(Point p) {
            double px = p.x() - about.x();
            double py = p.y() - about.y();
            return new Point(cos * px - sin * py + about.x(), sin * px + cos * py + about.y());
        }
    }
}
