// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * The basic rack: the straight-sided tooth that defines a family of gears, in units of the module.
 *
 * <p>The tool that cuts a gear is this rack turned inside out: the rack's root, with its rounding, is the tool's tip.
 *
 * @param pressureAngle of the straight flank, rad, above 0 and below pi/4
 * @param addendum ha*, tooth height above the datum line, above 0
 * @param dedendum hf*, tooth depth below the datum line, above the addendum
 * @param rounding rho*, root radius, above 0 and at most {@link #largestRounding(double, double)}
 * @param deeper by how much further a space is cut than this tool would, straight in below the involute, at least 0: what
 *     is cut as an outline needs no tool that fits, and is not undercut by it
 */
public record BasicRack(double pressureAngle, double addendum, double dedendum, double rounding, double deeper) {
    private static final double TWENTY = Math.toRadians(20);
    /** Share of the module by which a rounding may exceed its limit, so that limits computed elsewhere pass. */
    private static final double ROUNDING_SLACK = 1e-12;

    /** ISO 53 form A: for high torque, the default. Values from memory, no source confirmed. */
    public static final BasicRack FORM_A = new BasicRack(TWENTY, 1, 1.25, 0.38);

    public BasicRack {
        if (!(pressureAngle > 0 && pressureAngle < Math.PI / 4)) {
            throw new IllegalArgumentException("a rack's pressure angle lies between 0 and 45 degrees");
        }
        if (!(addendum > 0) || !(dedendum > addendum) || Double.isInfinite(dedendum)) {
            throw new IllegalArgumentException("a rack's dedendum exceeds its addendum, which is above 0");
        }
        double largest = largestRounding(pressureAngle, dedendum);
        if (!(rounding > 0) || rounding > largest + ROUNDING_SLACK) {
            throw new IllegalArgumentException(
                    "root rounding " + rounding + " is not within 0 to " + largest + " (a full round)");
        }
        if (!(deeper >= 0) || Double.isInfinite(deeper)) {
            throw new IllegalArgumentException("a root is not cut deeper by " + deeper);
        }
    }

    /** The rack of a tool alone. */
    public BasicRack(double pressureAngle, double addendum, double dedendum, double rounding) {
        this(pressureAngle, addendum, dedendum, rounding, 0);
    }

    /** The same with spaces that are cut deeper by so many modules. */
    public BasicRack withDeeper(double other) {
        return new BasicRack(pressureAngle, addendum, dedendum, rounding, other);
    }

    /** From the datum line to the root circle: hf* and what is cut deeper. */
    public double depth() {
        return dedendum + deeper;
    }

    /**
     * The rack for any usual pressure angle: form A at 20°, else its heights with the root radius of full clearance,
     * or the full round where the space is too narrow for that.
     */
    public static BasicRack ofAngle(double pressureAngle) {
        if (pressureAngle == TWENTY) {
            return FORM_A;
        }
        double full = (FORM_A.dedendum - FORM_A.addendum) / (1 - Math.sin(pressureAngle));
        double rounding = Math.min(full, largestRounding(pressureAngle, FORM_A.dedendum));
        return new BasicRack(pressureAngle, FORM_A.addendum, FORM_A.dedendum, rounding);
    }

    /** c*, the tip clearance of a pair without shift: hf* - ha*, and what is cut deeper. */
    public double clearance() {
        return depth() - addendum;
    }

    /**
     * Depth of the straight flank below the datum line: hf* - rho* (1 - sin a).
     *
     * <p>Derivation: a circle of radius rho touching the root line and the flank meets the flank at the height
     * rho (1 - sin a) over the root line.
     */
    public double straightDepth() {
        return dedendum - rounding * (1 - Math.sin(pressureAngle));
    }

    /**
     * Fewest teeth, as a real number, that are cut without undercut at the profile shift 0: 2 h/sin² a with the depth
     * h of the straight flank. Handbook relation, from memory.
     */
    public double leastTeeth() {
        double sine = Math.sin(pressureAngle);
        return 2 * straightDepth() / (sine * sine);
    }

    /** Least profile shift that keeps {@code teeth} free of undercut: h - z sin² a/2. Handbook, from memory. */
    public double leastShift(int teeth) {
        double sine = Math.sin(pressureAngle);
        return straightDepth() - teeth * sine * sine / 2;
    }

    /**
     * The same for a pressure angle in rad and a dedendum in modules; below 0 where the flanks cross above the root line.
     */
    public static double largestRounding(double angle, double dedendum) {
        return (Math.PI / 4 - dedendum * Math.tan(angle)) / Math.tan(Math.PI / 4 - angle / 2);
    }
}
