// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.ArrayList;
import java.util.List;
import ringleaf.part.Choice;
import ringleaf.part.Dimension.Origin;
import ringleaf.part.Words;
import ringleaf.spec.field.Values;

/** Sizes and choices of pulleys as they stand in design.json. */
final class PulleyDimensions {
    private PulleyDimensions() {}

    /** Choices of the belt; {@code values} are those that the belt was read from. */
    static List<Choice> choices(BeltChoice choice, Values values, boolean sheet) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(
                "belt",
                choice.belt().name(),
                Origin.GIVEN,
                choice.belt().standard() + ", pitch " + Words.mm(choice.belt().pitch())));
        choices.add(new Choice(
                "groove",
                choice.generated() ? "generated" : "trapezoid",
                Figures.origin(values, PulleyFields.GROOVE),
                choice.grooveWords()));
        choices.add(new Choice(
                "build",
                sheet ? "stack" : "one-body",
                Origin.SOLVED,
                sheet ? "cut from sheet" : "built up in one piece"));
        return choices;
    }

    /** Sizes of the belt. */
    static void belt(Figures out, BeltChoice choice, Values values) {
        out.mm("pitch", choice.belt().pitch(), Origin.DEFAULT, choice.belt().standard());
        out.mm("pitch-line-differential", choice.belt().pitchLine(), Origin.DEFAULT, "of the catalogue");
        out.mm("belt-width", choice.width(), Figures.origin(values, PulleyFields.BELT_WIDTH), "narrowest in stock");
        if (choice.generated()) {
            out.mm(
                    "backlash",
                    choice.backlash(),
                    choice.play().origin(),
                    choice.play().how());
            out.mm(
                    "clearance",
                    choice.clearance(),
                    choice.below().origin(),
                    choice.below().how());
        }
    }

    /** Sizes of one pulley, their names with the pulley's in front where it has one. */
    static void pulley(Figures out, PulleySpec spec, PulleyStack stack, Origin teeth, String howTeeth, Values values) {
        PulleyRim rim = spec.rim();
        out.number(spec.partName("teeth"), rim.teeth(), teeth, howTeeth);
        out.mm(spec.partName("pitch-diameter"), 2 * rim.pitchRadius(), Origin.SOLVED, "teeth times pitch over pi");
        out.mm(spec.partName("outside-diameter"), rim.outside(), rim.origin(), rim.how());
        out.mm(spec.partName("root-diameter"), 2 * rim.rootRadius(), Origin.SOLVED, "bottom of the grooves");
        out.mm(
                spec.partName("face-width"),
                stack.face(),
                Origin.SOLVED,
                stack.plates() > 0 ? stack.plates() + " sheets" : "belt width and its room");
        if (spec.flanges() > 0) {
            out.mm(
                    spec.partName("flange-diameter"),
                    spec.flangeDiameter(),
                    Figures.solved(values, PulleyFields.FLANGE_DIAMETER),
                    rim.choice().belt().outside().flange(rim.teeth()).isPresent()
                            ? "tabulated"
                            : "over the belt's back");
            if (stack.seatRadius() > 0) {
                out.mm(spec.partName("flange-seat"), 2 * stack.seatRadius(), Origin.SOLVED, "below the grooves");
            }
        }
        if (spec.joining().isPresent()) {
            out.mm(
                    spec.partName("joining-circle"),
                    spec.joining().get().circle(),
                    Origin.SOLVED,
                    "between bore and grooves");
        }
        out.mm(
                spec.partName("outline-deviation"),
                rim.groove().deviation(),
                Origin.SOLVED,
                "worst distance of the groove's arcs from what the tooth sweeps");
    }
}
