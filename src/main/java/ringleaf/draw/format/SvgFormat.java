// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.format;

import java.util.Map;
import ringleaf.draw.Drawing;
import ringleaf.draw.svg.SvgWriter;

final class SvgFormat extends OutlineFormat {
    @Override
    public String name() {
        return "svg";
    }

    @Override
    public String writes() {
        return "outlines of distinct parts, and of sheets with parts laid out on them";
    }

    @Override
    public byte[] write(Drawing drawing, Map<String, String> given) {
        return SvgWriter.write(drawing);
    }
}
