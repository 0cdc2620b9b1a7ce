// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.geom.Segment;
import ringleaf.groove.BeltTooth;
import ringleaf.machine.Members;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;

/**
 * A belt as it lies on its path: a band that stays where it is, and teeth that run along the pitch line as rigid
 * pieces. Rolling on and off a pulley, a tooth keeps to the straight belt until its middle reaches the pulley, as in
 * the groove's generation; so whoever judges the assembly judges the grooves as well.
 *
 * @param path of the pitch line
 * @param choice of the belt
 * @param land from the pitch line to the band's inner side, the least over the pulleys, mm
 * @param first place of a tooth along the pitch line in state 0, mm
 * @param count of teeth that are drawn, one after another
 */
record BeltRun(BeltPath path, BeltChoice choice, double land, double first, int count) {
    private Placement place(double along) {
        BeltPath.Spot spot = path.at(along);
        // the tooth points to -y of its own frame, and the wheels lie on the left of the belt's way
        return new Placement(spot.along().angle() + Math.PI, spot.point());
    }

    /** Where tooth {@code index} is in state 0. */
    Placement home(int index) {
        return place(first + index * choice.belt().pitch());
    }

    /** How tooth {@code index} has moved when the belt has run {@code by} mm. */
    Placement moved(int index, double by) {
        double along = first + index * choice.belt().pitch();
        return by == 0 ? Placement.IDENTITY : place(along).inverse().then(place(along + by));
    }

    /** One tooth in its own frame. */
    Part tooth(double zFrom, double zTo) {
        BeltTooth tooth = choice.tooth(land);
        List<Segment> pieces = new ArrayList<>(tooth.edge().segments());
        Point start = pieces.get(0).start();
        Point end = pieces.get(pieces.size() - 1).end();
        // a foot in the band, so that the roundings at the root do not end in slivers
        Point up = new Point(0, land / 2);
        pieces.add(new Line(end, end.plus(up)));
        pieces.add(new Line(end.plus(up), start.plus(up)));
        pieces.add(new Line(start.plus(up), start));
        return drawn("belt-tooth", count, Region.of(new Contour(pieces)), zFrom, zTo);
    }

    /** The band all round, without its teeth. */
    Part band(double zFrom, double zTo) {
        Region region = Region.of(path.beside(choice.belt().back()), path.beside(-land));
        return drawn("belt", 1, region, zFrom, zTo);
    }

    /** The band on the first wheel and {@code beyond} mm of the spans beside it. */
    Part openBand(double beyond, double zFrom, double zTo) {
        List<Segment> outer = open(path.beside(choice.belt().back()), beyond);
        List<Segment> inner =
                new Path(open(path.beside(-land), beyond)).reversed().segments();
        List<Segment> all = new ArrayList<>(outer);
        all.add(new Line(outer.get(outer.size() - 1).end(), inner.get(0).start()));
        all.addAll(inner);
        all.add(new Line(inner.get(inner.size() - 1).end(), outer.get(0).start()));
        return drawn("belt", 1, Region.of(new Contour(all)), zFrom, zTo);
    }

    private static List<Segment> open(Contour side, double beyond) {
        List<Segment> pieces = side.segments();
        Segment before = pieces.get(pieces.size() - 1);
        Segment after = pieces.get(1);
        double share = Math.min(1, beyond / before.length());
        return List.of(before.part(1 - share, 1), pieces.get(0), after.part(0, share));
    }

    private Part drawn(String name, int quantity, Region region, double zFrom, double zTo) {
        return new Part(
                name,
                Family.BOUGHT,
                quantity,
                new Part.Source("bought", "belt " + choice.belt().name()),
                List.of(Layer.of(region, zFrom, zTo)),
                List.of(),
                "");
    }

    /**
     * Adds a band and the teeth as members.
     *
     * @param bandBody body of the band; each tooth is one of its own from {@code firstTooth} on
     */
    Rubber addTo(Members members, Part band, int bandBody, int firstTooth) {
        members.add(DrivePart.BELT, 0, new Member("belt", band, bandBody, Placement.IDENTITY));
        Part tooth = tooth(band.zFrom(), band.zTo());
        for (int i = 0; i < count; i++) {
            members.add(DrivePart.BELT, i + 1, new Member("belt tooth " + (i + 1), tooth, firstTooth + i, home(i)));
        }
        List<Integer> belt = members.of(DrivePart.BELT);
        return new Rubber(belt.get(0), belt.subList(1, belt.size()));
    }
}
