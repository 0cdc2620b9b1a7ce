// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.linkage.RodGuide;
import ringleaf.linkage.SliderCrank;
import ringleaf.mechanism.body.Bore;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.spec.shared.LinearBearing;

/**
 * Every place of a slide, from the choices of a bearing and of the horn's swing; mm, rad. The carriage's front face lies
 * at x = 0 when it is drawn in; it comes forward to x = stroke. The rods' middles lie at y = 0, to either side of z = 0.
 *
 * @param spec what is asked
 * @param bearing two of which run on each rod
 * @param swing turn of the horn over the stroke
 * @param link between both pins of the link
 */
record SlideLayout(SlideSpec spec, LinearBearing bearing, double swing, double link) {
    /** Between link and arm, and between link and cap, mm; a washer of paper; common practice, no source. */
    static final double AIR = 0.3;
    /** Least material round a pin, mm; common practice, no source. */
    private static final double BOSS = 1.5;
    /** Places of the horn, ends included, at which arm and bridge are held apart; the judge looks at more. */
    private static final int LOOKS = 20;
    /** Least distance from the edge of a plate to the end of a tab's slot, mm; common practice, no source. */
    static final double TAB_EDGE = 2;
    /** Between both bearings of a rod, mm. */
    private static final double BETWEEN_BEARINGS = 1;
    /** Lengths that nothing decides are made multiples of this, mm. */
    private static final double GRID = 0.5;
    /** Share of 2 mu e / L up to which a carriage runs freely; common practice, no source. */
    static final double FREE = 0.5;

    private static double up(double length) {
        return Math.ceil(length / GRID - 1e-9) * GRID;
    }

    double thickness() {
        return spec.plate().thickness();
    }

    double web() {
        return spec.plate().leastWeb();
    }

    private double beside() {
        return spec.beside().mm();
    }

    /** From the horn's axis to its pin. */
    double arm() {
        return spec.stroke() / (2 * Math.sin(swing / 2));
    }

    /** Radius of the material round a pin of the link. */
    double boss() {
        double hole = Math.max(spec.pivot().width(), spec.pinSet().width());
        return hole / 2 + Math.max(BOSS, Math.max(web(), spec.plate().holeEdge(hole)));
    }

    Bore.Horn horn() {
        return new Bore.Horn(spec.servo(), 2);
    }

    /** Radius of the arm's root on the horn. */
    double root() {
        return Math.max(horn().reach() + web(), spec.servo().hornDiameter() / 2);
    }

    double bearingSeat() {
        return bearing.outside() + spec.bearingAllowance();
    }

    double rodSeat() {
        return bearing.rod() + spec.rodAllowance();
    }

    /** Half the height of the carriage. */
    double carriageHalf() {
        double edge = bearingSeat() / 2 + spec.plate().holeEdge(bearingSeat());
        return Math.max(
                edge,
                spec.screw().hole() / 2 + spec.plate().holeEdge(spec.screw().hole()));
    }

    /** Width of a slot for the tab of a plate. */
    double tabSlot() {
        return thickness() + spec.tab();
    }

    /** Half the height of the bridge's tabs. */
    double bridgeTab() {
        return carriageHalf() - web() - spec.tab() / 2;
    }

    /** Place across the rods of the holes for what the carriage carries: between slot and bearing. */
    double mountAt() {
        return tabSlot() / 2 + web() + spec.screw().hole() / 2;
    }

    /** Between the rods' middles. */
    double rodSpacing() {
        double need = 2 * (mountAt() + spec.screw().hole() / 2 + web() + bearingSeat() / 2);
        return spec.rodSpacing().orElse(up(need));
    }

    /** Between bearing and the hole for what is carried: what is left between them. */
    double mountWeb() {
        return rodSpacing() / 2 - bearingSeat() / 2 - mountAt() - spec.screw().hole() / 2;
    }

    /** Half the width of the carriage, across the rods. */
    double carriageWidth() {
        return rodSpacing() / 2 + bearingSeat() / 2 + spec.plate().holeEdge(bearingSeat());
    }

    /** Length of the carriage: both bearings of a rod, outer ends flush with both plates. */
    double carriage() {
        double need = Math.max(2 * bearing.length() + BETWEEN_BEARINGS, 2 * thickness() + 2 * boss() + 2 * beside());
        double free = 2 * SlideSpec.FRICTION * pushOffset() / FREE;
        return spec.spread().orElse(up(Math.max(need, free)));
    }

    RodGuide guide() {
        return new RodGuide(carriage(), SlideSpec.FRICTION);
    }

