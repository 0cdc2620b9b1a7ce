// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * What a person measures on cut teeth: span over several teeth, dimension over pins, thickness along the chord.
 *
 * <p>All lengths in mm. Relations: handbook knowledge (ISO 21771 family), from memory, unless a method says
 * otherwise; thinning is part of the tooth's thickness and enters everywhere.
 */
public final class ToothMeasure {
    private ToothMeasure() {}

    /**
     * Teeth to span so that the caliper touches near the middle of the flanks: z a_v/pi + 1/2 to the nearest whole
     * number, with the pressure angle a_v on the circle of the diameter d + 2 x m.
     */
    public static int spanTeeth(ToothForm form) {
        double touched = form.referenceRadius() + form.shift() * form.module();
        double angle = form.pressureAngleAt(Math.max(touched, form.baseRadius()));
        // Two tangent lengths make up the span, which is one tooth on the base circle and k - 1 base pitches.
        double arc = 2 * form.baseRadius() * Math.tan(angle);
        double first = 2 * form.baseRadius() * form.baseHalfAngle();
        long count = Math.round((arc - first) / form.basePitch() + 1);
        return (int) Math.max(1, Math.min(count, form.teeth() - 1));
    }

    /**
     * Span over {@code count} teeth (base tangent length): m cos a (pi (k - 1/2) + z inv a) + 2 x m sin a, less
     * thinning cos a.
     */
    public static double span(ToothForm form, int count) {
        double angle = form.rack().pressureAngle();
        double units = Math.PI * (count - 0.5) + form.teeth() * Involute.inv(angle);
        return form.module() * (Math.cos(angle) * units + 2 * form.shift() * Math.sin(angle))
                - form.thinning() * Math.cos(angle);
    }
}
