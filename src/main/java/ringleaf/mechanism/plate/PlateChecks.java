// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringleaf.curve.Overlay;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Region;
import ringleaf.mechanism.Bolt;
import ringleaf.mechanism.Standoff;
import ringleaf.part.Finding;

/** Checks of plates and what is bought for them, by their sizes. */
final class PlateChecks {
    private final PlateSpec spec;
    private final List<Finding> found = new ArrayList<>();

    PlateChecks(PlateSpec spec) {
        this.spec = spec;
    }

    List<Finding> all() {
        for (boolean rear : new boolean[] {false, true}) {
            if (!rear || spec.plates() == 2) {
                apart(rear);
            }
        }
        Box box = spec.edge().box();
        spec.width()
                .atMost()
                .ifPresent(most -> found.add(Finding.of("overall-width")
                        .about("plate")
                        .atMost(box.width(), most, "mm")
                        .says("plate.overall-width")));
        spec.height()
                .atMost()
                .ifPresent(most -> found.add(Finding.of("overall-height")
                        .about("plate")
                        .atMost(box.height(), most, "mm")
                        .says("plate.overall-height")));
        Set<Standoff> posts = new LinkedHashSet<>(spec.spacers());
        posts.addAll(spec.standoffs());
        posts.forEach(post -> found.add(post.isHad()));
        Map<Bolt, Integer> counts = new LinkedHashMap<>();
        new PlateAssembly(spec).bolts(counts).forEach(bolt -> found.add(bolt.reaches()));
        return found;
    }

    /** Cuts of two seats that run into one another. */
    private void apart(boolean rear) {
        List<Seat> seats = spec.on(rear);
        for (int i = 0; i < seats.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (meet(seats.get(k).cuts(spec.plate()), seats.get(i).cuts(spec.plate()))) {
                    found.add(Finding.of("seats-apart")
                            .about(seats.get(k).name(), seats.get(i).name())
                            .plain(false)
                            .says("plate.seats-apart", rear));
                }
            }
        }
    }

    private static boolean meet(List<Contour> one, List<Contour> other) {
        for (Contour a : one) {
            for (Contour b : other) {
                if (a.box().meets(b.box())
                        && !Overlay.intersection(List.of(Region.of(a)), List.of(Region.of(b)))
                                .isEmpty()) {
                    return true;
                }
            }
        }
        return false;
    }
}
