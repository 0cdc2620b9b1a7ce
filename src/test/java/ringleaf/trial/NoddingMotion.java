// SPDX-License-Identifier: Apache-2.0
package ringleaf.trial;

import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Motion;

/** The arm, body 1, turns evenly about its pin by {@code swing}, rad. */
record NoddingMotion(double swing, int states) implements Motion {
    double turn(int state) {
        return swing * state / (states - 1);
    }

    @Override
    public Placement pose(int body, int state) {
        return body == 1 ? Placement.turnAbout(Point.ORIGIN, turn(state)) : Placement.IDENTITY;
    }
}
