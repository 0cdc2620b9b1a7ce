// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.leaf.SlotLaw;
import ringleaf.leaf.Sweep;
import ringleaf.mechanism.BodyName;
import ringleaf.mechanism.Decision;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.FitRow;
import ringleaf.part.Part;
import ringleaf.spec.field.FieldSet;

/** The kind {@code leaf-aperture}: N blades between a base with bores and a slotted ring that turns them all. */
public final class LeafAperture implements Kind {
    public static final String NAME = "leaf-aperture";
    /** Thicknesses in which shim and film are sold, mm; common practice, no source. */
    /** Every 15 degrees, as drives are set. */
    private static final int DIRECTIONS = 24;

    private static final double[] THICKNESSES = {0.03, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.8, 1};

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "blades of thin sheet that close a round opening, turned together by a slotted ring";
    }

    @Override
    public FieldSet fields() {
        return ApertureFields.ALL;
    }

    @Override
    public List<BodyName> bodies() {
        return List.of(
                BodyName.frame("the housing"),
                new BodyName("ring", "the drive ring, which turns about the axis"),
                new BodyName("pinion", "the pinion, where there is one"));
    }

    @Override
    public Planned read(Request request) {
        return new PlannedAperture(new ApertureReader(request).read());
    }

    @Override
    public List<String> headline() {
        return List.of(
                "outer-diameter",
                "envelope-width",
                "depth",
                "opens-to",
                "closes-to",
                "actual-lap",
                "ring-travel",
                "servo-travel-used");
    }

    @Override
    public List<String> weighed() {
        return List.of("bezel", "depth", "blades");
    }

    @Override
    public List<String> compared() {
        return List.of("outer-diameter", "ring-travel");
    }

    @Override
    public double[] sold(String field) {
        boolean turns = field.equals(ApertureFields.AT.name()) || field.equals(ApertureFields.OUTLINE_TURN.name());
        return turns
                ? directions()
                : field.equals(ApertureFields.BLADE_THICKNESS.name()) ? THICKNESSES.clone() : Kind.super.sold(field);
    }

    /** Directions that are tried one by one: a small share more of an angle leads nowhere, the next corner does; rad. */
    private static double[] directions() {
        double[] all = new double[3 * DIRECTIONS / 2 + 1];
        for (int i = 0; i < all.length; i++) {
            all[i] = Math.toRadians(360.0 * i / DIRECTIONS - 180);
        }
        return all;
    }

    @Override
    public List<Decision> decisions() {
        return ApertureDecisions.ALL;
    }

    static Design design(ApertureSpec spec, int states) {
        List<ApertureDesigner.Candidate> candidates = new ApertureDesigner(spec).candidates();
        ApertureDesign design = candidates.get(0).design();
        Sweep sweep = sweep(design, states, false);
        ApertureParts made = new ApertureParts(design);
        List<Part> parts = made.parts();
        ApertureAssembly assembly = new ApertureAssembly(design, parts, sweep);
        List<Part> jigs = spec.jigs().isPresent() ? new Jigs(design, spec.jigs().get()).parts(parts) : List.of();
        List<Finding> findings = new ApertureChecks(design, sweep, true).all();
        return finished(
                candidates, sweep, made.deviation(), parts, jigs, assembly.assemble(), assembly.fits(), findings);
    }

    /** A trial piece of so many blades. */
    static Design trialPiece(ApertureSpec spec, int states, int members) {
        List<ApertureDesigner.Candidate> candidates = new ApertureDesigner(spec).candidates();
        ApertureDesign design = candidates.get(0).design();
        Sweep sweep = sweep(design, states, false);
        ApertureParts made = new ApertureParts(design);
        TrialPiece piece = new TrialPiece(design, made, members);
        List<Part> jigs = spec.jigs().isPresent() ? new Jigs(design, spec.jigs().get()).gluing() : List.of();
        List<Finding> findings = new ArrayList<>(new ApertureChecks(design, sweep, true).all());
        findings.addAll(piece.findings());
        return finished(
                candidates,
                sweep,
                made.deviation(),
                piece.parts(),
                jigs,
                piece.assembly(sweep),
                piece.fits(),
                findings);
    }

    /** Mirrored where the spec wants that, with the jigs after the mechanism's own parts. */
    private static Design finished(
            List<ApertureDesigner.Candidate> candidates,
            Sweep sweep,
            double deviation,
            List<Part> own,
            List<Part> jigs,
            Assembly together,
            List<FitRow> fits,
            List<Finding> findings) {
        ApertureDesign design = candidates.get(0).design();
        ApertureSpec spec = design.spec();
        List<Part> parts = spec.mirrored() ? Mirrored.parts(own) : own;
        Assembly assembly = spec.mirrored() ? Mirrored.assembly(together, own, parts) : together;
        if (!jigs.isEmpty()) {
            parts = new ArrayList<>(parts);
            parts.addAll(spec.mirrored() ? Mirrored.parts(jigs) : jigs);
        }
        ApertureDimensions dimensions = new ApertureDimensions(design, sweep);
        return new Design(
                spec.name(),
                NAME,
                dimensions.choices(ApertureDimensions.whyLayout(candidates)),
                dimensions.all(deviation),
                parts,
                assembly,
                ApertureTable.of(design, sweep),
                findings,
                travel(design, sweep),
                List.of(),
                spec.mirrored() ? Mirrored.joints(fits) : fits);
    }

    /** The whole travel, or its least values in brief. */
    static Sweep sweep(ApertureDesign design, int states, boolean brief) {
        ApertureSpec spec = design.spec();
        SlotLaw law = design.law();
        return brief
                ? Sweep.brief(law, design.closed(), spec.clearRadius(), states, spec.play(), design.ear())
                : Sweep.of(law, design.closed(), spec.clearRadius(), states, spec.play(), design.ear());
    }

    private static Map<String, Double> travel(ApertureDesign design, Sweep sweep) {
        Map<String, Double> travel = new LinkedHashMap<>();
        travel.put("states", (double) sweep.states());
        travel.put("blade", Math.toDegrees(design.closed()));
        double sense = design.spec().mirrored() ? -1 : 1;
        travel.put("ring", sense * Math.toDegrees(design.travel()));
        design.pinionPlan().ifPresent(plan -> {
            travel.put("pinion", Math.toDegrees(plan.pinionTravel()));
            travel.put("servo", Math.toDegrees(plan.servo().travel()));
        });
        return travel;
    }
}
