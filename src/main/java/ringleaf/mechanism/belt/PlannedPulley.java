// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import ringleaf.mechanism.AsBuilt;
import ringleaf.mechanism.Kind;
import ringleaf.part.Design;
import ringleaf.spec.field.Values;

/** A pulley that was read, and what can be asked of it. */
record PlannedPulley(String name, PulleySpec spec, Values values) implements Kind.Planned {
    @Override
    public Design design(int states) {
        return Pulley.design(name, spec, values, states);
    }

    @Override
    public Optional<AsBuilt> asBuilt() {
        return Optional.of(BeltBuilt.of(spec));
    }
}
