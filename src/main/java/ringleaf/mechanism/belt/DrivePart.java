// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import ringleaf.machine.Role;

/**
 * What a part is in a belt drive.
 *
 * @param what it is
 * @param wheel that it belongs to, as an index among the path's wheels; {@link #NO_WHEEL} for none
 * @param label name of the part
 */
record DrivePart(What what, int wheel, String label) implements Role {
    static final int NO_WHEEL = -1;

    static final DrivePart BASE = new DrivePart(What.PLATE, NO_WHEEL, "base-plate");
    static final DrivePart FRONT = new DrivePart(What.PLATE, NO_WHEEL, "front-plate");
    static final DrivePart STANDOFF = new DrivePart(What.STANDOFF, NO_WHEEL, DriveFasteners.STANDOFF);
    static final DrivePart BEARING = new DrivePart(What.BEARING, NO_WHEEL, DriveFasteners.BEARING);
    /** The band, and then its teeth. */
    static final DrivePart BELT = new DrivePart(What.BELT, NO_WHEEL, "belt");

    enum What {
        PLATE,
        STANDOFF,
        BEARING,
        BELT,
        RIM,
        FLANGE,
        FLANGE_ABOVE,
        ROLLER,
        AXLE
    }

    static DrivePart rim(PulleySpec pulley, int wheel) {
        return new DrivePart(What.RIM, wheel, pulley.partName("pulley"));
    }

    /** The lower one, or both where they are told once. */
    static DrivePart flange(PulleySpec pulley, int wheel) {
        return new DrivePart(What.FLANGE, wheel, pulley.partName("flange"));
    }

    static DrivePart flangeAbove(PulleySpec pulley, int wheel) {
        return new DrivePart(What.FLANGE_ABOVE, wheel, pulley.partName("flange-above"));
    }

    static DrivePart roller(Wheel roller, int wheel) {
        return new DrivePart(What.ROLLER, wheel, roller.name());
    }

    static DrivePart axle(Wheel on, int wheel) {
        return new DrivePart(What.AXLE, wheel, DriveFasteners.axle(on));
    }
}
