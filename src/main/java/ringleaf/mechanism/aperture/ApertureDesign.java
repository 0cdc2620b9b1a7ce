// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.leaf.Band;
import ringleaf.leaf.BladePlan;
import ringleaf.leaf.DrivePin;
import ringleaf.leaf.SlotLaw;

/**
 * A leaf aperture with every size decided. Angles in rad and in the unmirrored frame: closing turns the blades
 * counter-clockwise; {@link ApertureParts} mirrors the finished parts when the spec asks for the other hand.
 *
 * @param spec what was asked for
 * @param plan the blades: shape, drive pin, slots, and the limits that could not be held
 * @param travel ring angle from open to closed, signed, counter-clockwise positive
 * @param rim radii of ring and housing
 * @param stack heights
 * @param drive what the drive asks for
 * @param mount the servo's mounting, when there is a pinion
 * @param housing outline and screws
 * @param bound what bounds the blade's size, in words for people
 */
record ApertureDesign(
        ApertureSpec spec,
        BladePlan plan,
        double travel,
        Rim rim,
        Stack stack,
        DrivePlan drive,
        Optional<ServoMount> mount,
        Housing housing,
        String bound) {

    /** How slot and ring angle hang together. */
    SlotLaw law() {
        return plan.law();
    }

    Band band() {
        return plan.band();
    }

    DrivePin pin() {
        return plan.pin();
    }

    /** Blade angle at the closed end of the travel. */
    double closed() {
        return plan.closed();
    }

    /** Radius of the ear about a pin hole, mm; 0 where the band holds the hole by itself. */
    double ear() {
        return plan.ear();
    }

    boolean isLinear() {
        return law() instanceof SlotLaw.LinearOpening;
    }

    Point pivot() {
        return new Point(band().pivotRadius(), 0);
    }

    /** The drive pin of the first blade in the open pose. */
    Point drivePoint() {
        return band().pin(pin(), 0);
    }

    Optional<PinionPlan> pinionPlan() {
        return drive instanceof PinionPlan pinion ? Optional.of(pinion) : Optional.empty();
    }

    Optional<HandPlan> handPlan() {
        return drive instanceof HandPlan hand ? Optional.of(hand) : Optional.empty();
    }

    /** Least blade left round the pin holes, mm, by radii alone. */
    double holeEdge() {
        double half = band().width() / 2;
        double hole = spec.pinNeeds().hole() / 2;
        double atPivot = Math.max(ear(), half) - hole;
        if (pin() instanceof DrivePin.Lever lever) {
            double bridge = lever.length() - hole - spec.pinHole() / 2;
            double atPin = Math.max(ear(), half - lever.length()) - spec.pinHole() / 2;
            return Math.min(bridge, Math.min(atPivot, atPin));
        }
        return Math.min(atPivot, Math.max(ear(), half) - spec.pinHole() / 2);
    }
}
