// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringleaf.draw.format.SolidFormat;
import ringleaf.geom.Tolerance;
import ringleaf.spec.field.LengthUnit;
import ringleaf.spec.field.Quantity;
import ringleaf.spec.field.QuantityReader;
import ringleaf.spec.text.Shown;

/**
 * Which solids are asked for on the command line.
 *
 * @param formats in which they are written
 * @param parts names as typed; empty for the printed ones
 * @param chord how far chords may leave the arcs
 */
record SolidsAsked(List<SolidFormat> formats, List<String> parts, Tolerance chord) {
    /** All parts instead of names. */
    static final String ALL = "all";
    /** The parts that are printed, instead of names. */
    static final String PRINTED = "printed";

    /** A fifth of the finest step of the printers meant here, mm. */
    static final double USUAL_CHORD = 0.01;

    private static final String CHORD = SolidFormat.CHORD.name();
    private static final double FINEST = 0.0005;
    private static final double COARSEST = 0.5;

    /**
     * What the options ask for.
     *
     * @param formats of solids, at least one
     * @param options as typed, by name
     */
    static SolidsAsked of(List<SolidFormat> formats, Map<String, String> options) {
        String parts = options.get(SolidFormat.PARTS.name());
        List<String> names = new ArrayList<>();
        if (parts != null) {
            for (String part : parts.split(",", -1)) {
                if (part.trim().isEmpty()) {
                    throw Stop.wrong(SolidFormat.PARTS.name() + ": a name of a part is empty");
                }
                names.add(part.trim());
            }
        }
        if (names.size() == 1 && names.get(0).equals(PRINTED)) {
            names.clear();
        }
        if (parts == null && formats.stream().noneMatch(SolidFormat::isPrinted)) {
            names.add(ALL);
        }
        String chord = options.get(CHORD);
        return new SolidsAsked(formats, names, new Tolerance(chord == null ? USUAL_CHORD : length(chord)));
    }

    private static double length(String chord) {
        QuantityReader.Result read = QuantityReader.read(chord, Quantity.LENGTH, LengthUnit.MM.unit());
        if (read.refused()) {
            throw Stop.wrong(CHORD + ": " + read.reason() + (read.hint().isEmpty() ? "" : "; " + read.hint()));
        }
        if (read.value() < FINEST) {
            throw Stop.wrong(CHORD + ": " + Shown.quoted(chord) + " is below the least of 0.0005 mm"
                    + " (outlines are no nearer to the true curve themselves)");
        }
        if (read.value() > COARSEST) {
            throw Stop.wrong(CHORD + ": " + Shown.quoted(chord) + " is above the most of 0.5 mm"
                    + " (pins and bores would no longer be round)");
        }
        return read.value();
    }
}
