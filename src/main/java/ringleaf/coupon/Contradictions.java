// SPDX-License-Identifier: Apache-2.0
package ringleaf.coupon;

import java.util.List;
import ringleaf.coupon.Filled.Answer;
import ringleaf.part.Words;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/** Finds answers and sizes that cannot be true together. What measuring may explain is let pass. */
final class Contradictions {
    /** Pins, holes and slots of one machine may differ so far in what they say of the kerf, mm (no source). */
    private static final double SHEET_SPREAD = 0.1;

    private static final double LAYER_SPREAD = 0.3;
    /** A piece further from its size than this was not made at true scale. */
    private static final double MOST_SCALE = 0.01;

    private final Filled filled;
    private final SizeModel free;
    private final Problems problems;

    Contradictions(Filled filled, SizeModel free, Problems problems) {
        this.filled = filled;
        this.free = free;
        this.problems = problems;
    }

    void find() {
        scale(Feature.BAR_X, free.scaleX());
        scale(Feature.BAR_Y, free.scaleY());
        sizes();
        ladder(Feature.Kind.WEB, "whole");
        ladder(Feature.Kind.DOT, "open");
        pins();
        tongue();
    }

    private void scale(String bar, Estimate scale) {
        if (Math.abs(scale.value()) > MOST_SCALE && !scale.holds(0)) {
            problems.at(
                    filled.reading(bar).place(),
                    "the piece came out at " + Words.number(100 * (1 + scale.value()), 1) + " % of its size",
                    "it was scaled on its way to the machine; make it again at true scale");
        }
    }

    private void sizes() {
        boolean layers = filled.coupon().layers();
        double allowed = layers ? LAYER_SPREAD : SHEET_SPREAD;
        Estimate slots = free.slotsLessPins();
        Estimate holes = free.holesLessSlots();
        if (isBeyond(slots, allowed)) {
            problems.at(
                    first(Feature.Kind.SLOT),
                    "slots come out " + words(free.slot()) + " and pins " + words(free.pin())
                            + ": both edges of a cut move together, so these contradict each other",
                    "zero the jaws, and check both rows");
        }
        if (isBeyond(holes, allowed)) {
            problems.at(
                    first(Feature.Kind.HOLE),
                    "holes come out " + words(free.hole()) + " and slots " + words(free.slot())
                            + ": that is more than holes and slots of one machine differ",
                    "check both rows, and with what they were measured");
        }
        if (!layers && problems.isEmpty()) {
            Estimate kerf = SizeModel.common(filled).kerf();
            if (kerf.high() < 0) {
                problems.at(
                        first(Feature.Kind.PIN),
                        "pins are larger and holes smaller than drawn: the kerf would be "
                                + Words.number(kerf.value(), 3) + " mm",
                        "the machine or its program corrects the kerf already; switch that off and make the"
                                + " piece again");
            }
        }
    }

    private static boolean isBeyond(Estimate difference, double allowed) {
        return Math.abs(difference.value()) > allowed && !difference.holds(0);
    }

    private static String words(Estimate allowance) {
        String size = Words.number(Math.abs(allowance.value()), 3) + " mm ";
        return size + (allowance.value() < 0 ? "narrower than drawn" : "wider than drawn");
    }

    private Place first(Feature.Kind kind) {
        for (Feature feature : filled.measured()) {
            if (feature.kind() == kind) {
                return filled.reading(feature.name()).place();
            }
        }
        return filled.source().whole();
    }

    /** What a narrower one stands, a wider one stands as well. */
    private void ladder(Feature.Kind kind, String word) {
        Feature good = null;
        List<Feature> rungs = filled.coupon().of(kind);
        for (Feature rung : rungs) {
            Answer answer = filled.answer(rung.name());
            boolean yes = answer.word().equals("yes");
            if (yes && good == null) {
                good = rung;
            } else if (!yes && good != null) {
                problems.at(
                        answer.place(),
                        "is not " + word + " at " + mm(rung.drawn()) + ", while " + good.name() + " is at "
                                + mm(good.drawn()),
                        "look at both again; if it is so, make the piece again");
                return;
            }
        }
        if (good == null) {
            Feature last = rungs.get(rungs.size() - 1);
            problems.at(
                    filled.answer(last.name()).place(),
                    "not even " + mm(last.drawn()) + " came out " + word + ": that leaves nothing to go by",
                    "check the machine, and make the piece again");
        }
    }

    private void pins() {
        Filled.Reading pin = filled.reading(SheetFields.PIN_KEY);
        for (String question : List.of(SheetReader.SLIDES, SheetReader.HELD, SheetReader.TURNS)) {
            if (pin == null && filled.chosen(question) != null) {
                problems.at(
                        filled.answer(question).place(),
                        "a pin was tried, and its diameter was not measured",
                        "fill in pin:, or write none here");
            }
        }
        Feature held = filled.chosen(SheetReader.HELD);
        Feature turns = filled.chosen(SheetReader.TURNS);
        if (held != null && turns != null && held.drawn() >= turns.drawn()) {
            problems.at(
                    filled.answer(SheetReader.HELD).place(),
                    held.name() + " is said to hold the pin, and " + turns.name() + ", no wider, to let it turn freely",
                    "try both again");
        }
        if (pin != null) {
            room(turns, SheetReader.TURNS, free.hole(), pin.mean(), "turn in");
            room(filled.chosen(SheetReader.SLIDES), SheetReader.SLIDES, free.slot(), pin.mean(), "slide in");
        }
    }

    /** A thing does not go where the sizes leave it no room. */
    private void room(Feature where, String question, Estimate allowance, double thing, String does) {
        if (where == null) {
            return;
        }
        double wide = where.drawn() + allowance.value();
        double doubt = 0.05 + allowance.half() + free.repeatability().high();
        if (wide < thing - doubt) {
            problems.at(
                    filled.answer(question).place(),
                    where.name() + " is " + mm(wide) + " wide by the other readings, and what is " + mm(thing)
                            + " thick cannot " + does + " it",
                    "try it again, and check which one it was");
        }
    }

    private void tongue() {
        Feature enters = filled.chosen(SheetReader.TONGUE);
        room(
                enters,
                SheetReader.TONGUE,
                free.slot(),
                filled.coupon().pin() + free.pin().value(),
                "enter");
    }

    private static String mm(double value) {
        return Words.number(value, 3) + " mm";
    }
}
