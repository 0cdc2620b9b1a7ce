// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Containment;
import ringleaf.geom.Mirror;
import ringleaf.geom.Path;
import ringleaf.geom.Region;

/**
 * One level of a part: the same outline from one height to another.
 *
 * @param regions what is solid at this level; regions do not meet one another
 * @param zFrom height of the lower face in the mechanism's frame, mm
 * @param zTo height of the upper face, mm, above {@code zFrom}
 * @param marks lines to engrave or to score on the upper face, never cut through
 */
public record Layer(List<Region> regions, double zFrom, double zTo, List<Path> marks) {
    public Layer {
        regions = List.copyOf(regions);
        marks = List.copyOf(marks);
        if (!(zTo > zFrom)) {
            throw new IllegalArgumentException("a layer needs a height, not " + zFrom + " to " + zTo);
        }
    }

    /** A layer without marks. */
    public Layer(List<Region> regions, double zFrom, double zTo) {
        this(regions, zFrom, zTo, List.of());
    }

    public static Layer of(Region region, double zFrom, double zTo) {
        return new Layer(List.of(region), zFrom, zTo);
    }

    /** The same with other outlines; the marks stay where they are. */
    public Layer withRegions(List<Region> other) {
        return new Layer(other, zFrom, zTo, marks);
    }

    /** The same with these marks on its upper face. */
    public Layer withMarks(List<Path> other) {
        return new Layer(regions, zFrom, zTo, other);
    }

    /** The marks that lie on one of its regions. */
    public List<Path> marksOn(Region region) {
        if (regions.size() == 1) {
            return marks;
        }
        List<Path> own = new ArrayList<>();
        for (Path mark : marks) {
            if (Containment.of(region, MarkedLayers.middle(mark), 0) != Containment.OUTSIDE) {
                own.add(mark);
            }
        }
        return own;
    }

    public double height() {
        return zTo - zFrom;
    }

    /** Sheets of a thickness in mm that make up its height, at least 1; 1 of what comes in any thickness, told as 0. */
    public int plies(double sheet) {
        return sheet > 0 ? Math.max(1, (int) Math.round(height() / sheet)) : 1;
    }

    public Layer mirrored(Mirror mirror) {
        List<Region> mirrored =
                regions.stream().map(region -> region.mirrored(mirror)).toList();
        return new Layer(
                mirrored,
                zFrom,
                zTo,
                marks.stream().map(mark -> mark.mirrored(mirror)).toList());
    }
}
