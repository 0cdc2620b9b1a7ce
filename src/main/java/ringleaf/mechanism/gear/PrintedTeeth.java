// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import ringleaf.mechanism.Material;
import ringleaf.tooth.GearPair;
import ringleaf.tooth.InternalForm;
import ringleaf.tooth.InternalPair;
import ringleaf.tooth.ToothForm;

/**
 * What a process that builds in layers leaves of fine teeth: nothing narrower than one bead is laid, so a tooth ends
 * where it becomes thinner than that. The least web of such a process is two beads (common practice, no source).
 *
 * @param bead least width of anything, mm
 */
record PrintedTeeth(double bead) {
    /** What of a tooth's height is too thin to tell from nothing, in modules. */
    private static final double LEAST_HEIGHT = 1e-3;

    /** What the material's process lays; nothing is lost where parts are cut from sheet. */
    static PrintedTeeth of(Material material) {
        return new PrintedTeeth(material.sheet() ? 0 : material.leastWeb() / 2);
    }

    /** Whether any of this matters. */
    boolean matters() {
        return bead > 0;
    }

    /** Thickness of a gear's teeth on the reference circle, as drawn, mm. */
    static double thickness(Rim rim) {
        double diameter = rim.module() * rim.teeth();
        return rim instanceof Rim.Outer outer
                ? outer.form().thickness()
                : ((Rim.Inner) rim).form().thicknessAt(diameter);
    }

    /** Pairs of teeth in contact on average when tips end where they are a bead thick; 0 where nothing is left. */
    double contactRatio(Mesh mesh) {
        if (thickness(mesh.driverRim()) <= bead || thickness(mesh.drivenRim()) <= bead) {
            return 0;
        }
        if (mesh instanceof Mesh.Outer outer) {
            GearPair pair = outer.pair();
            GearPair printed = new GearPair(lowered(pair.pinion()), lowered(pair.gear()), pair.centreDistance());
            return Math.max(0, printed.contact().usableRatio());
        }
        InternalPair pair = ((Mesh.Inner) mesh).pair();
        InternalPair printed = new InternalPair(lowered(pair.pinion()), lowered(pair.ring()), pair.centreDistance());
        return Math.max(0, printed.contactRatio());
    }

    private ToothForm lowered(ToothForm form) {
        return form.withLeastTipThickness(bead);
    }

    /** A ring's tooth is thinnest at its tips too, the inner circle; found by halving. */
    private InternalForm lowered(InternalForm form) {
        if (form.thicknessAt(2 * form.tipRadius()) >= bead) {
            return form;
        }
        double thin = form.tipRadius();
        double thick = form.referenceRadius();
        while (thick - thin > LEAST_HEIGHT * form.module()) {
            double middle = (thin + thick) / 2;
            if (form.thicknessAt(2 * middle) >= bead) {
                thick = middle;
            } else {
                thin = middle;
            }
        }
        return form.withTipRadius(thick);
    }
}
