// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.curve.ByPlace;
import ringleaf.curve.Containment;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.Shown;
import ringleaf.spec.text.SpecSource;

/** A drawing of closed outlines, as DXF or SVG, read into regions in mm. */
public final class OutlineFile {
    /** More lines and arcs than any bezel has, however finely it was traced. */
    static final int MOST_VERTICES = 100_000;

    private OutlineFile() {}

    /** Where a spec says in which unit a drawing is, and which of its layers are looked at. */
    public record Asked(Place units, Place layers) {}

    /**
     * Where the drawing lies in the mechanism.
     *
     * @param units of the drawing, where it does not say so itself
     * @param layers of a DXF, or ids of groups of an SVG, that are looked at; empty for all
     * @param x place of the mechanism's axis in the drawing, mm
     * @param y likewise, up in a DXF and down in an SVG
     * @param turn of the drawing about that axis, rad
     */
    public record Reading(Optional<LengthUnit> units, List<String> layers, double x, double y, double turn) {}

    /**
     * The regions of a drawing: every outer contour with the holes in it. Lines stay lines and arcs stay arcs; ends that
     * are nearer than 5 µm are joined, so nothing strays by more.
     *
     * @param asked places in the spec, for messages about units and layers
     * @return nothing after reporting
     */
    public static List<Region> regions(SpecSource source, Reading reading, Asked asked, Problems problems) {
        int before = problems.count();
        Problems own = new Problems();
        double assumed = reading.units().map(unit -> unit.unit().inner(1)).orElse(1.0);
        Set<String> layers = new HashSet<>(reading.layers());
        boolean down = source.text().stripLeading().startsWith("<");
        List<Piece> pieces;
        Optional<Double> declared;
        Set<String> known;
        if (down) {
            SvgOutline svg = new SvgOutline(source, layers, assumed, own);
            pieces = svg.read();
            declared = svg.unit();
            known = svg.groups();
        } else {
            DxfOutline dxf = new DxfOutline(source, layers, assumed, own);
            pieces = dxf.read();
            declared = dxf.unit();
            known = dxf.layers();
        }
        own.list().forEach(p -> problems.at(p.place(), p.reason(), p.hint()));
        if (problems.count() > before) {
            return List.of();
        }
        missing(reading.layers(), known, source, asked.layers(), problems);
        double unit = FileUnit.of(declared, reading.units(), source.whole(), asked.units(), problems);
        int vertices =
                pieces.stream().mapToInt(piece -> piece.segments().size()).sum();
        if (problems.count() == before && pieces.isEmpty()) {
            String where = layers.isEmpty() ? "" : " on " + String.join(", ", reading.layers());
            problems.of(source, "holds no outline" + where, "name its layers or groups under layers:");
        } else if (vertices > MOST_VERTICES) {
            problems.of(
                    source,
                    "holds " + vertices + " lines and arcs, and " + MOST_VERTICES + " are the most that are read",
                    "turn traced curves into arcs, or name the layers to take under layers:");
        }
        if (problems.count() > before) {
            return List.of();
        }
        DrawingFrame frame = new DrawingFrame(unit, down, reading);
        List<Joiner.Joined> joined = new Joiner(placed(pieces, frame.map()), frame, problems).join();
        return problems.count() > before ? List.of() : nested(joined);
    }

    /** Layers that are asked for and that the drawing does not have. */
    private static void missing(
            List<String> asked, Set<String> known, SpecSource source, Place place, Problems problems) {
        for (String layer : asked) {
            if (!known.contains(layer)) {
                problems.at(
                        place,
                        source.name() + " draws nothing on a layer or group " + Shown.quoted(layer)
                                + (known.isEmpty() ? ", nor on any that has a name" : ""),
                        Nearest.hint(layer, known));
            }
        }
    }

    private static List<Piece> placed(List<Piece> pieces, Affine map) {
        boolean moves = !map.equals(Affine.NONE);
        List<Piece> placed = new ArrayList<>();
        for (Piece piece : pieces) {
            placed.add(moves ? new Piece(map.apply(piece), piece.closed(), piece.place()) : piece);
        }
        return placed;
    }

    /** Contours at even depth are outer, those at odd depth are holes in the one around them. */
    private static List<Region> nested(List<Joiner.Joined> joined) {
        List<Contour> contours = new ArrayList<>();
        for (Joiner.Joined each : joined) {
            contours.add(each.contour());
        }
        ByPlace<Contour> boxes = new ByPlace<>();
        for (Contour contour : contours) {
            boxes.put(contour.box(), contour);
        }
        List<List<Contour>> around = new ArrayList<>();
        for (Contour contour : contours) {
            List<Contour> holders = new ArrayList<>();
            Point on = contour.segments().get(0).pointAt(0.5);
            for (Contour other : boxes.at(on)) {
                if (other != contour && Containment.of(other, on, 0) == Containment.INSIDE) {
                    holders.add(other);
                }
            }
            around.add(holders);
        }
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < contours.size(); i++) {
            if (around.get(i).size() % 2 == 0) {
                List<Contour> holes = new ArrayList<>();
                for (int j = 0; j < contours.size(); j++) {
                    if (around.get(j).size() == around.get(i).size() + 1
                            && around.get(j).contains(contours.get(i))) {
                        holes.add(contours.get(j));
                    }
                }
                regions.add(new Region(contours.get(i), holes));
            }
        }
        return regions;
    }
}
