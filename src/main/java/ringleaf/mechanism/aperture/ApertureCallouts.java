// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Callout;
import ringleaf.part.Callout.Form;
import ringleaf.part.Words;

/** The sizes that a person looks for in the views. Unmirrored. */
final class ApertureCallouts {
    private final ApertureDesign design;
    private final Bodies bodies;

    ApertureCallouts(ApertureDesign design, Bodies bodies) {
        this.design = design;
        this.bodies = bodies;
    }

    List<Callout> all() {
        List<Callout> all = new ArrayList<>();
        Rim rim = design.rim();
        ApertureSpec spec = design.spec();
        all.add(diameter("open", spec.clearRadius(), Math.toRadians(55), "clear "));
        if (spec.bezel().housing().isEmpty()) {
            all.add(diameter("open", rim.outer(), Math.toRadians(125), "housing "));
        }
        all.add(diameter("open", design.band().pivotRadius(), Math.toRadians(160), "pivots "));
        int half = (bodies.states() - 1) / 2;
        double halfOpen = design.band().inscribedRadius(bodies.bladeAngle(half));
        all.add(diameter("half", halfOpen, Math.toRadians(55), ""));
        if (spec.leastRadius() > 0) {
            all.add(diameter("closed", spec.leastRadius(), Math.toRadians(55), "opening "));
        }
        double reach = design.band().reach(design.closed(), design.pin(), design.ear());
        all.add(diameter("closed", reach, Math.toRadians(125), "blades reach "));
        all.add(diameter("closed", rim.cavity(), Math.toRadians(160), "cavity "));
        design.pinionPlan()
                .ifPresent(plan -> all.add(new Callout(
                        Form.DISTANCE,
                        "open",
                        Point.ORIGIN,
                        plan.centre(),
                        "centres " + Words.number(plan.centreDistance(), 2))));
        return all;
    }

    private static Callout diameter(String view, double radius, double direction, String what) {
        return new Callout(
                Form.DIAMETER,
                view,
                Point.ORIGIN,
                Point.polar(radius, direction),
                what + "Ø" + Words.number(2 * radius, 2));
    }
}
