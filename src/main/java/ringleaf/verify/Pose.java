package ringleaf.verify;

import ringleaf.geom.Placement;

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
}
