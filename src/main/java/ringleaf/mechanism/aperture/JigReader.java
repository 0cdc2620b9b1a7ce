// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.Optional;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.Request;
import ringleaf.part.Words;
import ringleaf.spec.Making;
import ringleaf.spec.field.Values;
import ringleaf.spec.shared.MakingProcess;

/** From the field {@code jigs} and the family jig of the fabrication to a {@link JigSpec}. */
final class JigReader {
    private final Request request;

    JigReader(Request request) {
        this.request = request;
    }

    /**
     * What is asked for; reports a process that makes no blind sockets, or none so fine.
     *
     * @param pin diameter of the pins, mm
     */
    Optional<JigSpec> read(double pin) {
        Values jigs = request.values().given(ApertureFields.JIGS).orElseThrow();
        int blades = request.values().require(ApertureFields.BLADES);
        Making making = request.fabrication().of("jig", JigSpec.THICKNESS);
        MakingProcess process = making.process();
        Material material = Material.of(process, making.stock(), JigSpec.THICKNESS);
        int pockets = jigs.given(ApertureFields.JIG_BLADES).orElse(JigSpec.USUAL_POCKETS);
        if (jigs.isGiven(ApertureFields.JIG_BLADES) && pockets > blades) {
            request.problems()
                    .at(
                            jigs.where(ApertureFields.JIG_BLADES),
                            pockets + " is more than the " + blades + " blades (a pocket would stay empty)",
                            "at most " + blades);
        }
        JigSpec spec = new JigSpec(Math.min(pockets, blades), jigs.require(ApertureFields.JIG_STACKING), material);
        if (!process.makesLayers()) {
            request.problems()
                    .at(
                            request.values().where(ApertureFields.JIGS),
                            "jigs have blind sockets of an exact depth, and " + process.name() + " cuts through",
                            "fabrication.jig: {process: filament-print, stock: pla}, or leave jig out there");
        } else if (pin + spec.socketRoom() < process.hole(JigSpec.THICKNESS) - 1e-9) {
            request.problems()
                    .at(
                            request.values().where(ApertureFields.JIGS),
                            "a socket for a pin of " + Words.mm(pin) + " is finer than " + process.name()
                                    + " makes, holes of " + Words.mm(process.hole(JigSpec.THICKNESS)) + " at least",
                            "a pin-diameter of "
                                    + Words.mm(process.hole(JigSpec.THICKNESS) - spec.socketRoom())
                                    + " would do, or a finer process under fabrication.jig");
        }
        return Optional.of(spec);
    }
}
