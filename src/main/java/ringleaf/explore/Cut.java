// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.util.List;
import java.util.OptionalDouble;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;

/**
 * How much work its parts are.
 *
 * @param pieces made and bought, all of them
 * @param length of all outlines that are cut from sheet, every copy counted, mm; built-up parts have none
 * @param time along these outlines at the speeds of their processes, s; piercing and travel between them apart, and
 *     not a number where a process has no speed
 */
record Cut(int pieces, double length, double time) {

    static Cut of(List<Part> parts, Catalogues catalogues) {
        int pieces = 0;
        double length = 0;
        double time = 0;
        for (Part part : parts) {
            pieces += part.quantity();
            if (!part.isDrawn() || part.source().isBought()) {
                continue;
            }
            MakingProcess process = catalogues.processes().require(part.source().process());
            if (process.makesLayers()) {
                continue;
            }
            double sheet = catalogues
                    .stock()
                    .require(part.source().stock())
                    .thickness()
                    .orElse(0);
            double own = part.quantity() * outline(part, sheet);
            OptionalDouble speed = process.cuttingSpeed();
            length += own;
            time += speed.isPresent() ? own / speed.getAsDouble() : Double.NaN;
        }
        return new Cut(pieces, length, time);
    }

    private static double outline(Part part, double sheet) {
        double length = 0;
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                length += layer.plies(sheet) * region.perimeter();
            }
        }
        return length;
    }
}
