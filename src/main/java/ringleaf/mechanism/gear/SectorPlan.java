// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.Optional;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.SectorReach;

/**
 * How many teeth of a sector a travel needs, and how far a sector goes.
 *
 * @param mesh the stage
 * @param ofDriver whether the driver is the sector, else the driven gear
 */
record SectorPlan(Mesh mesh, boolean ofDriver) {
    /** Teeth beyond the travel at each end; common practice, no source. */
    static final int SPARE = 1;

    private Rim rim() {
        return ofDriver ? mesh.driverRim() : mesh.drivenRim();
    }

    /** Half the angle of the sector that the mate's tips cover, rad. */
    private double halfAngle() {
        if (mesh instanceof Mesh.Outer outer) {
            GearPair pair = outer.pair();
            GearPair turned = ofDriver ? new GearPair(pair.gear(), pair.pinion(), pair.centreDistance()) : pair;
            return SectorReach.of(turned, turned.gear().tipRadius()).halfAngle();
        }
        // The pinion's tip circle crosses the ring's: law of cosines about the ring's axis.
        double a = mesh.centreDistance();
        double ring = mesh.drivenRim().tipRadius();
        double tip = mesh.driver().tipRadius();
        double cosine = (a * a + ring * ring - tip * tip) / (2 * a * ring);
        double lens = Math.abs(cosine) < 1 ? Math.acos(cosine) : 0;
        return lens + mesh.driver().halfAngleAt(tip) * mesh.driver().teeth() / mesh.drivenTeeth();
    }

    /** Turn of the sector itself for a turn of the driver, unsigned. */
    private double share() {
        return ofDriver ? 1 : 1 / mesh.ratio();
    }

    /** Whole teeth for a travel of the driver, rad, with {@code spare} more at each end. */
    int teeth(double travel, int spare) {
        double pitches = (travel * share() + 2 * halfAngle()) / rim().pitchAngle();
        return (int) Math.max(1, Math.ceil(pitches - 2 - 1e-9)) + 2 * spare;
    }

    /** Teeth that a sector has beyond what a travel of the driver needs, at each end; negative where some lack. */
    double spare(int teeth, double travel) {
        double pitches = (travel * share() + 2 * halfAngle()) / rim().pitchAngle();
        return (teeth + 2 - pitches) / 2;
    }

    /** Greatest travel of the driver, rad, that a sector allows with {@code spare} teeth more at each end. */
    double travel(int teeth, int spare) {
        return Math.max(0, ((teeth + 2 - 2 * spare) * rim().pitchAngle() - 2 * halfAngle()) / share());
    }

    /** The sector's wheel with its number of teeth decided for a travel of the driver. */
    static WheelSpec decided(WheelSpec wheel, SectorPlan plan, double travel) {
        Optional<WheelSpec.Sector> sector = wheel.sector();
        if (sector.isEmpty() || sector.get().teeth().isPresent()) {
            return wheel;
        }
        int most = plan.rim().teeth() - 2;
        return wheel.withSector(sector.get().withTeeth(Math.min(most, plan.teeth(travel, SPARE))));
    }
}
