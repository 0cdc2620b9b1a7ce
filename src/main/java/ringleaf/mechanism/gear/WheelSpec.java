// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringleaf.mechanism.body.Body;
import ringleaf.tooth.TipFinish;

/**
 * One gear apart from the numbers of its teeth.
 *
 * @param body what is cut inside its rim; of a ring only the screws count
 * @param finish of the tips
 * @param ringRadius outer radius of a ring, mm; absent for outside teeth
 * @param sector when only a part of the circle is toothed
 */
record WheelSpec(Body body, TipFinish finish, OptionalDouble ringRadius, Optional<Sector> sector) {
    /**
     * A part of the circle.
     *
     * @param teeth whole teeth; absent for what the travel needs
     * @param segment whether only a segment of the body is left too
     */
    record Sector(OptionalInt teeth, boolean segment) {
        Sector withTeeth(int count) {
            return new Sector(OptionalInt.of(count), segment);
        }
    }

    WheelSpec withSector(Sector other) {
        return new WheelSpec(body, finish, ringRadius, Optional.of(other));
    }
}
