// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.leaf.Sweep;
import ringleaf.mechanism.AsBuilt;

/** An aperture as it comes from the workshop. */
final class ApertureBuilt implements AsBuilt {
    /** Evenly spaced states at which blades are looked at, ends included. */
    static final int EVEN = 9;
    /** States with the least lap that are looked at besides. */
    static final int THIN = 3;

    /** A sliver along the opening's edge counts as opening up to so many times what any blade's edge stands off. */
    static final double SLIVER = 3;

    private static final int SWEPT = 61;

    private final ApertureDesign design;
    private final ApertureSizes sizes;
    private final List<Limit> limits = new ArrayList<>();
    private final double[] bladeAngles;

    ApertureBuilt(ApertureDesign design) {
        this.design = design;
        this.sizes = new ApertureSizes(design);
        this.bladeAngles = states(design);
        addLimits();
    }

    /** Blade angles of the states: evenly in ring angle, and where least lap is left. */
    private static double[] states(ApertureDesign design) {
        Sweep sweep = LeafAperture.sweep(design, SWEPT, false);
        boolean[] taken = new boolean[SWEPT];
        for (int i = 0; i < EVEN; i++) {
            taken[i * (SWEPT - 1) / (EVEN - 1)] = true;
        }
        for (int k = 0; k < THIN; k++) {
            int thin = -1;
            for (int i = 0; i < SWEPT; i++) {
                boolean thinner = thin < 0 || sweep.lapAfterPlay[i] < sweep.lapAfterPlay[thin];
                thin = !taken[i] && thinner ? i : thin;
            }
            taken[thin] = true;
        }
        double[] angles = new double[EVEN + THIN];
        int n = 0;
        for (int i = 0; i < SWEPT; i++) {
            if (taken[i]) {
                angles[n++] = sweep.bladeAngle[i];
            }
        }
        return angles;
    }

    private void addLimits() {
        for (BuiltLimit each : BuiltLimit.values()) {
            limits.add(each.limit());
        }
        if (sizes.mesh.isPresent()) {
            mesh("", "teeth of pinion and sector");
        }
        if (sizes.stepMesh.isPresent()) {
            mesh("step-", "teeth of the step-up");
        }
    }

    private void mesh(String prefix, String what) {
        limit(prefix + "backlash", "mm", what + " have play with the ring in the middle of its wall");
        limit(prefix + "tip-clearance", "mm", "tips of the " + what + " stay off the roots likewise");
        limit(prefix + "contact-ratio", "1", what + " are always in contact");
    }

    private void limit(String check, String unit, String holds) {
        limits.add(new Limit(check, unit, holds));
    }

    @Override
    public List<Deviation> deviations() {
        return sizes.all.all();
    }

    @Override
    public List<Limit> limits() {
        return List.copyOf(limits);
    }

    @Override
    public Bench bench() {
        return new ApertureBench(design, sizes, bladeAngles, limits.size());
    }

    @Override
    public List<String> assumptions() {
        List<String> all = new ArrayList<>();
        all.add("Every blade, bore and slot is off by itself; each blade stands where its own pin, lever and slot"
                + " hold it, and what they cover is looked at blade by blade at " + (EVEN + THIN)
                + " states: nine from open to closed and the three with least lap.");
        all.add("What still has to work is asked, not the reserves of the design: lap and clearances are there to"
                + " be used up. For lap-worst-case all joints lean at their worst; for what must not touch they stand in"
                + " the middle of their play, into which a blade or a ring that touches is pushed back. Builds are as they come off the"
                + " machines: a bore that is reamed or a pin that is filed to fit saves many.");
        all.add("The ring's own angle counts as right: the servo's zero takes out what all blades share; it"
                + " may go as far as its stops. Blade edges and"
                + " drive pins are off against their pivot holes.");
        all.add("A sliver along the edge of the opening, up to three times as wide as blades stand off there, is no"
                + " leak but an opening that is not quite round.");
        if (design.isLinear()) {
            all.add("Curved slots are followed to first order in the deviations.");
        }
        all.add("Not modelled: webs, screws and servo mounting, bent blades, deviations of shape within one edge.");
        return all;
    }
}
