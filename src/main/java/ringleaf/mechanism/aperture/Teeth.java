package ringleaf.mechanism.aperture;

import ringleaf.geom.Tolerance;
import ringleaf.tooth.GearOutline;

/** The teeth of pinion and sector as arcs, made once for all that draws or measures them. */
record Teeth(GearOutline pinion, GearOutline sector) {
    static Teeth of(PinionPlan plan) {
        return new Teeth(
                GearOutline.of(plan.pinion(), Tolerance.CURVE), GearOutline.of(plan.sector(), Tolerance.CURVE));
    }

    /** Worst distance of their arcs from the true flanks and roots, mm. */
    double deviation() {
        return Math.max(pinion.deviation(), sector.deviation());
    }
}
