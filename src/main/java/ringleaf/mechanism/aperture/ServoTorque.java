// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.leaf.Band;
import ringleaf.leaf.Sweep;
import ringleaf.part.Words;

/**
 * An estimate of the torque at the drive by virtual work: every blade resists by friction under the weight of the
 * blades on it and under the force that bends it over its neighbours; the ring adds its own friction on the ledge.
 *
 * <p>Assumptions, none of them measured: the mechanism lies flat, so that weight presses the blades together; a blade
 * is a cantilever as long as half its centre line, bent by the height of the layers it climbs over; friction acts at
 * the pivot radius from the pivot for half the weight; each mesh loses a tenth. Published coefficients of friction
 * differ by a factor of two, so the range from half to double is given.
 *
 * @param drive torque at the servo, or at the arm, Nmm
 */
record ServoTorque(double drive) {
    private static final double GRAVITY = 9.81;
    private static final double MESH_EFFICIENCY = 0.9;

    static ServoTorque of(ApertureDesign design, Sweep sweep) {
        ApertureSpec spec = design.spec();
        Band band = design.band();
        double friction = spec.blade().friction();
        // The band without its holes, and the ring without slots and teeth.
        double bladeArea = band.width() * (band.pivotRadius() * band.span() + Math.PI * band.width() / 4);
        double ringArea = Math.PI
                * (Math.pow(design.rim().rim(), 2) - Math.pow(design.rim().opening(), 2));
        double bladeWeight = bladeArea * spec.thickness() * spec.blade().density() * 1e-6 * GRAVITY;
        double ringWeight =
                ringArea * design.stack().ringThickness() * spec.ring().density() * 1e-6 * GRAVITY;
        double length = band.pivotRadius() * band.span() / 2;
        double inertia = band.width() * Math.pow(spec.thickness(), 3) / 12;
        double bent = (design.stack().layers() - 1) * spec.thickness();
        double press = 3 * spec.blade().stiffness() * inertia * bent / Math.pow(length, 3);
        double onBlade = bladeWeight * design.stack().layers();
        double arm = band.pivotRadius();
        double byWeight = 0;
        double byBend = 0;
        for (int i = 0; i < sweep.states(); i++) {
            double rate = Math.abs(1 / design.law().ringRate(sweep.bladeAngle[i]));
            double efficiency = 1 - friction * Math.tan(sweep.pressure[i]);
            double gain = spec.blades() * friction * arm * rate / Math.max(efficiency, 1e-3);
            byWeight = Math.max(byWeight, gain * onBlade / 2);
            byBend = Math.max(byBend, gain * press);
        }
        double ledge = spec.ring().friction()
                * (ringWeight + spec.blades() * press)
                * design.rim().cavity();
        double ring = byWeight + byBend + ledge;
        double drive = design.pinionPlan()
                .map(plan -> ring
                        / plan.servoRatio()
                        / Math.pow(MESH_EFFICIENCY, plan.stepUp().isPresent() ? 2 : 1))
                .orElse(ring);
        return new ServoTorque(drive);
    }

    String range() {
        return Words.number(drive / 2, 1) + " to " + Words.number(drive * 2, 1) + " Nmm with friction half to double";
    }
}
