// SPDX-License-Identifier: Apache-2.0
package ringleaf.leaf;

/**
 * What the joints of a built aperture leave free, and how far that can shift two neighbouring blades' edges against
 * each other.
 *
 * <p>One blade: its pivot pin can stand cb/2 off in its bore, and bore and pin can be placed q off; that shifts the
 * whole blade. The drive pin can stand cs/2 off across its slot; with the same errors at the pivot that turns the
 * blade by (cs/2 + cb/2 + q)/A, where A = |pin - pivot| cos(pressure) is the lever seen along the slot's normal, and a
 * point D from the pivot moves D times that. Two neighbours can err opposite ways: twice the sum. The ring itself can
 * stand e off; blades that stand m steps apart in the circle see that shift from directions 2 pi m/N apart, so
 * against each other they feel 2 sin(pi m/N) e only, again times D/A (what both feel alike is a small turn of the
 * ring, another state of the travel). The two blades that bound the thinnest lap are often not neighbours but stand
 * nearly opposite, so m is taken from the fold, see {@link PlayedCover}. The sum is a worst case: all at once, each
 * in the worst direction.
 *
 * @param bore cb, pivot pin in its bore, difference of diameters, mm
 * @param slot cs, slot width less pin diameter, mm
 * @param ring e, how far the ring's axis can leave the plate's, mm
 * @param position q, how far the process misplaces a hole, mm
 */
public record Play(double bore, double slot, double ring, double position) {
    public static final Play NONE = new Play(0, 0, 0, 0);

    public Play {
        if (!(bore >= 0) || !(slot >= 0) || !(ring >= 0) || !(position >= 0)) {
            throw new IllegalArgumentException("play is not below 0");
        }
    }

    /**
     * Greatest shift of two blades' edges against each other, mm.
     *
     * @param distance D, from the pivot to the farthest edge that matters, mm
     * @param lever |pin - pivot|, mm
     * @param pressure the slot's pressure angle, rad
     * @param apart m, how many steps of 2 pi/N the two blades stand apart; 1 for neighbours
     */
    public double loss(double distance, double lever, double pressure, int blades, int apart) {
        double gain = distance / (lever * Math.cos(pressure));
        double shift = bore / 2 + position;
        return 2 * (shift + (slot / 2 + shift) * gain) + 2 * ring * Math.abs(Math.sin(Math.PI * apart / blades)) * gain;
    }
}
