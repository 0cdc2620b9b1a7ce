// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Layer;
import ringleaf.part.LeafFamily;
import ringleaf.part.Member;
import ringleaf.part.Motion;
import ringleaf.part.Part;
import ringleaf.part.Requirement;
import ringleaf.part.Saying;

/**
 * An assembly made ready for judging: each part's outlines once as plain numbers, and the states to look at.
 *
 * <p>Heights near leaves: a leaf may lie anywhere between the floor and the ceiling of its family's room, so others
 * meet it over all of that. What else rides on a leaf's body (its pins, or layers of the leaf outside the room) goes
 * up and down with it; the part of it inside the room lies within the leaf's own thickness and is judged by the
 * order of the leaves, unless it stands beyond the leaf's far face: then it is in the way of the others and meets
 * them at its full height.
 */
final class Scene {
    final Assembly assembly;
    final double tolerance;
    /** What still counts as one figure, a millionth of the tolerance, mm. */
    final double hair;

    /** Whether all states are judged, and coverage by polygons everywhere. */
    final boolean thorough;

    final List<Slab> slabs = new ArrayList<>();
    final int[] states;
    private final int bodies;
    private final Map<Part, List<Shape>> drawn = new IdentityHashMap<>();

    Scene(Assembly assembly, Options options) {
        this.assembly = assembly;
        this.tolerance = options.tolerance().length();
        this.hair = tolerance * 1e-6;
        this.thorough = options.thorough();
        int most = 0;
        for (int i = 0; i < assembly.members().size(); i++) {
            Member member = assembly.members().get(i);
            most = Math.max(most, member.body());
            addSlabs(i, member);
        }
        bodies = most + 1;
        states = pick(assembly, options.thorough());
    }

    private static int[] pick(Assembly assembly, boolean thorough) {
        Motion motion = assembly.motion();
        int last = motion.states() - 1;
        TreeSet<Integer> picked = new TreeSet<>(motion.notable());
        picked.add(0);
        picked.add(last);
        for (int i = 1; i < (thorough ? last : 10); i++) {
            picked.add(thorough ? i : (int) Math.round(i * last / 10.0));
        }
        for (Requirement requirement : assembly.requirements()) {
            if (requirement instanceof Requirement.OpensTo opens) {
                picked.add(opens.state());
            } else if (requirement instanceof Requirement.KeepsClear keeps) {
                picked.addAll(keeps.states());
            }
        }
        int[] states = new int[picked.size()];
        int n = 0;
        for (int state : picked) {
            states[n++] = state;
        }
        return states;
    }

    /** The end of a message: how many states were looked at. */
    Saying judged() {
        int all = assembly.motion().states();
        return Saying.of("verify.judged", states.length == all, states.length, all);
    }

    Pose pose(int state) {
        Placement[] moved = new Placement[bodies];
        for (int body = 0; body < bodies; body++) {
            moved[body] = assembly.motion().pose(body, state);
        }
        List<Member> members = assembly.members();
        Placement[] placed = new Placement[members.size()];
        for (int i = 0; i < placed.length; i++) {
            placed[i] = members.get(i).home().then(moved[members.get(i).body()]);
        }
        return new Pose(state, assembly.motion().label(state), moved, placed);
    }

    private void addSlabs(int index, Member member) {
        List<Layer> layers = member.layers();
        List<Shape> shapes =
                member.isFlat() ? drawn.computeIfAbsent(member.part(), p -> shapes(layers)) : shapes(layers);
        int n = 0;
        for (Layer layer : layers) {
            double[] z = {layer.zFrom(), layer.zTo()};
            boolean leafy = isLeaf(index) && inRoom(layer);
            double[] meets = leafy ? room() : meets(member, layer);
            for (int i = 0; i < layer.regions().size(); i++) {
                slabs.add(new Slab(index, member.body(), shapes.get(n++), z, meets, leafy));
            }
        }
    }

    private static List<Shape> shapes(List<Layer> layers) {
        List<Shape> shapes = new ArrayList<>();
        for (Layer layer : layers) {
            for (Region region : layer.regions()) {
                shapes.add(Shape.of(region));
            }
        }
        return shapes;
    }

    /** Index of a member's first slab. */
    int firstSlab(int member) {
        int i = 0;
        while (slabs.get(i).member != member) {
            i++;
        }
        return i;
    }

    /** What a member may go down, and what it may go up, with the leaf on whose body it rides, mm; 0 where it rides on none. */
    double[] leeway(int member) {
        Slab leaf = leafUnder(member);
        if (leaf == null) {
            return new double[2];
        }
        double[] room = room();
        return new double[] {leaf.zFrom - room[0], room[1] - leaf.zTo};
    }

    /** The leaf on whose body a member rides; null when it rides on none. */
    Slab leafUnder(int member) {
        int body = assembly.members().get(member).body();
        for (Slab slab : slabs) {
            if (slab.leafy && slab.body == body) {
                return slab;
            }
        }
        return null;
    }

    /** The slabs of a member that are no leaves. */
    List<Slab> solid(int member) {
        List<Slab> own = new ArrayList<>();
        for (Slab slab : slabs) {
            if (slab.member == member && !slab.leafy) {
                own.add(slab);
            }
        }
        return own;
    }

    boolean isLeaf(int member) {
        return assembly.leaves().isPresent()
                && assembly.leaves().get().members().contains(member);
    }

    private double[] room() {
        LeafFamily family = assembly.leaves().orElseThrow();
        return new double[] {family.zFrom(), family.zTo()};
    }

    private boolean inRoom(Layer layer) {
        double[] room = room();
        return layer.zFrom() >= room[0] - hair && layer.zTo() <= room[1] + hair;
    }

    private double[] meets(Member member, Layer layer) {
        Layer leaf = leafOfBody(member.body());
        double[] z = {layer.zFrom(), layer.zTo()};
        if (leaf == null) {
            return z;
        }
        double[] room = room();
        boolean fromBelow = z[1] <= leaf.zTo() + hair;
        boolean fromAbove = z[0] >= leaf.zFrom() - hair;
        if (fromBelow) {
            return new double[] {z[0], Math.max(z[0], Math.min(z[1], room[0]))};
        }
        return fromAbove ? new double[] {Math.min(z[1], Math.max(z[0], room[1])), z[1]} : z;
    }

    /** The layer of the leaf that rides on the body, or null when none does. */
    private Layer leafOfBody(int body) {
        if (assembly.leaves().isEmpty()) {
            return null;
        }
        for (int leaf : assembly.leaves().get().members()) {
            Member member = assembly.members().get(leaf);
            if (member.body() != body) {
                continue;
            }
            for (Layer layer : member.part().layers()) {
                if (inRoom(layer)) {
                    return layer;
                }
            }
        }
        return null;
    }
}
