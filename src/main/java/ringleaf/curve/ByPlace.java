// SPDX-License-Identifier: Apache-2.0
package ringleaf.curve;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import ringleaf.geom.Box;
import ringleaf.geom.Point;

/**
 * Things found again by where they are; all are put in before the first is looked for.
 *
 * @param <T> what is found
 */
public final class ByPlace<T> {
    private final STRtree tree = new STRtree();

    public void put(Box box, T thing) {
        tree.insert(envelope(box), thing);
    }

    /** Those whose boxes meet this one, in an order that follows from the order in which they were put in. */
    @SuppressWarnings("unchecked")
    public List<T> near(Box box) {
        return tree.query(envelope(box));
    }

    /** Those in whose boxes the point lies. */
    public List<T> at(Point p) {
        return near(new Box(p.x(), p.y(), p.x(), p.y()));
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
    }
}
