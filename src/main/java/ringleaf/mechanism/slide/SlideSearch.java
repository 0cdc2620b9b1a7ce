// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import java.util.List;
import java.util.OptionalDouble;
import ringleaf.part.Finding;
import ringleaf.spec.shared.LinearBearing;

/** Finds bearing and swing of a slide: the smallest bearing, then the first swing, with which every closed form holds. */
final class SlideSearch {
    /** Swings of the horn that are tried, deg, the usual first; wider ones need less torque, narrower ones less room below. */
    static final List<Integer> SWINGS = List.of(80, 90, 100, 110, 70, 60, 50, 40);

    private SlideSearch() {}

    /** The first of all choices that holds; where none does, the one that misses fewest checks, the first of equals. */
    static SlideLayout find(SlideSpec spec) {
        SlideLayout best = null;
        long fewest = Long.MAX_VALUE;
        for (LinearBearing bearing : spec.bearings()) {
            for (double swing : swings(spec.swing())) {
                SlideLayout layout = new SlideLayout(spec, bearing, swing);
                long failed = new SlideChecks(layout)
                        .all().stream().filter(Finding::failed).count();
                if (failed < fewest) {
                    fewest = failed;
                    best = layout;
                }
                if (failed == 0) {
                    return layout;
                }
            }
        }
        return best;
    }

    private static double[] swings(OptionalDouble given) {
        return given.isPresent()
                ? new double[] {given.getAsDouble()}
                : SWINGS.stream().mapToDouble(Math::toRadians).toArray();
    }
}
