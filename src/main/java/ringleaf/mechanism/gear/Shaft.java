// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import ringleaf.machine.Role;

/**
 * The gears on one axle, which are one part.
 *
 * @param number the first driver's being 0
 * @param label name of the part
 */
record Shaft(int number, String label) implements Role {
    static Shaft of(TrainSpec spec, int number) {
        return new Shaft(number, TrainParts.name(spec, number));
    }
}
