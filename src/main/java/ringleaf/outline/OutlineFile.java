// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringleaf.curve.Containment;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;
import ringleaf.spec.text.SpecSource;

/** A drawing of closed outlines, as DXF or SVG, read into regions in mm. */
public final class OutlineFile {
    /** More pieces than any bezel has. */
    private static final int MOST_PIECES = 5000;

    private OutlineFile() {}

    /**
     * Where the drawing lies in the mechanism.
     *
     * @param units of the drawing, where it does not say so itself
     * @param layers of a DXF, or ids of groups of an SVG, that are looked at; empty for all
     * @param x place of the mechanism's axis in the drawing, mm
     * @param y likewise
     * @param turn of the drawing about that axis, rad
     */
    public record Reading(Optional<LengthUnit> units, List<String> layers, double x, double y, double turn) {}

    /**
     * The regions of a drawing: every outer contour with the holes in it. Lines stay lines and arcs stay arcs; ends that
     * are nearer than 5 µm are joined, so nothing strays by more.
     *
     * @param asked the field that asks for the drawing, for messages about units
     * @return nothing after reporting
     */
    public static List<Region> regions(SpecSource source, Reading reading, Place asked, Problems problems) {
        int before = problems.count();
        Problems own = new Problems();
        Set<String> layers = new HashSet<>(reading.layers());
        List<Piece> pieces;
        Optional<Double> declared;
        if (source.text().stripLeading().startsWith("<")) {
            SvgOutline svg = new SvgOutline(source, layers, own);
            pieces = svg.read();
            declared = svg.unit();
        } else {
            DxfOutline dxf = new DxfOutline(source, layers, own);
            pieces = dxf.read();
            declared = dxf.unit();
        }
        own.list().forEach(p -> problems.at(p.place(), p.reason(), p.hint()));
        if (problems.count() > before) {
            return List.of();
        }
        double unit = FileUnit.of(declared, reading.units(), source.whole(), asked, problems);
        if (pieces.isEmpty()) {
            String where = layers.isEmpty() ? "" : " on " + String.join(", ", reading.layers());
            problems.of(source, "holds no outline" + where, "name its layers or groups under layers:");
        } else if (pieces.size() > MOST_PIECES) {
            problems.of(source, "holds more than " + MOST_PIECES + " pieces; a bezel has some hundred", "");
        }
        if (problems.count() > before) {
            return List.of();
        }
        List<Joiner.Joined> joined = new Joiner(placed(pieces, unit, reading), problems).join();
        return problems.count() > before ? List.of() : nested(joined);
    }

    private static List<Piece> placed(List<Piece> pieces, double unit, Reading reading) {
        Affine map = Affine.turn(reading.turn())
                .after(Affine.shift(-reading.x(), -reading.y()))
                .after(new Affine(unit, 0, 0, unit, 0, 0));
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
        List<List<Contour>> around = new ArrayList<>();
        for (Contour contour : contours) {
            List<Contour> holders = new ArrayList<>();
            Segment piece = contour.segments().get(0);
            for (Contour other : contours) {
                if (other != contour && Containment.of(other, piece.pointAt(0.5), 0) == Containment.INSIDE) {
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
