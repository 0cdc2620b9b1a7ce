// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.dxf;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.Decimals;
import ringleaf.geom.Arc;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;

/**
 * Vertices and bulges of a chain of pieces. An arc over 180 degrees is split into equal ones; a piece whose rounded
 * ends coincide is left out, for it would have no length.
 *
 * @param vertices one to begin each piece, and one more at the end of an open chain
 * @param bulges of the piece after each vertex, tan(sweep/4) (DXF reference, LWPOLYLINE, group 42)
 */
record DxfPolyline(List<Point> vertices, List<Double> bulges) {
    private static final double SLACK = 1e-12;

    static DxfPolyline of(List<Segment> segments, boolean closed) {
        DxfPolyline line = new DxfPolyline(new ArrayList<>(), new ArrayList<>());
        for (Segment segment : segments) {
            int pieces = 1;
            if (segment instanceof Arc arc) {
                pieces = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / Math.PI - SLACK));
            }
            Point from = segment.start();
            for (int i = 1; i <= pieces; i++) {
                Point to = i == pieces ? segment.end() : segment.pointAt((double) i / pieces);
                line.add(from, to, segment instanceof Arc arc ? Math.tan(arc.sweep() / pieces / 4) : 0);
                from = to;
            }
        }
        if (!closed) {
            line.vertices.add(segments.get(segments.size() - 1).end());
            line.bulges.add(0.0);
        }
        return line;
    }

    private void add(Point from, Point to, double bulge) {
        boolean still = Decimals.rounded(from.x(), DxfText.DECIMALS) == Decimals.rounded(to.x(), DxfText.DECIMALS)
                && Decimals.rounded(from.y(), DxfText.DECIMALS) == Decimals.rounded(to.y(), DxfText.DECIMALS);
        if (!still) {
            vertices.add(from);
            bulges.add(bulge);
        }
    }
}
