// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import ringleaf.curve.Overlay;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.part.Assembly;
import ringleaf.part.Layer;
import ringleaf.part.Member;
import ringleaf.part.Part;

/** Sets faults into a finished assembly, as a slip of the hand in a drawing would; what is required of it stays. */
final class Faults {
    private Faults() {}

    /** Every copy of a part changed. */
    static UnaryOperator<Assembly> part(String name, UnaryOperator<Part> fault) {
        return assembly -> {
            Map<Part, Part> changed = new IdentityHashMap<>();
            List<Member> members = new ArrayList<>();
            for (Member member : assembly.members()) {
                boolean meant = member.part().name().equals(name);
                Part part = meant ? changed.computeIfAbsent(member.part(), fault) : member.part();
                members.add(new Member(member.name(), part, member.body(), member.home()));
            }
            if (changed.isEmpty()) {
                throw new AssertionError("no part " + name);
            }
            return with(assembly, members);
        };
    }

    /** One member moved from its place. */
    static UnaryOperator<Assembly> moved(String name, Placement by) {
        return assembly -> {
            List<Member> members = new ArrayList<>(assembly.members());
            for (int i = 0; i < members.size(); i++) {
                Member m = members.get(i);
                if (m.name().equals(name)) {
                    members.set(
                            i, new Member(m.name(), m.part(), m.body(), m.home().then(by)));
                    return with(assembly, members);
                }
            }
            throw new AssertionError("no member " + name);
        };
    }

    private static Assembly with(Assembly a, List<Member> members) {
        return new Assembly(
                a.name(), members, a.motion(), a.leaves(), a.requirements(), a.callouts(), a.steps(), a.views());
    }

    /** All outlines of one level, from the bed up, or of all where {@code level} is -1. */
    static UnaryOperator<Part> outlines(int level, UnaryOperator<Region> fault) {
        return part -> {
            List<Layer> layers = new ArrayList<>();
            for (int i = 0; i < part.layers().size(); i++) {
                Layer layer = part.layers().get(i);
                boolean meant = level < 0 || level == i;
                layers.add(
                        meant
                                ? layer.withRegions(
                                        layer.regions().stream().map(fault).toList())
                                : layer);
            }
            return part.withLayers(layers);
        };
    }

    /** Heights of the lowest and the highest face of every level moved. */
    static UnaryOperator<Part> heights(double bottom, double top) {
        return part -> part.withLayers(part.layers().stream()
                .map(l -> new Layer(l.regions(), l.zFrom() + bottom, l.zTo() + top, l.marks()))
                .toList());
    }

    /** The hole that encloses a point changed; there must be one. */
    static UnaryOperator<Region> hole(Point in, UnaryOperator<Contour> fault) {
        return region -> {
            List<Contour> holes = new ArrayList<>();
            int found = 0;
            for (Contour hole : region.holes()) {
                boolean meant = ringleaf.curve.Containment.of(hole, in, 0) == ringleaf.curve.Containment.INSIDE;
                found += meant ? 1 : 0;
                Contour made = meant ? fault.apply(hole) : hole;
                if (made != null) {
                    holes.add(made);
                }
            }
            if (found != 1) {
                throw new AssertionError(found + " holes about " + in);
            }
            return new Region(region.outer(), holes);
        };
    }

    static UnaryOperator<Region> filled(Region with) {
        return region -> largest(Overlay.union(List.of(region, with)));
    }

    static UnaryOperator<Region> cut(Region away) {
        return region -> largest(Overlay.difference(List.of(region), List.of(away)));
    }

    static UnaryOperator<Region> shifted(double x, double y) {
        return region -> region.placed(Placement.shift(x, y));
    }

    private static Region largest(List<Region> regions) {
        Region largest = regions.get(0);
        for (Region region : regions) {
            largest = region.area() > largest.area() ? region : largest;
        }
        return largest;
    }
}
