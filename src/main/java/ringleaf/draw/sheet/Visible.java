// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Containment;
import ringleaf.curve.Intersections;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.geom.Tolerance;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** Which pieces of a stepped part's outlines are seen from above, and which lie under a higher level. */
final class Visible {
    private final List<Segment> seen = new ArrayList<>();
    private final List<Segment> hidden = new ArrayList<>();
    private final Tolerance same;

    private Visible(Tolerance same) {
        this.same = same;
    }

    /** Looks at a part of several levels, the lowest first. */
    static Visible of(Part part, Tolerance same) {
        Visible visible = new Visible(same);
        List<Layer> layers = part.layers();
        for (int i = 0; i < layers.size(); i++) {
            List<Region> above = new ArrayList<>();
            for (Layer layer : layers.subList(i + 1, layers.size())) {
                above.addAll(layer.regions());
            }
            for (Region region : layers.get(i).regions()) {
                for (Contour contour : region.contours()) {
                    for (Segment segment : contour.segments()) {
                        visible.add(segment, above);
                    }
                }
            }
        }
        return visible;
    }

    List<Segment> seen() {
        return seen;
    }

    List<Segment> hidden() {
        return hidden;
    }

    private void add(Segment segment, List<Region> above) {
        List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
        for (Region region : above) {
            if (region.box().meets(segment.box())) {
                for (Contour contour : region.contours()) {
                    for (Segment other : contour.segments()) {
                        if (other.box().meets(segment.box())) {
                            for (Point p : Intersections.of(segment, other, same.length() / 100)) {
                                cuts.add(share(segment, p));
                            }
                        }
                    }
                }
            }
        }
        cuts.sort(Double::compare);
        for (int i = 1; i < cuts.size(); i++) {
            double from = Math.max(0, cuts.get(i - 1));
            double to = Math.min(1, cuts.get(i));
            if ((to - from) * segment.length() > same.length()) {
                sort(segment.part(from, to), above);
            }
        }
    }

    private void sort(Segment piece, List<Region> above) {
        Point middle = piece.pointAt(0.5);
        boolean under = false;
        for (Region region : above) {
            Containment where = Containment.of(region, middle, same.length());
            if (where == Containment.ON) {
                // The level above has this edge too, and shows it.
                return;
            }
            under |= where == Containment.INSIDE;
        }
        (under ? hidden : seen).add(piece);
    }

    private static double share(Segment segment, Point p) {
        if (segment instanceof Arc arc) {
            double share = arc.shareOf(p.minus(arc.centre()).angle());
            // Just before the start counts as the start.
            return share > 1 && share > Angles.TURN / Math.abs(arc.sweep()) - 1e-6 ? 0 : share;
        }
        Point along = segment.end().minus(segment.start());
        return p.minus(segment.start()).dot(along) / along.dot(along);
    }
}
