// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Offset;
import ringleaf.curve.Overlay;
import ringleaf.curve.Shapes;
import ringleaf.curve.StrokeFont;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Mirror;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.leaf.Band;
import ringleaf.mechanism.Material;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Words;

/**
 * A plate with pockets in which blades lie flat while a pin is glued in: the pin hangs down through its hole and stands
 * on the floor of a socket square to the pocket, so that its other end is flush with the face that is up, where the glue
 * goes. Round each pin's hole the pocket's floor is sunk, so that glue that creeps through meets no jig; a round notch
 * beside each pocket reaches under the blade's edge, for a finger or a blunt blade to lift it by.
 *
 * <p>Frame of its own: floor of the plate at z = 0, seen from above.
 */
final class GlueJig {
    /** Solid floor under the sockets, mm; common practice, no source. */
    static final double FLOOR = 1.2;
    /** How far the sunk floor reaches beyond the hole, mm. */
    private static final double WELL_ROOM = 1.2;

    /** How far the walls stand above a blade, mm, and their least height. */
    private static final double ABOVE = 0.6;

    private static final double LEAST_WALL = 1.4;
    private static final double MARGIN = 4;
    private static final double CORNER = 3;
    private static final double LABEL = 4;
    private static final double NOTCH_MARK = 1.5;

    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final JigSpec jig;
    private final boolean drive;
    private final PinLean pins;

    /**
     * A jig for one of the two pins.
     *
     * @param drive whether for the drive pin, for which the blade is turned over; else for the pivot pin
     */
    GlueJig(ApertureDesign design, JigSpec jig, boolean drive) {
        this.design = design;
        this.spec = design.spec();
        this.jig = jig;
        this.drive = drive;
        this.pins = new PinLean(design);
    }

    /** Whether a pin of the blade is set by hand; else there is nothing to hold. */
    static boolean isWanted(ApertureSpec spec, boolean drive) {
        return drive || spec.pinStyle() == PinStyle.TWO_HOLES;
    }

    /** How long the pin stands out of the blade, mm; so deep is the socket below the pocket's floor. */
    double pinLength() {
        return pins.length(drive);
    }

    double wellDepth() {
        return pins.wellDepth(drive);
    }

    double socketRadius() {
        return (spec.pinDiameter() + pins.socketRoom(jig, drive)) / 2;
    }

    /** How far out of square the socket lets the pin lean, rad. */
    double lean() {
        return pins.inJig(drive);
    }

    /** The height of the pocket's floor on which blades lie, mm. */
    double pocketFloor() {
        return FLOOR + pinLength();
    }

    /** From the blade's drawing to the jig's frame before it is laid out: turned over for the drive pin. */
    private Contour laid(Contour contour) {
        return drive ? contour.mirrored(Mirror.FLIP_Y) : contour;
    }

    private Point laid(Point point) {
        return drive ? Mirror.FLIP_Y.apply(point) : point;
    }

    private Region pocket() {
        Region blade = Region.of(laid(new BladeParts(design).outline()));
        Region grown = Offset.of(blade, jig.pocketRoom()).get(0);
        return Region.of(grown.outer());
    }

    /** A disc about the middle of the band's outer edge. */
    private Region notch() {
        Band band = design.band();
        double radius = Math.min(6, Math.max(2.5, 0.7 * band.width()));
        return Region.disc(laid(Point.polar(band.outerRadius(), band.span() / 2)), radius);
    }

    /** Centres about which the floor is sunk: the pin's hole, and what is already glued in and faces down. */
    private List<Point> wells() {
        List<Point> wells = new ArrayList<>();
        wells.add(pin());
        if (drive && spec.pinStyle() == PinStyle.TWO_HOLES) {
            wells.add(laid(design.pivot()));
        }
        return wells;
    }

    private Point pin() {
        return laid(drive ? design.drivePoint() : design.pivot());
    }

