// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Lettering;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Point;

/**
 * Finds places for texts beside what they belong to: free of lines and other texts, near, and with a leader that crosses
 * little. Places are tried on a fixed grid, and the cheapest is taken, so the same part gives the same sheet.
 */
final class Placer {
    private static final double GRID_X = 3;
    private static final double GRID_Y = 2.5;
    /** Room round a callout beyond what every text has, mm, so that it is not read with its neighbour. */
    private static final double AROUND = 1;

    private static final double JOG = 2;
    private static final double SHORTEST = 4;
    private static final double LONGEST = 95;
    private static final int MOST_TARGETS = 12;
    /** What a leader costs beyond its length, in mm. */
    private static final double OVER_LEADER = 60;

    private static final double OVER_CELL = 1.2;
    private static final double ON_MATERIAL = 22;
    private static final double INSIDE = 8;
    private static final double FLAT = 5;

    private final Plotter plotter;
    private final View view;
    private final Room room;
    private final Box part;

    /** A place that was found. */
    private record Spot(Box box, Point elbow, Point shelf, Point tip, double cost) {}

    Placer(Plotter plotter, View view, Box part) {
        this.plotter = plotter;
        this.view = view;
        this.room = plotter.room();
        this.part = part;
    }

    /** Places a callout with its leader; false where there is no room. */
    boolean callout(Found.Callout callout) {
        double width = 0;
        for (String line : callout.lines()) {
            width = Math.max(width, Lettering.width(line, Plotter.TEXT));
        }
        double height = Plotter.STEP * (callout.lines().size() - 1) + Plotter.TEXT * 4 / 3;
        Spot spot = best(callout.targets(), width, height);
        if (spot == null) {
            return false;
        }
        double y = spot.box.maxY() - Plotter.TEXT;
        for (String line : callout.lines()) {
            plotter.text(line, new Point(spot.box.minX(), y), Plotter.TEXT);
            y -= Plotter.STEP;
        }
        plotter.leader(spot.shelf, spot.elbow);
        plotter.leader(spot.elbow, spot.tip);
        plotter.arrow(spot.tip, spot.tip.minus(spot.elbow));
        return true;
    }

    private Spot best(List<Target> all, double width, double height) {
        List<Target> targets = some(all);
        Box area = room.area();
        Spot best = null;
        for (double y = area.minY() + 1; y + height <= area.maxY(); y += GRID_Y) {
            for (double x = area.minX() + 1; x + width <= area.maxX(); x += GRID_X) {
                Box box = new Box(x, y, x + width, y + height);
                if (room.isFree(box.grown(AROUND))) {
                    for (Target target : targets) {
                        best = better(best, box, target, true);
                        best = better(best, box, target, false);
                    }
                }
            }
        }
        return best;
    }

    private Spot better(Spot best, Box box, Target target, boolean left) {
        double y = box.maxY() - Plotter.TEXT / 2;
        double x = left ? box.minX() - Room.CLEAR - 0.1 : box.maxX() + Room.CLEAR + 0.1;
        Point shelf = new Point(x, y);
        Point elbow = new Point(left ? x - JOG : x + JOG, y);
        Point tip = view.at(target.from(view.back(elbow)));
        double length = tip.distance(elbow);
        double most = best == null ? Double.POSITIVE_INFINITY : best.cost;
        if (length < SHORTEST || length > LONGEST || length >= most) {
            return best;
        }
        double cost = length + around(box, elbow, tip, left);
        if (cost >= most) {
            return best;
        }
        Line leader = new Line(elbow, tip);
        Line whole = new Line(shelf, elbow);
        if (room.crossesText(leader) || room.crossesText(whole) || Room.crosses(leader, box.grown(0.5))) {
            return best;
        }
        cost += OVER_LEADER * (room.crossed(leader) + room.crossed(whole))
                + OVER_CELL * room.linesUnder(leader)
                + 4 * OVER_CELL * room.linesUnder(whole);
        return cost < most ? new Spot(box, elbow, shelf, tip, cost) : best;
    }

    /** What speaks against a place for itself. */
    private double around(Box box, Point elbow, Point tip, boolean left) {
        double cost = 0;
        if (room.isMaterial(box.centre())
                || room.isMaterial(new Point(box.minX(), box.minY()))
                || room.isMaterial(new Point(box.maxX(), box.maxY()))) {
            cost += ON_MATERIAL;
        } else if (part.meets(box)) {
            cost += INSIDE;
        }
        Point way = tip.minus(elbow);
        if (left ? way.x() > 0 : way.x() < 0) {
            cost += 3 * FLAT;
        }
        double slope = Math.min(Math.abs(way.x()), Math.abs(way.y())) / way.norm();
        return slope < 0.15 ? cost + FLAT : cost;
    }

    /** At most so many of them, evenly chosen. */
    private static List<Target> some(List<Target> all) {
        if (all.size() <= MOST_TARGETS) {
            return all;
        }
        List<Target> some = new ArrayList<>();
        for (int i = 0; i < MOST_TARGETS; i++) {
            some.add(all.get(i * all.size() / MOST_TARGETS));
        }
        return some;
    }

    /** Places the label of a feature close to it, with a thin line where it is not beside it; false without room. */
    boolean label(Found.Place place) {
        double width = Lettering.width(place.label(), Plotter.TEXT);
        Point centre = view.at(place.target().middle());
        Box best = null;
        Point edge = null;
        double least = Double.POSITIVE_INFINITY;
        for (int step = 0; step < 26; step++) {
            for (int i = 0; i < 24; i++) {
                Point way = Point.polar(1, Math.PI / 4 + i * Math.PI / 12);
                Point from = view.at(place.target().from(view.back(centre.plus(way.times(1000)))));
                double off = 1.6 + step;
                Point middle = from.plus(new Point(way.x() * (off + width / 2), way.y() * (off + Plotter.TEXT / 2)));
                Box box = new Box(
                        middle.x() - width / 2,
                        middle.y() - Plotter.TEXT / 2 - Plotter.TEXT / 3,
                        middle.x() + width / 2,
                        middle.y() + Plotter.TEXT / 2);
                double cost = off + (room.isMaterial(middle) ? 1 : 0);
                if (cost < least && room.isFree(box) && !blocked(from, middle, off)) {
                    least = cost;
                    best = box;
                    edge = from;
                }
            }
        }
        if (best == null) {
            return false;
        }
        Point corner = new Point(best.minX(), best.minY() + Plotter.TEXT / 3);
        plotter.text(place.label(), corner, Plotter.TEXT);
        if (least > 3.5) {
            Point middle = best.centre();
            Point way = middle.minus(edge);
            double reach = Math.min(
                    Math.abs(best.width() / 2 + Room.CLEAR) / Math.max(1e-9, Math.abs(way.x())),
                    Math.abs(best.height() / 2 + Room.CLEAR) / Math.max(1e-9, Math.abs(way.y())));
            if (reach < 1) {
                plotter.leader(middle.minus(way.times(reach)), edge);
            }
        }
        return true;
    }

    private boolean blocked(Point from, Point to, double off) {
        Line line = new Line(from, to);
        return off > 2.5 && (room.crossesText(line) || room.crossed(line) > 0);
    }
}
