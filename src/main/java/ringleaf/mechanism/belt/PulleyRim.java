// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.OptionalDouble;
import ringleaf.geom.Tolerance;
import ringleaf.groove.BeltTooth;
import ringleaf.groove.Groove;
import ringleaf.groove.RollCheck;
import ringleaf.part.Dimension.Origin;
import ringleaf.spec.shared.Belt;
import ringleaf.spec.shared.BeltGroove;

/**
 * The toothed rim of a pulley, mm.
 *
 * <p>The pitch circle is z p / pi in diameter whatever the outside diameter: the teeth have to come by at the belt's
 * pitch. The belt lies on the rim, so that where a tabulated outside diameter leaves less to the pitch circle than
 * the belt's own pitch line stands over its teeth's roots, the groove is made for the belt as it lies there.
 *
 * @param choice of the belt
 * @param teeth of the pulley
 * @param outside diameter over the rim
 * @param origin of the outside diameter
 * @param how it was found
 * @param groove of the rim
 * @param tooth the belt's tooth as it lies on this rim
 */
record PulleyRim(
        BeltChoice choice, int teeth, double outside, Origin origin, String how, Groove groove, BeltTooth tooth) {

    /**
     * The rim for a count of teeth.
     *
     * @param given outside diameter of the user's own, if there is one
     * @throws Groove.NoRim when no rim is left between the grooves
     */
    static PulleyRim of(BeltChoice choice, int teeth, OptionalDouble given) {
        Belt belt = choice.belt();
        double pitchDiameter = belt.pitchDiameter(teeth);
        double outside = pitchDiameter - 2 * belt.pitchLine();
        Origin origin = Origin.SOLVED;
        String how = "pitch diameter less twice the pitch line's height";
        OptionalDouble tabulated = belt.outside().outside(teeth);
        if (given.isPresent()) {
            outside = given.getAsDouble();
            origin = Origin.GIVEN;
            how = "";
        } else if (tabulated.isPresent()) {
            outside = tabulated.getAsDouble();
            how = "tabulated for the belt";
        } else if (!belt.outside().isEmpty()) {
            outside = pitchDiameter - belt.outside().difference(teeth, belt.pitch());
            how = "pitch diameter less what the table's neighbours differ by; this count is not tabulated";
        }
        BeltTooth tooth = choice.tooth((pitchDiameter - outside) / 2);
        Groove groove = choice.generated()
                ? Groove.generated(tooth, teeth, choice.backlash(), choice.clearance(), Tolerance.CURVE)
                : trapezoid(belt.trapezoid().orElseThrow(), teeth, outside / 2);
        return new PulleyRim(choice, teeth, outside, origin, how, groove, tooth);
    }

    private static Groove trapezoid(BeltGroove form, int teeth, double rim) {
        boolean few = teeth <= BeltGroove.FEW;
        return Groove.trapezoid(
                teeth,
                rim,
                few ? form.depthFew() : form.depth(),
                few ? form.widthFew() : form.width(),
                form.atRim(),
                form.flank(),
                form.rimRadius(),
                form.bottomRadius());
    }

    double pitchRadius() {
        return choice.belt().pitchDiameter(teeth) / 2;
    }

    double outsideRadius() {
        return outside / 2;
    }

    double rootRadius() {
        return groove.rootRadius();
    }

    RollCheck rolled() {
        return RollCheck.of(groove, tooth);
    }

    /** Diameter of a flange when none is given: as tabulated, else over the belt's back. */
    double usualFlange() {
        Belt belt = choice.belt();
        double height = Math.max(belt.flangeHeight().orElse(0), belt.pitchLine() + belt.back() + 0.5);
        return belt.outside().flange(teeth).orElse(Math.ceil(10 * (outside + 2 * height)) / 10);
    }
}