    /** Wide enough for the glue, and never so wide that the blade's end has nothing left to lie on. */
    private double wellRadius() {
        double around = Math.max(design.band().width() / 2, design.ear());
        return Math.min(spec.pinHole() / 2 + WELL_ROOM, Math.max(0.75 * around, socketRadius() + 0.3));
    }

    /** Where the blades lie, from the laid blade to the jig. */
    JigPockets layout() {
        Region shape = Overlay.union(List.of(pocket(), notch())).get(0);
        return JigPockets.of(
                Region.of(shape.outer()),
                jig.pockets(),
                Math.max(2 * jig.making().leastWeb(), 1.6));
    }

    Part part() {
        JigPockets layout = layout();
        List<Region> pockets = new ArrayList<>();
        List<Region> sunk = new ArrayList<>();
        List<Contour> sockets = new ArrayList<>();
        for (Placement place : layout.places()) {
            Region notch = notch().placed(place);
            pockets.add(pocket().placed(place));
            pockets.add(notch);
            sunk.add(notch);
            for (Point well : wells()) {
                sunk.add(Region.disc(place.apply(well), wellRadius()));
            }
            sockets.add(Contour.circle(place.apply(pin()), socketRadius()));
        }
        Box box = layout.box().grown(MARGIN);
        box = new Box(box.minX(), box.minY() - LABEL - 2, box.maxX(), box.maxY());
        Region plate = plate(box);
        double socketTop = pocketFloor() - wellDepth();
        double wall = Math.max(LEAST_WALL, spec.thickness() + ABOVE);
        List<Layer> layers = List.of(
                Layer.of(plate, 0, FLOOR),
                Layer.of(plate.withHoles(sockets), FLOOR, socketTop),
                new Layer(Overlay.difference(List.of(plate), sunk), socketTop, pocketFloor()),
                new Layer(Overlay.difference(List.of(plate), pockets), pocketFloor(), pocketFloor() + wall));
        Material making = jig.making();
        return new Part(name(), Family.JIG, 1, making.source(), layers, label(box), note());
    }

    String name() {
        return drive ? "drive-jig" : "pivot-jig";
    }

    /** One round notch in the front edge tells the jig of the pivot pin, two that of the drive pin. */
    private Region plate(Box box) {
        Region blank = Region.of(Shapes.roundedRectangle(box, CORNER));
        List<Region> notches = new ArrayList<>();
        for (int i = 0; i < (drive ? 2 : 1); i++) {
            notches.add(Region.disc(new Point(box.minX() + 8 + i * 3 * NOTCH_MARK, box.minY()), NOTCH_MARK));
        }
        return Overlay.difference(List.of(blank), notches).get(0);
    }

    private List<Path> label(Box box) {
        String words = drive ? "ARROW DOWN" : "ARROW UP";
        double from = box.minX() + 16;
        double room = box.maxX() - from - 3;
        double height = Math.min(LABEL, LABEL * room / StrokeFont.width(words, LABEL));
        List<Path> strokes = new ArrayList<>();
        for (Path stroke : StrokeFont.strokes(words, new Point(from, box.minY() + 2), height)) {
            // for the other hand the whole part is mirrored yet: letters turned over now read right then
            Mirror about = new Mirror(0, new Point(0, 2 * box.minY() + 4 + height));
            strokes.add(spec.mirrored() ? stroke.mirrored(about) : stroke);
        }
        return strokes;
    }

    private String note() {
        return "holds " + jig.pockets() + (jig.pockets() == 1 ? " blade" : " blades") + ", arrow "
                + (drive ? "down" : "up") + ", room of " + Words.mm(jig.pocketRoom()) + " all round; "
                + (drive ? "two notches" : "one notch") + " in its edge; the " + (drive ? "drive" : "pivot")
                + " pin stands " + Words.mm(pinLength()) + " deep and leans " + Words.degrees(lean(), 1) + " at most";
    }
}
