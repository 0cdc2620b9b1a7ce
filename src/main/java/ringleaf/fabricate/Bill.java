// SPDX-License-Identifier: Apache-2.0
package ringleaf.fabricate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.part.Design;
import ringleaf.part.Layer;
import ringleaf.part.Part;
import ringleaf.part.Pieces;
import ringleaf.spec.Fabrication;
import ringleaf.spec.shared.Catalogues;
import ringleaf.spec.shared.MakingProcess;
import ringleaf.spec.shared.Stock;

/**
 * Settles what is made for each part: how many plies of its stock a level takes, and how many copies are to spare. Parts
 * carry it from here on, so that nobody counts again.
 */
public final class Bill {
    private Bill() {}

    /** The same design whose parts know their pieces. */
    public static Design of(Design design, Fabrication fabrication, Catalogues catalogues) {
        List<Part> parts = new ArrayList<>();
        for (Part part : design.parts()) {
            parts.add(part.isDrawn() && !part.source().isBought() ? counted(part, fabrication, catalogues) : part);
        }
        return design.withParts(parts);
    }

    private static Part counted(Part part, Fabrication fabrication, Catalogues catalogues) {
        Optional<MakingProcess> process =
                catalogues.processes().get(part.source().process());
        Optional<Stock> stock = catalogues.stock().get(part.source().stock());
        if (process.isEmpty() || stock.isEmpty()) {
            return part;
        }
        int spares = spares(
                part.quantity(),
                fabrication
                        .cutting(
                                part.family().label(),
                                process.get().name(),
                                stock.get().name())
                        .spares());
        List<Integer> plies = new ArrayList<>();
        if (!process.get().makesLayers()) {
            double sheet = stock.get().thickness().orElse(0);
            for (Layer layer : part.layers()) {
                plies.add(layer.plies(sheet));
            }
        }
        return part.withPieces(new Pieces(plies, spares));
    }

    /** Of what there is only one, none; else a share of it, at least one. */
    private static int spares(int quantity, double share) {
        return quantity > 1 && share > 0 ? Math.max(1, (int) Math.ceil(quantity * share - 1e-9)) : 0;
    }
}
