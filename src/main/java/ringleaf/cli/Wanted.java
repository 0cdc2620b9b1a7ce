// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.spec.text.Nearest;
import ringleaf.spec.text.Shown;

/**
 * Which part files are wanted.
 *
 * @param svg whether as SVG
 * @param dxf whether as DXF
 * @param version of DXF
 * @param solids that are asked for
 * @param pages of PDF, where there are to be any
 */
record Wanted(boolean svg, boolean dxf, DxfVersion version, Optional<SolidsAsked> solids, Optional<Pages> pages) {
    /** Formats of part files. */
    static final List<String> FORMATS = List.of("svg", "dxf", "stl", "3mf", "paper", "drawing", "pdf");

    private static final List<String> USUAL = List.of("svg", "dxf");
    private static final List<String> SIZES = List.of("a4", "letter");
    /** Versions of DXF. */
    static final List<String> VERSIONS = List.of("r2000", "r12");

    /**
     * PDF pages.
     *
     * @param paper whether parts at true scale
     * @param drawing whether dimensioned sheets
     * @param size of the paper, absent for what goes with the spec's units
     */
    record Pages(boolean paper, boolean drawing, Optional<String> size) {}

    /**
     * What the options ask for.
     *
     * @param formats comma-separated names, or null for the usual ones
     * @param dxf version of DXF, or null for the usual one
     * @param solids names of parts, or null for the printed ones
     * @param chord tolerance of solids, or null for the usual one
     * @param size of paper, or null
     */
    static Wanted of(String formats, String dxf, String solids, String chord, String size) {
        List<String> asked = formats == null ? USUAL : names(formats, FORMATS);
        boolean plain = formats == null && solids == null && chord == null;
        return new Wanted(
                asked.contains("svg"),
                asked.contains("dxf"),
                version(dxf, asked, formats),
                plain ? Optional.empty() : Optional.ofNullable(SolidsAsked.of(asked, solids, chord)),
                pages(asked, size));
    }

    /** What the options ask for where there are outlines only. */
    static Wanted ofOutlines(String formats, String dxf) {
        List<String> asked = formats == null ? USUAL : names(formats, USUAL);
        return new Wanted(
                asked.contains("svg"),
                asked.contains("dxf"),
                version(dxf, asked, formats),
                Optional.empty(),
                Optional.empty());
    }

    private static DxfVersion version(String dxf, List<String> asked, String formats) {
        if (dxf == null) {
            return DxfVersion.AC1015;
        }
        if (!VERSIONS.contains(dxf)) {
            throw unknown("--dxf", "version of DXF", dxf, VERSIONS);
        }
        if (!asked.contains("dxf")) {
            throw Stop.wrong("--dxf " + dxf + " has no meaning without dxf among --formats " + Shown.quoted(formats));
        }
        return dxf.equals("r12") ? DxfVersion.R12 : DxfVersion.AC1015;
    }

    private static Optional<Pages> pages(List<String> asked, String size) {
        boolean paper = asked.contains("paper") || asked.contains("pdf");
        boolean drawing = asked.contains("drawing") || asked.contains("pdf");
        if (size != null && !SIZES.contains(size)) {
            throw unknown("--page-size", "size of paper", size, SIZES);
        }
        if (size != null && !paper && !drawing) {
            throw Stop.wrong("--page-size " + size + " has no meaning without paper, drawing or pdf among --formats");
        }
        return paper || drawing ? Optional.of(new Pages(paper, drawing, Optional.ofNullable(size))) : Optional.empty();
    }

    private static List<String> names(String formats, List<String> known) {
        List<String> names = new ArrayList<>();
        for (String part : formats.split(",", -1)) {
            String name = part.trim();
            if (!known.contains(name)) {
                throw unknown("--formats", "format", name, known);
            }
            names.add(name);
        }
        return names;
    }

    private static Stop unknown(String option, String what, String name, List<String> known) {
        String said =
                name.isEmpty() ? "a name of a " + what + " is empty" : "there is no " + what + " " + Shown.quoted(name);
        return Stop.wrong(option + ": " + said + "; " + Nearest.hint(name, known));
    }
}
