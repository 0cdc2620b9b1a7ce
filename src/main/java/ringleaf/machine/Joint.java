// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.part.Requirement;

/** What two parts have of one another, stated once: see {@link Joints} for what follows. */
public sealed interface Joint {
    /** A feature and the role of the part that has it. */
    record Held<F extends Feature>(Role role, F feature) {}

    /**
     * A pin of one part in a hole of another. Copies meet one for one in the order of members and places; where there are
     * fewer holes than pins, as many pins share each.
     */
    sealed interface InHole extends Joint {
        /** The part that has the pin, and the pin. */
        Held<? extends Feature.Peg> pin();

        /** The part that has the hole, and the hole. */
        Held<? extends Feature.Hole> hole();

        Fit fit();

        /** What the judge of outlines looks after. */
        Asked asked();
    }

    /**
     * What outlines are held to.
     *
     * @param check under which pins that leave their holes are reported; none where nothing moves in the other
     * @param least how near pin and hole come, mm
     * @param snug whether more room than that is wrong as well, because the design counts on no more
     * @param pair whether the two members have that distance as a figure of their own
     */
    record Asked(Optional<String> check, double least, boolean snug, boolean pair) {}

    /** A pin that turns in a bore, or a part on its axle. */
    record Revolute(String check, Held<Feature.Pin> pin, Held<Feature.Bore> hole, Fit fit) implements InHole {
        @Override
        public Asked asked() {
            return new Asked(Optional.of(check), fit.around(), true, true);
        }
    }

    /**
     * A pin that slides in a slot and turns in it.
     *
     * @param end room that is left at either end of the slot, mm
     */
    record PinInSlot(String check, Held<Feature.Pin> pin, Held<Feature.Slot> hole, Fit fit, double end)
            implements InHole {
        @Override
        public Asked asked() {
            return new Asked(Optional.of(check), Math.min(fit.around(), end), true, true);
        }
    }

    /**
     * A part that slides: its pins stand in straight slots in line, so it cannot turn.
     *
     * @param end way that is left at either end of the slots, mm
     */
    record Prismatic(String check, Held<Feature.Pin> pin, Held<Feature.Slot> hole, Fit fit, double end)
            implements InHole {
        @Override
        public Asked asked() {
            return new Asked(Optional.of(check), Math.min(fit.around(), end), true, true);
        }
    }

    /** A pin that is set into its hole and stays: they touch, and the pin is told with the fit it is set in with. */
    record Fixed(Held<? extends Feature.Peg> pin, Held<? extends Feature.Hole> hole, Fit fit) implements InHole {
        @Override
        public Asked asked() {
            return new Asked(Optional.empty(), 0, false, true);
        }
    }

    /**
     * A screw that passes through a plate.
     *
     * @param snug whether holes are drawn for it, and no wider
     */
    record Screwed(String check, Held<Feature.Pin> pin, Held<? extends Feature.Hole> hole, Fit fit, boolean snug)
            implements InHole {
        @Override
        public Asked asked() {
            return new Asked(Optional.of(check), fit.around(), snug, false);
        }
    }

    /**
     * Two that roll on one another without slip: gear on gear, a gear on a rack, a pulley on its belt.
     *
     * @param ratio turn of the second for a turn of the first, counter-clockwise positive for both; rad per mm where the
     *     first slides or runs
     * @param touches whether the two may touch where they meet; else 0 still asks for room
     * @param mesh what their teeth are held to; none where the way of each tooth is judged as a member's
     */
    record Rolling(Mover first, Mover.Turns second, double ratio, boolean touches, Optional<Mesh> mesh)
            implements Joint {}

    /** A part that rolls on another, and how it moves. */
    sealed interface Mover {
        Role role();

        /** About an axis of the mechanism's frame in state 0. */
        record Turns(Role role, Point axis) implements Mover {}

        /** Along a direction of length 1. */
        record Slides(Role role, Point direction) implements Mover {}

        /** Along its own line, as a belt does. */
        record Runs(Role role) implements Mover {}
    }

    /**
     * What teeth that are rolled through one another are held to; as {@link Requirement.Meshes} has it.
     *
     * @param rolled moves of the first that are rolled through
     * @param gap least distance of the outlines in the middle of the play, mm; 0 allows them to touch
     * @param play of the second, rad
     * @param tolerance by how much the play may miss, as a length at the second's reach, mm
     */
    record Mesh(Requirement.Rolled rolled, double gap, double play, double tolerance) {}
}
