// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringleaf.draw.svg.PathData;
import ringleaf.geom.Box;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;

/** What the views of an assembly share: its parts and paints, which members are leaves, how much room all take. */
final class Scene {
    private static final double TINY = 0.01;

    private final Assembly assembly;
    private final List<Part> parts;
    private final Palette palette;
    private final Set<Integer> leaves = new LinkedHashSet<>();
    private final Box body;
    private final double roof;
    private final Map<Layer, String> outlines = new IdentityHashMap<>();

    Scene(Assembly put) {
        this.assembly = put.seen();
        // By name: to compare outlines would cost more than to paint them.
        Map<String, Part> distinct = new LinkedHashMap<>();
        for (Member member : assembly.members()) {
            distinct.putIfAbsent(member.part().name(), member.part());
        }
        parts = new ArrayList<>(distinct.values());
        palette = new Palette(parts);
        if (assembly.leaves().isPresent() && !assembly.leaves().get().members().isEmpty()) {
            leaves.addAll(assembly.leaves().get().members());
        }
        body = body();
        roof = roof();
    }

    Assembly assembly() {
        return assembly;
    }

    /** Distinct parts in the order of the members. */
    List<Part> parts() {
        return parts;
    }

    Palette palette() {
        return palette;
    }

    boolean isLeaf(int member) {
        return leaves.contains(member);
    }

    /** What all members take up in the plane over the whole travel, as far as open, half and closed show it. */
    Box box() {
        return body;
    }

    int halfState() {
        return (assembly.motion().states() - 1) / 2;
    }

    int lastState() {
        return assembly.motion().states() - 1;
    }

    Placement placed(int member, int state) {
        return assembly.members().get(member).placed(assembly.motion(), state);
    }

    /** The path data of a layer as its part is drawn; written once for all views. */
    String outline(Layer layer) {
        String outline = outlines.get(layer);
        if (outline == null) {
            PathData data = new PathData(Sheet.DECIMALS);
            for (Region region : layer.regions()) {
                data.add(region);
            }
            outline = data.toString();
            outlines.put(layer, outline);
        }
        return outline;
    }

    /** Whether a layer would hide the leaves, or what moves, from above. */
    boolean isAbove(Layer layer) {
        return layer.zFrom() >= roof - TINY;
    }

    /** The layer with the most material: a leaf's blade, where its pins are layers too. */
    static Layer widest(Part part) {
        Layer widest = part.layers().get(0);
        double most = 0;
        for (Layer layer : part.layers()) {
            double area = 0;
            for (Region region : layer.regions()) {
                area += region.area();
            }
            if (area > most) {
                most = area;
                widest = layer;
            }
        }
        return widest;
    }

    private Box body() {
        Box box = null;
        for (int state : new int[] {0, halfState(), lastState()}) {
            for (int i = 0; i < assembly.members().size(); i++) {
                Placement placement = placed(i, state);
                for (Layer layer : assembly.members().get(i).part().layers()) {
                    for (Region region : layer.regions()) {
                        Box own = region.outer().placed(placement).box();
                        box = box == null ? own : box.union(own);
                    }
                }
            }
        }
        return box;
    }

    private double roof() {
        if (assembly.leaves().isPresent()) {
            return assembly.leaves().get().zTo();
        }
        double top = Double.NEGATIVE_INFINITY;
        for (Member member : assembly.members()) {
            if (member.body() != 0) {
                top = Math.max(top, member.part().zTo());
            }
        }
        return top == Double.NEGATIVE_INFINITY ? Double.POSITIVE_INFINITY : top;
    }
}
