// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.groove.RollCheck;
import ringleaf.part.Figure;
import ringleaf.part.Finding;
import ringleaf.part.Finding.Place;

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
                        .says("belt.flange-seat"));
            }
        }
        all.add(Finding.of("face-width")
                .about(checks.name)
                .atLeast(stack.face(), spec.choice().width(), "mm")
                .says("belt.face-width", Figure.mm(stack.face() - spec.choice().width())));
        return all;
    }

    /** Figures that are measured on the finished outline, rolled against the belt's tooth. */
    private Finding.Draft rolledOn(String check) {
        return Finding.of(check).about(name).onOutlines(TOUCH);
    }

    private Finding toothEntry() {
        double overlap = rolled.overlap();
        if (overlap <= TOUCH) {
            return rolledOn("tooth-entry").atMost(overlap, 0, "mm").says("belt.tooth-clear");
        }
        boolean generated = spec.choice().generated();
        return rolledOn("tooth-entry")
                .at(Place.when("belt.from-seated", Figure.mm(rolled.overlapAt())))
                .atMost(overlap, generated ? 0 : GIVES * pitch, 0, "mm")
                .says("belt.tooth-entry", Figure.mm(overlap), !generated && overlap <= GIVES * pitch);
    }

    private Finding backlash() {
        double play = rolled.play();
        Finding.Draft draft = rolledOn("backlash").orWarn();
        if (!spec.choice().generated()) {
            return draft.room(play, 0, "mm").says("belt.play-tabulated", Figure.mm(Math.max(0, play)));
        }
        double asked = spec.choice().backlash();
        if (play <= TOUCH) {
            return draft.room(play, asked, "mm").says("belt.play-none");
        }
        draft.about(play, asked, SLIGHT * pitch, "mm");
        return draft.says("belt.play", draft.isHeld(), Figure.mm(play), Figure.mm(asked));
    }

    private Finding tipClearance() {
        double tip = rolled.tipRoom();
        double asked = spec.choice().generated() ? spec.choice().clearance() : 0;
        Finding.Draft draft = rolledOn("tip-clearance");
        draft = tip < -TOUCH ? draft : draft.orWarn();
        return draft.room(tip, asked, "mm").says("belt.tip-room", tip > TOUCH, Figure.mm(tip));
    }

    /** What stands between the grooves and the cuts inside them, bore or screws. */
    private Finding rim() {
        double root = spec.rim().rootRadius();
        double left = spec.body().web(root, spec.rim().groove().outline(0));
        if (spec.joining().isPresent()) {
            left = Math.min(left, root - spec.joining().get().reach());
        }
        return Finding.of("rim-thickness")
                .about(name)
                .atLeast(left, spec.material().leastWeb(), "mm")
                .says("belt.rim", Figure.mm(left));
    }

    private Finding flangeHeight() {
        double height = spec.flangeDiameter() / 2 - spec.rim().outsideRadius();
        double least =
                spec.choice().belt().flangeHeight().orElse(spec.choice().belt().pitchLine());
        return Finding.of("flange-height")
                .about(spec.partName("flange"))
                .atLeast(height, least, "mm")
                .says("belt.flange-height", Figure.mm(height));
    }
}
