package ringleaf.mechanism.aperture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.Request;
import ringleaf.part.Assembly;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.spec.field.FieldSet;

/** The kind {@code leaf-aperture}: N blades between a base with bores and a slotted ring that turns them all. */
public final class LeafAperture implements Kind {
    public static final String NAME = "leaf-aperture";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public String summary() {
        return "leaves of thin sheet that close a round opening, turned together by a slotted ring";
    }

    @Override
    public FieldSet fields() {
        return ApertureFields.ALL;
    }

    @Override
    public Planned read(Request request) {
        ApertureSpec spec = new ApertureReader(request).read();
        return new PlannedAperture(spec);
    }

    static Design design(ApertureSpec spec, int states) {
        List<ApertureDesigner.Candidate> candidates = new ApertureDesigner(spec).candidates();
        ApertureDesign design = candidates.get(0).design();
        Sweep sweep = sweep(design, states);
        ApertureParts made = new ApertureParts(design);
        List<Part> parts = made.parts();
        Assembly assembly = ApertureAssembly.of(design, parts, sweep);
        if (spec.mirrored()) {
            List<Part> image = Mirrored.parts(parts);
            assembly = Mirrored.assembly(assembly, parts, image);
            parts = image;
        }
        List<Finding> findings = new ApertureChecks(design, sweep).all();
        ApertureDimensions dimensions = new ApertureDimensions(design, sweep);
        return new Design(
                spec.name(),
                NAME,
                dimensions.choices(ApertureDimensions.whyLayout(candidates)),
                dimensions.all(made.deviation()),
                parts,
                assembly,
                ApertureTable.of(design, sweep),
                findings,
                travel(design, sweep),
                new Remedies(spec, design, findings).lines(),
                ApertureJoints.of(design, parts));
    }

    static Sweep sweep(ApertureDesign design, int states) {
        ApertureSpec spec = design.spec();
        return Sweep.of(design.law(), design.closed(), spec.clearRadius(), states, spec.play(), design.ear());
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
