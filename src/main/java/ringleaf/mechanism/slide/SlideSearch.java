// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringleaf.part.Finding;
import ringleaf.spec.shared.LinearBearing;

/** Finds bearing and swing of a slide: the smallest bearing, then the first
 * straightness of the link and swing, with which every closed form holds. */
final class SlideSearch {
    /** Swings of the horn that are tried, deg, the usual first; wider ones need less torque, narrower ones less room below. */
    static final List<Integer> SWINGS = List.of(80, 90, 100, 110, 70, 60, 50, 40);

    /** Angles within which an open link leaves straight, deg, the usual first; wider ones make a shorter link. */
    static final List<Integer> STRAIGHTS = List.of(5, 10, 15);

    private SlideSearch() {}

    /** The first of all choices that holds; where none does, the one that misses least, as shares of the limits missed. */
    static SlideLayout find(SlideSpec spec) {
        SlideLayout best = null;
        double least = Double.POSITIVE_INFINITY;
        for (LinearBearing bearing : spec.bearings()) {
            for (SlideLayout layout : choices(spec, bearing)) {
                double missed = missed(new SlideChecks(layout).sizes());
                if (best == null || missed < least) {
                    least = missed;
                    best = layout;
                }
                if (missed == 0) {
                    return layout;
                }
            }
        }
        return best;
    }

    private static double missed(List<Finding> findings) {
        double missed = 0;
        for (Finding each : findings) {
            if (each.failed()) {
                double share = Math.abs(each.measured() - each.limit()) / Math.max(1, Math.abs(each.limit()));
                missed += Double.isFinite(share) ? share : 1e6;
            }
        }
        return missed;
    }

    private static List<SlideLayout> choices(SlideSpec spec, LinearBearing bearing) {
        List<SlideLayout> all = new ArrayList<>();
        for (int straight : spec.link().isPresent() ? List.of(0) : STRAIGHTS) {
            for (double swing : swings(spec.swing())) {
                all.add(SlideLayout.of(spec, bearing, swing, Math.toRadians(straight)));
            }
        }
        return all;
    }

    private static double[] swings(OptionalDouble given) {
        return given.isPresent()
                ? new double[] {given.getAsDouble()}
                : SWINGS.stream().mapToDouble(Math::toRadians).toArray();
    }
}
