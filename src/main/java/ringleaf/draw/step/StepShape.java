// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.step;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Arc;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Segment;
import ringleaf.space.Vector;

/** Writes a boundary as solids of planes and cylinders; every edge and vertex once. */
final class StepShape {
    private final StepFile file;
    private final Brep brep;
    private final int[] vertices;
    private final int[] edges;

    private StepShape(StepFile file, Brep brep) {
        this.file = file;
        this.brep = brep;
        vertices = new int[brep.vertices().size()];
        edges = new int[brep.edges().size()];
    }

    /** Numbers of the solids written, one a lump. */
    static List<Integer> write(StepFile file, Brep brep, String name) {
        StepShape shape = new StepShape(file, brep);
        List<Integer> solids = new ArrayList<>();
        List<Lumps.Lump> lumps = Lumps.of(brep);
        for (Lumps.Lump lump : lumps) {
            String own = StepFile.string(lumps.size() == 1 ? name : name + " " + (solids.size() + 1));
            int outer = shape.shell(lump.outer());
            List<Integer> cavities = new ArrayList<>();
            for (List<Integer> cavity : lump.cavities()) {
                cavities.add(file.add("ORIENTED_CLOSED_SHELL('',*,#" + shape.shell(cavity) + ",.T.)"));
            }
            solids.add(file.add(
                    cavities.isEmpty()
                            ? "MANIFOLD_SOLID_BREP(" + own + ",#" + outer + ")"
                            : "BREP_WITH_VOIDS(" + own + ",#" + outer + "," + StepFile.list(cavities) + ")"));
        }
        return solids;
    }

    private int shell(List<Integer> faces) {
        List<Integer> written = new ArrayList<>();
        for (int face : faces) {
            written.add(face(brep.faces().get(face)));
        }
        return file.add("CLOSED_SHELL(''," + StepFile.list(written) + ")");
    }

    private int face(Brep.Face face) {
        List<Integer> bounds = new ArrayList<>();
        for (List<Brep.Use> loop : face.loops()) {
            List<Integer> uses = new ArrayList<>();
            for (Brep.Use use : loop) {
                uses.add(file.add("ORIENTED_EDGE('',*,*,#" + edge(use.edge()) + "," + flag(use.forward()) + ")"));
            }
            int closed = file.add("EDGE_LOOP(''," + StepFile.list(uses) + ")");
            bounds.add(file.add((bounds.isEmpty() ? "FACE_OUTER_BOUND('',#" : "FACE_BOUND('',#") + closed + ",.T.)"));
        }
        boolean same = face.wall().isEmpty() ? face.up() : face.wall().get().curvature() >= 0;
        return file.add("ADVANCED_FACE(''," + StepFile.list(bounds) + ",#" + surface(face) + "," + flag(same) + ")");
    }

    private int surface(Brep.Face face) {
        if (face.wall().isEmpty()) {
            return file.add("PLANE('',#" + file.frame(file.point(0, 0, face.z()), Vector.Z, Vector.X) + ")");
        }
        double z = brep.vertices()
                .get(brep.edges().get(face.loops().get(0).get(0).edge()).from())
                .z();
        Segment wall = face.wall().get();
        if (wall instanceof Arc arc) {
            int axis = file.frame(file.point(arc.centre(), z), Vector.Z, Vector.X);
            return file.add("CYLINDRICAL_SURFACE('',#" + axis + "," + StepFile.real(arc.radius()) + ")");
        }
        Point along = wall.end().minus(wall.start()).unit();
        Vector outward = new Vector(along.y(), -along.x(), 0);
        int frame = file.frame(file.point(wall.start(), z), outward, new Vector(along.x(), along.y(), 0));
        return file.add("PLANE('',#" + frame + ")");
    }

    private int edge(int number) {
        if (edges[number] == 0) {
            Brep.Edge edge = brep.edges().get(number);
            int from = vertex(edge.from());
            int to = vertex(edge.to());
            edges[number] = file.add("EDGE_CURVE('',#" + from + ",#" + to + ",#" + curve(edge) + ",.T.)");
        }
        return edges[number];
    }

    private int curve(Brep.Edge edge) {
        Brep.Vertex from = brep.vertices().get(edge.from());
        Brep.Vertex to = brep.vertices().get(edge.to());
        if (edge.along().isPresent() && edge.along().get() instanceof Arc arc) {
            int axis = file.frame(file.point(arc.centre(), from.z()), Vector.Z, Vector.X);
            return file.add("CIRCLE('',#" + axis + "," + StepFile.real(arc.radius()) + ")");
        }
        Point across = to.point().minus(from.point());
        boolean upright = edge.along().isEmpty();
        Point unit = upright ? Point.ORIGIN : new Line(from.point(), to.point()).tangentAt(0);
        int direction = file.direction(unit.x(), unit.y(), upright ? 1 : 0);
        double length = upright ? to.z() - from.z() : across.norm();
        int vector = file.add("VECTOR('',#" + direction + "," + StepFile.real(length) + ")");
        return file.add("LINE('',#" + file.point(from.point(), from.z()) + ",#" + vector + ")");
    }

    private int vertex(int number) {
        if (vertices[number] == 0) {
            Brep.Vertex vertex = brep.vertices().get(number);
            vertices[number] = file.add("VERTEX_POINT('',#" + file.point(vertex.point(), vertex.z()) + ")");
        }
        return vertices[number];
    }

    private static String flag(boolean yes) {
        return yes ? ".T." : ".F.";
    }
}
