// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.gear;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.FreeTurn;
import ringleaf.curve.RollingPair;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Segment;

/** One stage rolled on its outlines as cut; only what the two gears can reach of each other is looked at. */
final class RolledStage {
    /** A free turn is looked for up to this many plays. */
    private static final double LOOK = 4;

    private static final double LEAST_LOOK = Math.toRadians(1);

    private final Stage stage;
    private final RollingPair pair;

    /**
     * What is measured at one angle.
     *
     * @param error of the driven gear when the driver pushes, rad, positive ahead
     * @param gap least distance of the outlines in the middle of the play, mm
     * @param meets whether the driver finds a tooth to push
     */
    record At(double error, double gap, boolean meets) {}

    RolledStage(Stage stage) {
        this.stage = stage;
        this.pair = new RollingPair(
                placed(stage.driver(), stage.driverHome()),
                stage.driverAxis(),
                placed(stage.driven(), stage.drivenHome()),
                stage.drivenAxis());
    }

    private static List<Segment> placed(Wheel wheel, Placement home) {
        List<Segment> pieces = new ArrayList<>();
        for (Contour contour : wheel.region().placed(home).contours()) {
            pieces.addAll(contour.segments());
        }
        return pieces;
    }

    Stage stage() {
        return stage;
    }

    /** The measures when the first driver has turned by an angle, rad. */
    At at(double firstDriver) {
        double turned = firstDriver * stage.turn();
        RollingPair.Position position = pair.at(turned, turned * stage.mesh().turn());
        double play = stage.mesh().drivenPlay();
        double look = Math.max(LEAST_LOOK, LOOK * play);
        // The driven gear is turned against its own sense until it lies on the flanks that push it.
        boolean against = stage.turn() * stage.mesh().turn() < 0;
        FreeTurn free = position.freeTurn(against, look);
        return new At(free.meets() ? play / 2 - free.angle() : 0, position.gap().distance(), free.meets());
    }
}
