// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.Optional;

/**
 * A pin of one part in a hole of another, stated once: see {@link Joints} for what follows. Copies meet one for one in
 * the order of members and places; where there are fewer holes than pins, as many pins share each.
 */
public sealed interface Joint {
    /** The part that has the pin, and the pin. */
    Held<Feature.Pin> pin();

    /** The part that has the hole, and the hole. */
    Held<? extends Feature.Hole> hole();

    Fit fit();

    /** What the judge of outlines looks after. */
    Asked asked();

    /** A feature and the role of the part that has it. */
    record Held<F extends Feature>(Role role, F feature) {}

    /**
     * What outlines are held to.
     *
     * @param check under which pins that leave their holes are reported; none where nothing moves in the other
     * @param least how near pin and hole come, mm
     * @param snug whether more room than that is wrong as well, because the design counts on no more
     * @param pair whether the two members have that distance as a figure of their own
     */
    record Asked(Optional<String> check, double least, boolean snug, boolean pair) {}

    /** A pin that turns in a bore. */
    record Revolute(String check, Held<Feature.Pin> pin, Held<Feature.Bore> hole, Fit fit) implements Joint {
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
            implements Joint {
        @Override
        public Asked asked() {
            return new Asked(Optional.of(check), Math.min(fit.around(), end), true, true);
        }
    }

    /** A pin that is set into its hole and stays: they touch, and the pin is told with the fit it is set in with. */
    record Fixed(Held<Feature.Pin> pin, Held<Feature.Bore> hole, Fit fit) implements Joint {
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
    record Screwed(String check, Held<Feature.Pin> pin, Held<Feature.Bore> hole, Fit fit, boolean snug)
            implements Joint {
        @Override
        public Asked asked() {
            return new Asked(Optional.of(check), fit.around(), snug, false);
        }
    }
}
