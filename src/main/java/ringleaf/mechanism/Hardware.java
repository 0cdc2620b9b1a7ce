// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.Optional;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.Dowel;
import ringleaf.spec.shared.Screw;

/** What is bought with a mechanism and follows from its sizes. A catalogue is read when something of it is asked for. */
public final class Hardware {
    /** Room between a screw's head and what it stands before, mm; common practice, no source. */
    public static final double HEAD_ROOM = 0.2;

    private final Catalogues catalogues;

    Hardware(Catalogues catalogues) {
        this.catalogues = catalogues;
    }

    /** Pins and axles of this diameter, mm. */
    public CutRod rod(String name, double diameter) {
        return new CutRod(name, diameter, catalogues.soldRods());
    }

    /** Dowel pins of this diameter, mm; empty when none are sold. */
    public Optional<Dowel> dowel(double diameter) {
        return catalogues.soldDowels().of(diameter);
    }

    /** The usual screw with the flattest head of those that pass a hole, mm, and whose head does not. */
    public Optional<Screw> flattestThrough(double hole) {
        Screw found = null;
        for (String name : catalogues.screws().names()) {
            Optional<Screw> screw = catalogues.screws().get(name);
            if (screw.isPresent()
                    && holds(screw.get(), hole)
                    && (found == null || screw.get().headHeight() < found.headHeight())) {
                found = screw.get();
            }
        }
        return Optional.ofNullable(found);
    }

    private static boolean holds(Screw screw, double hole) {
        return screw.sold().usual() && screw.thread() <= hole && screw.headDiameter() > hole;
    }

    /**
     * The thickest usual screw that passes a hole, whose head does not, and stands within {@code room} before the hole.
     *
     * @param hole diameter, mm
     * @param room mm
     */
    public Optional<Screw> screwThrough(double hole, double room) {
        Screw found = null;
        for (String name : catalogues.screws().names()) {
            Optional<Screw> screw = catalogues.screws().get(name);
            if (screw.isPresent()
                    && holds(screw.get(), hole)
                    && screw.get().headHeight() + HEAD_ROOM <= room
                    && (found == null || screw.get().thread() > found.thread())) {
                found = screw.get();
            }
        }
        return Optional.ofNullable(found);
    }
}
