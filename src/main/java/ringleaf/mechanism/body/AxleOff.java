// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.List;
import java.util.Optional;
import ringleaf.mechanism.AsBuilt.Limit;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.SizesOff;
import ringleaf.spec.shared.FitName;

/**
 * A part that turns on an axle of drawn wire, both of them off.
 *
 * @param room that is drawn between both, on the diameter, mm
 * @param limit what must hold
 * @param bore number of its size
 * @param axle likewise
 */
public record AxleOff(double room, Limit limit, int bore, int axle) {
    /** Adds the sizes of such a part; empty where it holds its axle, sits on a bearing, or has none. */
    public static Optional<AxleOff> of(String prefix, Body body, Material made, SizesOff to) {
        AxleFit on = body.axle();
        boolean turns = body.bore() instanceof Bore.Round
                && on.fit() == FitName.RUNNING
                && on.bearing().isEmpty();
        if (!turns || on.nominal() == 0) {
            return Optional.empty();
        }
        double diameter = 2 * body.bore().reach();
        Limit limit = Limit.of(
                prefix + "axle-clearance",
                "mm",
                "it turns on its axle",
                made.running(diameter - on.nominal()),
                List.of());
        return Optional.of(new AxleOff(
                diameter - on.nominal(),
                limit,
                to.width(prefix + "bore", "bore that turns on its axle", diameter, 1, made),
                to.add(prefix + "axle", "axle", on.nominal(), 1, SizesOff.WIRE, "drawn wire, common practice")));
    }

    /** What is left of the room when sizes are off. */
    public double margin(double[][] off) {
        return room + off[bore][0] - off[axle][0];
    }
}
