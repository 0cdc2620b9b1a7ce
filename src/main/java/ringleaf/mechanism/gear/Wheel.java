// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Fillet;
import ringleaf.curve.OnMaterial;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.body.Lightening;

/**
 * One gear made: its teeth as cut and its outline, about the origin, the middle of tooth 0 on +x.
 *
 * @param rim its teeth
 * @param spec its body
 * @param cut its full toothed contour
 * @param region what is solid
 */
record Wheel(Rim rim, WheelSpec spec, Rim.Cut cut, Region region) {
    /** Material kept inside the root circle, in modules, where it is more than the web; common practice, no source. */
    private static final double RIM_BACK = 1.5;

    /** Corners this near to the hub's circle, in modules, stand on it. */
    private static final double HUB_HAIR = 1e-6;

    private static final double MARK_LENGTH = 2;
    private static final double MARK_GAP = 0.3;
    /** Shorter lines are not seen, mm; common practice, no source. */
    private static final double LEAST_MARK = 0.4;

    static Wheel of(Rim rim, WheelSpec spec, double web) {
        Rim.Cut cut = rim.cut(spec.finish());
        Region region = rim instanceof Rim.Inner ? ring(rim, spec, cut) : outer(rim, spec, cut, web);
        return new Wheel(rim, spec, cut, region);
    }

    private static Region outer(Rim rim, WheelSpec spec, Rim.Cut cut, double web) {
        double whole = whole(rim, web);
        if (spec.sector().isEmpty()) {
            return new Region(cut.contour(), spec.body().cuts(whole, web));
        }
        WheelSpec.Sector sector = spec.sector().get();
        int teeth = sector.teeth().orElse(rim.teeth() - 2);
        double centre = centre(rim, teeth);
        if (!sector.segment()) {
            Contour disc = cut.outline().sectorRim(rim.tipRadius(), teeth + 1, centre);
            return new Region(disc, spec.body().cuts(whole, web));
        }
        List<Contour> holes = new ArrayList<>(spec.body().bore().cuts());
        spec.body().screws().ifPresent(s -> holes.addAll(s.cuts()));
        double half = teeth * rim.pitchAngle() / 2;
        Region wedge = Region.of(Shapes.discSector(Point.ORIGIN, 2 * rim.tipRadius(), centre - half, centre + half));
        List<Region> toothed = Overlay.intersection(List.of(Region.of(cut.contour())), List.of(wedge));
        double hub = Math.max(spec.body().hubReach() + Math.max(web, rim.module()), 2 * web);
        List<Region> joined = Overlay.union(List.of(toothed.get(0), Region.disc(Point.ORIGIN, hub)));
        Contour sharp = joined.get(0).outer();
        Contour outline = Fillet.rounded(sharp, rim.module(), p -> Math.abs(p.norm() - hub) < HUB_HAIR * rim.module());
        return new Region(outline, holes);
    }

    /** Radius from which the material that carries the teeth stays whole, mm. */
    static double whole(Rim rim, double web) {
        return rim.rootRadius() - Math.max(web, RIM_BACK * rim.module());
    }

    private static Region ring(Rim rim, WheelSpec spec, Rim.Cut cut) {
        double outside = spec.ringRadius().orElseThrow();
        List<Contour> holes = new ArrayList<>();
        holes.add(cut.contour());
        spec.body().screws().ifPresent(s -> holes.addAll(s.cuts()));
        Region whole = new Region(Contour.circle(Point.ORIGIN, outside), holes);
        if (spec.sector().isEmpty()) {
            return whole;
        }
        int teeth = spec.sector().get().teeth().orElse(rim.teeth() - 2);
        double centre = centre(rim, teeth);
        double half = teeth * rim.pitchAngle() / 2;
        Region piece = Region.of(
                Shapes.annulusSector(Point.ORIGIN, rim.tipRadius() / 2, 2 * outside, centre - half, centre + half));
        return Overlay.intersection(List.of(whole), List.of(piece)).get(0);
    }

    /** Direction of the middle of a sector in the wheel's own frame: over tooth 0, or over the space after it. */
    private static double centre(Rim rim, int teeth) {
        return teeth % 2 == 1 ? 0 : rim.pitchAngle() / 2;
    }

    /** Direction of the sector's middle in the wheel's own frame, rad; 0 for a full circle. */
    double sectorCentre() {
        return spec.sector().isEmpty() ? 0 : centre(rim, teethCut());
    }

    /** Whole teeth that are there. */
    int teethCut() {
        return spec.sector().isEmpty()
                ? rim.teeth()
                : spec.sector().get().teeth().orElse(rim.teeth() - 2);
    }

    /** Farthest reach from the axis, mm. */
    double reach() {
        return spec.ringRadius().orElse(rim.tipRadius());
    }

    /**
     * A short line beside the teeth, in a direction of the wheel's own frame; shorter where a hole is in its way, and none
     * where too little is left to be seen.
     *
     * @param on what it is marked on, with all holes
     */
    Optional<Path> mark(double direction, Region on) {
        return OnMaterial.longest(mark(direction), on, MARK_GAP)
                .filter(line -> line.length() >= LEAST_MARK)
                .map(Path::of);
    }

    private Line mark(double direction) {
        double root = rim.rootRadius();
        Point out = Point.polar(1, direction);
        if (rim instanceof Rim.Inner) {
            double far = Math.min(root + MARK_GAP + MARK_LENGTH, reach() - MARK_GAP / 2);
            return new Line(out.times(root + MARK_GAP / 2), out.times(far));
        }
        boolean open = spec.body().lightening().form() != Lightening.Form.NONE;
        // Beside openings the mark stays on the material that carries the teeth.
        double room = open ? Math.max(rim.module() / 2, root - whole(rim, 0) - 2 * MARK_GAP) : root / 4;
        double length = Math.min(MARK_LENGTH, room);
        return new Line(out.times(root - MARK_GAP - length), out.times(root - MARK_GAP));
    }
}
