// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.MeshOff;
import ringleaf.mechanism.SizesOff;
import ringleaf.mechanism.body.AxleOff;

/** A pair or a train as it comes from the workshop: distances, teeth, tips and roots off. */
final class TrainBuilt implements AsBuilt {
    private static final int LIMITS = 3;
    /** Play that teeth can be given and still carry, in modules; common practice, no source. */
    private static final double MOST_PLAY = 0.6;

    private final TrainSpec spec;
    private final SizesOff sizes = new SizesOff();
    private final List<MeshOff> meshes = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    /** Gears that turn on their axles; their limits stand after those of the meshes. */
    private final List<AxleOff> axles = new ArrayList<>();

    TrainBuilt(TrainSpec spec) {
        this.spec = spec;
        for (int i = 0; i < spec.stages().size(); i++) {
            add(spec.isPair() ? "" : "stage-" + (i + 1) + "-", spec.stages().get(i));
        }
        for (int i = 0; i < spec.stages().size(); i++) {
            String prefix = spec.isPair() ? "" : "stage-" + (i + 1) + "-";
            AxleOff.of(prefix + "driver-", spec.stages().get(i).driver().body(), spec.material(), sizes)
                    .ifPresent(axles::add);
            AxleOff.of(prefix + "driven-", spec.stages().get(i).driven().body(), spec.material(), sizes)
                    .ifPresent(axles::add);
        }
        axles.forEach(axle -> limits.add(axle.limit()));
    }

    private void add(String prefix, StageSpec stage) {
        Mesh mesh = stage.mesh();
        MeshRoom room = stage.ask().room();
        meshes.add(MeshRoom.off(mesh, prefix, spec.material(), sizes));
        List<Relief> larger = List.of(new Relief(GearFields.MODULE.name(), TeethSearch.above(mesh.module())));
        List<Relief> play = List.of(
                Relief.larger(GearFields.BACKLASH.name(), mesh.backlash(), MOST_PLAY * mesh.module()), larger.get(0));
        limits.add(Limit.of(
                prefix + "backlash", "mm", "the teeth have play", stage.ask().backlashRoom(mesh.module()), play));
        limits.add(Limit.of(prefix + "tip-clearance", "mm", "tips stay off the roots", room.tips(mesh), larger));
        limits.add(new Limit(
                prefix + "contact-ratio", "1", "a pair of teeth is always in contact", room.contact(mesh), larger));
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
            double[] margins = new double[LIMITS * meshes.size() + axles.size()];
            for (int i = 0; i < meshes.size(); i++) {
                MeshOff mesh = meshes.get(i);
                MeshOff.Margins found = mesh.margins(off, 0);
                margins[LIMITS * i] = found.backlash();
                margins[LIMITS * i + 1] = found.tips();
                margins[LIMITS * i + 2] = found.contact();
            }
            for (int i = 0; i < axles.size(); i++) {
                margins[LIMITS * meshes.size() + i] = axles.get(i).margin(off);
            }
            return margins;
        };
    }

    @Override
    public List<String> families() {
        return List.of("gear");
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "Each gear's teeth are off alike: thicker or thinner, tips and roots further out or in, as calculated;"
                        + " teeth that come to a point are as much lower.",
                "What holds the axes is no part of this design: their distance is taken to be as good as "
                        + spec.material().process() + " places two edges. Runout of one gear counts as a distance.",
                "Not modelled: single teeth, pitch errors, wear, axes that are not square.");
    }
}
