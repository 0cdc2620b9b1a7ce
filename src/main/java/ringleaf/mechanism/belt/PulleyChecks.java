package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.groove.RollCheck;
import ringleaf.part.Finding;
import ringleaf.part.Words;

/** What must hold of one pulley, by its own geometry. */
final class PulleyChecks {
    /** Overlap that arcs within half a micrometre of their curves may leave, mm. */
    private static final double TOUCH = 0.001;
    /** Share of the pitch by which rubber gives way in a tabulated groove; an assumption. */
    static final double GIVES = 0.03;
    /** Play beyond the backlash that is not worth a word, as a share of the pitch; an assumption. */
    private static final double SLIGHT = 0.02;

    private PulleyChecks() {}

    static List<Finding> of(PulleySpec spec, PulleyStack stack) {
        List<Finding> all = new ArrayList<>();
        PulleyRim rim = spec.rim();
        RollCheck rolled = rim.rolled();
        String where = spec.name().isEmpty() ? "pulley" : spec.name();
        all.add(rollsOn(spec, rolled, where));
        all.add(seats(spec, rolled, where));
        all.add(Finding.atLeast(
                "tip-room",
                rolled.tipRoom(),
                0,
                "mm",
                where,
                "A seated tooth's tip stays " + Words.mm(Math.max(0, rolled.tipRoom()))
                        + " above the groove's bottom."));
        double web = spec.material().leastWeb();
        double hub = Math.max(
                spec.body().hubReach(), spec.joining().isPresent() ? spec.joining().get().reach() : 0);
        double left = rim.rootRadius() - hub;
        all.add(Finding.atLeast(
                "root-web",
                left,
                web,
                "mm",
                where,
                Words.mm(left) + " of material stands between the grooves and what is cut inside them."));
        if (spec.flanges() > 0) {
            flange(spec, stack, where, all);
        }
        double faceRoom = stack.face() - spec.choice().width();
        all.add(Finding.atLeast(
                "face-width",
                stack.face(),
                spec.choice().width(),
                "mm",
                where,
                "The belt has " + Words.mm(faceRoom) + " of room along the shaft."));
        return all;
    }

    private static Finding rollsOn(PulleySpec spec, RollCheck rolled, String where) {
        double overlap = rolled.overlap();
        double pitch = spec.choice().belt().pitch();
        String at = where + ", tooth " + Words.mm(rolled.overlapAt()) + " from seated";
        if (overlap <= TOUCH) {
            return new Finding(
                    "rolls-on", Finding.Status.PASS, overlap, TOUCH, "mm", where,
                    "The belt's tooth rolls on and off without touching the groove's edges.");
        }
        boolean gives = !spec.choice().generated() && overlap <= GIVES * pitch;
        double limit = spec.choice().generated() ? TOUCH : GIVES * pitch;
        return new Finding(
                "rolls-on", gives ? Finding.Status.WARN : Finding.Status.FAIL, overlap, limit, "mm", at,
                "The belt's tooth reaches " + Words.mm(overlap) + " into the groove's edge as it rolls on"
                        + (gives ? "; rubber gives way by that much, a generated groove need not." : "."));
    }

    private static Finding seats(PulleySpec spec, RollCheck rolled, String where) {
        BeltChoice choice = spec.choice();
        double pitch = choice.belt().pitch();
        if (!choice.generated()) {
            return new Finding(
                    "seating-play", Finding.Status.PASS, rolled.play(), pitch / 4, "mm", where,
                    "A seated tooth has " + Words.mm(rolled.play()) + " of play in the tabulated groove.");
        }
        double limit = choice.backlash() + SLIGHT * pitch;
        boolean within = rolled.play() <= limit;
        return new Finding(
                "seating-play", within ? Finding.Status.PASS : Finding.Status.WARN, rolled.play(), limit, "mm", where,
                within
                        ? "A seated tooth has " + Words.mm(rolled.play()) + " of play, " + Words.mm(choice.backlash())
                                + " of it asked for."
                        : "On so small a pulley the tooth's tip swings wide as it rolls on, and leaves a seated tooth "
                                + Words.mm(rolled.play()) + " of play; more teeth leave less.");
    }

    private static void flange(PulleySpec spec, PulleyStack stack, String where, List<Finding> all) {
        double height = spec.flangeDiameter() / 2 - spec.rim().outsideRadius();
        double least = spec.choice().belt().flangeHeight().orElse(spec.choice().belt().pitchLine());
        all.add(Finding.atLeast(
                "flange-height",
                height,
                least,
                "mm",
                where,
                "The flanges stand " + Words.mm(height) + " over the rim."));
        if (stack.seatRadius() == 0 && spec.joining().isEmpty()) {
            all.add(new Finding(
                    "flange-seat", Finding.Status.WARN, 0, 0, "mm", where,
                    "There is room neither for a seat nor for joining screws: the flanges are glued, lined up by the"
                            + " bore."));
        }
    }
}
