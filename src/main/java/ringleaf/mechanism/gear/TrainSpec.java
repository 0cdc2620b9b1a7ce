package ringleaf.mechanism.gear;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import ringleaf.mechanism.Material;

/**
 * A pair or a train, solved as far as teeth and distances go. Lengths in mm, angles in rad.
 *
 * @param name of the mechanism
 * @param kind its kind's name
 * @param stages in order, at least one
 * @param material of all gears
 * @param width of the teeth along the axis
 * @param gap between the gears of neighbouring stages
 * @param travel of the driver that is looked at
 * @param marks whether teeth and spaces are marked
 * @param drive what turns the driver
 * @param ratio asked for
 * @param ratioWithin share by which it may miss
 * @param within greatest length over all gears
 * @param given paths of the fields that were given
 */
record TrainSpec(
        String name,
        String kind,
        List<StageSpec> stages,
        Material material,
        double width,
        double gap,
        double travel,
        boolean marks,
        DriveData drive,
        OptionalDouble ratio,
        double ratioWithin,
        OptionalDouble within,
        Set<String> given) {
    boolean isPair() {
        return stages.size() == 1;
    }

    /** Turns of the driver to one of the last gear, unsigned. */
    double totalRatio() {
        double total = 1;
        for (StageSpec stage : stages) {
            total *= stage.mesh().ratio();
        }
        return total;
    }
}
