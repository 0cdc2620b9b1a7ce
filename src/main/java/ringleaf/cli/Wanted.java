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
 */
record Wanted(boolean svg, boolean dxf, DxfVersion version, Optional<SolidsAsked> solids) {
    /** Formats of part files. */
    static final List<String> FORMATS = List.of("svg", "dxf", "stl", "3mf");

    private static final List<String> USUAL = List.of("svg", "dxf");
    /** Versions of DXF. */
    static final List<String> VERSIONS = List.of("r2000", "r12");

    /**
     * What the options ask for.
     *
     * @param formats comma-separated names, or null for the usual ones
     * @param dxf version of DXF, or null for the usual one
     * @param solids names of parts, or null for the printed ones
     * @param chord tolerance of solids, or null for the usual one
     */
    static Wanted of(String formats, String dxf, String solids, String chord) {
        List<String> asked = formats == null ? USUAL : names(formats);
        DxfVersion version = DxfVersion.AC1015;
        if (dxf != null) {
            if (!VERSIONS.contains(dxf)) {
                throw unknown("--dxf", "version of DXF", dxf, VERSIONS);
            }
            if (!asked.contains("dxf")) {
                throw Stop.wrong("--dxf " + dxf + " has no meaning without dxf among --formats " + Shown.quoted(formats));
            }
            version = dxf.equals("r12") ? DxfVersion.R12 : DxfVersion.AC1015;
        }
        boolean plain = formats == null && solids == null && chord == null;
        return new Wanted(
                asked.contains("svg"),
                asked.contains("dxf"),
                version,
                plain ? Optional.empty() : Optional.ofNullable(SolidsAsked.of(asked, solids, chord)));
    }

    private static List<String> names(String formats) {
        List<String> names = new ArrayList<>();
        for (String part : formats.split(",", -1)) {
            String name = part.trim();
            if (!FORMATS.contains(name)) {
                throw unknown("--formats", "format", name, FORMATS);
            }
            names.add(name);
        }
        return names;
    }

    private static Stop unknown(String option, String what, String name, List<String> known) {
        String said = name.isEmpty() ? "a name of a " + what + " is empty" : "there is no " + what + " " + Shown.quoted(name);
        return Stop.wrong(option + ": " + said + "; " + Nearest.hint(name, known));
    }
}
