// SPDX-License-Identifier: Apache-2.0
package ringleaf.solid;

import ringleaf.space.Pose;

/** Where the second of two bodies stands in the frame of the first, as a function of the drives between them. */
public interface DrivenPose {
    /**
     * The second one's frame in that of the first; continuous in every drive.
     *
     * @param setting a value a drive, in the drives' own units
     */
    Pose secondInFirst(double[] setting);

    /**
     * How far any point of either body moves relative to the other per unit of a drive, at most, at every setting of
     * the box: mm per unit. What is proved holds only if this is never too small.
     */
    double reach(int drive, double[] from, double[] to);
}
