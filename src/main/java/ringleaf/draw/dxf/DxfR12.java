// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import java.util.List;
import ringleaf.draw.Drawing;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/** A drawing as an AC1009 file: header, tables, blocks (none), entities. */
final class DxfR12 {
    private final Drawing drawing;
    private final DxfText out = new DxfText();

    DxfR12(Drawing drawing) {
        this.drawing = drawing;
    }

    byte[] write() {
        tables();
        out.section("BLOCKS").endSection();
        out.section("ENTITIES");
        for (DrawingLayer layer : drawing.layers()) {
            for (Drawn thing : layer.things()) {
                add(layer.name(), thing);
            }
        }
        out.endSection().put(0, "EOF");
        return out.toBytes(DxfHeader.of(drawing, "AC1009", null));
    }

    private void tables() {
        out.section("TABLES");
        table("VPORT", 1);
        DxfHeader.View view = DxfHeader.View.of(drawing.box());
        out.put(0, "VPORT").put(2, "*ACTIVE").put(70, 0);
        view.port(out);
        out.put(0, "ENDTAB");
        table("LTYPE", 1);
        out.put(0, "LTYPE").put(2, "CONTINUOUS").put(70, 0).put(3, "Solid line");
        out.put(72, 65).put(73, 0).put(40, 0.0).put(0, "ENDTAB");
        table("LAYER", drawing.layers().size() + 1);
        layer("0", 7);
        for (DrawingLayer layer : drawing.layers()) {
            layer(layer.name(), layer.style().number());
        }
        out.put(0, "ENDTAB");
        table("STYLE", 1);
        out.put(0, "STYLE")
                .put(2, "STANDARD")
                .put(70, 0)
                .put(40, 0.0)
                .put(41, 1.0)
                .put(50, 0.0);
        out.put(71, 0).put(42, 2.5).put(3, "txt").put(4, "").put(0, "ENDTAB");
        table("VIEW", 0).put(0, "ENDTAB");
        table("UCS", 0).put(0, "ENDTAB");
        table("APPID", 1).put(0, "APPID").put(2, "ACAD").put(70, 0).put(0, "ENDTAB");
        out.endSection();
    }

    private DxfText table(String name, int entries) {
        return out.put(0, "TABLE").put(2, name).put(70, entries);
    }

    private void layer(String name, int colour) {
        out.put(0, "LAYER").put(2, name).put(70, 0).put(62, colour).put(6, "CONTINUOUS");
    }

    private void add(String layer, Drawn thing) {
        if (thing instanceof Drawn.Round round) {
            out.put(0, "CIRCLE").put(8, layer);
            out.point(10, round.centre().x(), round.centre().y(), 0).put(40, round.radius());
        } else if (thing instanceof Drawn.Closed closed) {
            polyline(layer, closed.contour().segments(), true);
        } else if (thing instanceof Drawn.Open open) {
            polyline(layer, open.path().segments(), false);
        } else if (thing instanceof Drawn.Lettering lettering) {
            for (Path stroke : lettering.strokes()) {
                polyline(layer, stroke.segments(), false);
            }
        }
    }

    private void polyline(String layer, List<Segment> segments, boolean closed) {
        DxfPolyline line = DxfPolyline.of(segments, closed);
        out.put(0, "POLYLINE").put(8, layer).put(66, 1).point(10, 0, 0, 0).put(70, closed ? 1 : 0);
        for (int i = 0; i < line.vertices().size(); i++) {
            Point vertex = line.vertices().get(i);
            out.put(0, "VERTEX").put(8, layer).point(10, vertex.x(), vertex.y(), 0);
            if (line.bulges().get(i) != 0) {
                out.bulge(line.bulges().get(i));
            }
        }
        out.put(0, "SEQEND").put(8, layer);
    }
}
