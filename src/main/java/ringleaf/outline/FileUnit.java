// SPDX-License-Identifier: Apache-2.0
package ringleaf.outline;

import java.util.Optional;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/** What one drawing unit is: what the file says, or what the user says where the file is silent; never a guess. */
final class FileUnit {
    private FileUnit() {}

    /**
     * Millimetres in a unit; 0 after reporting that nobody says, or that both say different things.
     *
     * @param declared mm in a unit by the file, when it says so
     * @param told by the user
     * @param asked the field with which the user could say it
     */
    static double of(Optional<Double> declared, Optional<LengthUnit> told, Place file, Place asked, Problems problems) {
        if (declared.isEmpty() && told.isEmpty()) {
            problems.at(
                    asked,
                    file.source().name() + " does not say in which unit it is drawn",
                    "set units: mm, cm, in or thou beside outline:");
            return 0;
        }
        double own = told.map(unit -> unit.unit().inner(1)).orElse(declared.orElse(0.0));
        if (declared.isPresent() && Math.abs(own - declared.get()) > 1e-9 * own) {
            problems.at(
                    asked,
                    "is " + told.get().spelling() + ", and " + file.source().name() + " says that its unit is "
                            + ringleaf.spec.text.Decimal.of(declared.get()) + " mm",
                    "leave units: out, or mend the file");
            return 0;
        }
        return own;
    }
}
