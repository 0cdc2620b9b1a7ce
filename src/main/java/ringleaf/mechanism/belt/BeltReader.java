// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.machine.Room;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Belt;
import ringleaf.spec.text.Problems;

/** From the fields of a belt to the choice of it. */
final class BeltReader {
    private static final double USUAL_WIDTH = 6;

    private final Request request;
    private final Values values;
    private final Problems problems;
    private final int pulleys;

    /** Reads for so many pulleys with teeth. */
    BeltReader(Request request, int pulleys) {
        this.pulleys = pulleys;
        this.request = request;
        this.values = request.values();
        this.problems = request.problems();
    }

    /** The belt itself, by name or written out; empty when it was refused. */
    Optional<Belt> belt() {
        return values.given(PulleyFields.BELT).flatMap(request.catalogues()::belt);
    }

    /** How the pulleys are made; a built-up one is as thick as its rim is wide, and its height is off with that. */
    Material material(Belt belt) {
        double width = values.given(PulleyFields.BELT_WIDTH).orElse(usualWidth(belt));
        Material made = PulleyReader.undecided(request, width);
        return PulleyReader.material(request, face(belt, made));
    }

    /** Width of the toothed rims: as given, or the belt's and its room. */
    private double face(Belt belt, Material material) {
        double width = values.given(PulleyFields.BELT_WIDTH).orElse(usualWidth(belt));
        return values.given(PulleyFields.FACE)
                .orElseGet(() ->
                        width + new BeltRooms(material, pulleys).face(width).mm());
    }

    BeltChoice read(Belt belt, Material material) {
        boolean generated = values.require(PulleyFields.GROOVE).equals("generated");
        if (!generated && belt.trapezoid().isEmpty()) {
            problems.at(
                    values.where(PulleyFields.GROOVE),
                    belt.round()
                            ? "the teeth of " + belt.name() + " are round and do not seat in a trapezoid"
                            : "no trapezoid groove is known for " + belt.name(),
                    "groove: generated");
        }
        if (!generated) {
            for (Field<?> field : new Field<?>[] {PulleyFields.BACKLASH, PulleyFields.CLEARANCE}) {
                if (values.isGiven(field)) {
                    problems.at(values.where(field), "has no meaning for a groove as tabulated", "groove: generated");
                }
            }
        }
        double width = values.given(PulleyFields.BELT_WIDTH).orElse(usualWidth(belt));
        BeltRooms rooms = new BeltRooms(material, pulleys);
        Room play = rooms.play(values.given(PulleyFields.BACKLASH), belt);
        double most = belt.pitch() / 4;
        if (play.mm() > most) {
            problems.at(
                    values.where(PulleyFields.BACKLASH),
                    Words.mm(play.mm()) + " leaves too little of the rim between grooves " + Words.mm(belt.pitch())
                            + " apart",
                    "the nearest that works is " + Words.number(most, 3) + "mm");
            // what follows from it would only be told again in other words
            play = play.of(most);
        }
        Room below = rooms.below(values.given(PulleyFields.CLEARANCE), play.mm(), belt);
        if (below.mm() > belt.toothHeight()) {
            problems.at(
                    values.where(PulleyFields.CLEARANCE),
                    Words.mm(below.mm()) + " is more than the tooth's own height of " + Words.mm(belt.toothHeight()),
                    "the nearest that works is " + Words.number(belt.toothHeight(), 3) + "mm");
            below = below.of(belt.toothHeight());
        }
        double face = face(belt, material);
        if (face < width) {
            problems.at(
                    values.where(PulleyFields.FACE),
                    Words.mm(face) + " is narrower than the belt of " + Words.mm(width),
                    "the nearest that works is " + Words.number(width, 3) + "mm");
        } else if (values.isGiven(PulleyFields.FACE) && material.sheet()) {
            wholeSheets(face, width, material);
        }
        return new BeltChoice(belt, width, face, generated, play, below);
    }

    /** A rim of sheet is as wide as so many sheets. */
    private void wholeSheets(double face, double width, Material material) {
        double sheets = face / material.thickness();
        if (Math.abs(sheets - Math.rint(sheets)) > 1e-9) {
            double less = Math.floor(sheets) * material.thickness();
            double more = Math.ceil(sheets) * material.thickness();
            problems.at(
                    values.where(PulleyFields.FACE),
                    Words.mm(face) + " is no whole number of sheets of " + Words.mm(material.thickness()),
                    (less >= width ? Words.number(less, 3) + "mm or " : "the nearest that works is ")
                            + Words.number(more, 3) + "mm" + (less >= width ? " works" : ""));
        }
    }

    private static double usualWidth(Belt belt) {
        double least = Double.POSITIVE_INFINITY;
        for (double width : belt.widths()) {
            least = Math.min(least, width);
        }
        return Double.isInfinite(least) ? USUAL_WIDTH : least;
    }
}
