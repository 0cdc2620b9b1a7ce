// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;

/**
 * What base, spacer, retainer and cover share: the outline, the screws and the alignment hole that shows which way
 * round and which way up a plate belongs. Drawn unmirrored.
 *
 * @param outline of the plates
 * @param screws centres of the housing's screws, those that the drive adds first
 * @param ownScrews number of those; in the user's own housing, of those that hold a servo plate
 * @param screwHole radius of their holes, mm
 * @param alignment centre of the alignment hole
 * @param alignmentHole its radius, mm; 0 where there is none, as the user's own outline may leave no room for it
 * @param through other openings that go through every plate
 * @param own whether it is the user's own
 */
record Housing(
        Contour outline,
        List<Point> screws,
        int ownScrews,
        double screwHole,
        Point alignment,
        double alignmentHole,
        List<Contour> through,
        boolean own) {
    /** Screws along the rim stand no further apart than this, mm; common practice, no source. */
    private static final double SCREW_SPACING = 45;

    private static final int FEWEST_SCREWS = 4;

    static Housing of(ApertureSpec spec, Rim rim, DrivePlan drive) {
        if (spec.bezel().housing().isPresent()) {
            return BezelFit.housing(spec, rim, drive);
        }
        double hole = spec.screw().hole() / 2;
        double web = Rim.housingWeb(spec);
        double alignmentHole = Math.max(0.5, Math.min(hole, spec.plate().leastWeb() / 2));
        double blocked = drive.blockedHalfAngle(rim, hole + web);
        List<Point> screws = new ArrayList<>(drive.ownScrews(rim, hole + web));
        int own = screws.size();
        double from = drive.blockedCentre() + blocked;
        double room = Angles.TURN - 2 * blocked;
        int count = Math.max(FEWEST_SCREWS, (int) Math.ceil(room * rim.screws() / SCREW_SPACING) + 1);
        for (int i = 0; i < count; i++) {
            screws.add(Point.polar(rim.screws(), from + room * i / (count - 1)));
        }
        double beside = 2 * Math.asin((hole + alignmentHole + web) / (2 * rim.screws()));
        Point alignment = Point.polar(rim.screws(), from + room / (count - 1) + beside);
        return new Housing(drive.outline(rim), screws, own, hole, alignment, alignmentHole, List.of(), false);
    }

    /** Holes that go through every plate: screws and the alignment hole. */
    List<Contour> holes() {
        List<Contour> holes = new ArrayList<>();
        for (Point screw : screws) {
            holes.add(Contour.circle(screw, screwHole));
        }
        if (alignmentHole > 0) {
            holes.add(Contour.circle(alignment, alignmentHole));
        }
        holes.addAll(through);
        return holes;
    }

    /** The screws that run on into a servo plate: those in the lobe and two beside the window, or the user's nearest. */
    List<Point> servoScrews() {
        if (own) {
            return screws.subList(0, ownScrews);
        }
        List<Point> some = new ArrayList<>(screws.subList(0, Math.min(screws.size(), ownScrews + 1)));
        if (some.size() < screws.size()) {
            some.add(screws.get(screws.size() - 1));
        }
        return some;
    }

    /** The outline of a round housing without a lobe. */
    static Contour round(Rim rim) {
        return Contour.circle(Point.ORIGIN, rim.outer());
    }
}
