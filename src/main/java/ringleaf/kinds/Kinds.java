// SPDX-License-Identifier: Apache-2.0
package ringleaf.kinds;

import java.util.List;
import ringleaf.mechanism.Kind;
import ringleaf.mechanism.aperture.LeafAperture;
import ringleaf.mechanism.belt.BeltDrive;
import ringleaf.mechanism.belt.Pulley;
import ringleaf.mechanism.gear.PairOfGears;
import ringleaf.mechanism.gear.SingleGear;
import ringleaf.mechanism.gear.TrainOfGears;
import ringleaf.mechanism.plate.SeatPlate;
import ringleaf.mechanism.rack.RackAndPinion;
import ringleaf.mechanism.slide.Slide;
import ringleaf.spec.KindFields;
import ringleaf.spec.MechanismSpec;

/**
 * Kinds that a spec may name.
 *
 * @param all in the order in which help lists them
 */
public record Kinds(List<Kind> all) {
    /** The registry: one line a kind. */
    public static final Kinds REGISTERED = new Kinds(List.of(
            new LeafAperture(),
            new SingleGear(),
            new PairOfGears(),
            new TrainOfGears(),
            new Pulley(),
            new BeltDrive(),
            new RackAndPinion(),
            new Slide(),
            new SeatPlate()));

    /** A list that nobody changes. */
    public Kinds {
        all = List.copyOf(all);
    }

    /** The kind of this name; there is one for every name that reading lets through. */
    public Kind named(String name) {
        for (Kind kind : all) {
            if (kind.name().equals(name)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no kind is called " + name);
    }

    /** The kind of a mechanism that was read. */
    public Kind of(MechanismSpec mechanism) {
        return named(mechanism.kind().name());
    }

    /** What every kind takes in a spec. */
    public List<KindFields> fields() {
        return all.stream()
                .map(kind -> new KindFields(kind.name(), kind.summary(), kind::fields))
                .toList();
    }
}
