// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.BuildStep;
import ringleaf.part.Words;

/** How a trial piece is put together, and what it tells. */
final class TrialSteps {
    private final ApertureDesign design;
    private final ApertureSpec spec;
    private final int blades;
    private final boolean closes;

    /** Steps for so many blades, which close as far as in the whole or are stopped before. */
    TrialSteps(ApertureDesign design, int blades, boolean closes) {
        this.closes = closes;
        this.design = design;
        this.spec = design.spec();
        this.blades = blades;
    }

    List<BuildStep> steps() {
        Stack stack = design.stack();
        List<String> words = new ArrayList<>();
        words.add(
                "Cut the pieces from scrap of the very stock, on the very machine, that the whole set is to be made of;"
                        + " deburr them.");
        words.addAll(new PinWords(design).all(blades));
        words.add("Push the screw (" + spec.screw().name() + ") up through the hole at the tip of trial-base and put"
                + " trial-washer on it; it keeps the ring " + Words.mm(stack.cavity()) + " above the base.");
        String next = spec.mirrored() ? "counter-clockwise" : "clockwise";
        words.add("Lay blade " + blades + " first and each next one in the bore " + next
                + " of the last, so that the blade nearer its tip lies over the one nearer its root.");
        words.add(
                "Lower trial-ring over the drive pins and the screw, tighten a nut until the ring only just turns, and lock it"
                        + " with the other.");
        words.add(
                "Pins: every blade must fall by its own weight before the ring is on. If not, open bores or slots by half"
                        + " of what they bind (clearances.bore, clearances.slot), or set the pins squarer.");
        words.add(
                "Slope: seen from the side the blades rise from the base at their roots to the ring at their tips. If they"
                        + " pry the ring up, the cavity is too low: measure the sheet with its burr, and give more"
                        + " clearances.blade-play.");
        words.add("Friction: hold trial-base and swing trial-ring by " + Words.degrees(Math.abs(design.travel()), 0)
                + " with one finger, both ways. Where it sticks, look at that pin in its slot; "
                + (closes
                        ? "at the far end the blades stand as when closed."
                        : "the washer stops the blades before they are closed."));
        List<BuildStep> steps = new ArrayList<>();
        for (String each : words) {
            steps.add(BuildStep.of(each));
        }
        return steps;
    }
}
