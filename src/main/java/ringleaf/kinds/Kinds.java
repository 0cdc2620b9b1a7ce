// SPDX-License-Identifier: Apache-2.0
package ringleaf.kinds;

import java.util.ArrayList;
import java.util.List;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.aperture.LeafAperture;
import ringleaf.mechanism.belt.BeltDrive;
import ringleaf.mechanism.belt.Pulley;
import ringleaf.mechanism.gear.PairOfGears;
import ringleaf.mechanism.gear.SingleGear;
import ringleaf.mechanism.gear.TrainOfGears;
import ringleaf.mechanism.rack.RackAndPinion;
import ringleaf.spec.KindFields;

/** The registry: one line a kind. */
public final class Kinds {
    private static final List<Kind> ALL = List.of(
            new LeafAperture(),
            new SingleGear(),
            new PairOfGears(),
            new TrainOfGears(),
            new Pulley(),
            new BeltDrive(),
            new RackAndPinion());

    private Kinds() {}

    public static List<Kind> all() {
        return ALL;
    }

    /** The kind of this name; there is one for every name that reading lets through. */
    public static Kind named(String name) {
        for (Kind kind : ALL) {
            if (kind.name().equals(name)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no kind is called " + name);
    }

    /** What every kind takes in a spec. */
    public static List<KindFields> fields() {
        List<KindFields> fields = new ArrayList<>();
        for (Kind kind : ALL) {
            fields.add(new KindFields(kind.name(), kind.summary(), kind::fields));
        }
        return fields;
    }
}
