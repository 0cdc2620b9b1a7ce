// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/**
 * The numbers of one internal spur gear: a ring with teeth on its inside.
 *
 * <p>A space of the ring has the shape of the tooth of an external gear with the same module, teeth and shift, so all
 * its angles come from that {@link #filling() filling} gear. A positive shift moves teeth away from the axis, as
 * outside. Relations: ISO 21771 family, from memory, unless a method says otherwise.
 *
 * @param module mm, above 0
 * @param teeth number of teeth
 * @param shift profile shift x in modules, positive away from the axis
 * @param thinning by how much a ring tooth is thinner on the reference circle than without backlash, mm
 * @param rack the basic rack; its rounding is the greatest root radius
 * @param tipRadius of the tips, the inner circle, mm; at least the base radius, where the involute begins
 */
public record InternalForm(double module, int teeth, double shift, double thinning, BasicRack rack, double tipRadius) {
    public InternalForm {
        ToothForm filling = filling(module, teeth, shift, thinning, rack);
        double base = filling.baseRadius();
        if (!(tipRadius >= base * (1 - 1e-12)) || !(tipRadius < filling.tipRadius())) {
            throw new IllegalArgumentException("the tips' radius " + tipRadius + " mm of " + teeth
                    + " internal teeth does not lie between the base radius " + base + " and the root radius "
                    + filling.tipRadius());
        }
    }

    /** Teeth at full height: tip radius m (z/2 - ha* + x), or the base radius where that lies inside it. */
    public static InternalForm of(double module, int teeth, double shift, double thinning, BasicRack rack) {
        double base = filling(module, teeth, shift, thinning, rack).baseRadius();
        double tip = module * (teeth / 2.0 - rack.addendum() + shift);
        return new InternalForm(module, teeth, shift, thinning, rack, Math.max(tip, base));
    }

    private static ToothForm filling(double module, int teeth, double shift, double thinning, BasicRack rack) {
        return new ToothForm(module, teeth, shift, -thinning, rack, module * (teeth / 2.0 + rack.depth() + shift));
    }

    /** The external gear whose teeth fill the ring's spaces; its tip circle is the ring's root circle. */
    public ToothForm filling() {
        return filling(module, teeth, shift, thinning, rack);
    }

    public InternalForm withThinning(double newThinning) {
        return new InternalForm(module, teeth, shift, newThinning, rack, tipRadius);
    }

    public InternalForm withTipRadius(double newTipRadius) {
        return new InternalForm(module, teeth, shift, thinning, rack, newTipRadius);
    }

    public double pitchAngle() {
        return 2 * Math.PI / teeth;
    }

    public double referenceRadius() {
        return module * teeth / 2;
    }

    public double baseRadius() {
        return referenceRadius() * Math.cos(rack.pressureAngle());
    }

    /** Radius of the root circle, the outer one, mm: m (z/2 + hf* + x). */
    public double rootRadius() {
        return module * (teeth / 2.0 + rack.depth() + shift);
    }

    /** Half the angle of a space at the radius, rad; see {@link ToothForm#halfAngleAt}. */
    public double spaceHalfAngleAt(double radius) {
        return filling().halfAngleAt(radius);
    }

    /** Arc thickness of a ring tooth at the diameter, mm. */
    public double thicknessAt(double diameter) {
        return diameter * (Math.PI / teeth - spaceHalfAngleAt(diameter / 2));
    }

    /**
     * Radius of the arcs in the corners of a space's root, mm: the rack's rounding, or the full round where the space
     * is too narrow for two such arcs.
     */
    public double rootRounding() {
        double wished = rack.rounding() * module;
        double full = InternalRoot.fullRound(filling(), wished);
        return Math.min(wished, full);
    }

    /**
     * Radius where the involute ends and the root's arc begins, mm: the mate's tip must not reach beyond it. Exact; see
     * {@link InternalRoot}.
     */
    public double formRadius() {
        return InternalRoot.of(this).endRadius();
    }
}
