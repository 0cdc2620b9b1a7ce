// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Finding;
import ringleaf.part.Requirement;

/** Round pins stay within the holes that other members really have; exact on lines and arcs. */
final class PinCheck extends Check {
    private final Requirement.PinInHole required;
    /** The holes of each fit in their places in state 0, one for each level that has it. */
    private final List<List<Shape>> holes = new ArrayList<>();
    /** The tightest room of each fit over the states so far, mm. */
    private final double[] tightest;

    PinCheck(Scene scene, Requirement.PinInHole required) {
        super(scene);
        this.required = required;
        this.tightest = new double[required.fits().size()];
        for (int i = 0; i < tightest.length; i++) {
            holes.add(holes(required.fits().get(i)));
            tightest[i] = Double.POSITIVE_INFINITY;
        }
    }

    /** The holes of a member whose boxes lie about where one was meant to be. */
    private List<Shape> holes(Requirement.Fit fit) {
        Shape meant = Shape.of(Region.of(fit.hole()));
        Placement home = scene.assembly.members().get(fit.holeMember()).home();
        List<Shape> found = new ArrayList<>();
        for (Slab slab : scene.slabs) {
            for (int i = 1; slab.member == fit.holeMember() && i < slab.drawn.contours(); i++) {
                Shape hole = slab.drawn.filled(i).placed(home);
                if (isAbout(hole, meant)) {
                    found.add(hole);
                }
            }
        }
        return found;
    }

    /** Whether a hole lies about where another was meant to be, and is about as large. */
    private static boolean isAbout(Shape hole, Shape meant) {
        return isAbout(hole.minX, hole.maxX, meant.minX, meant.maxX)
                && isAbout(hole.minY, hole.maxY, meant.minY, meant.maxY);
    }

    private static boolean isAbout(double from, double to, double meantFrom, double meantTo) {
        double wide = meantTo - meantFrom;
        boolean alike = to - from < 2 * wide && to - from > wide / 2;
        return alike && Math.abs(from + to - meantFrom - meantTo) < wide;
    }

    @Override
    Measure measure(Pose pose, Figures figures) {
        Measure worst = null;
        for (int i = 0; i < holes.size(); i++) {
            Measure one = measure(pose, required.fits().get(i), holes.get(i));
            synchronized (tightest) {
                tightest[i] = Math.min(tightest[i], one.value());
            }
            if (worst == null || one.margin() < worst.margin() - scene.hair) {
                worst = one;
            }
        }
        return worst;
    }

    private Measure measure(Pose pose, Requirement.Fit fit, List<Shape> levels) {
        Placement pinMoved = pose.bodies[body(fit.pinMember())];
        Placement holeMoved = pose.bodies[body(fit.holeMember())];
        Point here = pinMoved.apply(fit.pin());
        Point inHole = holeMoved.inverse().apply(here);
        // Where the member has no such hole the pin stands in its material with all that it is.
        double room = levels.isEmpty() ? -2 * fit.pinRadius() - scene.tolerance : Double.POSITIVE_INFINITY;
        for (Shape hole : levels) {
            double edge = hole.distanceFromOutline(inHole.x(), inHole.y());
            boolean inside = hole.encloses(0, inHole.x(), inHole.y());
            room = Math.min(room, (inside ? edge : -edge) - fit.pinRadius());
        }
        Place place = new Place(both(fit.pinMember(), fit.holeMember()), here);
        return new Measure(pose.state, room - required.clearance(), room, required.clearance(), place);
    }

    private int body(int member) {
        return scene.assembly.members().get(member).body();
    }

    @Override
    void conclude(Measure[] measures, List<Finding> findings) {
        Measure worst = Measure.worst(measures, scene.hair);
        int count = holes.size();
        if (worst.margin() >= -scene.tolerance && loosest() >= 0) {
            findings.add(loose(loosest()));
            return;
        }
        boolean over = worst.value() < -scene.tolerance;
        findings.add(on(required.check(), worst)
                .room(worst.value(), worst.limit(), "mm")
                .says(
                        "verify.pin-room",
                        count,
                        over,
                        Words.mm(over ? -worst.value() : Math.max(0, worst.value())),
                        Words.mm(worst.limit()),
                        scene.judged()));
    }

    /** The fit whose hole is too wide by most, or -1. */
    private int loosest() {
        int loosest = -1;
        for (int i = 0; required.snug() && i < tightest.length; i++) {
            boolean wide = tightest[i] > required.clearance() + scene.tolerance;
            loosest = wide && (loosest < 0 || tightest[i] > tightest[loosest]) ? i : loosest;
        }
        return loosest;
    }

    private Finding loose(int index) {
        Requirement.Fit fit = required.fits().get(index);
        return still(required.check(), both(fit.pinMember(), fit.holeMember()))
                .at(Finding.Place.NONE.withPoint(fit.pin()))
                .atMost(tightest[index], required.clearance(), "mm")
                .says("verify.pin-loose", Words.mm(tightest[index]), Words.mm(required.clearance()), scene.judged());
    }
}
