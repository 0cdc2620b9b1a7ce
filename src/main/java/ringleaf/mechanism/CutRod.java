package ringleaf.mechanism;

import java.util.Optional;
import ringleaf.part.Finding;
import ringleaf.part.Part;
import ringleaf.part.Words;
import ringleaf.spec.shared.Rod;
import ringleaf.spec.shared.Rods;
import ringleaf.spec.shared.Sold;

/**
 * A pin or an axle that is cut from wire or rod as it is sold.
 *
 * @param name of the part, e.g. {@code drive-pin}
 * @param diameter mm
 * @param rods what is sold
 */
public record CutRod(String name, double diameter, Rods rods) {
    /** How it is come by: what is bought, and to what length it is cut, mm. */
    public Part.Source source(double length) {
        Optional<Rod> rod = rods.of(diameter);
        String goods = rod.isPresent() ? rod.get().order() : Words.number(diameter, 4) + " mm rod";
        return new Part.Source("bought", goods + ", cut to " + Words.mm(length));
    }

    /** Whether rod of its diameter is sold; a warning where not, as a pin can be turned. */
    public Finding isSold() {
        Optional<Rod> rod = rods.of(diameter);
        String message = rod.isPresent()
                ? "is cut from " + rod.get().order()
                : "rod of " + Words.number(diameter, 4) + " mm is not sold, " + Sold.beside(rods.diameters(), diameter)
                        + (rods.diameters().size() > 1 ? " are" : " is")
                        + ": take one of those, turn it, or name yours in a rods.yaml of your own";
        return Finding.of("rod-size").about(name).orWarn().plain(rod.isPresent()).says(message);
    }
}
