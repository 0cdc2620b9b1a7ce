// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Containment;
import ringleaf.curve.Distances;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Mirror;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.mechanism.Request;
import ringleaf.outline.OutlineFile;
import ringleaf.part.Words;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** Reads the drawings that a spec names, and finds screw holes, view and other openings in the housing's. */
final class BezelReader {
    /** Holes from the thread's diameter to this multiple of it take a screw (common practice, no source). */
    private static final double WIDEST_HOLE = 1.6;

    /** Radii nearer than this are one size, mm: drawing programs round to 0.001 mm at worst (common practice, no source). */
    private static final double SAME = 0.005;

    private final Request request;
    private final Screw screw;
    private final Problems problems;

    BezelReader(Request request, Screw screw) {
        this.request = request;
        this.screw = screw;
        this.problems = request.problems();
    }

    Bezel read() {
        Values values = request.values();
        Optional<Bezel.Own> housing = Optional.empty();
        Optional<Values> asked = values.given(ApertureFields.HOUSING);
        if (asked.isPresent() && asked.get().isComplete()) {
            if (values.isGiven(ApertureFields.OUTER_DIAMETER)) {
                problems.at(
                        values.where(ApertureFields.OUTER_DIAMETER),
                        "contradicts the outline under housing, which says how large everything may be",
                        "leave one of them out");
            }
            housing = housing(regions(asked.get()), asked.get().where(ApertureFields.OUTLINE));
        }
        List<Region> keepOuts = new ArrayList<>();
        for (Values each : values.given(ApertureFields.KEEP_OUT).orElse(List.of())) {
            if (each.isComplete()) {
                keepOuts.addAll(regions(each));
            }
        }
        return new Bezel(housing, keepOuts);
    }

    private List<Region> regions(Values values) {
        String path = values.require(ApertureFields.OUTLINE);
        Place asked = values.where(ApertureFields.OUTLINE);
        Optional<SpecSource> source = request.catalogues().drawing(path, asked);
        if (source.isEmpty()) {
            return List.of();
        }
        OutlineFile.Reading reading = new OutlineFile.Reading(
                values.given(ApertureFields.OUTLINE_UNITS).map(LengthUnit::of),
                values.given(ApertureFields.OUTLINE_LAYERS).orElse(List.of()),
                values.require(ApertureFields.OUTLINE_X),
                values.require(ApertureFields.OUTLINE_Y),
                values.require(ApertureFields.OUTLINE_TURN));
        List<Region> regions = new ArrayList<>();
        OutlineFile.Asked places = new OutlineFile.Asked(
                values.where(ApertureFields.OUTLINE_UNITS), values.where(ApertureFields.OUTLINE_LAYERS));
        for (Region region : OutlineFile.regions(source.get(), reading, places, problems)) {
            // Everything is designed as for the left hand; the finished parts are mirrored back.
            regions.add(isMirrored() ? region.mirrored(Mirror.FLIP_Y) : region);
        }
        return regions;
    }

    private boolean isMirrored() {
        return request.values().require(ApertureFields.HAND).equals("right");
    }

    private Optional<Bezel.Own> housing(List<Region> regions, Place asked) {
        if (regions.isEmpty()) {
            return Optional.empty();
        }
        if (regions.size() > 1) {
            problems.at(
                    asked,
                    "the drawing holds " + regions.size() + " outlines that lie apart or within holes; a"
                            + " housing has one",
                    "name the layers or groups to take under layers:");
            return Optional.empty();
        }
        Region region = regions.get(0);
        if (Containment.of(region.outer(), Point.ORIGIN, 0) != Containment.INSIDE) {
            problems.at(
                    asked,
                    "the aperture's axis lies outside of the outline",
                    "x: and y: say where it is in" + " the drawing");
            return Optional.empty();
        }
        List<Arc> fitting = new ArrayList<>();
        List<Contour> others = new ArrayList<>();
        for (Contour hole : region.holes()) {
            double diameter = hole.isCircle() ? 2 * ((Arc) hole.segments().get(0)).radius() : 0;
            if (Containment.of(hole, Point.ORIGIN, 0) == Containment.INSIDE) {
                view(hole, asked);
            } else if (diameter >= screw.thread() && diameter <= WIDEST_HOLE * screw.thread()) {
                fitting.add((Arc) hole.segments().get(0));
            } else {
                others.add(hole);
            }
        }
        List<Arc> alike = alike(fitting);
        List<Point> screws = alike.stream().map(Arc::centre).toList();
        double radius = alike.stream().mapToDouble(Arc::radius).max().orElse(0);
        fitting.stream()
                .filter(a -> !alike.contains(a))
                .forEach(a -> others.add(Contour.circle(a.centre(), a.radius())));
        if (screws.size() < 2) {
            problems.at(
                    asked,
                    "the drawing has " + screws.size() + " holes of " + Words.mm(screw.thread()) + " to "
                            + Words.mm(WIDEST_HOLE * screw.thread()) + " for screws " + screw.name()
                            + (fitting.size() > screws.size() ? ", of one size, and" : ", and")
                            + " two are the"
                            + " least",
                    others.isEmpty()
                            ? "draw them"
                            : "its round holes: " + sizes(others) + "; set screw: to" + " what fits them");
        }
        return Optional.of(new Bezel.Own(region.outer(), screws, radius, others));
    }

    /**
     * Those of one size that takes the screws: of the sizes drawn more than once the nearest to the screw's own hole, so
     * that a hole for a wire stays one. All others stay as they are drawn.
     */
    private List<Arc> alike(List<Arc> fitting) {
        List<Arc> best = List.of();
        for (Arc one : fitting) {
            List<Arc> alike = fitting.stream()
                    .filter(a -> Math.abs(a.radius() - one.radius()) < SAME)
                    .toList();
            boolean enough = Math.min(2, alike.size()) > Math.min(2, best.size());
            boolean nearer = alike.size() > 1 && best.size() > 1 && off(one) < off(best.get(0)) - SAME;
            best = enough || nearer ? alike : best;
        }
        return best;
    }

    private double off(Arc hole) {
        return Math.abs(hole.radius() - screw.hole() / 2);
    }

    private static String sizes(List<Contour> holes) {
        List<String> sizes = new ArrayList<>();
        for (Contour hole : holes) {
            if (hole.isCircle() && sizes.size() < 6) {
                String size = Words.mm(2 * ((Arc) hole.segments().get(0)).radius());
                if (!sizes.contains(size)) {
                    sizes.add(size);
                }
            }
        }
        return sizes.isEmpty() ? "none" : String.join(", ", sizes);
    }

    /** The drawing's own opening must leave the view free; the plates then take the mechanism's. */
    private void view(Contour hole, Place asked) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Segment segment : hole.segments()) {
            nearest = Math.min(nearest, Distances.distance(segment, Point.ORIGIN));
        }
        double full = request.values().require(ApertureFields.FULL_OPENING);
        if (2 * nearest < full - 1e-6) {
            problems.at(
                    asked,
                    "the drawing's opening about the axis leaves " + Words.mm(2 * nearest) + ", and full-opening is "
                            + Words.mm(full),
                    "x: and y: say where the axis is in the drawing; or make full-opening "
                            + Words.mm(Math.floor(200 * nearest) / 100));
        }
    }
}
