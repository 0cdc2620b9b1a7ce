package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.MeshOff;
import ringleaf.mechanism.SizesOff;

/** A pair or a train as it comes from the workshop: distances, teeth, tips and roots off. */
final class TrainBuilt implements AsBuilt {
    private static final int LIMITS = 4;

    private final TrainSpec spec;
    private final SizesOff sizes = new SizesOff();
    private final List<MeshOff> meshes = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    /** Number of the driver's and the driven gear's tooth thickness, and that thickness at the tip, a stage each. */
    private final List<double[]> tips = new ArrayList<>();

    TrainBuilt(TrainSpec spec) {
        this.spec = spec;
        for (int i = 0; i < spec.stages().size(); i++) {
            String prefix = spec.isPair() ? "" : "stage-" + (i + 1) + "-";
            Mesh mesh = spec.stages().get(i).mesh();
            tips.add(new double[] {mesh.driverRim().tipThickness(), mesh.drivenRim().tipThickness()});
            meshes.add(mesh instanceof Mesh.Outer outer
                    ? MeshOff.outer(
                            outer.pair(), prefix, "driver", "driven", spec.material(), spec.material(), spec.material(), sizes)
                    : MeshOff.inner(((Mesh.Inner) mesh).pair(), prefix, spec.material(), sizes));
            limits.add(new Limit(prefix + "backlash", "mm", "the teeth have play"));
            limits.add(new Limit(prefix + "tip-clearance", "mm", "tips stay off the roots"));
            limits.add(new Limit(prefix + "contact-ratio", "1", "a pair of teeth is always in contact"));
            limits.add(new Limit(prefix + "tip-thickness", "mm", "teeth do not come to a point"));
        }
    }

    @Override
    public List<Deviation> deviations() {
        return sizes.all();
    }

    @Override
    public List<Limit> limits() {
        return List.copyOf(limits);
    }

    @Override
    public Bench bench() {
        return off -> {
            double[] margins = new double[LIMITS * meshes.size()];
            for (int i = 0; i < meshes.size(); i++) {
                MeshOff mesh = meshes.get(i);
                MeshOff.Margins found = mesh.margins(off, 0);
                margins[LIMITS * i] = found.backlash();
                margins[LIMITS * i + 1] = found.tips();
                margins[LIMITS * i + 2] = found.contact();
                margins[LIMITS * i + 3] = Math.min(
                        tips.get(i)[0] + off[mesh.firstTooth()][0], tips.get(i)[1] + off[mesh.secondTooth()][0]);
            }
            return margins;
        };
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "Each gear's teeth are off alike: thicker or thinner, tips and roots further out or in, by closed forms; a"
                        + " tip's width is taken to change as the tooth's thickness does.",
                "What holds the axes is no part of this design: their distance is taken to be as good as "
                        + spec.material().process() + " places two edges. Runout of one gear counts as a distance.",
                "Not modelled: single teeth, pitch errors, wear, axes that are not square.");
    }
}
