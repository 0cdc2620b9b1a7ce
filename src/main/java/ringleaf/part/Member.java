// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;
import ringleaf.space.Pose;
import ringleaf.space.Vector;

/**
 * One piece in its place: a copy of a part, turned and shifted from where the part is drawn, riding on a body.
 *
 * @param name for findings, e.g. {@code blade 3}
 * @param part what it is a copy of
 * @param body index of the body it moves with; 0 stands still
 * @param home from the part's drawing to the copy's place in state 0
 * @param stood how it is turned up across the mechanism's plane, and raised, before that; nothing for what lies flat
 */
public record Member(String name, Part part, int body, Placement home, Pose stood) {
    /** A piece that lies in the mechanism's plane. */
    public Member(String name, Part part, int body, Placement home) {
        this(name, part, body, home, Pose.NONE);
    }

    /**
     * A piece that stands across the mechanism's plane.
     *
     * @param pose from the part's own frame to its place in state 0
     */
    public static Member standing(String name, Part part, int body, Pose pose) {
        Vector shift = pose.shift();
        Pose stood = new Pose(pose.turn(), new Vector(0, 0, shift.z()));
        return new Member(name, part, body, Placement.shift(shift.x(), shift.y()), stood);
    }

    /** Whether it lies in the mechanism's plane, so that its outlines are seen there. */
    public boolean isFlat() {
        return stood.equals(Pose.NONE);
    }

    /** From the part's drawing to the copy's place in the given state. */
    public Placement placed(Motion motion, int state) {
        return home.then(motion.pose(body, state));
    }

    /**
     * What it takes up at the mechanism's heights, before it is brought home: the part's layers where it is flat;
     * of one that is stood up the upright box round each of its levels, which holds it wholly.
     */
    public List<Layer> layers() {
        if (isFlat()) {
            return part.layers();
        }
        List<Layer> boxes = new ArrayList<>();
        for (Layer layer : part.layers()) {
            for (Region region : layer.regions()) {
                boxes.add(box(region.box(), layer.zFrom(), layer.zTo()));
            }
        }
        return boxes;
    }

    /** What stands for it in a picture seen along the mechanism's axis: itself where it is flat, else its boxes. */
    Member seen() {
        return isFlat() ? this : new Member(name, part.withLayers(layers()), body, home);
    }

    private Layer box(Box drawn, double from, double to) {
        Vector low = new Vector(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        Vector high = low.times(-1);
        for (int corner = 0; corner < 8; corner++) {
            double x = (corner & 1) == 0 ? drawn.minX() : drawn.maxX();
            double y = (corner & 2) == 0 ? drawn.minY() : drawn.maxY();
            Vector at = stood.apply(new Vector(x, y, (corner & 4) == 0 ? from : to));
            low = new Vector(Math.min(low.x(), at.x()), Math.min(low.y(), at.y()), Math.min(low.z(), at.z()));
            high = new Vector(Math.max(high.x(), at.x()), Math.max(high.y(), at.y()), Math.max(high.z(), at.z()));
        }
        Contour edge = Contour.rectangle(new Box(low.x(), low.y(), high.x(), high.y()));
        return Layer.of(Region.of(edge), low.z(), high.z());
    }
}
