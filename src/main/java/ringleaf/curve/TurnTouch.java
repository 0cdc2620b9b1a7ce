// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** The earliest touch found so far of pieces that turn about a pivot with pieces that stand; see {@link FreeTurn}. */
final class TurnTouch {
    /** Share of a chord by which a touch may lie past an end, so that smooth joints are met from one side at least. */
    private static final double PAST_END = 1e-7;

    final Point pivot;
    final int sense;
    double best;
    Point at;

    TurnTouch(Point pivot, int sense, double most) {
        this.pivot = pivot;
        this.sense = sense;
        this.best = most;
    }

    /** Looks at one pair of pieces. */
    void look(Segment mover, Segment stander) {
        if (mover instanceof Arc a) {
            if (stander instanceof Arc b) {
                arcs(a, b);
            } else {
                arcOnLine(a, stander);
            }
        } else if (stander instanceof Arc b) {
            lineOnArc(mover, b);
        }
        endOn(mover.start(), stander);
        endOn(mover.end(), stander);
        onEnd(mover, stander.start());
        onEnd(mover, stander.end());
    }

    private void arcs(Arc a, Arc b) {
        double sum = a.radius() + b.radius();
        double difference = Math.abs(a.radius() - b.radius());
        double[] outer = circling(a.centre(), b.centre(), sum);
        for (int i = 0; outer != null && i < 2; i++) {
            if (outer[i] < best) {
                Point centre = turned(a.centre(), outer[i]);
                offer(outer[i], centre.towards(b.centre(), a.radius() / sum), a, b);
            }
        }
        if (difference <= 0) {
            return;
        }
        double[] inner = circling(a.centre(), b.centre(), difference);
        for (int i = 0; inner != null && i < 2; i++) {
            if (inner[i] < best) {
                Point centre = turned(a.centre(), inner[i]);
                boolean holds = a.radius() > b.radius();
                Point touch = holds
                        ? centre.towards(b.centre(), a.radius() / difference)
                        : b.centre().towards(centre, b.radius() / difference);
                offer(inner[i], touch, a, b);
            }
        }
    }

    private void arcOnLine(Arc a, Segment line) {
        Point normal = line.tangentAt(0).left();
        double height = normal.dot(line.start());
        for (int side = -1; side <= 1; side += 2) {
            double[] turns = reaching(a.centre(), normal, height + side * a.radius(), sense);
            for (int i = 0; turns != null && i < 2; i++) {
                if (turns[i] < best) {
                    Point foot = turned(a.centre(), turns[i]).minus(normal.times(side * a.radius()));
                    offer(turns[i], foot, a, line);
                }
            }
        }
    }

    private void lineOnArc(Segment line, Arc b) {
        Point normal = line.tangentAt(0).left();
        double height = normal.dot(line.start());
        for (int side = -1; side <= 1; side += 2) {
            double[] turns = reaching(b.centre(), normal, height + side * b.radius(), -sense);
            for (int i = 0; turns != null && i < 2; i++) {
                if (turns[i] < best) {
                    Point foot = back(b.centre(), turns[i]).minus(normal.times(side * b.radius()));
                    offer(turns[i], turned(foot, turns[i]), line, b);
                }
            }
        }
    }

    private void endOn(Point end, Segment stander) {
        double[] turns = stander instanceof Arc b
                ? circling(end, b.centre(), b.radius())
                : reaching(
                        end,
                        stander.tangentAt(0).left(),
                        stander.tangentAt(0).left().dot(stander.start()),
                        sense);
        for (int i = 0; turns != null && i < 2; i++) {
            if (turns[i] < best) {
                Point point = turned(end, turns[i]);
                if (carries(stander, point)) {
                    take(turns[i], point);
                }
            }
        }
    }

    private void onEnd(Segment mover, Point end) {
        double[] turns = mover instanceof Arc a
                ? circling(a.centre(), end, a.radius())
                : reaching(
                        end,
                        mover.tangentAt(0).left(),
                        mover.tangentAt(0).left().dot(mover.start()),
                        -sense);
        for (int i = 0; turns != null && i < 2; i++) {
            if (turns[i] < best && carries(mover, back(end, turns[i]))) {
                take(turns[i], end);
            }
        }
    }

    private void offer(double turn, Point touch, Segment mover, Segment stander) {
        if (carries(stander, touch) && carries(mover, back(touch, turn))) {
            take(turn, touch);
        }
    }

    private void take(double turn, Point touch) {
        best = turn;
        at = touch;
    }

    private Point turned(Point p, double turn) {
        return pivot.plus(p.minus(pivot).turned(sense * turn));
    }

    private Point back(Point p, double turn) {
        return pivot.plus(p.minus(pivot).turned(-sense * turn));
    }

    /** Turns of a point about the pivot at which it is {@code distance} from {@code from}; null when it never is. */
    private double[] circling(Point moving, Point from, double distance) {
        Point own = moving.minus(pivot);
        Point other = from.minus(pivot);
        double r = own.norm();
        double d = other.norm();
        // tan²(f/2) by the half-angle form of the law of cosines: no digits are lost where the angle is small.
        double above = (distance - (r - d)) * (distance + (r - d));
        double below = (r + d - distance) * (r + d + distance);
        if (!(above >= 0) || !(below > 0)) {
            return null;
        }
        double half = 2 * Math.atan(Math.sqrt(above / below));
        double way = other.angle() - own.angle();
        return new double[] {Angles.positive(sense * (way + half)), Angles.positive(sense * (way - half))};
    }

    /** Turns, in a sense, at which a point has {@code height} along a normal; null when it never has. */
    private double[] reaching(Point moving, Point normal, double height, int inSense) {
        Point own = moving.minus(pivot);
        double r = own.norm();
        double rest = height - normal.dot(pivot);
        if (!(Math.abs(rest) <= r) || r == 0) {
            return null;
        }
        double half = Math.acos(rest / r);
        double way = normal.angle() - own.angle();
        return new double[] {Angles.positive(inSense * (way + half)), Angles.positive(inSense * (way - half))};
    }

    /** Whether a point of the piece's carrier lies on the piece. */
    private static boolean carries(Segment piece, Point p) {
        Point from = piece.start();
        Point chord = piece.end().minus(from);
        Point to = p.minus(from);
        if (piece instanceof Arc arc) {
            double side = chord.cross(to);
            double slack = PAST_END * chord.dot(chord);
            return arc.isCircle() || (arc.isCounterClockwise() ? side <= slack : side >= -slack);
        }
        double along = to.dot(chord);
        double square = chord.dot(chord);
        return along >= -PAST_END * square && along <= square * (1 + PAST_END);
    }
}
