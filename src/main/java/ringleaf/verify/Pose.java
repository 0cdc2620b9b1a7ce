// SPDX-License-Identifier: Apache-2.0
package ringleaf.verify;

import ringleaf.geom.Placement;
import ringleaf.geom.Point;

/** Every member in its place in one state. */
final class Pose {
    final int state;
    final String label;
    /** Of each body, from its pose in state 0. */
    final Placement[] bodies;
    /** Of each member, from its part's drawing. */
    final Placement[] members;
    /** Each slab of the scene in its place; filled by whoever judges the state. */
    Shape[] shapes;

    Pose(int state, String label, Placement[] bodies, Placement[] members) {
        this.state = state;
        this.label = label;
        this.bodies = bodies;
        this.members = members;
    }

    void place(Scene scene) {
        Shape[] placed = new Shape[scene.slabs.size()];
        for (int i = 0; i < placed.length; i++) {
            Slab slab = scene.slabs.get(i);
            placed[i] = slab.drawn.placed(members[slab.member]);
        }
        shapes = placed;
    }

    /** The area that two slabs share, seen along the axis, mm²; 0 where they do no more than touch. */
    double shared(Scene scene, Slab first, Slab second) {
        Shape a = shapes[scene.slabs.indexOf(first)];
        Shape b = shapes[scene.slabs.indexOf(second)];
        double area = SharedArea.of(a, b, scene.tolerance / 1000);
        return area < scene.tolerance * scene.tolerance ? 0 : area;
    }

    /** A point on the outline of the smaller of two slabs. */
    Point nearBoth(Scene scene, Slab first, Slab second) {
        Shape a = shapes[scene.slabs.indexOf(first)];
        Shape b = shapes[scene.slabs.indexOf(second)];
        return (a.maxX - a.minX < b.maxX - b.minX ? a : b).pieces[0].middle();
    }
}
