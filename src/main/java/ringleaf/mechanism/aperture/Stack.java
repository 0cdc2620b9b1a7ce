// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import ringleaf.mechanism.Material;

/**
 * The heights of everything, mm; the base plate's back face is z = 0 and the ring lies towards +z.
 *
 * @param layers most blades over one point over the whole travel
 * @param coverBottom back face of the cover sheet, or 0 where there is none
 * @param boreFloor bottom of the pivot bores
 * @param baseTop floor of the blades' cavity
 * @param ledgeSheets sheets that make up the ledge, 0 when it is built up in one piece
 * @param ringBottom ceiling of the cavity, the ledge on which the ring rides
 * @param ringTop upper face of the ring when it lies on the ledge
 * @param wallSheets sheets that make up the wall round the ring, 0 when built up
 * @param shims leaves of blade stock under the retainer that give the ring its axial play
 * @param retainerBottom lower face of the retainer
 * @param retainerTop front face of everything
 * @param pivotPinDepth how far a pivot pin reaches below its blade
 * @param drivePinHeight how far a drive pin stands above its blade
 * @param pivotEngagement bore held by the pivot pin at the highest place of its blade
 * @param driveEngagement slot held by the drive pin at the lowest place of its blade
 * @param pinSlope slope of a blade at its pivot, rad
 */
record Stack(
        int layers,
        double coverBottom,
        double boreFloor,
        double baseTop,
        int ledgeSheets,
        double ringBottom,
        double ringTop,
        int wallSheets,
        int shims,
        double retainerBottom,
        double retainerTop,
        double pivotPinDepth,
        double drivePinHeight,
        double pivotEngagement,
        double driveEngagement,
        double pinSlope) {

    /** Least solid floor under a blind bore that is built up, mm; common practice, no source. */
    static final double BORE_FLOOR = 0.8;
    /** More shims than this under a retainer are a nuisance to lay; another sheet is taken then. */
    private static final int MOST_SHIMS = 6;

    /**
     * Stacks the parts up.
     *
     * @param layers most blades over one point
     * @param overPivot least number of other blades that lie over a pivot at any state
     * @param underTip least number of other blades that lie under a drive pin's place at any state
     */
    static Stack of(ApertureSpec spec, double pivotRadius, int layers, int overPivot, int underTip) {
        double pinEnd = spec.clearances().pivotEnd();
        double each = spec.thickness() + spec.blade().burr();
        double cavityNeed = layers * each + spec.clearances().bladePlay();
        int ledgeSheets = spec.spacer().sheet() ? sheetsOver(cavityNeed, spec.spacer()) : 0;
        double cavity = ledgeSheets > 0 ? ledgeSheets * spec.spacer().thickness() : cavityNeed;

        // The root can rise until the blades that lie over it meet the ring; the pin still holds a diameter of bore.
        double rise = Math.max(0, cavity - (1 + overPivot) * spec.thickness());
        double hold = Math.min(spec.pinDiameter(), spec.plate().thickness());
        boolean throughBores = spec.plate().sheet();
        double base = spec.plate().thickness();
        double boreFloor = 0;
        // A post stands in its bore by itself, whatever its blade does.
        double pinDepth = spec.pinStyle() == PinStyle.BASE_POSTS ? hold : rise + hold;
        if (throughBores) {
            pinDepth = Math.max(0, Math.min(pinDepth, base - pinEnd));
        } else {
            base = Math.max(base, pinDepth + pinEnd + BORE_FLOOR);
            boreFloor = base - pinDepth - pinEnd;
        }
        double coverBottom = throughBores ? -coverThickness(spec) : 0;
        double ringBottom = base + cavity;
        double drop = Math.max(0, cavity - (1 + underTip) * spec.thickness());
        double ring = ringThickness(spec, drop + hold / 2);
        double ringTop = ringBottom + ring;

        double wallNeed = ring + spec.clearances().ringAxial();
        int wallSheets = 0;
        int shims = 0;
        double wall = wallNeed;
        if (spec.spacer().sheet()) {
            double sheet = spec.spacer().thickness();
            wallSheets = (int) Math.floor(wallNeed / sheet + 1e-9);
            double rest = wallNeed - wallSheets * sheet;
            shims = rest <= 1e-9 ? 0 : (int) Math.ceil(rest / spec.thickness() - 1e-9);
            if (wallSheets == 0 || !spec.blade().sheet() || shims > MOST_SHIMS) {
                wallSheets += rest > 1e-9 ? 1 : 0;
                shims = 0;
            }
            wall = wallSheets * sheet + shims * spec.thickness();
        }
        double retainerBottom = ringBottom + wall;
        // Where the room at its end takes all there is, a pin ends with its blade, and the check of its hold tells.
        double pinHeight = Math.max(0, retainerBottom - spec.clearances().driveEnd() - ringBottom);
        return new Stack(
                layers,
                coverBottom,
                boreFloor,
                base,
                ledgeSheets,
                ringBottom,
                ringTop,
                wallSheets,
                shims,
                retainerBottom,
                retainerBottom + spec.plate().thickness(),
                pinDepth,
                pinHeight,
                pinDepth - rise,
                Math.min(pinHeight - drop, ring),
                Math.atan(spec.blades() * each / (2 * Math.PI * pivotRadius)));
    }

    /**
     * A ring that is built up and left open is as thick as its drive pins need: a pin that reaches just short of the
     * retainer when its blade lies highest still holds {@code need} mm below it when the blade lies lowest.
     */
    private static double ringThickness(ApertureSpec spec, double need) {
        if (spec.ring().sheet() || spec.given().contains("ring-thickness")) {
            return spec.ring().thickness();
        }
        double least = need + spec.clearances().driveEnd() - spec.clearances().ringAxial();
        return Math.max(spec.ring().thickness(), Math.ceil(least * 10 - 1e-9) / 10);
    }

    double ringThickness() {
        return ringTop - ringBottom;
    }

    /** The cover needs no strength: blade sheet does when there is some, else a sheet of the plates. */
    static double coverThickness(ApertureSpec spec) {
        return coverMaking(spec).thickness();
    }

    static Material coverMaking(ApertureSpec spec) {
        return spec.blade().sheet() ? spec.blade() : spec.plate();
    }

    boolean hasCover() {
        return coverBottom < 0;
    }

    /** Front to back of the plates; screw heads, pinion and servo apart. */
    double depth() {
        return retainerTop - coverBottom;
    }

    double cavity() {
        return ringBottom - baseTop;
    }

    private static int sheetsOver(double need, Material making) {
        return Math.max(1, (int) Math.ceil(need / making.thickness() - 1e-9));
    }
}
