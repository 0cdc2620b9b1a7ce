// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * A pinion on a straight rack whose datum line touches the pinion at {@code r + x m}.
 *
 * <p>Relations: ISO 21771 family, from memory.
 *
 * @param pinion the gear
 * @param rackAddendum height of the rack's teeth above its datum line, mm
 */
public record RackPair(ToothForm pinion, double rackAddendum) {
    /** With rack teeth of full height. */
    public static RackPair of(ToothForm pinion) {
        return new RackPair(pinion, pinion.module() * pinion.rack().addendum());
    }

    /** From the pinion's axis to the rack's datum line without backlash, mm: r + x m. */
    public double mountingDistance() {
        return pinion.referenceRadius() + pinion.shift() * pinion.module();
    }

    /** Length of the path of contact on the side of the rack's tips, mm: (ha - x m)/sin a. */
    public double before() {
        return (rackAddendum - pinion.shift() * pinion.module())
                / Math.sin(pinion.rack().pressureAngle());
    }

    /** Length of the path of contact on the side of the pinion's tips, mm: sqrt(ra² - rb²) - r sin a. */
    public double after() {
        double base = pinion.baseRadius();
        double tip = pinion.tipRadius();
        return Math.sqrt((tip - base) * (tip + base))
                - pinion.referenceRadius() * Math.sin(pinion.rack().pressureAngle());
    }

    /** Contact ratio; holds while there is no {@link #interference()}. */
    public double ratio() {
        return (before() + after()) / pinion.basePitch();
    }

    /**
     * How far along the path of contact the rack's tips reach past the first point of the pinion's involute, mm; 0 or
     * less where they do not.
     */
    public double interference() {
        double sine = pinion.referenceRadius() * Math.sin(pinion.rack().pressureAngle());
        double form = pinion.formRadius();
        double base = pinion.baseRadius();
        double start = Math.sqrt(Math.max(0, (form - base) * (form + base)));
        return before() - sine + start;
    }
}
