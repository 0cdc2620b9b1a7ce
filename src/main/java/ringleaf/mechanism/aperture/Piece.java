// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.machine.Role;
import ringleaf.part.Part;

/** What the parts of an aperture are that joints and requirements speak of. */
enum Piece implements Role {
    /** Bought; its outline is no part. */
    SERVO("servo"),
    SERVO_PLATE("servo-plate"),
    COVER("cover"),
    BASE("base-plate"),
    SPACER("spacer-ring"),
    SHIM("spacer-shim"),
    BLADE("blade"),
    PIVOT_PIN("pivot-pin"),
    DRIVE_PIN("drive-pin"),
    RING("drive-ring"),
    PINION("pinion"),
    STEP_WHEEL("step-wheel"),
    AXLE("axle"),
    SERVO_GEAR("servo-gear"),
    RETAINER("retainer"),
    STANDOFF(Fasteners.STANDOFF),
    PACKING(Fasteners.PACKING);

    private final String label;

    Piece(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }

    /** The role of a part, which its maker named by it. */
    static Piece of(Part part) {
        for (Piece piece : values()) {
            if (piece.label.equals(part.name())) {
                return piece;
            }
        }
        throw new IllegalArgumentException(part.name());
    }
}
