// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ringleaf.curve.Distances;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;

/**
 * What a contour that is no circle is: a slot, a bore with a flat, a rectangle, or an opening of its own form.
 *
 * @param lines what to write of it, the first one its size
 * @param centre of it
 * @param axis its direction, rad, where it has one
 * @param width of a slot, else 0
 */
record Shape(List<String> lines, Point centre, Optional<Double> axis, double width) {
    private static final int MOST_RADII = 3;

    static Shape of(Edge edge, Bearings bearings, Tolerance same, Sizes sizes) {
        List<Arc> arcs = edge.arcs();
        List<Line> lines = new ArrayList<>();
        for (Segment piece : edge.pieces()) {
            if (piece instanceof Line line) {
                lines.add(line);
            }
        }
        Shape shape = null;
        if (arcs.size() == 2 && lines.size() == 2) {
            shape = straightSlot(arcs, bearings, same, sizes);
            shape = shape == null ? sector(arcs, same, sizes) : shape;
            shape = shape == null ? flats(arcs.get(0), lines, same, sizes) : shape;
        } else if (arcs.size() == 4 && lines.isEmpty()) {
            shape = arcSlot(arcs, bearings, same, sizes);
        } else if (arcs.size() == 1 && lines.size() == 1) {
            shape = flats(arcs.get(0), lines, same, sizes);
        } else if (arcs.size() == 1 && lines.size() == 3) {
            shape = keyway(arcs.get(0), lines, same, sizes);
        } else if (lines.size() == 4 && (arcs.isEmpty() || arcs.size() == 4)) {
            shape = rectangle(arcs, lines, same, sizes);
        }
        return shape == null ? opening(edge, bearings, same, sizes, bearings.round()) : shape;
    }

    /** Whether it has no simpler form. */
    boolean isOpening() {
        return lines.get(0).startsWith("opening ") || lines.get(0).startsWith("boss ");
    }

    private static boolean isHalf(Arc arc, double slack) {
        return Math.abs(Math.abs(arc.sweep()) - Math.PI) < slack / arc.radius();
    }

    private static Shape straightSlot(List<Arc> ends, Bearings bearings, Tolerance same, Sizes sizes) {
        Arc a = ends.get(0);
        Arc b = ends.get(1);
        if (!isHalf(a, 4 * same.length())
                || !isHalf(b, 4 * same.length())
                || Math.abs(a.radius() - b.radius()) > same.length()
                || a.centre().distance(b.centre()) < same.length()) {
            return null;
        }
        double between = a.centre().distance(b.centre());
        List<String> words = new ArrayList<>();
        words.add("slot " + sizes.length(2 * a.radius()) + " x " + sizes.length(between + 2 * a.radius()));
        Point fromA = a.centre().minus(bearings.origin());
        Point fromB = b.centre().minus(bearings.origin());
        boolean radial = bearings.round() && Math.abs(fromA.cross(fromB)) / between < same.length();
        if (radial) {
            double near = Math.min(fromA.norm(), fromB.norm());
            double far = Math.max(fromA.norm(), fromB.norm());
            words.add("end centres " + sizes.radius(near) + ", " + sizes.radius(far));
        }
        double axis = b.centre().minus(a.centre()).angle();
        Optional<Double> direction = radial ? Optional.empty() : Optional.of(axis);
        return new Shape(words, a.centre().towards(b.centre(), 0.5), direction, 2 * a.radius());
    }

    private static Shape arcSlot(List<Arc> arcs, Bearings bearings, Tolerance same, Sizes sizes) {
        for (int i = 0; i < 2; i++) {
            Arc one = arcs.get(i);
            Arc other = arcs.get(i + 2);
            Arc end = arcs.get(1 - i);
            Arc end2 = arcs.get(3 - i);
            boolean slot = one.centre().distance(other.centre()) < same.length()
                    && isHalf(end, 4 * same.length())
                    && isHalf(end2, 4 * same.length())
                    && Math.abs(end.radius() - end2.radius()) < same.length();
            if (slot) {
                double radius = (one.radius() + other.radius()) / 2;
                double width = Math.abs(one.radius() - other.radius());
                List<String> words = new ArrayList<>();
                words.add("slot " + sizes.length(width) + " on " + sizes.radius(radius));
                words.add(Sizes.degrees(Math.abs(one.sweep())) + " between end centres");
                boolean about = one.centre().distance(bearings.origin()) < same.length();
                Point middle = one.centre().plus(Point.polar(radius, one.startAngle() + one.sweep() / 2));
                if (!about) {
                    Point centre = one.centre().minus(bearings.origin());
                    words.add("about " + sizes.length(centre.x()) + ", " + sizes.length(centre.y()));
                }
                return new Shape(words, middle, Optional.empty(), width);
            }
        }
        return null;
    }

    /** A piece of a ring. */
    private static Shape sector(List<Arc> arcs, Tolerance same, Sizes sizes) {
        Arc a = arcs.get(0);
        Arc b = arcs.get(1);
        boolean ring = a.centre().distance(b.centre()) < same.length()
                && Math.abs(a.radius() - b.radius()) > same.length()
                && a.sweep() > 0 != b.sweep() > 0;
        if (!ring) {
            return null;
        }
        Arc outer = a.radius() > b.radius() ? a : b;
        double inner = Math.min(a.radius(), b.radius());
        List<String> words = new ArrayList<>();
        words.add("sector " + sizes.radius(inner) + " to " + sizes.radius(outer.radius()));
        double from = outer.sweep() > 0 ? outer.startAngle() : outer.startAngle() + outer.sweep();
        words.add(Sizes.degrees(Math.abs(outer.sweep())) + " from " + Sizes.degrees(Angles.positive(from)));
        return new Shape(words, outer.centre(), Optional.empty(), 0);
    }

