// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.mesh;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Overlay;
import ringleaf.geom.Region;
import ringleaf.part.Layer;
import ringleaf.part.Part;

/**
 * A part cut into levels from the bed up: what is solid between one height and the next. Layers that share a height
 * are joined; heights nearer to each other than rounding are one.
 */
public final class Levels {
    private static final double SAME_HEIGHT = 1e-9;

    private final List<Double> heights = new ArrayList<>();
    private final List<List<Region>> solid = new ArrayList<>();

    public Levels(Part part) {
        for (Layer layer : part.layers()) {
            add(layer.zFrom());
            add(layer.zTo());
        }
        for (int i = 0; i + 1 < heights.size(); i++) {
            solid.add(solid(part, (heights.get(i) + heights.get(i + 1)) / 2));
        }
    }

    private void add(double z) {
        int at = 0;
        while (at < heights.size() && heights.get(at) < z - SAME_HEIGHT) {
            at++;
        }
        if (at == heights.size() || heights.get(at) > z + SAME_HEIGHT) {
            heights.add(at, z);
        }
    }

    private static List<Region> solid(Part part, double z) {
        List<Region> regions = new ArrayList<>();
        int layers = 0;
        for (Layer layer : part.layers()) {
            if (layer.zFrom() < z && z < layer.zTo()) {
                regions.addAll(layer.regions());
                layers++;
            }
        }
        return layers > 1 ? Overlay.union(regions) : regions;
    }

    /** How many there are. */
    public int count() {
        return solid.size();
    }

    /** Height of the lower face of a level, or for the number of levels that of the uppermost face, mm. */
    public double height(int i) {
        return heights.get(i);
    }

    /** What is solid at a level; nothing below the lowest and above the highest. */
    public List<Region> solid(int i) {
        return i < 0 || i >= solid.size() ? List.of() : solid.get(i);
    }

    /** Area of a level, mm². */
    public double area(int i) {
        double area = 0;
        for (Region region : solid(i)) {
            area += region.area();
        }
        return area;
    }

    /** What is open to above where level {@code i - 1} ends and level {@code i} begins. */
    public List<Region> upper(int i) {
        return less(solid(i - 1), solid(i));
    }

    /** What is open to below there. */
    public List<Region> lower(int i) {
        return less(solid(i), solid(i - 1));
    }

    private static List<Region> less(List<Region> one, List<Region> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one;
        }
        return one.equals(other) ? List.of() : Overlay.difference(one, other);
    }
}
