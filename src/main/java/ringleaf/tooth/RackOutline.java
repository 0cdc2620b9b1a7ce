// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * A straight rack: lines and true root arcs, exact.
 *
 * <p>The datum line is y = 0, teeth point to +y, the middle of the first tooth lies on x = 0 and the others follow
 * towards +x.
 *
 * @param module mm, above 0
 * @param rack the basic rack
 * @param thinning by how much a tooth is thinner on the datum line, mm
 */
public record RackOutline(double module, BasicRack rack, double thinning) {
    public RackOutline {
        if (!(module > 0) || Double.isInfinite(module)) {
            throw new IllegalArgumentException("a module is above 0 mm, not " + module);
        }
        double tip = (Math.PI / 2 - 2 * rack.addendum() * Math.tan(rack.pressureAngle())) * module - thinning;
        if (!(tip > 0) || !(rootLand(module, rack, thinning) > -1e-12 * module)) {
            throw new IllegalArgumentException("thinning " + thinning + " mm leaves no tip or no room for the roots");
        }
    }

    /** Half the width of the flat between the root arcs of a space, mm; 0 for a full round. */
    private static double rootLand(double module, BasicRack rack, double thinning) {
        double rounding = rack.rounding() * module;
        double depth = rack.dedendum() * module;
        double angle = rack.pressureAngle();
        return spaceHalf(module, thinning) - (depth - rounding) * Math.tan(angle) - rounding / Math.cos(angle);
    }

    /** Half the width of a space on the datum line, mm. */
    private static double spaceHalf(double module, double thinning) {
        return (module * Math.PI / 2 + thinning) / 2;
    }

    /**
     * A bar with whole teeth, counter-clockwise, ending half a pitch beyond the outer teeth's middles.
     *
     * @param teeth at least 1
     * @param back depth of the bar's back below the datum line, mm, more than the dedendum
     */
    public Contour bar(int teeth, double back) {
        if (teeth < 1 || !(back > rack.dedendum() * module)) {
            throw new IllegalArgumentException("a rack has a tooth, and a back below its roots");
        }
        double pitch = Math.PI * module;
        List<Segment> pieces = new ArrayList<>();
        List<Segment> space = space();
        int foot = space.size() / 2;
        // From the right end to the left: a half space, then tooth and space in turn, and a half space.
        Point right = new Point((teeth - 0.5) * pitch, -rack.dedendum() * module);
        Point left = new Point(-0.5 * pitch, right.y());
        List<Segment> first = shifted(space.subList(foot + 1, space.size()), right.x());
        addLine(pieces, right, first.get(0).start());
        pieces.addAll(first);
        for (int i = teeth - 1; i >= 0; i--) {
            boolean end = i == 0;
            List<Segment> next = shifted(end ? space.subList(0, foot) : space, (i - 0.5) * pitch);
            addLine(pieces, pieces.get(pieces.size() - 1).end(), next.get(0).start());
            pieces.addAll(next);
        }
        addLine(pieces, pieces.get(pieces.size() - 1).end(), left);
        Point leftBack = new Point(left.x(), -back);
        Point rightBack = new Point(right.x(), -back);
        pieces.add(new Line(left, leftBack));
        pieces.add(new Line(leftBack, rightBack));
        pieces.add(new Line(rightBack, right));
        return new Contour(pieces);
    }

    /** One space about x = 0 from the right tip corner to the left one: flank, arc, land, arc, flank. */
    private List<Segment> space() {
        double slope = Math.tan(rack.pressureAngle());
        double half = spaceHalf(module, thinning);
        double rounding = rack.rounding() * module;
        double depth = rack.dedendum() * module;
        double touch = rack.straightDepth() * module;
        double tip = rack.addendum() * module;
        double land = Math.max(0, rootLand(module, rack, thinning));
        Point corner = new Point(half + tip * slope, tip);
        Point end = new Point(half - touch * slope, -touch);
        Point centre = new Point(land, rounding - depth);
        Point foot = new Point(land, -depth);
        double sweep = Math.PI / 2 - rack.pressureAngle();
        List<Segment> pieces = new ArrayList<>();
        pieces.add(new Line(corner, end));
        pieces.add(new Arc(centre, rounding, -rack.pressureAngle(), -sweep, end, foot));
        pieces.add(new Line(foot, flipped(foot)));
        pieces.add(new Arc(flipped(centre), rounding, -Math.PI / 2, -sweep, flipped(foot), flipped(end)));
        pieces.add(new Line(flipped(end), flipped(corner)));
        return pieces;
    }

    private static Point flipped(Point p) {
        return new Point(0.0 - p.x(), p.y());
    }

    private static void addLine(List<Segment> pieces, Point from, Point to) {
        if (!from.equals(to)) {
            pieces.add(new Line(from, to));
        }
    }

    private static List<Segment> shifted(List<Segment> pieces, double dx) {
        Placement shift = Placement.shift(dx, 0);
        List<Segment> shifted = new ArrayList<>();
        for (Segment piece : pieces) {
            // The flat of a full round has no length and is left out.
            if (!piece.start().equals(piece.end())) {
                shifted.add(piece.placed(shift));
            }
        }
        return shifted;
    }
}
