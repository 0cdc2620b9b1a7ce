// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Distances;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * Which places of an outline a round beam cannot touch without burning into another one: the beam's disc, laid
 * against the place from outside, holds another piece of the outline. Looked at every quarter of the kerf, so a slit is
 * found where it is longer than that (measured against exact slits in the tests).
 *
 * <p>A place in a corner is out of reach for a length of a few kerfs at most; longer ones are slits.
 */
final class BeamReach {
    /** Runs out of reach longer than so many kerfs are slits: a corner of 37 degrees or more stays below. */
    private static final double CORNER = 3;
    /** Share of the beam's radius that counts as touching only. */
    private static final double TOUCH = 1e-4;
    /** Cosine up to which a place counts as lying across, and not beside. */
    private static final double ACROSS = 0.95;

    /** A slit that is too narrow, and where; its width, mm, is not a number where nothing lies straight across. */
    record Slit(double width, Point place) {}

    private final double radius;
    private final double kerf;
    private final List<Slit> slits = new ArrayList<>();
    private int corners;
    private double sharpest = Double.POSITIVE_INFINITY;
    private Point firstCorner;

    private List<Segment> pieces;
    private NearPieces near;

    BeamReach(double kerf) {
        this.kerf = kerf;
        this.radius = kerf / 2;
    }

    /** By how much what is out of reach is so at least, mm. */
    static double tolerance(double kerf) {
        return TOUCH * kerf / 2;
    }

    List<Slit> slits() {
        return slits;
    }

    int corners() {
        return corners;
    }

    /** The least radius of the corners that are out of reach, mm; 0 for a sharp one. */
    double sharpest() {
        return sharpest;
    }

    Point firstCorner() {
        return firstCorner;
    }

    void look(Region region) {
        pieces = new ArrayList<>();
        for (Contour contour : region.contours()) {
            pieces.addAll(contour.segments());
        }
        near = new NearPieces(pieces, region.box(), radius);
        for (Contour contour : region.contours()) {
            look(contour);
        }
    }

    /** A run of places out of reach along a contour. */
    private static final class Run {
        private double length;
        private double width = Double.POSITIVE_INFINITY;
        private double radius = Double.POSITIVE_INFINITY;
        private Point place;
    }

    private void look(Contour contour) {
        List<Run> runs = new ArrayList<>();
        Run run = null;
        Run first = null;
        boolean startsOut = false;
        boolean any = false;
        for (Segment piece : contour.segments()) {
            int stations = Math.max(3, (int) Math.ceil(piece.length() / (radius / 2)));
            for (int i = 0; i < stations; i++) {
                boolean out = isOut(piece, (i + 0.5) / stations);
                if (!out) {
                    run = null;
                } else {
                    if (run == null) {
                        run = new Run();
                        runs.add(run);
                    }
                    first = first == null ? run : first;
                    startsOut |= !any;
                    note(run, piece, (i + 0.5) / stations, piece.length() / stations);
                }
                any = true;
            }
        }
        boolean whole = runs.size() == 1 && runs.get(0).length >= contour.length() * (1 - 1e-9);
        if (!whole && startsOut && run != null && run != first) {
            first.length += run.length;
            first.radius = Math.min(first.radius, run.radius);
            if (run.width < first.width) {
                first.width = run.width;
                first.place = run.place;
            }
            runs.remove(run);
        }
        for (Run each : runs) {
            settle(each, whole);
        }
    }

    private void settle(Run run, boolean whole) {
        if (whole || run.length > CORNER * kerf) {
            slits.add(new Slit(run.width == Double.POSITIVE_INFINITY ? Double.NaN : run.width, run.place));
            return;
        }
        corners++;
        firstCorner = firstCorner == null ? run.place : firstCorner;
        // where no arc is tighter than the beam it is the corner between two pieces that is out of reach
        sharpest = Math.min(sharpest, run.radius < radius ? run.radius : 0);
    }

    /** Adds a place to a run, with the width across it where that is the least so far. */
    private void note(Run run, Segment piece, double at, double length) {
        Point p = piece.pointAt(at);
        Point centre = centre(piece, at);
        Point out = centre.minus(p).unit();
        double width = Double.POSITIVE_INFINITY;
        int[] found = near.near(centre);
        for (int k = 0; k < near.count(centre); k++) {
            Segment other = pieces.get(found[k]);
            if (other != piece || piece instanceof Arc arc && arc.radius() < radius) {
                Point way = Distances.nearest(other, centre).minus(p);
                if (other == piece) {
                    width = Math.min(width, 2 * ((Arc) piece).radius());
                } else if (way.dot(out) > ACROSS * way.norm()) {
                    width = Math.min(width, way.norm());
                }
            }
        }
        run.length += length;
        if (piece instanceof Arc arc && arc.sweep() < 0) {
            run.radius = Math.min(run.radius, arc.radius());
        }
        if (run.place == null || width < run.width) {
            run.width = width;
            run.place = p;
        }
    }

    private Point centre(Segment piece, double at) {
        return piece.pointAt(at).minus(piece.tangentAt(at).left().times(radius));
    }

    private boolean isOut(Segment piece, double at) {
        Point centre = centre(piece, at);
        double limit = radius * (1 - TOUCH);
        int[] found = near.near(centre);
        int count = near.count(centre);
        for (int k = 0; k < count; k++) {
            if (Distances.distance(pieces.get(found[k]), centre) < limit) {
                return true;
            }
        }
        return false;
    }
}
