// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism;

import java.util.ArrayList;
import java.util.List;
import ringleaf.machine.Size;
import ringleaf.mechanism.AsBuilt.Deviation;

/** Collects the sizes of a design that can be off, with what its processes may misplace edges by; lengths in mm. */
public final class SizesOff {
    /** How far sheet may differ from its name, as a share of the thickness; common practice, no source. */
    public static final double SHEET = 0.05;
    /** Share of what edges are misplaced by that heights built up in layers are; common practice, no source. */
    public static final double LAYERS = 0.5;
    /** How far drawn wire may differ from its name, mm; common practice, no source. */
    public static final double WIRE = 0.02;
    /** How far a piece cut to length by hand and filed may be off, mm; common practice, no source. */
    public static final double FILED = 0.1;
    /** The widest look at a size that nothing minds, mm. */
    private static final double FAR = 5;

    private final List<Deviation> all = new ArrayList<>();

    /** Adds an edge or a place that one process makes; gives its number. */
    public int edge(String name, String what, double nominal, int copies, Material made) {
        return add(name, what, nominal, copies, made.repeatability(), made.process());
    }

    /**
     * Adds the radius of a circle about the axis that its part turns on; gives its number. Its diameter is the size that
     * a process keeps, so the radius is off by half of that.
     */
    public int radius(String name, String what, double nominal, Material made) {
        return add(name, what, nominal, 1, made.repeatability() / 2, made.process() + ", half a diameter's");
    }

    /**
     * Adds a width between two edges of one part; gives its number. What a process repeats to is known for sizes (so the
     * guides tell it, and so a test piece measures it), so a width is off by no more than that.
     */
    public int width(String name, String what, double nominal, int copies, Material made) {
        return add(made.width(name, what, copies), nominal);
    }

    /** Adds a size of a joint, as drawn; gives its number. */
    public int add(Size size, double nominal) {
        return add(size.name(), size.what(), nominal, size.copies(), size.within(), size.source());
    }

    /** Adds a thickness or a height: that of bought sheet, or one that is built up; gives its number. */
    public int height(String name, String what, double nominal, Material made) {
        String source = made.sheet() ? "5 % of sheet, common practice" : made.process() + ", along the layers";
        return add(name, what, nominal, 1, heightWithin(made, nominal), source);
    }

    /** How far a height may be off, either way, mm. */
    public static double heightWithin(Material made, double nominal) {
        return made.sheet() ? SHEET * nominal : LAYERS * made.repeatability();
    }

    /** Adds any other length; gives its number. */
    public int add(String name, String what, double nominal, int copies, double within, String source) {
        double most = nominal > 0 ? Math.min(FAR, 0.9 * nominal) : FAR;
        all.add(new Deviation(name, what, "mm", nominal, copies, within, source, most));
        return all.size() - 1;
    }

    public List<Deviation> all() {
        return List.copyOf(all);
    }
}
