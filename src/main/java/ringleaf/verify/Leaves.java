// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Angles;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.LeafFamily;
import ringleaf.part.Part;

/** The leaves of a family in one state. */
final class Leaves {
    private final List<List<Shape>> shapes = new ArrayList<>();
    private final boolean alike;

    Leaves(Scene scene, Pose pose, LeafFamily family) {
        for (int member : family.members()) {
            List<Shape> own = new ArrayList<>();
            for (int i = 0; i < pose.shapes.length; i++) {
                Slab slab = scene.slabs.get(i);
                if (slab.leafy && slab.member == member) {
                    own.add(pose.shapes[i]);
                }
            }
            shapes.add(own);
        }
        alike = alike(scene, pose, family);
    }

    int count() {
        return shapes.size();
    }

    List<Shape> shapes(int leaf) {
        return shapes.get(leaf);
    }

    /** Whether each leaf is the first one turned about the origin by its share of a full turn, either way round. */
    boolean alike() {
        return alike;
    }

    /** Whether the leaf lies over the point. */
    boolean covers(int leaf, double x, double y) {
        List<Shape> own = shapes.get(leaf);
        for (int i = 0; i < own.size(); i++) {
            if (own.get(i).contains(x, y)) {
                return true;
            }
        }
        return false;
    }

    private static boolean alike(Scene scene, Pose pose, LeafFamily family) {
        List<Integer> members = family.members();
        if (members.isEmpty()) {
            return false;
        }
        Part part = scene.assembly.members().get(members.get(0)).part();
        Placement first = pose.members[members.get(0)];
        Shape drawn = scene.slabs.get(scene.firstSlab(members.get(0))).drawn;
        Point probe = new Point(drawn.maxX, drawn.maxY);
        // A turned copy may stray by this much at the size of the part without being told apart.
        double slack = scene.tolerance * 1e-3;
        for (int way = 1; way >= -1; way -= 2) {
            boolean all = true;
            for (int k = 1; k < members.size() && all; k++) {
                Placement turned = first.then(Placement.turn(way * k * Angles.TURN / members.size()));
                Placement own = pose.members[members.get(k)];
                all = scene.assembly.members().get(members.get(k)).part() == part
                        && own.apply(Point.ORIGIN).distance(turned.apply(Point.ORIGIN)) <= slack
                        && own.apply(probe).distance(turned.apply(probe)) <= slack;
            }
            if (all) {
                return true;
            }
        }
        return false;
    }
}
