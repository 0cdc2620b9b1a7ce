// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringleaf.leaf.BladeNeeds;
import ringleaf.leaf.Layout;
import ringleaf.leaf.Play;
import ringleaf.mechanism.Hardware;
import ringleaf.mechanism.Material;
import ringleaf.spec.shared.Screw;

/**
 * A leaf aperture as asked for: checked values, defaults filled in, the open ones absent.
 *
 * @param name of the mechanism in the spec
 * @param wanted what it shall do and where it must fit
 * @param layouts of the drive pin that may be chosen from
 * @param layoutGiven whether the spec says where the drive pin sits
 * @param pinStyle how pins are made
 * @param mirrored whether everything is built as the mirror image ({@code hand: right})
 * @param linearSlot whether slots are to make the opening linear in the ring angle
 * @param bladeWidth mm, when given
 * @param bladeSpan rad, when given
 * @param lever length, mm, when given
 * @param leverAngle to the outward radial in the open pose, rad, when given
 * @param pinDiameter mm
 * @param ledge least width of the seat on which the ring rides, mm
 * @param clearances room left on purpose
 * @param screw that holds the housing together
 * @param blade how blades are made
 * @param plate how base, retainer, cover and servo plate are made
 * @param ring how the drive ring is made
 * @param spacer how the spacer ring is made
 * @param gear how the pinion is made
 * @param drive what turns the ring
 * @param jigs that are asked for
 * @param bezel the user's own outlines
 * @param hardware what is bought by size
 * @param given paths of the fields that the spec gives, within the mechanism
 */
public record ApertureSpec(
        String name,
        Wanted wanted,
        List<Layout> layouts,
        boolean layoutGiven,
        PinStyle pinStyle,
        boolean mirrored,
        boolean linearSlot,
        OptionalDouble bladeWidth,
        OptionalDouble bladeSpan,
        OptionalDouble lever,
        OptionalDouble leverAngle,
        double pinDiameter,
        double ledge,
        Clearances clearances,
        Screw screw,
        Material blade,
        Material plate,
        Material ring,
        Material spacer,
        Material gear,
        DriveSpec drive,
        Optional<JigSpec> jigs,
        Bezel bezel,
        Hardware hardware,
        Set<String> given) {

    public double clearRadius() {
        return wanted.clearRadius();
    }

    public double leastRadius() {
        return wanted.leastRadius();
    }

    public int blades() {
        return wanted.blades();
    }

    public double thickness() {
        return wanted.thickness();
    }

    public double lap() {
        return wanted.lap();
    }

    public OuterLimit outer() {
        return wanted.outer();
    }

    public OptionalDouble depth() {
        return wanted.depth();
    }

    /** The angle from one blade to the next, rad. */
    public double pitch() {
        return 2 * Math.PI / blades();
    }

    /** The way the pins of a blade need room, for the solver. */
    BladeNeeds.PinNeeds pinNeeds() {
        boolean posts = pinStyle == PinStyle.BASE_POSTS;
        double running = pinDiameter + clearances.bore();
        return new BladeNeeds.PinNeeds(
                pinDiameter,
                posts ? running : pinHole(),
                holeEdge(),
                posts ? pinDiameter : running,
                pinDiameter + clearances.slot(),
                clearances.slotEnd(),
                Math.max(ring.leastWeb(), 0),
                plate.leastWeb(),
                clearRadius() + clearances.opening(),
                ApertureChecks.PRESSURE_WARN,
                ApertureChecks.PRESSURE_FAIL);
    }

    /** Least blade left round a pin hole, mm. */
    double holeEdge() {
        return blade.holeEdge(pinHole());
    }

    /** What the joints leave free. */
    Play play() {
        double position = Math.max(blade.repeatability(), Math.max(plate.repeatability(), ring.repeatability()));
        return new Play(clearances.bore(), clearances.slot(), clearances.ringRadial(), position);
    }

    /** Diameter of the hole in a blade into which a pin is set, mm. */
    public double pinHole() {
        return clearances.set().width();
    }
}
