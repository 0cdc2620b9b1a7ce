// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.List;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.Catalogues;

/**
 * A spec that was read and found right as far as reading can tell.
 *
 * @param title as written, or the file's name
 * @param slug name of the output folder
 * @param units of bare lengths
 * @param fabrication how families of parts are made
 * @param mechanisms in the order of the text
 * @param together what is said of all of them together, by {@link SetupFields}
 * @param catalogues those it was read with
 */
public record SpecDocument(
        String title,
        String slug,
        LengthUnit units,
        Fabrication fabrication,
        List<MechanismSpec> mechanisms,
        Values together,
        Catalogues catalogues) {
    public SpecDocument {
        mechanisms = List.copyOf(mechanisms);
    }
}
