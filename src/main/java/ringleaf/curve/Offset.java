// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * Regions grown or shrunk by a distance, with round corners: the points within the distance of the region, or the
 * points of it that are further than the distance from its edge.
 *
 * <p>Each piece is shifted square to itself (a line stays a line, an arc keeps its centre), corners that open get an
 * arc about the corner, everything is cut where it meets, and what really is at the distance from the source is kept.
 * Exact to the snap radius of {@link Overlay}. Contours of a source that cross each other (holes that run into one
 * another, or out of the part) are taken as {@link Sound} does.
 */
public final class Offset {
    private final List<Segment> source = new ArrayList<>();
    private final STRtree tree = new STRtree();
    private final Region region;
    private final double distance;
    private final Rays rays;

    private Offset(Region region, double distance) {
        this.region = region;
        this.distance = distance;
        for (Contour contour : region.contours()) {
            for (Segment segment : contour.segments()) {
                tree.insert(envelope(segment.box()), source.size());
                source.add(segment);
            }
        }
        rays = new Rays(source, Point.polar(1, Faces.ASKEW));
    }

    /**
     * The region with its edge moved by {@code distance} mm: positive grows it (the outer contour outwards, holes get
     * smaller and vanish), negative shrinks it, which may split it or leave nothing (an empty list).
     */
    public static List<Region> of(Region region, double distance) {
        if (!(Math.abs(distance) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no offset by " + distance);
        }
        if (distance == 0) {
            return List.of(region);
        }
        List<Region> made = new ArrayList<>();
        for (Region sound : Sound.of(region)) {
            made.addAll(new Offset(sound, distance).made());
        }
        return distance > 0 && made.size() > 1 ? Overlay.union(made) : made;
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
    }

    private List<Region> made() {
        List<Segment> raw = raw();
        if (raw.isEmpty()) {
            return List.of();
        }
        List<Integer> operands = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            operands.add(0);
        }
        List<Segment> all = new ArrayList<>(raw);
        all.addAll(source);
        return Overlay.settled(all, touch -> kept(Arrangement.of(raw, operands, touch)));
    }

    private List<Region> kept(Arrangement arrangement) {
        double snap = arrangement.snap;
        List<Chain> kept = new ArrayList<>();
        for (Edge edge : arrangement.edges()) {
            Point middle = edge.segment.pointAt(0.5);
            // the side matters too: about a point where two contours touch, an arc may lie on the far side
            if (isAtDistance(middle, 2 * snap) && rays.winding(middle) > 0 == distance < 0) {
                kept.add(Chain.of(edge, edge.first > 0));
            }
        }
        return Nesting.regions(Stitching.contours(kept, snap, arrangement.nodes.size()), snap);
    }

    /** Whether no piece of the source is nearer than the distance. */
    private boolean isAtDistance(Point p, double near) {
        double reach = Math.abs(distance) - near;
        Envelope around = new Envelope(p.x() - reach, p.x() + reach, p.y() - reach, p.y() + reach);
        for (Object item : tree.query(around)) {
            if (Distances.distance(source.get((Integer) item), p) < reach) {
                return false;
            }
        }
        return true;
    }

    private List<Segment> raw() {
        List<Segment> raw = new ArrayList<>();
        for (Contour contour : region.contours()) {
            Segment before = contour.segments().get(contour.segments().size() - 1);
            for (Segment segment : contour.segments()) {
                addCorner(raw, before, segment);
                Segment shifted = shifted(segment);
                if (shifted != null) {
                    raw.add(shifted);
                }
                before = segment;
            }
        }
        return raw;
    }

    /**
     * The piece moved to its right by the distance; null for an arc that is used up, as no point of it could be at the
     * distance.
     */
    private Segment shifted(Segment segment) {
        if (segment instanceof Arc arc) {
            double radius = arc.radius() + Math.signum(arc.sweep()) * distance;
            if (radius <= 1e-12 * arc.radius()) {
                return null;
            }
            double share = radius / arc.radius();
            Point start = arc.centre().towards(arc.start(), share);
            Point end = arc.centre().towards(arc.end(), share);
            return new Arc(arc.centre(), radius, arc.startAngle(), arc.sweep(), start, end);
        }
        Point shift = segment.tangentAt(0).left().times(-distance);
        return new Line(segment.start().plus(shift), segment.end().plus(shift));
    }

    /** The arc about a corner that opens when its pieces part; nothing where they cross or run on smoothly. */
    private void addCorner(List<Segment> raw, Segment before, Segment after) {
        if (before == after) {
            return;
        }
        Point corner = after.start();
        double turn = Corners.turn(before, after);
        boolean opens = distance > 0 ? turn > 0 : turn < 0;
        if (!opens) {
            return;
        }
        Point start = corner.plus(before.tangentAt(1).left().times(-distance));
        Point end = corner.plus(after.tangentAt(0).left().times(-distance));
        if (!start.equals(end)) {
            raw.add(new Arc(corner, Math.abs(distance), start.minus(corner).angle(), turn, start, end));
        }
    }
}