    /** How far the link pushes beside the rods. */
    double pushOffset() {
        return -pinLine();
    }

    /** Height of the horn's axis; below the rods by what turns there and by the servo. */
    double axisHeight() {
        double above = Math.max(arm() + boss(), root());
        above = Math.max(above, spec.servo().bodyWidth() / 2 + ServoOutline.ROOM / 2 + web());
        return -carriageHalf() - beside() - above;
    }

    /** Height of the carriage's pin: midway between the highest and the lowest place of the horn's. */
    double pinLine() {
        return axisHeight() + arm() * (1 + Math.cos(swing / 2)) / 2;
    }

    /** How far a pin leaves the line through both at most. */
    private double rise() {
        return arm() * (1 - Math.cos(swing / 2)) / 2;
    }

    /**
     * The shortest link, of those made to the grid, that leaves straight within an angle and keeps the arm off the bridge;
     * or the one that is given.
     */
    static SlideLayout of(SlideSpec spec, LinearBearing bearing, double swing, double straight) {
        if (spec.link().isPresent()) {
            return new SlideLayout(spec, bearing, swing, spec.link().getAsDouble());
        }
        SlideLayout any = new SlideLayout(spec, bearing, swing, 0);
        double length = up(Math.max(2 * any.boss() + any.beside(), any.rise() / Math.sin(straight)));
        while (any.armToBridge(length) < any.beside()) {
            length += GRID;
        }
        return new SlideLayout(spec, bearing, swing, length);
    }

    /** Room between the horn's arm and the bridge's tongue where they come nearest. */
    double armToBridge() {
        return armToBridge(link);
    }

