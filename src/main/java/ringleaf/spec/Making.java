// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;
import ringleaf.spec.text.Decimal;
import ringleaf.spec.text.Place;
import ringleaf.spec.text.Problems;

/**
 * How the parts of a family are made.
 *
 * @param process that makes them
 * @param stock they are made of
 * @param given whether the user said so; else it is the default
 * @param place of what the user said, for messages; else of the document
 */
public record Making(MakingProcess process, Stock stock, boolean given, Place place) {

    /** The same of a thickness, mm, where the stock leaves it open; unchanged where the stock has its own. */
    Making ofThickness(double thickness) {
        return stock.thickness().isPresent() ? this : new Making(process, stock.ofThickness(thickness), given, place);
    }

    /**
     * Whether parts of a thickness can be made so; what stands against it becomes a problem that names both.
     *
     * @param thickness asked for, mm
     * @param where it was asked for
     */
    public boolean agrees(double thickness, Place where, Problems problems) {
        String asked = Decimal.of(thickness) + " mm";
        if (stock.thickness().isPresent() && Math.abs(stock.thickness().getAsDouble() - thickness) > 1e-9) {
            String own = Decimal.of(stock.thickness().getAsDouble());
            String reason = asked + " contradicts the stock " + stock.name() + ", which is " + own + " mm thick";
            problems.at(where, reason, "ask for " + own + "mm or name another stock");
            return false;
        }
        if (!process.makesThickness(thickness)) {
            String range = Decimal.of(process.thicknessFrom()) + " to " + Decimal.of(process.thicknessTo()) + " mm";
            String reason = asked + " cannot be made by " + process.name() + ", which makes " + range;
            problems.at(where, reason, "name another process");
            return false;
        }
        return true;
    }
}
