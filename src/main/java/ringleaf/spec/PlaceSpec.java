// SPDX-License-Identifier: Apache-2.0
package ringleaf.spec;

import java.util.Optional;
import ringleaf.space.Pose;
import ringleaf.space.Turn;
import ringleaf.space.Vector;
import ringleaf.spec.field.Values;
import ringleaf.spec.text.Place;

/**
 * Where a mechanism stands, as written.
 *
 * @param on what it stands on as written, {@code ground} or a mechanism and one of its bodies
 * @param pose from its frame to the carrier's
 * @param where its carrier is written, or the place of the mechanism where that was left out
 * @param isGiven whether the spec says anything of it
 */
public record PlaceSpec(String on, Pose pose, Place where, boolean isGiven) {
    /** What stands where nothing was written. */
    static PlaceSpec none(Place mechanism) {
        return new PlaceSpec(PlaceFields.GROUND, Pose.NONE, mechanism, false);
    }

    static PlaceSpec of(Values values) {
        Optional<Values> at = values.given(PlaceFields.AT);
        Vector shift = at.isEmpty()
                ? Vector.ZERO
                : new Vector(
                        at.get().require(PlaceFields.AT_X),
                        at.get().require(PlaceFields.AT_Y),
                        at.get().require(PlaceFields.AT_Z));
        Turn turn = Turn.NONE;
        if (values.isGiven(PlaceFields.TURN)) {
            Values turns = values.require(PlaceFields.TURN);
            for (String axis : turns.inOrder()) {
                turn = turn.then(turned(turns, axis));
            }
        }
        return new PlaceSpec(values.require(PlaceFields.ON), new Pose(turn, shift), values.where(PlaceFields.ON), true);
    }

    private static Turn turned(Values turns, String axis) {
        return switch (axis) {
            case "x" -> Turn.about(Vector.X, turns.require(PlaceFields.TURN_X));
            case "y" -> Turn.about(Vector.Y, turns.require(PlaceFields.TURN_Y));
            default -> Turn.about(Vector.Z, turns.require(PlaceFields.TURN_Z));
        };
    }
}
