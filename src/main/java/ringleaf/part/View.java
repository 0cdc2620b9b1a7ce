// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import java.util.Optional;
import ringleaf.geom.Box;
import ringleaf.geom.Path;

/**
 * A picture that a mechanism wants of itself, seen from +z.
 *
 * @param name as in file names, e.g. {@code open}
 * @param state of the motion
 * @param caption what it shows, in a few words; empty to let the table of the travel say it
 * @param window what of the plane is shown, enlarged; absent for the whole
 * @param lines drawn over the picture, such as a line of action
 * @param cut height, mm, of a cut across: what begins at or above it is left out; infinite for no cut
 */
public record View(String name, int state, String caption, Optional<Box> window, List<Path> lines, double cut) {
    public View {
        lines = List.copyOf(lines);
    }

    /** Without a cut. */
    public View(String name, int state, String caption, Optional<Box> window, List<Path> lines) {
        this(name, state, caption, window, lines, Double.POSITIVE_INFINITY);
    }

    /** The whole at a state. */
    public static View of(String name, int state) {
        return new View(name, state, "", Optional.empty(), List.of());
    }

    /** What is shown when a mechanism asks for nothing else: first, middle and last state. */
    public static List<View> usual(Motion motion) {
        int last = motion.states() - 1;
        return List.of(of("open", 0), of("half", last / 2), of("closed", last));
    }
}
