// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import java.util.List;
import ringleaf.draw.DrawingLayer;

/** What every AC1015 file has whatever it shows: tables and blocks. */
final class DxfFrame {
    private final DxfText out;
    private final String modelRecord;
    private final String paperRecord;
    private final String modelLayout;
    private final String paperLayout;
    private final String plainPlotStyle;

    DxfFrame(DxfText out) {
        this.out = out;
        modelRecord = out.newHandle();
        paperRecord = out.newHandle();
        modelLayout = out.newHandle();
        paperLayout = out.newHandle();
        plainPlotStyle = out.newHandle();
    }

    String modelRecord() {
        return modelRecord;
    }

    String paperRecord() {
        return paperRecord;
    }

    String modelLayout() {
        return modelLayout;
    }

    String paperLayout() {
        return paperLayout;
    }

    String plainPlotStyle() {
        return plainPlotStyle;
    }

    /** The two object types that the dictionaries use and that are not built in. */
    void classes() {
        classEntry("ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
        classEntry("ACDBPLACEHOLDER", "AcDbPlaceHolder");
        classEntry("LAYOUT", "AcDbLayout");
    }

    private void classEntry(String record, String type) {
        out.put(0, "CLASS").put(1, record).put(2, type).put(3, "ObjectDBX Classes");
        out.put(90, 0).put(280, 0).put(281, 0);
    }

    void viewPorts(DxfHeader.View view) {
        String table = table("VPORT", 1);
        entry("VPORT", table, "AcDbViewportTableRecord", "*Active");
        view.port(out);
        endTable();
    }

    void lineTypes() {
        String table = table("LTYPE", 3);
        for (String name : new String[] {"ByBlock", "ByLayer", "Continuous"}) {
            entry("LTYPE", table, "AcDbLinetypeTableRecord", name);
            out.put(3, name.equals("Continuous") ? "Solid line" : "")
                    .put(72, 65)
                    .put(73, 0)
                    .put(40, 0.0);
        }
        endTable();
    }

    void layers(List<DrawingLayer> layers) {
        String table = table("LAYER", layers.size() + 1);
        layer(table, "0", 7, -3);
        for (DrawingLayer layer : layers) {
            layer(table, layer.name(), layer.style().number(), DxfStyle.weight(layer.style()));
        }
        endTable();
    }

    private void layer(String table, String name, int colour, int weight) {
        entry("LAYER", table, "AcDbLayerTableRecord", name);
        out.put(62, colour).put(6, "Continuous").put(370, weight).put(390, plainPlotStyle);
    }

    /** Text style, views, user coordinate systems, applications and dimension style, in the usual order. */
    void otherTables() {
        String styles = table("STYLE", 1);
        entry("STYLE", styles, "AcDbTextStyleTableRecord", "Standard");
        out.put(40, 0.0)
                .put(41, 1.0)
                .put(50, 0.0)
                .put(71, 0)
                .put(42, 2.5)
                .put(3, "txt")
                .put(4, "");
        endTable();
        table("VIEW", 0);
        endTable();
        table("UCS", 0);
        endTable();
        String applications = table("APPID", 1);
        entry("APPID", applications, "AcDbRegAppTableRecord", "ACAD");
        endTable();
        String dimensions = table("DIMSTYLE", 1);
        out.put(100, "AcDbDimStyleTable").put(71, 0);
        out.put(0, "DIMSTYLE").put(105, out.newHandle()).put(330, dimensions);
        out.put(100, "AcDbSymbolTableRecord")
                .put(100, "AcDbDimStyleTableRecord")
                .put(2, "Standard")
                .put(70, 0);
        endTable();
    }

    void blockRecords() {
        String table = table("BLOCK_RECORD", 2);
        blockRecord(table, "*Model_Space", modelRecord, modelLayout);
        blockRecord(table, "*Paper_Space", paperRecord, paperLayout);
        endTable();
    }

    private void blockRecord(String table, String name, String handle, String layout) {
        out.put(0, "BLOCK_RECORD").put(5, handle).put(330, table).put(100, "AcDbSymbolTableRecord");
        out.put(100, "AcDbBlockTableRecord").put(2, name).put(340, layout);
    }

    void blocks() {
        block("*Model_Space", modelRecord, false);
        block("*Paper_Space", paperRecord, true);
    }

    private void block(String name, String record, boolean paper) {
        blockEntity("BLOCK", record, paper)
                .put(100, "AcDbBlockBegin")
                .put(2, name)
                .put(70, 0);
        out.point(10, 0, 0, 0).put(3, name).put(1, "");
        blockEntity("ENDBLK", record, paper).put(100, "AcDbBlockEnd");
    }

    private DxfText blockEntity(String type, String record, boolean paper) {
        out.put(0, type).put(5, out.newHandle()).put(330, record).put(100, "AcDbEntity");
        if (paper) {
            out.put(67, 1);
        }
        return out.put(8, "0");
    }

    private String table(String name, int entries) {
        String handle = out.newHandle();
        out.put(0, "TABLE")
                .put(2, name)
                .put(5, handle)
                .put(330, "0")
                .put(100, "AcDbSymbolTable")
                .put(70, entries);
        return handle;
    }

    private void entry(String type, String table, String record, String name) {
        out.put(0, type).put(5, out.newHandle()).put(330, table).put(100, "AcDbSymbolTableRecord");
        out.put(100, record).put(2, name).put(70, 0);
    }

    private void endTable() {
        out.put(0, "ENDTAB");
    }
}
