// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.svg.PathData;
import ringleaf.geom.Box;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Family;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;

/**
 * What a page needs to draw a mechanism and to move it: every distinct outline once, as path data, and who has it, in
 * the order in which they are painted as seen from above. Outlines are as the parts are drawn; a member's placement
 * brings them to their place.
 */
public final class MovingView {

    /** How a sheaf stands to the others. */
    public enum Role {
        /** Painted as it is, low ones first. */
        UNDER,
        /** Leaves, each over the one before, all the way round. */
        LEAVES,
        /** Over leaves and moving with the drive: shines through. */
        OVER,
        /** Small and painted over what would hide it. */
        PIN,
        /** Over everything and standing still: only its edge is seen. */
        COVER
    }

    /**
     * One layer of a part, with all members that have it.
     *
     * @param part index into {@link #parts()}
     * @param role how it is painted
     * @param zFrom lower face, mm
     * @param zTo upper face, mm
     * @param outline path data, y down
     * @param edge path data of the outer contour alone where the members are leaves, else empty
     * @param marks path data of what is engraved, or empty
     * @param members indices into the assembly's members, in the order of painting
     */
    public record Sheaf(
            int part,
            Role role,
            double zFrom,
            double zTo,
            String outline,
            String edge,
            String marks,
            List<Integer> members) {}

    /**
     * Colours of a part, as {@code #rrggbb}.
     *
     * @param fill of its face
     * @param second tint of every other leaf
     * @param third tint between the two
     * @param line of its outline on light paper
     * @param side of its wall
     */
    public record Tints(String fill, String second, String third, String line, String side) {}

    private final Scene scene;
    private final List<Sheaf> sheaves;

    private MovingView(Scene scene) {
        this.scene = scene;
        this.sheaves = sort();
    }

    /** The view of an assembly with at least one member that has an outline. */
    public static MovingView of(Assembly assembly) {
        return new MovingView(new Scene(assembly));
    }

    Scene scene() {
        return scene;
    }

    /** What all members take up in the plane, as far as first, middle and last state show it, mm. */
    public Box box() {
        return scene.box();
    }

    /** Distinct parts in the order of the members. */
    public List<Part> parts() {
        return scene.parts();
    }

    /** Indices of the parts, the highest first. */
    public List<Integer> fromTheTop() {
        List<Integer> order = new ArrayList<>();
        for (int i = scene.parts().size() - 1; i >= 0; i--) {
            int at = order.size();
            while (at > 0
                    && scene.parts().get(order.get(at - 1)).zTo()
                            < scene.parts().get(i).zTo()) {
                at--;
            }
            order.add(at, i);
        }
        return order;
    }

    public Tints tints(int part) {
        Palette.Paint paint = scene.palette().of(scene.parts().get(part));
        return new Tints(paint.fill(), paint.second(), paint.third(), paint.line(), paint.side());
    }

    /** In the order of painting. */
    public List<Sheaf> sheaves() {
        return sheaves;
    }

    /** Path data of the disc that leaves are to clear, y down; absent without leaves. */
    public Optional<String> clear() {
        if (scene.assembly().leaves().isEmpty()) {
            return Optional.empty();
        }
        Region clear = scene.assembly().leaves().get().clear();
        return Optional.of(new PathData(Sheet.DECIMALS).add(clear).toString());
    }

    /** The leaves in laying order, or none. */
    public List<Integer> leaves() {
        return scene.assembly().leaves().isPresent()
                ? scene.assembly().leaves().get().members()
                : List.of();
    }

    /** A placement as an SVG transform of what is drawn with y down. */
    public static String transform(Placement placement) {
        return PlanPainter.transform(placement);
    }

    private List<Sheaf> sort() {
        List<List<Sheaf>> byRole = new ArrayList<>();
        for (int i = 0; i < Role.values().length; i++) {
            byRole.add(new ArrayList<>());
        }
        for (int part = 0; part < scene.parts().size(); part++) {
            List<Integer> members = members(scene.parts().get(part).name());
            for (Layer layer : scene.parts().get(part).layers()) {
                Sheaf sheaf = sheaf(part, layer, members);
                byRole.get(sheaf.role().ordinal()).add(sheaf);
            }
        }
        List<Sheaf> all = new ArrayList<>();
        for (List<Sheaf> own : byRole) {
            for (Sheaf sheaf : own) {
                // Few and nearly in order already; of equal height in the order of the parts.
                int at = all.size();
                while (at > 0
                        && all.get(at - 1).role() == sheaf.role()
                        && all.get(at - 1).zFrom() > sheaf.zFrom()) {
                    at--;
                }
                all.add(at, sheaf);
            }
        }
        return all;
    }

    private List<Integer> members(String part) {
        List<Integer> members = new ArrayList<>();
        for (int i = 0; i < scene.assembly().members().size(); i++) {
            if (scene.assembly().members().get(i).part().name().equals(part)) {
                members.add(i);
            }
        }
        return members;
    }

    private Sheaf sheaf(int index, Layer layer, List<Integer> members) {
        Part part = scene.parts().get(index);
        Role role = role(part, layer, members.get(0));
        String edge = "";
        List<Integer> own = members;
        if (role == Role.LEAVES) {
            own = leaves();
            PathData data = new PathData(Sheet.DECIMALS);
            for (Region region : layer.regions()) {
                data.add(region.outer());
            }
            edge = data.toString();
        }
        return new Sheaf(index, role, layer.zFrom(), layer.zTo(), scene.outline(layer), edge, marks(layer), own);
    }

    private Role role(Part part, Layer layer, int member) {
        boolean leaf = scene.isLeaf(member);
        if (leaf && layer == Scene.widest(part)) {
            return Role.LEAVES;
        }
        if (leaf || part.family() == Family.PIN) {
            return Role.PIN;
        }
        if (!scene.isAbove(layer)) {
            return Role.UNDER;
        }
        Member one = scene.assembly().members().get(member);
        return one.body() == 0 ? Role.COVER : Role.OVER;
    }

    private static String marks(Layer layer) {
        if (layer.marks().isEmpty()) {
            return "";
        }
        PathData data = new PathData(Sheet.DECIMALS);
        for (Path mark : layer.marks()) {
            data.add(mark);
        }
        return data.toString();
    }
}
