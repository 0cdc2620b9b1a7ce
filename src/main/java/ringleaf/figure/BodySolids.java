// SPDX-License-Identifier: Apache-2.0
package ringleaf.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.mesh.PartMesh;
import ringleaf.geom.Region;
import ringleaf.geom.Tolerance;
import ringleaf.part.Assembly;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;
import ringleaf.solid.Mesh;
import ringleaf.solid.Solid;
import ringleaf.space.Pose;
import ringleaf.space.Vector;
import ringleaf.verify.SetupJudge;

/**
 * The solid of everything that rides on one body, in its mechanism's frame in state 0: a closed surface round each
 * outline of each level. What rides on a leaf reaches over all heights that the leaf may take.
 */
final class BodySolids {
    /** By how much chords leave the arcs, mm; it is taken off every distance. */
    static final Tolerance CHORD = new Tolerance(0.005);

    private BodySolids() {}

    /** Empty where nothing with an outline rides on the body, or where an outline bounds no solid. */
    static Optional<Solid> of(Assembly assembly, int body) {
        List<double[]> leeways = SetupJudge.leeways(assembly);
        List<Mesh> shells = new ArrayList<>();
        for (int i = 0; i < assembly.members().size(); i++) {
            Member member = assembly.members().get(i);
            if (member.body() != body) {
                continue;
            }
            double[] leeway = leeways.get(i);
            for (Layer layer : member.part().layers()) {
                for (Region region : layer.regions()) {
                    Layer own = Layer.of(region, layer.zFrom() - leeway[0], layer.zTo() + leeway[1]);
                    Optional<Mesh> shell = PartMesh.of(alone(member.part(), own), CHORD);
                    if (shell.isEmpty()) {
                        return Optional.empty();
                    }
                    shells.add(placed(shell.get(), member));
                }
            }
        }
        return shells.isEmpty() ? Optional.empty() : Optional.of(new Solid(joined(shells), CHORD.length()));
    }

    private static Part alone(Part part, Layer layer) {
        return new Part(part.name(), part.family(), 1, part.source(), List.of(layer), List.of(), "");
    }

    private static Mesh placed(Mesh mesh, Member member) {
        Pose home = member.stood().then(Pose.of(member.home()));
        double[] corners = mesh.corners().clone();
        for (int i = 0; i < corners.length; i += 3) {
            Vector at = home.apply(new Vector(corners[i], corners[i + 1], corners[i + 2]));
            corners[i] = at.x();
            corners[i + 1] = at.y();
            corners[i + 2] = at.z();
        }
        return new Mesh(corners, mesh.triangles());
    }

    private static Mesh joined(List<Mesh> shells) {
        double[] corners =
                new double[shells.stream().mapToInt(m -> m.corners().length).sum()];
        int[] triangles =
                new int[shells.stream().mapToInt(m -> m.triangles().length).sum()];
        int c = 0;
        int t = 0;
        for (Mesh shell : shells) {
            System.arraycopy(shell.corners(), 0, corners, c, shell.corners().length);
            for (int corner : shell.triangles()) {
                triangles[t++] = corner + c / 3;
            }
            c += shell.corners().length;
        }
        return new Mesh(corners, triangles);
    }
}
