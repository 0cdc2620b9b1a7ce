// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;

/**
 * Union, difference and intersection of regions, on the lines and arcs themselves.
 *
 * <p>Pieces are split where they meet and joined again where a cut turns out not to matter; every piece of the result
 * lies on the carrier of a source's piece, within the snap radius of some 1e-11 mm for parts of 100 mm (32 times the
 * rounding of the coordinates; more only where rounding leaves no other way). Sources of one list may overlap, touch
 * and share edges. Regions of the result touch each other and themselves in single points at most; slivers thinner
 * than the snap radius are left out. Nothing left gives an empty list.
 * Should rounding leave pieces that do not fit together, the snap radius is widened tenfold, four times at most; then an
 * {@link IllegalStateException} says where (not met in some 100,000 random trials, nearly coincident ones included).
 */
public final class Overlay {
    private static final int TRIES = 5;
    private static final int WIDER = 10;

    /** Work that depends on how near is a touch. */
    interface Work {
        List<Region> with(double touch);
    }

    private Overlay() {}

    /** What lies in any of the regions. */
    public static List<Region> union(List<Region> regions) {
        return overlay(regions, List.of(), Faces.Rule.UNION);
    }

    /** What lies in any of {@code regions} and in none of {@code less}. */
    public static List<Region> difference(List<Region> regions, List<Region> less) {
        return overlay(regions, less, Faces.Rule.DIFFERENCE);
    }

    /** What lies in any of the one and in any of the other. */
    public static List<Region> intersection(List<Region> one, List<Region> other) {
        return overlay(one, other, Faces.Rule.INTERSECTION);
    }

    private static List<Region> overlay(List<Region> one, List<Region> other, Faces.Rule rule) {
        List<Segment> pieces = new ArrayList<>();
        List<Integer> operands = new ArrayList<>();
        collect(one, 0, pieces, operands);
        collect(other, 1, pieces, operands);
        if (pieces.isEmpty()) {
            return List.of();
        }
        return settled(pieces, touch -> {
            Arrangement arrangement = Arrangement.of(pieces, operands, touch);
            List<Chain> kept = Faces.boundary(arrangement, rule);
            double snap = arrangement.snap;
            return Nesting.regions(Stitching.contours(kept, snap, arrangement.nodes.size()), snap);
        });
    }

    private static void collect(List<Region> regions, int operand, List<Segment> pieces, List<Integer> operands) {
        for (Region region : regions) {
            for (Contour contour : region.contours()) {
                for (Segment segment : contour.segments()) {
                    pieces.add(segment);
                    operands.add(operand);
                }
            }
        }
    }

    /** Does the work with the least snap, and with wider ones while the pieces do not fit together. */
    static List<Region> settled(List<Segment> pieces, Work work) {
        double touch = touch(pieces);
        Unsettled last = null;
        for (int i = 0; i < TRIES; i++) {
            try {
                return work.with(touch);
            } catch (Unsettled e) {
                last = e;
                touch *= WIDER;
            }
        }
        throw new IllegalStateException(
                "outlines that cannot be combined in " + box(pieces) + ": " + last.getMessage());
    }

    /** How near is a touch of these pieces, mm. */
    static double touch(List<Segment> pieces) {
        double greatestRadius = 0;
        for (Segment piece : pieces) {
            greatestRadius = Math.max(greatestRadius, piece instanceof Arc arc ? arc.radius() : 0);
        }
        return Arrangement.touch(box(pieces), greatestRadius);
    }

    private static Box box(List<Segment> pieces) {
        Box box = pieces.get(0).box();
        for (Segment piece : pieces) {
            box = box.union(piece.box());
        }
        return box;
    }
}
