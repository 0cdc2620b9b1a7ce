// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.List;
import java.util.Optional;
import ringleaf.part.Family;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.shared.Diameters;
import ringleaf.spec.shared.Rod;
import ringleaf.spec.shared.Sold;

/**
 * A pin or an axle that is cut from wire or rod as it is sold.
 *
 * @param name of the part, e.g. {@code drive-pin}
 * @param diameter mm
 * @param rods what is sold
 */
public record CutRod(String name, double diameter, Diameters<Rod> rods) {
    /** The same for another part. */
    public CutRod named(String other) {
        return new CutRod(other, diameter, rods);
    }

    /** How it is come by: what is bought, and to what length it is cut, mm. */
    public Part.Source source(double length) {
        return new Part.Source("bought", goods() + ", cut to " + Words.mm(length));
    }

    /** An axle of which only what sits on it is designed, as long as what holds it asks. */
    public Part open() {
        Part.Source source = new Part.Source("bought", goods());
        return new Part(name, Family.BOUGHT, 1, source, List.of(), List.of(), "as long as what holds it asks");
    }

    private String goods() {
        Optional<Rod> rod = rods.of(diameter);
        return rod.isPresent() ? rod.get().order() : Words.number(diameter, 4) + " mm rod";
    }

    /** Whether rod of its diameter is sold; a warning where not, as a pin can be turned. */
    public Finding isSold() {
        Optional<Rod> rod = rods.of(diameter);
        String message = rod.isPresent()
                ? "is cut from " + rod.get().order()
                : "rod of " + Words.number(diameter, 4) + " mm is not sold, " + Sold.beside(rods.all(), diameter)
                        + (rods.all().size() > 1 ? " are" : " is")
                        + ": take one of those, turn it, or name yours in a rods.yaml of your own";
        return Finding.of("rod-size")
                .about(name)
                .orWarn()
                .plain(rod.isPresent())
                .inWords(message);
    }
}
