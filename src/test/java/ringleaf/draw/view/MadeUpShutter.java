// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.geom.Angles;
import ringleaf.geom.Arc;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Callout;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Part;

/** A leaf aperture put together by hand, to have something to look at: sizes plausible, not designed. */
final class MadeUpShutter {
    private static final double PIVOT = 37.4;
    private static final double WIDTH = 10.5;
    private static final double SPAN = Math.toRadians(145);
    private static final double TURN = Math.toRadians(44);
    private static final int TEETH = 24;
    private static final double SECTOR_RADIUS = 47.6;
    private static final Point PINION = Point.polar(SECTOR_RADIUS + 9.6, Math.toRadians(250));

    private final int count;
    private final int states;
    private final List<Member> members = new ArrayList<>();

    MadeUpShutter(int count, int states) {
        this.count = count;
        this.states = states;
    }

    Assembly build() {
        Part base = part("base-plate", Family.PLATE, 1, Layer.of(plate(32.2, true), 0, 3));
        Part spacer = part("spacer-ring", Family.SPACER, 1, Layer.of(window(48, 55), 3, 7));
        Part ring = part("drive-ring", Family.RING, 1, Layer.of(ring(), 5.2, 7.2));
        Part cover = part("retainer", Family.PLATE, 1, Layer.of(plate(32.2, false), 7.4, 9.4));
        Part pinion = part("pinion", Family.GEAR, 1, Layer.of(gear(PINION, 9.6 - 0.9, 9.6 + 0.6, TEETH), 5.2, 7.4));
        Region leaf = Region.of(
                band(PIVOT, WIDTH, SPAN),
                Contour.circle(new Point(PIVOT, 0), 0.75),
                Contour.circle(Point.polar(PIVOT, SPAN), 0.75));
        Part blade = part("blade", Family.BLADE, count, Layer.of(leaf, 3.1, 3.25));
        Part pivotPin = part("pivot-pin", Family.PIN, count, Layer.of(Region.disc(new Point(PIVOT, 0), 0.75), 0, 3.25));
        Part drivePin =
                part("drive-pin", Family.PIN, count, Layer.of(Region.disc(Point.polar(PIVOT, SPAN), 0.75), 3.1, 7.2));
        members.add(new Member("base-plate", base, 0, Placement.IDENTITY));
        members.add(new Member("spacer-ring", spacer, 0, Placement.IDENTITY));
        members.add(new Member("drive-ring", ring, 1, Placement.IDENTITY));
        members.add(new Member("pinion", pinion, 2, Placement.IDENTITY));
        members.add(new Member("retainer", cover, 0, Placement.IDENTITY));
        List<Integer> leaves = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            // Tips lie over roots and point counter-clockwise, so each blade laid goes clockwise of the one before.
            Placement home = Placement.turn(-Angles.TURN * i / count);
            leaves.add(members.size());
            members.add(new Member("blade " + (i + 1), blade, 3 + i, home));
            members.add(new Member("pivot-pin " + (i + 1), pivotPin, 3 + i, home));
            members.add(new Member("drive-pin " + (i + 1), drivePin, 3 + i, home));
        }
        LeafFamily family = new LeafFamily(
                "blade", leaves, 3, 5, Region.disc(Point.ORIGIN, 32), s -> Region.disc(Point.ORIGIN, 32 - s.state()));
        return new Assembly(
                "shutter",
                members,
                motion(),
                Optional.of(family),
                List.of(),
                callouts(),
                List.of(BuildStep.of("Base plate first.")));
    }

    private static List<Callout> callouts() {
        List<Callout> callouts = new ArrayList<>();
        for (String view : List.of("open", "closed", "half")) {
            callouts.add(new Callout(Callout.Form.DIAMETER, view, Point.ORIGIN, new Point(55, 0), "Ø110 outside"));
        }
        callouts.add(new Callout(Callout.Form.DIAMETER, "open", Point.ORIGIN, new Point(32, 0), "Ø64 clear opening"));
        callouts.add(new Callout(Callout.Form.RADIUS, "open", Point.ORIGIN, new Point(PIVOT, 0), "R37.4 pivots"));
        callouts.add(new Callout(Callout.Form.DISTANCE, "open", Point.ORIGIN, PINION, "57.2 centre distance"));
        callouts.add(new Callout(
                Callout.Form.LABEL, "open", new Point(60, 60), Point.polar(PIVOT, SPAN), "drive pin in its slot"));
        callouts.add(new Callout(Callout.Form.LABEL, "open", PINION, PINION, "pinion, 24 teeth"));
        callouts.add(new Callout(Callout.Form.DIAMETER, "closed", Point.ORIGIN, new Point(4, 0), "Ø8 least opening"));
        return callouts;
    }

    private Motion motion() {
        return new Motion() {
            @Override
            public int states() {
                return states;
            }

            @Override
            public Placement pose(int body, int state) {
                double b = TURN * state / (states - 1);
                double ringTurn = Point.polar(PIVOT, SPAN)
                                .minus(new Point(PIVOT, 0))
                                .turned(b)
                                .plus(new Point(PIVOT, 0))
                                .angle()
                        - SPAN;
                if (ringTurn < 0) {
                    ringTurn += Angles.TURN;
                }
                if (state == 0) {
                    return Placement.IDENTITY;
                }
                return switch (body) {
                    case 0 -> Placement.IDENTITY;
                    case 1 -> Placement.turn(ringTurn);
                    case 2 -> Placement.turnAbout(PINION, -ringTurn * SECTOR_RADIUS / 9.6);
                    default -> Placement.turnAbout(Point.polar(PIVOT, -Angles.TURN * (body - 3) / count), b);
                };
            }

            @Override
            public String label(int state) {
                return state == 0 ? "open" : state == states - 1 ? "closed" : "state " + state;
            }

            @Override
            public List<Integer> notable() {
                return List.of();
            }
        };
    }

    private Part part(String name, Family family, int quantity, Layer layer) {
        String process = family == Family.BLADE ? "fibre-laser" : family == Family.PIN ? "bought" : "co2-laser";
        String stock = family == Family.BLADE ? "brass-0.15" : family == Family.PIN ? "steel wire 1.5" : "acrylic-3";
        return new Part(name, family, quantity, new Part.Source(process, stock), List.of(layer), List.of(), "");
    }

    private Region plate(double inner, boolean bores) {
        List<Contour> holes = new ArrayList<>();
        holes.add(Contour.circle(Point.ORIGIN, inner));
        for (int i = 0; bores && i < count; i++) {
            holes.add(Contour.circle(Point.polar(PIVOT, Angles.TURN * i / count), 0.8));
        }
        for (int i = 0; i < 5; i++) {
            holes.add(Contour.circle(Point.polar(52, Math.toRadians(10 + 45 * i)), 1.6));
        }
        holes.add(Contour.circle(PINION, 2));
        return new Region(withLobe(55), holes);
    }

    private Region window(double inner, double outer) {
        return new Region(Contour.circle(Point.ORIGIN, outer), List.of(Contour.circle(Point.ORIGIN, inner)));
    }

    /** A disc with a round lobe about the pinion. */
    private static Contour withLobe(double radius) {
        double lobe = 13;
        double d = PINION.norm();
        double along = (d * d + radius * radius - lobe * lobe) / (2 * d);
        double half = Math.acos(along / radius);
        Point a = Point.polar(radius, PINION.angle() + half);
        Point b = Point.polar(radius, PINION.angle() - half);
        return new Contour(List.of(Arc.around(Point.ORIGIN, a, b, true), Arc.around(PINION, b, a, true)));
    }

    private Region ring() {
        List<Contour> holes = new ArrayList<>();
        holes.add(Contour.circle(Point.ORIGIN, 32.2));
        for (int i = 0; i < count; i++) {
            double angle = SPAN - Angles.TURN * i / count;
            holes.add(slot(Point.polar(33.8, angle), Point.polar(42, angle), 1.7));
        }
        return new Region(toothed(Point.ORIGIN, 46.6, 48, 119, 60), holes);
    }

    private static Region gear(Point centre, double foot, double tip, int teeth) {
        return new Region(
                toothed(Point.ORIGIN, foot, tip, teeth, teeth).placed(Placement.shift(centre.x(), centre.y())),
                List.of(Contour.circle(centre, 2)));
    }

    private static Contour toothed(Point centre, double foot, double tip, int teeth, int cut) {
        List<Segment> rim = new ArrayList<>();
        double pitch = Angles.TURN / teeth;
        double start = Math.toRadians(190);
        Point at = Point.polar(foot, start);
        for (int i = 0; i < cut; i++) {
            double a = start + i * pitch;
            Point up = Point.polar(tip, a + 0.25 * pitch);
            Point over = Point.polar(tip, a + 0.5 * pitch);
            Point down = Point.polar(foot, a + 0.75 * pitch);
            Point next = i == teeth - 1 ? Point.polar(foot, start) : Point.polar(foot, a + pitch);
            rim.add(Arc.ofBulge(at, up, 0.1));
            rim.add(Arc.around(centre, up, over, true));
            rim.add(Arc.ofBulge(over, down, 0.1));
            rim.add(Arc.around(centre, down, next, true));
            at = next;
        }
        if (cut < teeth) {
            Point rise = Point.polar(tip, start + cut * pitch);
            Point fall = Point.polar(tip, start);
            rim.add(new Line(at, rise));
            rim.add(Arc.around(centre, rise, fall, true));
            rim.add(new Line(fall, Point.polar(foot, start)));
        }
        return new Contour(rim);
    }

    private static Contour band(double middle, double width, double span) {
        Point end = Point.polar(middle, span);
        double outer = middle + width / 2;
        double inner = middle - width / 2;
        Point a = Point.polar(outer, 0);
        Point b = Point.polar(outer, span);
        Point c = Point.polar(inner, span);
        Point d = Point.polar(inner, 0);
        return Contour.of(
                Arc.around(Point.ORIGIN, a, b, true),
                Arc.around(end, b, c, true),
                Arc.around(Point.ORIGIN, c, d, false),
                Arc.around(new Point(middle, 0), d, a, true));
    }

    private static Contour slot(Point a, Point b, double width) {
        Point side = b.minus(a).unit().left().times(width / 2);
        return Contour.of(
                new Line(a.minus(side), b.minus(side)),
                Arc.around(b, b.minus(side), b.plus(side), true),
                new Line(b.plus(side), a.plus(side)),
                Arc.around(a, a.plus(side), a.minus(side), true));
    }
}
