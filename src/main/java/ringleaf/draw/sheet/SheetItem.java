// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.sheet;

import java.util.List;
import java.util.Optional;
import ringleaf.geom.Point;
import ringleaf.geom.Tolerance;
import ringleaf.part.FitRow;
import ringleaf.part.Part;

/**
 * A part to be drawn with dimensions, and what is known of it beside its outline.
 *
 * @param title of the whole
 * @param mechanism it belongs to
 * @param part with at least one layer
 * @param tolerance general tolerance, in words
 * @param file that holds the outline, or empty
 * @param fits of its joints
 * @param data what the mechanism states of it, e.g. its teeth
 * @param involute its external involute teeth, if it has one kind of them
 * @param unit in which lengths are given, those of fits and data among them
 */
public record SheetItem(
        String title,
        String mechanism,
        Part part,
        String tolerance,
        String file,
        List<FitLine> fits,
        List<Datum> data,
        Optional<Involute> involute,
        SheetUnit unit) {
    public SheetItem {
        fits = List.copyOf(fits);
        data = List.copyOf(data);
    }

    /**
     * The fit of a feature.
     *
     * @param name of the joint
     * @param shape hole, slot or shaft
     * @param size diameter or width as drawn, mm
     * @param count of such features
     * @param fit short words for beside the size, e.g. {@code running, for 1 F8}
     * @param limits of the class, e.g. {@code 1.006 to 1.02}; empty where the process does not keep it
     * @param expected sizes of the process, e.g. {@code 1.05 to 1.15}
     * @param play with the partner, e.g. {@code 0.05 to 0.156}
     * @param how where the figures come from
     * @param places centres of the features in the part's frame, mm; where there are none, all of that size have the fit
     */
    public record FitLine(
            String name,
            FitRow.Shape shape,
            double size,
            int count,
            String fit,
            String limits,
            String expected,
            String play,
            String how,
            List<Point> places) {
        public FitLine {
            places = List.copyOf(places);
        }

        /** Whether a circle about this centre is one of the features. */
        boolean has(Point centre, Tolerance same) {
            return places.isEmpty() || places.stream().anyMatch(p -> p.distance(centre) < same.length());
        }
    }

    /**
     * Involute teeth.
     *
     * @param teeth of the full circle
     * @param module mm
     * @param pressureAngle rad
     */
    public record Involute(int teeth, double module, double pressureAngle) {}

    /** A line of a table: what, and its value with its unit. */
    public record Datum(String name, String value) {}
}
