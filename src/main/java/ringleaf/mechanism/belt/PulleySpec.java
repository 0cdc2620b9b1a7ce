// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.belt;

import java.util.Optional;
import java.util.OptionalDouble;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.body.Body;
import ringleaf.mechanism.body.HubScrews;

/**
 * One pulley as it was asked for, mm.
 *
 * @param name of its parts, e.g. {@code driver}; empty for a pulley by itself
 * @param choice of the belt
 * @param rim teeth and diameters
 * @param body what is cut into it
 * @param joining screws through plates and flanges, where there are any
 * @param flanges how many
 * @param flangeDiameter of them
 * @param flangeThickness of each
 * @param hubDiameter of a printed hub
 * @param hubHeight of it above rim and flange; 0 for none
 * @param material that it is made of
 */
record PulleySpec(
        String name,
        BeltChoice choice,
        PulleyRim rim,
        Body body,
        Optional<HubScrews> joining,
        int flanges,
        double flangeDiameter,
        double flangeThickness,
        OptionalDouble hubDiameter,
        double hubHeight,
        Material material) {

    /** The same on an axle of its own. */
    PulleySpec withBody(Body other) {
        return new PulleySpec(
                name,
                choice,
                rim,
                other,
                joining,
                flanges,
                flangeDiameter,
                flangeThickness,
                hubDiameter,
                hubHeight,
                material);
    }

    /** How far it reaches from its axis, flanges included, mm. */
    double reach() {
        return flanges > 0 ? Math.max(flangeDiameter / 2, rim.outsideRadius()) : rim.outsideRadius();
    }

    String partName(String what) {
        return name.isEmpty() ? what : name + "-" + what;
    }
}
