// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import ringleaf.geom.Point;

/**
 * A dimension or a name to show in a view: what matters to a person, chosen by the mechanism.
 *
 * @param form how it is drawn
 * @param view name of the view it belongs to, e.g. {@code open}
 * @param from first point: centre of a diameter or radius, start of a distance, place of a label
 * @param to second point: on the circle, end of the distance, what the label points at
 * @param text what to write, ready for people, e.g. {@code Ø64}
 */
public record Callout(Form form, String view, Point from, Point to, String text) {
    /** Ways to draw a callout. */
    public enum Form {
        DIAMETER,
        RADIUS,
        DISTANCE,
        LABEL
    }
}
