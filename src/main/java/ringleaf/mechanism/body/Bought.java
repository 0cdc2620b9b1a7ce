// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import ringleaf.machine.Role;

/** What is bought and meets a round part; where it has no outline, nothing is judged of it. */
public enum Bought implements Role {
    AXLE("axle"),
    BEARING("bearing"),
    SERVO("servo"),
    SCREW("screw");

    private final String label;

    Bought(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }
}
