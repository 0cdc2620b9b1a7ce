// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Containment;
import ringleaf.geom.Path;
import ringleaf.geom.Point;
import ringleaf.geom.Region;

/** Which layer of a part a mark lies on where only its place as seen from above is known. */
final class MarkedLayers {
    private MarkedLayers() {}

    /** The layers with the marks added to them, each to the uppermost that has material at its middle, else to the lowest. */
    static List<Layer> of(List<Layer> layers, List<Path> marks) {
        if (marks.isEmpty() || layers.isEmpty()) {
            return layers;
        }
        List<Layer> marked = new ArrayList<>(layers);
        for (Path mark : marks) {
            int at = uppermost(layers, middle(mark));
            List<Path> own = new ArrayList<>(marked.get(at).marks());
            own.add(mark);
            marked.set(at, marked.get(at).withMarks(own));
        }
        return marked;
    }

    /** Where a mark is looked for. */
    static Point middle(Path mark) {
        return mark.segments().get(mark.segments().size() / 2).pointAt(0.5);
    }

    private static int uppermost(List<Layer> layers, Point place) {
        int top = layers.size() - 1;
        for (int i = top; i > 0; i--) {
            for (Region region : layers.get(i).regions()) {
                if (Containment.of(region, place, 0) != Containment.OUTSIDE) {
                    return i;
                }
            }
        }
        return 0;
    }
}
