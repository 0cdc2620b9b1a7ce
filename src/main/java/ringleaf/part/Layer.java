package ringleaf.part;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Mirror;
import ringleaf.geom.Placement;
import ringleaf.geom.Region;

/**
 * One level of a part: the same outline from one height to another.
 *
 * @param regions what is solid at this level; regions do not meet one another
 * @param zFrom height of the lower face in the mechanism's frame, mm
 * @param zTo height of the upper face, mm, above {@code zFrom}
 */
public record Layer(List<Region> regions, double zFrom, double zTo) {
    public Layer {
        regions = List.copyOf(regions);
        if (!(zTo > zFrom)) {
            throw new IllegalArgumentException("a layer needs a height, not " + zFrom + " to " + zTo);
        }
    }

    public static Layer of(Region region, double zFrom, double zTo) {
        return new Layer(List.of(region), zFrom, zTo);
    }

    public double height() {
        return zTo - zFrom;
    }

    public Layer placed(Placement placement) {
        List<Region> placed = new ArrayList<>(regions.size());
        for (Region region : regions) {
            placed.add(region.placed(placement));
        }
        return new Layer(placed, zFrom, zTo);
    }

    public Layer mirrored(Mirror mirror) {
        List<Region> mirrored = new ArrayList<>(regions.size());
        for (Region region : regions) {
            mirrored.add(region.mirrored(mirror));
        }
        return new Layer(mirrored, zFrom, zTo);
    }
}
