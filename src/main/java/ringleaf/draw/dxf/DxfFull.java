// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import java.util.List;
import ringleaf.draw.Drawing;
import ringleaf.draw.DrawingLayer;
import ringleaf.draw.Drawn;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * A drawing as an AC1015 file with every section, table and dictionary that this version asks for. Handles are given
 * out in the order of writing, those that are referred to before in {@link DxfFrame}.
 */
final class DxfFull {
    private final Drawing drawing;
    private final DxfText out = new DxfText();
    private final DxfFrame frame = new DxfFrame(out);

    DxfFull(Drawing drawing) {
        this.drawing = drawing;
    }

    byte[] write() {
        out.section("CLASSES");
        frame.classes();
        out.endSection();
        out.section("TABLES");
        frame.viewPorts(DxfHeader.View.of(drawing.box()));
        frame.lineTypes();
        frame.layers(drawing.layers());
        frame.otherTables();
        frame.blockRecords();
        out.endSection();
        out.section("BLOCKS");
        frame.blocks();
        out.endSection();
        out.section("ENTITIES");
        for (DrawingLayer layer : drawing.layers()) {
            for (Drawn thing : layer.things()) {
                add(layer.name(), thing);
            }
        }
        out.endSection();
        out.section("OBJECTS");
        new DxfObjects(out, frame).write(drawing.box());
        out.endSection().put(0, "EOF");
        return out.toBytes(DxfHeader.of(drawing, "AC1015", out.nextHandle()));
    }

    private void add(String layer, Drawn thing) {
        if (thing instanceof Drawn.Round round) {
            entity("CIRCLE", layer).put(100, "AcDbCircle");
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
        entity("LWPOLYLINE", layer).put(100, "AcDbPolyline");
        out.put(90, line.vertices().size()).put(70, closed ? 1 : 0).put(43, 0.0);
        for (int i = 0; i < line.vertices().size(); i++) {
            Point vertex = line.vertices().get(i);
            out.point(10, vertex.x(), vertex.y());
            if (line.bulges().get(i) != 0) {
                out.bulge(line.bulges().get(i));
            }
        }
    }

    private DxfText entity(String type, String layer) {
        out.put(0, type).put(5, out.newHandle()).put(330, frame.modelRecord());
        return out.put(100, "AcDbEntity").put(8, layer);
    }
}