    private double armToBridge(double length) {
        double offset = pinLine() - axisHeight();
        double arm = arm();
        double boss = boss();
        double root = root();
        SliderCrank crank = new SliderCrank(arm, length, offset);
        double top = -carriageHalf() + boss - axisHeight();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            double q = angle((double) i / LOOKS);
            double x = crank.position(q);
            for (double y : new double[] {offset, (offset + top) / 2, top}) {
                double along = x * Math.cos(q) + y * Math.sin(q);
                double across = Math.abs(y * Math.cos(q) - x * Math.sin(q));
                least = Math.min(least, toHull(along, across, arm, root, boss) - boss);
            }
        }
        return least;
    }

    /**
     * Distance of a point from the hull of two discs, one about the origin and one further along; below 0 within it. The
     * nearest place lies on their common tangent or on the disc beyond whose tangent point it is.
     */
    private static double toHull(double along, double across, double apart, double first, double second) {
        double slope = (first - second) / apart;
        if (Math.abs(slope) >= 1) {
            return Math.min(Math.hypot(along, across) - first, Math.hypot(along - apart, across) - second);
        }
        double level = Math.sqrt(1 - slope * slope);
        double foot = along * level - across * slope;
        if (foot <= 0) {
            return Math.hypot(along, across) - first;
        }
        return foot >= apart * level
                ? Math.hypot(along - apart, across) - second
                : along * slope + across * level - first;
    }

    SliderCrank crank() {
        return new SliderCrank(arm(), link(), pinLine() - axisHeight());
    }

    /** Angle of the horn at the start of the travel; it turns clockwise from there, as seen from +z. */
    double startAngle() {
        return Math.PI / 2 + swing / 2;
    }

    /** Angle of the horn at a share of its swing. */
    double angle(double share) {
        return startAngle() - share * swing;
    }

    /** How far the carriage has come when the horn stands at an angle. */
    double way(double angle) {
        return crank().position(angle) - crank().position(startAngle());
    }

    /** Place of the carriage's pin along the travel, drawn in. */
    double pinAt() {
        return -carriage() / 2;
    }

    /** Place of the horn's axis along the travel. */
    double axisAt() {
        return pinAt() - crank().position(startAngle());
    }

    Point axis() {
        return new Point(axisAt(), axisHeight());
    }

    Point hornPin(double angle) {
        return axis().plus(Point.polar(arm(), angle));
    }

    Point carriagePin() {
        return new Point(pinAt(), pinLine());
    }

    /** The servo, its body towards the back or the front, whichever needs less length. */
    ServoOutline servo() {
        Placement back = Placement.turn(Math.PI).then(Placement.shift(axisAt(), axisHeight()));
        Placement front = Placement.shift(axisAt(), axisHeight());
        ServoOutline behind = new ServoOutline(spec.servo(), back);
        ServoOutline ahead = new ServoOutline(spec.servo(), front);
        return length(behind) <= length(ahead) ? behind : ahead;
    }

    private Box ears(ServoOutline servo) {
        Box box = Box.of(servo.earCorners().get(0), servo.earCorners().get(3));
        for (Point corner : servo.earCorners()) {
            box = box.including(corner);
        }
        return box;
    }

    private double rear(ServoOutline servo) {
        double sweep = axisAt() - Math.max(root(), arm() * Math.sin(swing / 2) + boss()) - beside();
        double carriage = -carriage() - spec.stop().mm();
        return Math.min(Math.min(sweep, carriage), ears(servo).minX() - web());
    }

    private double front(ServoOutline servo) {
        double sweep = axisAt() + Math.max(root(), arm() * Math.sin(swing / 2) + boss()) + beside();
        double carriage = spec.stroke() + spec.stop().mm();
        return Math.max(Math.max(sweep, carriage), ears(servo).maxX() + web());
    }

    private double length(ServoOutline servo) {
        return front(servo) - rear(servo);
    }

    /** Front face of the rear plate. */
    double rear() {
        return rear(servo());
    }

    /** Rear face of the front plate. */
    double front() {
        return front(servo());
    }

    /** Over both end plates: length of the rods. */
    double overall() {
        return front() - rear() + 2 * thickness();
    }

    /** Between the end plates and the bearings where they come nearest: the rod goes on so far beyond them. */
    double beyondBearing() {
        return Math.min(-carriage() - rear(), front() - spec.stroke()) + thickness();
    }

    /** Upper edge of the side plate. */
    double sideTop() {
        return -carriageHalf() - beside();
    }

    /** Lower edge of side plate and end plates. */
    double bottom() {
        double servo = spec.servo().bodyWidth() / 2 + ServoOutline.ROOM / 2 + Math.max(web(), 2);
        return Math.min(axisHeight() - Math.max(servo, root()), tabHigh() - 2 * thickness() - screwReach());
    }

    /** From the edge of an end plate over the hole for a screw to where a slot may begin. */
    private double screwReach() {
        double hole = spec.screw().hole();
        return hole + spec.plate().holeEdge(hole) + web() + spec.tab() / 2;
    }

    /** Upper end of the side plate's tabs. */
    double tabHigh() {
        return sideTop() - Math.max(web(), TAB_EDGE);
    }

    /** Lower end of the side plate's tabs. */
    double tabLow() {
        return bottom() + screwReach();
    }

    /** Material between the screws of the horn and its middle hole, which the servo says. */
    double hornWeb() {
        double middle = spec.servo().splineDiameter() / 2 + Bore.Horn.ROOM;
        return (spec.servo().hornScrewCircle() - spec.servo().hornScrewHole()) / 2 - middle;
    }

    /** Material between the horn's pattern and the pin at the arm's end. */
    double armWeb() {
        return arm() - horn().reach() - spec.pinSet().width() / 2;
    }

    /** Upper edge of the end plates. */
    double top() {
        return rodSeat() / 2 + spec.plate().holeEdge(rodSeat());
    }

    double height() {
        return top() - bottom();
    }

    /** Lower face of the side plate: the servo's ears lie against it from behind. */
    double sideFrom() {
        return -thickness() / 2 - spec.servo().hornHeight();
    }

    /** Between the side plate and the arm on the horn. */
    double belowArm() {
        return spec.servo().hornHeight() - thickness();
    }

    /** Lower face of the link. */
    double linkFrom() {
        return thickness() / 2 + AIR;
    }

    /** Greatest angle between the link and the way of either pin, over the travel. */
    double steepest() {
        double most = 0;
        for (double share : new double[] {0, 0.5, 1}) {
            double q = angle(share);
            double path = Math.abs(Math.PI / 2 - q);
            most = Math.max(most, Math.max(Math.abs(crank().slant(q)), path + Math.abs(crank().slant(q))));
        }
        return most;
    }

    /** Torque at the horn where it is greatest, N mm: push by virtual work, and what friction beside the rods adds. */
    double torque() {
        double most = 0;
        for (int i = 0; i <= 20; i++) {
            most = Math.max(most, Math.abs(crank().speed(angle(i / 20.0))));
        }
        double jamming = guide().jamming(pushOffset());
        return jamming < 1 ? spec.push() * most / (1 - jamming) : Double.POSITIVE_INFINITY;
    }

    /** Torque that works: half of what stalls the servo; common practice, no source. */
    double working() {
        return spec.servo().torque() / 2;
    }

    /** How far one rod bends under its half of the load in the middle, mm. */
    double sag() {
        return RodGuide.sag(spec.load() / 2, overall() - 2 * thickness(), bearing.rod(), SlideChecks.STEEL);
    }
}
