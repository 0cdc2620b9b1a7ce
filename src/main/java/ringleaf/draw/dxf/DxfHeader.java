// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import ringleaf.draw.Drawing;
import ringleaf.geom.Box;

/** The head of a file: comments, then the header section with version, units, extents and view. */
final class DxfHeader {
    private DxfHeader() {}

    /**
     * What the file shows when it is opened: the whole drawing and a little room about it.
     *
     * @param x of the middle, mm
     * @param y of the middle, mm
     * @param height of what is shown, mm
     * @param aspect width by height of the window
     */
    record View(double x, double y, double height, double aspect) {
        private static final double ROOM = 1.1;
        private static final double ASPECT = 1.5;

        static View of(Box box) {
            double height = ROOM * Math.max(box.height(), box.width() / ASPECT);
            return new View(box.centre().x(), box.centre().y(), Math.max(height, 1e-3), ASPECT);
        }

        /** The groups of a VPORT entry that both versions share. */
        void port(DxfText out) {
            out.point(10, 0, 0)
                    .point(11, 1, 1)
                    .point(12, x, y)
                    .point(13, 0, 0)
                    .point(14, 10, 10)
                    .point(15, 10, 10);
            out.point(16, 0, 0, 1)
                    .point(17, 0, 0, 0)
                    .put(40, height)
                    .put(41, aspect)
                    .put(42, 50.0);
            out.put(43, 0.0)
                    .put(44, 0.0)
                    .put(50, 0.0)
                    .put(51, 0.0)
                    .put(71, 0)
                    .put(72, 1000)
                    .put(73, 1)
                    .put(74, 3);
            out.put(75, 0).put(76, 0).put(77, 0).put(78, 0);
        }
    }

    /**
     * The head of the file.
     *
     * @param version the word for it, e.g. AC1015
     * @param handleSeed the next free handle, or null for a version that has no use for it
     */
    static DxfText of(Drawing drawing, String version, String handleSeed) {
        DxfText out = new DxfText();
        out.comment(drawing.title());
        for (String note : drawing.notes()) {
            out.comment(note);
        }
        for (int i = 0; i < drawing.layers().size(); i++) {
            String note = drawing.layers().get(i).note();
            if (!note.isEmpty()) {
                out.comment(drawing.layers().get(i).name() + ": " + note);
            }
        }
        Box box = drawing.box();
        View view = View.of(box);
        out.section("HEADER");
        variable(out, "$ACADVER").put(1, version);
        variable(out, "$DWGCODEPAGE").put(3, "ANSI_1252");
        variable(out, "$INSBASE").point(10, 0, 0, 0);
        variable(out, "$EXTMIN").point(10, box.minX(), box.minY(), 0);
        variable(out, "$EXTMAX").point(10, box.maxX(), box.maxY(), 0);
        variable(out, "$LIMMIN").point(10, box.minX(), box.minY());
        variable(out, "$LIMMAX").point(10, box.maxX(), box.maxY());
        variable(out, "$LTSCALE").put(40, 1.0);
        variable(out, "$TEXTSTYLE").put(7, "STANDARD");
        variable(out, "$CLAYER").put(8, "0");
        variable(out, "$CELTYPE").put(6, "BYLAYER");
        variable(out, "$CECOLOR").put(62, 256);
        variable(out, "$LUNITS").put(70, 2);
        variable(out, "$LUPREC").put(70, 4);
        variable(out, "$AUNITS").put(70, 0);
        variable(out, "$ANGBASE").put(50, 0.0);
        variable(out, "$ANGDIR").put(70, 0);
        variable(out, "$MEASUREMENT").put(70, 1);
        variable(out, "$INSUNITS").put(70, 4);
        if (handleSeed != null) {
            variable(out, "$HANDSEED").put(5, handleSeed);
        } else {
            variable(out, "$VIEWCTR").point(10, view.x(), view.y());
            variable(out, "$VIEWSIZE").put(40, view.height());
        }
        return out.endSection();
    }

    private static DxfText variable(DxfText out, String name) {
        return out.put(9, name);
    }
}
