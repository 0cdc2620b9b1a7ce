// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.List;
import ringleaf.draw.Decimals;
import ringleaf.geom.Box;
import ringleaf.part.Design;
import ringleaf.part.Part;

/** The bill of materials of all mechanisms, made and bought. */
public final class PartsCsv {
    private static final int DECIMALS = 3;

    private PartsCsv() {}

    /**
     * The file, UTF-8: name, quantity in the mechanism, process, stock, size (mm), mechanism, note; copies to spare, and
     * the pieces that are cut or printed for all of them.
     */
    public static byte[] write(List<Design> designs) {
        Csv csv = new Csv();
        for (String column :
                new String[] {"name", "quantity", "process", "stock", "size", "mechanism", "note", "spares", "pieces"
                }) {
            csv.words(column);
        }
        csv.end();
        for (Design design : designs) {
            for (Part part : design.parts()) {
                csv.words(part.name()).number(part.quantity());
                csv.words(part.source().process()).words(part.source().stock()).words(size(part));
                csv.words(design.name()).words(part.note());
                csv.number(part.pieces().spares()).number(part.pieceCount()).end();
            }
        }
        return csv.toBytes();
    }

    /** Width x height x thickness, mm; for what is bought without an outline, the size in words. */
    public static String size(Part part) {
        if (part.layers().isEmpty()) {
            return part.source().stock();
        }
        Box box = part.box();
        return Decimals.of(box.width(), DECIMALS) + " x " + Decimals.of(box.height(), DECIMALS) + " x "
                + Decimals.of(part.zTo() - part.zFrom(), DECIMALS);
    }
}
