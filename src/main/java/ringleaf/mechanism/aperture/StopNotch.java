// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

/** The notch in the rim of a ring driven by a pinion; its ends meet a tab of the wall a little past the travel. */
final class StopNotch {
    private StopNotch() {}

    /** The tab stands opposite the pinion, so that notch and window never leave one side of the rim unguided. */
    static double tabDirection(ApertureDesign design) {
        return design.drive().blockedCentre() + Math.PI;
    }

    static double tabHalfAngle(Rim rim) {
        return tab(rim.wall()) / 2;
    }

    /** Angle that the tab takes on a wall of this radius, mm. */
    static double tab(double wall) {
        return SpacerParts.TAB_WIDTH / wall;
    }

    /** First direction of the notch in the ring's own frame. */
    static double from(ApertureDesign design) {
        return tabDirection(design) - Math.max(0, design.travel()) - margin(design.rim());
    }

    /** Last direction of the notch. */
    static double to(ApertureDesign design) {
        return tabDirection(design) - Math.min(0, design.travel()) + margin(design.rim());
    }

    private static double margin(Rim rim) {
        return rim.overTravel() + tabHalfAngle(rim);
    }
}
