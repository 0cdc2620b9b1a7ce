// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.Material;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Place;
import ringleaf.part.Saying;
import ringleaf.tooth.LewisFactor;

/**
 * Bending of the teeth under the torque of the drive, by the beam of Lewis with the form factor of the very outline.
 *
 * <p>Assumptions: one tooth carries the whole load on its tip; every mesh passes on nine tenths of its torque upwards
 * only (common practice, no source), so the load is not lessened by friction; strength is the stock's stiffness times
 * the strain at which it yields. Half the strength is asked to be kept (common practice, no source).
 */
final class LoadChecks {
    /** Share of the torque that a mesh passes on; common practice, no source. */
    static final double EFFICIENCY = 0.9;

    private static final double SAFETY = 2;

    private final TrainDesign design;
    private final TrainSpec spec;

    LoadChecks(TrainDesign design) {
        this.design = design;
        this.spec = design.spec();
    }

    /** Strength of a stock, MPa. */
    static double strength(Material material) {
        return material.stiffness() * material.elasticStrain();
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        if (spec.drive().torque().isEmpty()) {
            return found;
        }
        double torque = spec.drive().torque().getAsDouble();
        for (Stage stage : design.stages()) {
            double own = torque / Math.abs(stage.turn());
            double force = own / stage.mesh().driverWorkingRadius();
            Place place = spec.isPair() ? Place.NONE : Place.NONE.withDetail(Saying.of("gear.stage", stage.number()));
            int shaft = stage.number();
            found.add(bending(
                    TrainParts.name(spec, shaft - 1), place, stage.driver().rim(), force));
            if (stage.driven().rim() instanceof Rim.Outer) {
                found.add(bending(
                        TrainParts.name(spec, shaft), place, stage.driven().rim(), force));
            }
        }
        return found;
    }

    private Finding bending(String id, Place place, Rim rim, double force) {
        LewisFactor lewis = LewisFactor.of(((Rim.Outer) rim).form());
        double stress = lewis.stress(force, spec.width(), rim.module());
        double strength = strength(spec.material());
        return Finding.of("bending")
                .about(id)
                .at(place)
                .atMost(stress / strength, 1, 1 / SAFETY, "1")
                .says(
                        "gear.bending",
                        spec.material().stock(),
                        Figure.number(stress, 1),
                        Figure.number(strength, 1),
                        Figure.number(force, 1),
                        Figure.number(lewis.factor(), 3));
    }
}
