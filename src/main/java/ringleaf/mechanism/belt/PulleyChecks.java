// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.groove.RollCheck;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Place;
import ringleaf.part.Words;

/** What must hold of one pulley, by its own geometry. */
final class PulleyChecks {
    /** Overlap that arcs within half a micrometre of their curves may leave, mm: the slack of what is rolled. */
    private static final double TOUCH = 0.001;
    /** Share of the pitch by which rubber gives way in a tabulated groove; an assumption. */
    static final double GIVES = 0.03;
    /** Play beyond the backlash that is not worth a word, as a share of the pitch; an assumption. */
    private static final double SLIGHT = 0.02;

    private final PulleySpec spec;
    private final RollCheck rolled;
    private final String name;
    private final double pitch;

    private PulleyChecks(PulleySpec spec, PulleyStack stack) {
        this.spec = spec;
        this.rolled = spec.rim().rolled();
        this.name = spec.partName("pulley");
        this.pitch = spec.choice().belt().pitch();
    }

    static List<Finding> of(PulleySpec spec, PulleyStack stack) {
        PulleyChecks checks = new PulleyChecks(spec, stack);
        List<Finding> all = new ArrayList<>();
        all.add(checks.toothEntry());
        all.add(checks.backlash());
        all.add(checks.tipClearance());
        all.add(checks.rim());
        if (spec.flanges() > 0) {
            all.add(checks.flangeHeight());
            if (stack.seatRadius() == 0 && spec.joining().isEmpty()) {
                all.add(Finding.of("flange-seat")
                        .about(checks.name)
                        .orWarn()
                        .plain(false)
                        .inWords(
                                "There is room neither for a seat nor for joining screws: the flanges are glued, lined up by the"
                                        + " bore."));
            }
        }
        all.add(Finding.of("face-width")
                .about(checks.name)
                .atLeast(stack.face(), spec.choice().width(), "mm")
                .inWords("The belt has " + Words.mm(stack.face() - spec.choice().width())
                        + " of room along the shaft."));
        return all;
    }

    /** Figures that are measured on the finished outline, rolled against the belt's tooth. */
    private Finding.Draft rolledOn(String check) {
        return Finding.of(check).about(name).onOutlines(TOUCH);
    }

    private Finding toothEntry() {
        double overlap = rolled.overlap();
        if (overlap <= TOUCH) {
            return rolledOn("tooth-entry")
                    .atMost(overlap, 0, "mm")
                    .inWords("The belt's tooth enters and leaves its groove without touching the edges.");
        }
        boolean generated = spec.choice().generated();
        String message = "The belt's tooth reaches " + Words.mm(overlap) + " into the groove's edge as it enters";
        return rolledOn("tooth-entry")
                .at(Place.state(-1, "tooth " + Words.mm(rolled.overlapAt()) + " from seated"))
                .atMost(overlap, generated ? 0 : GIVES * pitch, 0, "mm")
                .inWords(message
                        + (!generated && overlap <= GIVES * pitch
                                ? "; rubber gives way by that much, a generated groove need not."
                                : "."));
    }

    private Finding backlash() {
        double play = rolled.play();
        Finding.Draft draft = rolledOn("backlash").orWarn();
        if (!spec.choice().generated()) {
            return draft.room(play, 0, "mm")
                    .inWords("A seated tooth has " + Words.mm(Math.max(0, play)) + " of play in the tabulated groove.");
        }
        double asked = spec.choice().backlash();
        if (play <= TOUCH) {
            return draft.room(play, asked, "mm")
                    .inWords("A seated tooth has no play: it has to be pressed into its groove.");
        }
        draft.about(play, asked, SLIGHT * pitch, "mm");
        return draft.inWords(
                draft.isHeld()
                        ? "A seated tooth has " + Words.mm(play) + " of play, " + Words.mm(asked) + " of it asked for."
                        : "On so small a pulley the tooth's tip swings wide as it enters, and leaves a seated tooth "
                                + Words.mm(play) + " of play; more teeth leave less.");
    }

    private Finding tipClearance() {
        double tip = rolled.tipRoom();
        double asked = spec.choice().generated() ? spec.choice().clearance() : 0;
        Finding.Draft draft = rolledOn("tip-clearance");
        draft = tip < -TOUCH ? draft : draft.orWarn();
        return draft.room(tip, asked, "mm")
                .inWords(
                        tip > TOUCH
                                ? "A seated tooth's tip stays " + Words.mm(tip) + " above the groove's bottom."
                                : "A seated tooth stands on its tip; some clearance lets the belt lie on the rim.");
    }

    /** What stands between the grooves and the cuts inside them, bore or screws. */
    private Finding rim() {
        double hub = Math.max(
                spec.body().hubReach(),
                spec.joining().isPresent() ? spec.joining().get().reach() : 0);
        double left = spec.rim().rootRadius() - hub;
        return Finding.of("rim-thickness")
                .about(name)
                .atLeast(left, spec.material().leastWeb(), "mm")
                .inWords(Words.mm(left) + " of material stands between the grooves and what is cut inside them.");
    }

    private Finding flangeHeight() {
        double height = spec.flangeDiameter() / 2 - spec.rim().outsideRadius();
        double least =
                spec.choice().belt().flangeHeight().orElse(spec.choice().belt().pitchLine());
        return Finding.of("flange-height")
                .about(spec.partName("flange"))
                .atLeast(height, least, "mm")
                .inWords("The flanges stand " + Words.mm(height) + " over the rim.");
    }
}
