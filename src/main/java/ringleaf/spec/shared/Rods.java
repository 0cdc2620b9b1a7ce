package ringleaf.spec.shared;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The diameters in which wire and rod are sold; what one is sold as is read when it is asked for. */
public final class Rods {
    private final Catalogue<Rod> catalogue;

    Rods(Catalogue<Rod> catalogue) {
        this.catalogue = catalogue;
    }

    /** All diameters, mm. */
    public List<Double> diameters() {
        List<Double> all = new ArrayList<>();
        for (String name : catalogue.names()) {
            double diameter = Rod.diameter(name);
            if (!Double.isNaN(diameter)) {
                all.add(diameter);
            }
        }
        return all;
    }

    /** The rod of this diameter, mm; empty when none is sold. */
    public Optional<Rod> of(double diameter) {
        for (String name : catalogue.names()) {
            if (Sold.has(List.of(Rod.diameter(name)), diameter)) {
                return catalogue.get(name);
            }
        }
        return Optional.empty();
    }
}
