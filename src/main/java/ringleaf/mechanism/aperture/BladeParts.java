// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Fillet;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.leaf.Band;
import ringleaf.leaf.DrivePin;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/** The blade and its pins, drawn for the first blade in the open pose, lying on the base. */
final class BladeParts {
    private final ApertureDesign design;
    private final ApertureSpec spec;

    BladeParts(ApertureDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    /** The band along its centre circle with round ends: four arcs that meet tangentially. */
    static Contour band(Band band) {
        double ri = band.innerRadius();
        double ro = band.outerRadius();
        double a = band.span();
        double h = band.width() / 2;
        Point rootInner = new Point(ri, 0);
        Point rootOuter = new Point(ro, 0);
        Point endOuter = Point.polar(ro, a);
        Point endInner = Point.polar(ri, a);
        return Contour.of(
                new Arc(Point.ORIGIN, ro, 0, a, rootOuter, endOuter),
                new Arc(Point.polar(band.pivotRadius(), a), h, a, Math.PI, endOuter, endInner),
                new Arc(Point.ORIGIN, ri, a, -a, endInner, rootInner),
                new Arc(new Point(band.pivotRadius(), 0), h, Math.PI, Math.PI, rootInner, rootOuter));
    }

    /** The blade's outline without holes. */
    Contour outline() {
        Contour band = band(design.band());
        double ear = design.ear();
        if (ear == 0) {
            return band;
        }
        double h = design.band().width() / 2;
        List<Region> pieces = new ArrayList<>();
        pieces.add(Region.of(band));
        if (design.pin() instanceof DrivePin.Lever) {
            pieces.add(Region.of(Shapes.hull(design.pivot(), Math.max(h, ear), design.drivePoint(), ear)));
        } else {
            pieces.add(Region.disc(design.pivot(), ear));
            pieces.add(Region.disc(design.drivePoint(), ear));
        }
        Contour joined = Overlay.union(pieces).get(0).outer();
        // The pieces' own joints are smooth, so every corner is one where an ear meets the band.
        return Fillet.rounded(joined, Math.min(h / 2, 1), corner -> true);
    }

    Region region() {
        ApertureJoints joints = new ApertureJoints(design, 1);
        List<Contour> holes = new ArrayList<>();
        if (spec.pinStyle() != PinStyle.ONE_GLUED) {
            holes.addAll(joints.bladeBore().cuts());
        }
        holes.addAll(joints.driveHole().cuts());
        return new Region(outline(), holes);
    }

    Part blade() {
        double floor = design.stack().baseTop();
        Region region = region();
        List<Layer> layers = new ArrayList<>();
        String note;
        if (spec.pinStyle() == PinStyle.ONE_GLUED) {
            double depth = design.stack().pivotPinDepth();
            if (depth > 0) {
                layers.add(Layer.of(Region.disc(design.pivot(), spec.pinDiameter() / 2), floor - depth, floor));
            }
            note = "print upside down so that the pivot pin stands up; set the drive pin into its hole";
        } else if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            note = "turns on a post of the base; set the drive pin flush on the lower face";
        } else {
            note = "set both pins flush on the far face, square to the sheet; deburr: shim edges are sharp";
        }
        layers.add(Layer.of(region, floor, floor + spec.thickness()));
        return new Part("blade", Family.BLADE, spec.blades(), spec.blade().source(), layers, List.of(mark()), note)
                .withWorking(working());
    }

    /** Both pin ends, and the inner edge that bounds the opening and slides along its neighbours. */
    private List<Region> working() {
        Band band = design.band();
        double end = Math.max(band.width() / 2, design.ear()) + 1;
        double inner = band.innerRadius();
        return List.of(
                Region.disc(design.pivot(), end),
                Region.disc(design.drivePoint(), end),
                Region.disc(Point.polar(band.pivotRadius(), band.span()), band.width() / 2 + 1),
                Region.ring(Point.ORIGIN, inner - 0.1, inner + 0.1));
    }

    /** A half arrow that points to the far end on the face towards the ring: tells which face is up. */
    private Path mark() {
        Band band = design.band();
        double from = band.span() * 0.45;
        double size = band.width() * 0.25;
        Point tail = Point.polar(band.pivotRadius(), from);
        Point tip = Point.polar(band.pivotRadius(), from + size / band.pivotRadius());
        Point barb = Point.polar(band.pivotRadius() + size / 2, from + size / 2 / band.pivotRadius());
        return Path.of(new Line(tail, tip), new Line(tip, barb));
    }

    /** The pin that turns in the base; none where the blade carries it or the base has posts of its own. */
    List<Part> pins() {
        List<Part> pins = new ArrayList<>();
        double floor = design.stack().baseTop();
        double t = spec.thickness();
        if (spec.pinStyle() == PinStyle.TWO_HOLES) {
            pins.add(pin("pivot-pin", design.pivot(), floor - design.stack().pivotPinDepth(), floor + t));
        } else if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            pins.add(pin("pivot-pin", design.pivot(), design.stack().boreFloor(), floor + postHeight()));
        }
        pins.add(pin(
                "drive-pin",
                design.drivePoint(),
                floor,
                floor + t + design.stack().drivePinHeight()));
        return pins;
    }

    /** A post ends a hair below its blade's upper face, so that the next blade slides over it. */
    double postHeight() {
        return spec.thickness() * 0.9;
    }

    private Part pin(String name, Point at, double from, double to) {
        Part.Source bought = spec.hardware().rod(name, spec.pinDiameter()).source(to - from);
        Layer layer = Layer.of(Region.disc(at, spec.pinDiameter() / 2), from, to);
        return new Part(name, Family.PIN, spec.blades(), bought, List.of(layer), List.of(), "deburr both ends");
    }
}
