// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.aperture;

import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;

/** What the drive asks of the housing. Angles in rad, in the unmirrored frame, open pose. */
sealed interface DrivePlan permits HandPlan, PinionPlan {
    /** Direction of the middle of the window through which the ring is driven. */
    double blockedCentre();

    /** Half the angle about {@link #blockedCentre()} in which no screw with this radius of hole and web may stand. */
    double blockedHalfAngle(Rim rim, double room);

    /** Screws that the drive adds to those along the rim. */
    List<Point> ownScrews(Rim rim, double room);

    /** Outline of the plates. */
    Contour outline(Rim rim);

    /** Greatest extent of the plates through the axis, mm. */
    double envelopeWidth(Rim rim);
}
