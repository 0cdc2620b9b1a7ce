// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.List;
import java.util.Map;
import ringleaf.draw.Drawing;
import ringleaf.draw.dxf.DxfVersion;
import ringleaf.draw.dxf.DxfWriter;

final class DxfFormat extends OutlineFormat {
    private static final String OLD = "r12";
    private static final FormatOption VERSION = new FormatOption(
            "--dxf",
            "VERSION",
            "version of DXF: r2000 (the default), or r12 for old readers",
            "version of DXF",
            List.of("r2000", OLD));

    @Override
    public String name() {
        return "dxf";
    }

    @Override
    public String writes() {
        return "outlines of distinct parts, and of sheets with parts laid out on them";
    }

    @Override
    public List<FormatOption> options() {
        return List.of(VERSION);
    }

    @Override
    public byte[] write(Drawing drawing, Map<String, String> given) {
        return DxfWriter.write(drawing, OLD.equals(given.get(VERSION.name())) ? DxfVersion.R12 : DxfVersion.AC1015);
    }
}
