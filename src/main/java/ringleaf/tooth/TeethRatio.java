// SPDX-License-Identifier: Apache-2.0
package ringleaf.tooth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two numbers of teeth that make a ratio.
 *
 * @param driver teeth of the gear that drives
 * @param driven teeth of the gear that is driven
 */
public record TeethRatio(int driver, int driven) {
    /** Ratios nearer than this count as the one asked for. */
    private static final double EXACT = 1e-9;

    /** Turns of the driver to one of the driven gear. */
    public double ratio() {
        return (double) driven / driver;
    }

    /** By what share the ratio misses the one asked for, signed. */
    public double error(double wanted) {
        return ratio() / wanted - 1;
    }

    /**
     * Whether the two have no common factor, so that each tooth meets each of the other gear in turn and wear spreads
     * evenly (a hunting tooth; common practice, no source).
     */
    public boolean isHunting() {
        return commonFactor(driver, driven) == 1;
    }

    private static int commonFactor(int a, int b) {
        return b == 0 ? a : commonFactor(b, a % b);
    }

    /**
     * All pairs of teeth within {@code share} of a ratio and, for each number of the driver's teeth, at most the
     * nearest; where none is so near, the nearest there is. Ordered by the driver's teeth.
     *
     * @param wanted driver's turns to one of the driven
     * @param share greatest relative miss, at least 0
     * @param least teeth of either gear
     * @param most teeth of either gear
     */
    public static List<TeethRatio> near(double wanted, double share, int least, int most) {
        List<TeethRatio> found = new ArrayList<>();
        TeethRatio nearest = null;
        for (int driver = least; driver <= most; driver++) {
            int driven = (int) Math.rint(driver * wanted);
            if (driven < least || driven > most) {
                continue;
            }
            TeethRatio one = new TeethRatio(driver, driven);
            double miss = Math.abs(one.error(wanted));
            if (miss <= share + EXACT) {
                found.add(one);
            }
            if (nearest == null || miss < Math.abs(nearest.error(wanted)) - EXACT) {
                nearest = one;
            }
        }
        if (found.isEmpty() && nearest != null) {
            found.add(nearest);
        }
        found.sort(Comparator.comparingInt(TeethRatio::driver));
        return found;
    }
}
