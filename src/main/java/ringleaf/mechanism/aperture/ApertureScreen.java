// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.leaf.LeafSlope;
import ringleaf.part.Finding;

/**
 * What no choice of blades can mend, calculated alone: slope and strain of the closed blades, which depend on
 * number, thickness and opening only, posts too low for their blades, and a housing or a stack that is larger than
 * allowed even with the narrowest band and the fewest layers that any aperture has. Everything refused here fails in
 * the full design too; what is not refused may still fail there.
 */
final class ApertureScreen {
    /** No band spans less than a quarter turn, so that a quarter of all blades lie over every pivot circle's point. */
    private static final int QUARTER = 4;

    private ApertureScreen() {}

    /** The first check that surely fails. */
    static Optional<Finding> refusal(ApertureSpec spec) {
        for (Finding finding : findings(spec)) {
            if (finding.failed()) {
                return Optional.of(finding);
            }
        }
        return Optional.empty();
    }

    private static List<Finding> findings(ApertureSpec spec) {
        double radius = spec.leastRadius();
        double slope = radius > 0 ? LeafSlope.slope(spec.blades(), spec.thickness(), radius) : Math.PI / 2;
        List<Finding> found = new ArrayList<>();
        found.add(Finding.of("blade-slope")
                .about("blade")
                .atMost(Math.toDegrees(slope), Math.toDegrees(spec.blade().slopeLimit()), "deg")
                .says("aperture.slope"));
        found.add(Finding.of("bending-strain")
                .about("blade")
                .atMost(
                        LeafSlope.strain(spec.blades(), spec.thickness(), radius),
                        spec.blade().elasticStrain(),
                        "1")
                .says("aperture.strain"));
        if (spec.pinStyle() == PinStyle.BASE_POSTS) {
            found.add(Finding.of("pin-engagement")
                    .about("pivot-pin")
                    .atLeast(spec.thickness(), StackChecks.LEAST_POST_BLADE, "mm")
                    .says("aperture.post-blade"));
        }
        found.add(Finding.of("outer-diameter")
                .about("spacer-ring")
                .atMost(leastOuter(spec), spec.outer().most(), "mm")
                .says("aperture.least-outer"));
        if (spec.depth().isPresent()) {
            found.add(Finding.of("depth")
                    .about("base-plate", "retainer")
                    .atMost(leastDepth(spec), spec.depth().getAsDouble(), "mm")
                    .says("aperture.least-depth"));
        }
        return found;
    }

    /** A round housing is no smaller than clear opening, band, ledge, play and wall come to, mm. */
    static double leastOuter(ApertureSpec spec) {
        double band = spec.bladeWidth().orElse(spec.pinHole() + 2 * spec.holeEdge());
        double cavity = spec.clearRadius()
                + spec.clearances().opening()
                + band
                + spec.clearances().blade();
        double wall = Rim.leastPlainRim(spec, cavity, 0) + spec.clearances().ringRadial() + Rim.wallWidth(spec);
        return 2 * wall;
    }

    /** Plates, ring, its play and the fewest layers that there can be, mm. */
    static double leastDepth(ApertureSpec spec) {
        int layers = Math.max(1, spec.blades() / QUARTER);
        double cavity = layers * (spec.thickness() + spec.blade().burr())
                + spec.clearances().bladePlay();
        double cover = spec.plate().sheet() ? Stack.coverThickness(spec) : 0;
        return cover
                + 2 * spec.plate().thickness()
                + cavity
                + spec.ring().thickness()
                + spec.clearances().ringAxial();
    }
}
