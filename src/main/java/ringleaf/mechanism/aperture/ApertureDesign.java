package ringleaf.mechanism.aperture;

import java.util.Optional;
import ringleaf.geom.Point;

/**
 * A leaf aperture with every size decided. Angles in rad and in the unmirrored frame: closing turns the blades
 * counter-clockwise; {@link ApertureParts} mirrors the finished parts when the spec asks for the other hand.
 *
 * @param spec what was asked for
 * @param law how slot and ring angle hang together, with the blades' shape and the drive pin's place
 * @param closed blade angle at the closed end of the travel
 * @param travel ring angle from open to closed, signed, counter-clockwise positive
 * @param ear radius of the ear about a pin hole, mm; 0 where the band holds the hole by itself
 * @param rim radii of ring and housing
 * @param stack heights
 * @param drive what the drive asks for
 * @param mount the servo's mounting, when there is a pinion
 * @param housing outline and screws
 * @param bound what bounds the blade's size, in words for people
 */
record ApertureDesign(
        ApertureSpec spec,
        SlotLaw law,
        double closed,
        double travel,
        double ear,
        Rim rim,
        Stack stack,
        DrivePlan drive,
        Optional<ServoMount> mount,
        Housing housing,
        String bound) {

    Band band() {
        return law.band();
    }

    DrivePin pin() {
        return law.pin();
    }

    boolean isLinear() {
        return law instanceof SlotLaw.LinearOpening;
    }

    Point pivot() {
        return new Point(band().pivotRadius(), 0);
    }

    /** The drive pin of the first blade in the open pose. */
    Point drivePoint() {
        return band().pin(pin(), 0);
    }

    Optional<PinionPlan> pinionPlan() {
        return drive instanceof PinionPlan plan ? Optional.of(plan) : Optional.empty();
    }

    Optional<HandPlan> handPlan() {
        return drive instanceof HandPlan plan ? Optional.of(plan) : Optional.empty();
    }

    /** Least blade left round the pin holes, mm, by radii alone. */
    double holeEdge() {
        double half = band().width() / 2;
        double hole = spec.pinNeeds().hole() / 2;
        double atPivot = Math.max(ear, half) - hole;
        if (pin() instanceof DrivePin.Lever lever) {
            double bridge = lever.length() - hole - spec.pinHole() / 2;
            double atPin = Math.max(ear, half - lever.length()) - spec.pinHole() / 2;
            return Math.min(bridge, Math.min(atPivot, atPin));
        }
        return Math.min(atPivot, Math.max(ear, half) - spec.pinHole() / 2);
    }
}
