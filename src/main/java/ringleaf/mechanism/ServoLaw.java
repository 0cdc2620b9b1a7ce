// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import ringleaf.spec.shared.Servo;

/**
 * What a servo moves, as a function of its turn: all that a table for its firmware needs to know of a mechanism. The
 * turn is counted in rad from the start of the travel (open) and grows towards its end.
 */
public interface ServoLaw {
    Servo servo();

    /** What is moved, in one word that may stand in a name: {@code opening} or {@code angle}. */
    String output();

    /** Unit of the output: {@code mm} or {@code deg}. */
    String unit();

    /** Turn of the servo from start to end, rad. */
    double travel();

    /** How far past either end the mechanism can be turned before a stop is touched, as a turn of the servo, rad. */
    double overTravel();

    /**
     * The output where the servo has turned by {@code servo} rad; exact for the model, monotone over the travel.
     *
     * @param build how the finished thing differs from the drawing
     */
    double output(double servo, Build build);

    /** The servo's turn at which a thing built so stands at the start of its travel, rad. */
    default double start(Build build) {
        return -build.zero();
    }

    /** Whether the place of a drive pin changes the output, so that measuring can find it. */
    boolean hasPin();

    /** Turn of the servo that is lost when its sense changes, rad: the greatest over the travel, all joints together. */
    double lostMotion();

    /** What the lost motion is made of, in words for people. */
    String lostIn();

    /** Sense in which the servo turns from start to end, seen onto its horn, in words for people. */
    String sense();

    /**
     * How a finished thing differs from the drawing.
     *
     * @param zero turn of the servo that the mechanism is ahead of what the servo says, rad
     * @param pinOffset how much further from its pivot than drawn the drive pin stands, mm
     */
    record Build(double zero, double pinOffset) {
        public static final Build AS_DRAWN = new Build(0, 0);
    }
}
