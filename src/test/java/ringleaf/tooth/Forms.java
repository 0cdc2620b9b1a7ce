// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

/** Teeth and racks as tests want them. */
public final class Forms {
    /** ISO 53 form B. Values from memory, no source confirmed. */
    static final BasicRack FORM_B = new BasicRack(Math.toRadians(20), 1, 1.25, 0.30);
    /** ISO 53 form C. Values from memory, no source confirmed. */
    static final BasicRack FORM_C = new BasicRack(Math.toRadians(20), 1, 1.25, 0.25);
    /** ISO 53 form D: deep root with a nearly full rounding. Values from memory, no source confirmed. */
    static final BasicRack FORM_D = new BasicRack(Math.toRadians(20), 1, 1.40, 0.39);

    private Forms() {}

    /** Teeth of the usual rack without shift or thinning. */
    public static ToothForm of(double module, int teeth) {
        return ToothForm.of(module, teeth, 0, 0, BasicRack.FORM_A);
    }

    /** The same at another shift; the tip moves along, so a shortened tip stays shortened by as much. */
    static ToothForm withShift(ToothForm form, double shift) {
        double tip = form.tipRadius() + form.module() * (shift - form.shift());
        return new ToothForm(form.module(), form.teeth(), shift, form.thinning(), form.rack(), tip);
    }

    /**
     * Turn of the pinion's outline (tooth 0 on its +x) that leaves equal backlash on both flanks, rad, within half a
     * pitch of {@code direction}: by symmetry, then rolling.
     *
     * @param spaceCentre direction of the middle of any of the ring's spaces from the ring's axis
     * @param direction from the ring's axis to the pinion's
     */
    static double pinionPhase(InternalPair pair, double spaceCentre, double direction) {
        double pitch = pair.ring().pitchAngle();
        double past = spaceCentre - direction;
        past -= pitch * Math.rint(past / pitch);
        return direction + past * pair.ring().teeth() / pair.pinion().teeth();
    }

    /** The rack with the root radius that just leaves the straight flank as deep as the addendum. */
    static BasicRack fullClearance(double pressureAngle, double addendum, double dedendum) {
        double rounding = (dedendum - addendum) / (1 - Math.sin(pressureAngle));
        return new BasicRack(pressureAngle, addendum, dedendum, rounding);
    }
}