    /** A bore with one flat or with two. */
    private static Shape flats(Arc arc, List<Line> flats, Tolerance same, Sizes sizes) {
        double near = 0;
        for (Line flat : flats) {
            near = Distances.nearest(flat, arc.centre()).distance(arc.centre());
            boolean chord = Math.abs(flat.start().distance(arc.centre()) - arc.radius()) < same.length()
                    && Math.abs(flat.end().distance(arc.centre()) - arc.radius()) < same.length();
            if (!chord || near > arc.radius() - same.length()) {
                return null;
            }
        }
        boolean two = flats.size() == 2;
        double across = two ? 2 * near : arc.radius() + near;
        String words =
                sizes.diameter(arc.radius()) + (two ? ", two flats, " : ", flat, ") + sizes.length(across) + " across";
        Point foot = Distances.nearest(flats.get(0), arc.centre());
        return new Shape(
                List.of(words),
                arc.centre(),
                Optional.of(foot.minus(arc.centre()).angle()),
                0);
    }

    /** A bore with a slot for a key; the height is from the slot's floor to the far side, as a caliper measures it. */
    private static Shape keyway(Arc arc, List<Line> lines, Tolerance same, Sizes sizes) {
        for (int i = 0; i < 3; i++) {
            Line floor = lines.get(i);
            Line one = lines.get((i + 1) % 3);
            Line other = lines.get((i + 2) % 3);
            Point along = one.tangentAt(0);
            boolean square =
                    Math.abs(along.cross(other.tangentAt(0))) < 1e-6 && Math.abs(along.dot(floor.tangentAt(0))) < 1e-6;
            Point foot = Distances.nearest(floor, arc.centre());
            double reach = foot.distance(arc.centre());
            boolean even = foot.distance(floor.pointAt(0.5)) < same.length();
            if (square && even && reach > arc.radius() + same.length()) {
                String words = sizes.diameter(arc.radius()) + ", keyway " + sizes.length(floor.length()) + " wide, "
                        + sizes.length(arc.radius() + reach) + " high";
                return new Shape(
                        List.of(words),
                        arc.centre(),
                        Optional.of(foot.minus(arc.centre()).angle()),
                        0);
            }
        }
        return null;
    }

    private static Shape rectangle(List<Arc> corners, List<Line> sides, Tolerance same, Sizes sizes) {
        Point along = sides.get(0).tangentAt(0);
        for (int i = 1; i < 4; i++) {
            Point next = sides.get(i).tangentAt(0);
            double off = i % 2 == 1 ? along.dot(next) : along.cross(next);
            if (Math.abs(off) > 1e-6) {
                return null;
            }
        }
        for (Arc corner : corners) {
            if (Math.abs(corner.radius() - corners.get(0).radius()) > same.length()) {
                return null;
            }
        }
        double height =
                Math.abs(along.cross(sides.get(2).start().minus(sides.get(0).start())));
        double width =
                Math.abs(along.dot(sides.get(3).start().minus(sides.get(1).start())));
        Point centre = sides.get(0).pointAt(0.5).towards(sides.get(2).pointAt(0.5), 0.5);
        String size = sizes.length(Math.max(width, height)) + " x " + sizes.length(Math.min(width, height));
        String words = corners.isEmpty()
                ? size
                : size + ", corners " + sizes.radius(corners.get(0).radius());
        double axis = (width >= height ? along : along.left()).angle();
        return new Shape(List.of(words), centre, Optional.of(axis), 0);
    }

    /** An opening or a boss by its reach from the centre, as in patterns, or by its box and the box's middle. */
    static Shape opening(Edge edge, Bearings bearings, Tolerance same, Sizes sizes, boolean patterned) {
        List<String> words = new ArrayList<>();
        Box box = edge.contour().box();
        if (patterned) {
            double near = Double.POSITIVE_INFINITY;
            double far = 0;
            for (Segment piece : edge.pieces()) {
                near = Math.min(near, Distances.distance(piece, bearings.origin()));
                far = Math.max(far, farthest(piece, bearings.origin()));
            }
            words.add((edge.hole() ? "opening " : "boss ") + sizes.radius(near) + " to " + sizes.radius(far));
        } else {
            words.add((edge.hole() ? "opening " : "boss ") + sizes.length(box.width()) + " x "
                    + sizes.length(box.height()));
        }
        TreeSet<Long> radii = new TreeSet<>();
        for (Arc arc : edge.arcs()) {
            if (arc.centre().distance(bearings.origin()) > same.length()) {
                radii.add(Math.round(arc.radius() / same.length()));
            }
        }
        if (!radii.isEmpty() && radii.size() <= MOST_RADII) {
            StringBuilder out = new StringBuilder();
            for (long radius : radii) {
                out.append(out.length() == 0 ? "" : ", ").append(sizes.radius(radius * same.length()));
            }
            words.add("corners " + out);
        }
        Point centre = patterned ? edge.contour().centroid() : box.centre();
        return new Shape(words, centre, Optional.empty(), 0);
    }

    private static double farthest(Segment piece, Point from) {
        double far = Math.max(piece.start().distance(from), piece.end().distance(from));
        if (piece instanceof Arc arc) {
            Point out = arc.centre().minus(from);
            if (out.norm() > 0 && arc.shareOf(out.angle()) <= 1) {
                far = Math.max(far, out.norm() + arc.radius());
            }
        }
        return far;
    }
}
