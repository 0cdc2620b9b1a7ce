// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import ringleaf.geom.Box;

/** The OBJECTS section of an AC1015 file: the root dictionary, groups (none), layouts and the plain plot style. */
final class DxfObjects {
    private final DxfText out;
    private final DxfFrame frame;

    DxfObjects(DxfText out, DxfFrame frame) {
        this.out = out;
        this.frame = frame;
    }

    void write(Box box) {
        String root = out.newHandle();
        String groups = out.newHandle();
        String layouts = out.newHandle();
        String plotStyles = out.newHandle();
        dictionary(root, "0");
        item("ACAD_GROUP", groups);
        item("ACAD_LAYOUT", layouts);
        item("ACAD_PLOTSTYLENAME", plotStyles);
        dictionary(groups, root);
        dictionary(layouts, root);
        item("Layout1", frame.paperLayout());
        item("Model", frame.modelLayout());
        out.put(0, "ACDBDICTIONARYWDFLT")
                .put(5, plotStyles)
                .put(330, root)
                .put(100, "AcDbDictionary")
                .put(281, 1);
        item("Normal", frame.plainPlotStyle());
        out.put(100, "AcDbDictionaryWithDefault").put(340, frame.plainPlotStyle());
        out.put(0, "ACDBPLACEHOLDER").put(5, frame.plainPlotStyle()).put(330, plotStyles);
        layout("Model", frame.modelLayout(), layouts, frame.modelRecord(), 0, box);
        layout("Layout1", frame.paperLayout(), layouts, frame.paperRecord(), 1, new Box(0, 0, 297, 210));
    }

    private void dictionary(String handle, String owner) {
        out.put(0, "DICTIONARY")
                .put(5, handle)
                .put(330, owner)
                .put(100, "AcDbDictionary")
                .put(281, 1);
    }

    private void item(String name, String handle) {
        out.put(3, name).put(350, handle);
    }

    private void layout(String name, String handle, String owner, String record, int tab, Box box) {
        out.put(0, "LAYOUT").put(5, handle).put(330, owner).put(100, "AcDbPlotSettings");
        out.put(1, "").put(2, "none_device").put(4, "").put(6, "");
        // Margins, sheet, origin and window of a plot: none is set up.
        for (int code = 40; code <= 49; code++) {
            out.put(code, 0.0);
        }
        out.put(140, 0.0).put(141, 0.0).put(142, 1.0).put(143, 1.0);
        out.put(70, tab == 0 ? 1712 : 688)
                .put(72, 1)
                .put(73, 0)
                .put(74, 5)
                .put(7, "")
                .put(75, 16);
        out.put(147, 1.0).put(148, 0.0).put(149, 0.0);
        out.put(100, "AcDbLayout").put(1, name).put(70, 1).put(71, tab);
        out.point(10, box.minX(), box.minY()).point(11, box.maxX(), box.maxY()).point(12, 0, 0, 0);
        out.point(14, box.minX(), box.minY(), 0).point(15, box.maxX(), box.maxY(), 0);
        out.put(146, 0.0)
                .point(13, 0, 0, 0)
                .point(16, 1, 0, 0)
                .point(17, 0, 1, 0)
                .put(76, 0)
                .put(330, record);
    }
}
