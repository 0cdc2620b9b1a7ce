// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.Optional;
import ringleaf.geom.Tolerance;
import ringleaf.tooth.GearOutline;

/** The teeth of every gear as arcs, made once for all that draws or measures them. */
record Teeth(GearOutline pinion, GearOutline sector, Optional<GearOutline> servoGear, Optional<GearOutline> wheel) {
    static Teeth of(PinionPlan plan) {
        return new Teeth(
                GearOutline.of(plan.pinion(), Tolerance.CURVE),
                GearOutline.of(plan.sector(), Tolerance.CURVE),
                plan.stepUp().map(s -> GearOutline.of(s.servoGear(), Tolerance.CURVE)),
                plan.stepUp().map(s -> GearOutline.of(s.wheel(), Tolerance.CURVE)));
    }

    /** Worst distance of their arcs from the true flanks and roots, mm. */
    double deviation() {
        double worst = Math.max(pinion.deviation(), sector.deviation());
        if (servoGear.isPresent()) {
            worst = Math.max(
                    worst,
                    Math.max(servoGear.get().deviation(), wheel.orElseThrow().deviation()));
        }
        return worst;
    }
}
