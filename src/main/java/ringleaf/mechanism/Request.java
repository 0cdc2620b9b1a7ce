// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.Optional;
import ringleaf.spec.Fabrication;
import ringleaf.spec.field.Field;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * What a kind reads its mechanism from.
 *
 * @param name of the mechanism in the spec
 * @param values of its fields
 * @param fabrication how each family of parts is made
 * @param catalogues of screws, servos and the like
 * @param problems where contradictions go
 */
public record Request(String name, Values values, Fabrication fabrication, Catalogues catalogues, Problems problems) {
    /** What every kind calls its fits by name. */
    public static final String FITS = "fits";

    /** The same, whose problems go elsewhere: for trying what may be refused. */
    public Request telling(Problems other) {
        return new Request(name, values, fabrication, catalogues, other);
    }

    /** What is bought with the mechanism and follows from its sizes. */
    public Hardware hardware() {
        return new Hardware(catalogues);
    }

    /** The screw that a user named, with holes as the mechanism's fits ask for; an unknown one becomes a problem. */
    public Optional<Screw> screw(String named, Place place) {
        return catalogues.screws().find(named, place).map(this::sized);
    }

    /** A screw of the catalogue with holes as the mechanism's fits ask for. */
    public Screw sized(Screw screw) {
        Field<?> fits = values.fields().find(FITS);
        if (fits == null || values.given(fits).isEmpty()) {
            return screw;
        }
        Values own = (Values) values.given(fits).get();
        return screw.withSeries(own.require(Screw.THREAD_CLEARANCE));
    }
}
