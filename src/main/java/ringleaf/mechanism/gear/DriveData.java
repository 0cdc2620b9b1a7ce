// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.spec.shared.Servo;

/**
 * What turns the driver.
 *
 * @param servo on its axle
 * @param torque at the driver, Nmm; a servo's is that at stall
 * @param speed of the driver, turns a minute
 */
record DriveData(Optional<Servo> servo, OptionalDouble torque, OptionalDouble speed) {
    static final DriveData NONE = new DriveData(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
