// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Tolerance;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Quantity;
import ringleaf.spec.field.QuantityReader;
import ringleaf.spec.text.Shown;

/**
 * Which solids are asked for on the command line.
 *
 * @param stl whether as STL
 * @param threeMf whether as 3MF
 * @param parts names as typed; empty for the printed ones
 * @param chord how far chords may leave the arcs
 */
record SolidsAsked(boolean stl, boolean threeMf, List<String> parts, Tolerance chord) {
    /** All parts instead of names. */
    static final String ALL = "all";
    /** The parts that are printed, instead of names. */
    static final String PRINTED = "printed";

    /** A fifth of the finest step of the printers meant here, mm. */
    static final double USUAL_CHORD = 0.01;

    private static final double FINEST = 0.0005;
    private static final double COARSEST = 0.5;

    /**
     * What the options ask for.
     *
     * @param formats names among which stl or 3mf may stand
     * @param parts names with commas, or null
     * @param chord as typed, or null
     * @return null when there are to be no solids
     */
    static SolidsAsked of(List<String> formats, String parts, String chord) {
        boolean stl = formats.contains("stl");
        boolean threeMf = formats.contains("3mf");
        if (!stl && !threeMf) {
            if (parts != null || chord != null) {
                String lost = parts != null
                        ? MakeCommand.SOLIDS + " " + Shown.quoted(parts)
                        : MakeCommand.CHORD + " " + Shown.quoted(chord);
                throw Stop.wrong(lost + " has no meaning without stl or 3mf among --formats; try --formats"
                        + " svg,dxf,stl,3mf");
            }
            return null;
        }
        List<String> names = new ArrayList<>();
        if (parts != null) {
            for (String part : parts.split(",", -1)) {
                if (part.trim().isEmpty()) {
                    throw Stop.wrong(MakeCommand.SOLIDS + ": a name of a part is empty");
                }
                names.add(part.trim());
            }
        }
        if (names.size() == 1 && names.get(0).equals(PRINTED)) {
            names.clear();
        }
        return new SolidsAsked(stl, threeMf, names, new Tolerance(chord == null ? USUAL_CHORD : length(chord)));
    }

    private static double length(String chord) {
        QuantityReader.Result read = QuantityReader.read(chord, Quantity.LENGTH, LengthUnit.MM.unit());
        if (read.refused()) {
            throw Stop.wrong(
                    MakeCommand.CHORD + ": " + read.reason() + (read.hint().isEmpty() ? "" : "; " + read.hint()));
        }
        if (read.value() < FINEST) {
            throw Stop.wrong(MakeCommand.CHORD + ": " + Shown.quoted(chord) + " is below the least of 0.0005 mm"
                    + " (outlines are no nearer to the true curve themselves)");
        }
        if (read.value() > COARSEST) {
            throw Stop.wrong(MakeCommand.CHORD + ": " + Shown.quoted(chord) + " is above the most of 0.5 mm"
                    + " (pins and bores would no longer be round)");
        }
        return read.value();
    }
}
