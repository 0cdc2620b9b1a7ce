// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.rack;

import ringleaf.machine.Role;

/** What the parts of a rack and pinion are, in the order in which they are told. */
enum RackRole implements Role {
    BASE(RackParts.BASE),
    RACK(RackParts.RACK),
    PINION(RackParts.PINION),
    SPACER(RackParts.SPACER),
    PACKING(RackParts.PACKING),
    SERVO_PLATE(RackParts.SERVO_PLATE),
    PIN(RackParts.PIN),
    AXLE(RackParts.AXLE),
    FRONT(RackParts.FRONT);

    private final String label;

    RackRole(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }
}
