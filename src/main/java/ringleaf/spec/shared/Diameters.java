// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec.shared;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * A catalogue whose entries are named by their diameter in mm; what one is sold as is read when it is asked for.
 *
 * @param <T> what an entry becomes
 */
public final class Diameters<T> {
    private final Catalogue<T> catalogue;

    Diameters(Catalogue<T> catalogue) {
        this.catalogue = catalogue;
    }

    /** All diameters, mm. */
    public List<Double> all() {
        List<Double> all = new ArrayList<>();
        for (String name : catalogue.names()) {
            double diameter = named(name);
            if (!Double.isNaN(diameter)) {
                all.add(diameter);
            }
        }
        return all;
    }

    /** The entry of this diameter, mm; empty when none is sold. */
    public Optional<T> of(double diameter) {
        for (String name : catalogue.names()) {
            if (Sold.has(List.of(named(name)), diameter)) {
                return catalogue.get(name);
            }
        }
        return Optional.empty();
    }

    /** The diameter that a name says, mm; not a number when it says none. */
    private static double named(String name) {
        return name.matches("[0-9]{1,3}(\\.[0-9]{1,8})?") ? Double.parseDouble(name) : Double.NaN;
    }

    /** The diameter that an entry's name says, mm; not a number, after it was reported, when it says none. */
    static double of(Entry entry, String what, Problems problems) {
        double diameter = named(entry.name());
        if (!(diameter > 0)) {
            Place place = entry.values().where();
            problems.at(place, "a " + what + "'s name is its diameter in mm", "e.g. \"3\"");
            return Double.NaN;
        }
        return diameter;
    }
}
