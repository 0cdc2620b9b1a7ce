// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.slide;

import ringleaf.machine.Role;

/** What the parts of a slide are, in the order in which they are told. */
enum SlideRole implements Role {
    END("end-plate"),
    SIDE("side-plate"),
    ROD("rod"),
    CARRIAGE("carriage-plate"),
    BRIDGE("bridge"),
    BEARING("linear-bearing"),
    CARRIAGE_PIN("carriage-pin"),
    ARM("horn-arm"),
    HORN_PIN("horn-pin"),
    LINK("link"),
    CAP("cap");

    private final String label;

    SlideRole(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }
}
