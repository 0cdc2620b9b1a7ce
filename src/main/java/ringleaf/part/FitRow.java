// SPDX-License-Identifier: Apache-2.0
package ringleaf.part;

import java.util.List;
import ringleaf.geom.Mirror;
import ringleaf.geom.Point;

/**
 * A feature by which a part is joined to another, with the fit it is meant to have.
 *
 * @param name stable, lower case with hyphens, e.g. {@code pivot-bore}
 * @param part that has it, by name
 * @param shape what it is
 * @param fit by name: running, sliding, press, glue or thread-clearance
 * @param nominal diameter of what goes in, or of the shaft itself, mm
 * @param size diameter or width of the nominal outline, mm
 * @param count of such features on one part
 * @param basis where the size comes from, for people; empty where it is what the process allows for the fit
 * @param places their centres in the part's own frame, mm; none where that has not been stated
 */
public record FitRow(
        String name,
        String part,
        Shape shape,
        String fit,
        double nominal,
        double size,
        int count,
        String basis,
        List<Point> places) {
    public FitRow {
        places = List.copyOf(places);
    }

    /** A joint whose places are not stated. */
    public FitRow(
            String name, String part, Shape shape, String fit, double nominal, double size, int count, String basis) {
        this(name, part, shape, fit, nominal, size, count, basis, List.of());
    }

    public FitRow mirrored(Mirror mirror) {
        List<Point> images = places.stream().map(mirror::apply).toList();
        return new FitRow(name, part, shape, fit, nominal, size, count, basis, images);
    }

    /** Kinds of features: a seat is a hole for the outer ring of a bearing, a ring that outer ring itself. */
    public enum Shape {
        HOLE,
        SLOT,
        SHAFT,
        SEAT,
        RING;

        /** Whether it goes into something; else something goes into it. */
        public boolean isInner() {
            return this == SHAFT || this == RING;
        }

        public String label() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
