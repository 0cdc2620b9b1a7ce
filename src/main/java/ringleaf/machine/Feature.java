// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.part.Joint.Shape;

/** What of a part meets another part: places in the part's own frame, all alike; lengths in mm. */
public sealed interface Feature {
    /** Stable, lower case with hyphens. */
    String id();

    /** Diameter, or width where it is long. */
    double size();

    /** What the table of fits calls it. */
    Shape shape();

    /** How many of it one part has. */
    int count();

    /** The centres of those that are round; none of long holes, whose edges tell them. */
    List<Point> centres();

    /** What a pin goes into. */
    sealed interface Hole extends Feature {
        /** Its edge in every place: what is cut. */
        List<Contour> cuts();

        @Override
        default int count() {
            return cuts().size();
        }
    }

    /** A round pin. */
    record Pin(String id, double size, List<Point> places) implements Feature {
        @Override
        public Shape shape() {
            return Shape.SHAFT;
        }

        @Override
        public int count() {
            return places.size();
        }

        @Override
        public List<Point> centres() {
            return places;
        }
    }

    /** A round hole. */
    record Bore(String id, double size, List<Point> places) implements Hole {
        @Override
        public Shape shape() {
            return Shape.HOLE;
        }

        @Override
        public List<Contour> cuts() {
            return places.stream().map(p -> Contour.circle(p, size / 2)).toList();
        }

        @Override
        public List<Point> centres() {
            return places;
        }
    }

    /** A long hole of one width. */
    record Slot(String id, double size, List<Contour> cuts) implements Hole {
        @Override
        public Shape shape() {
            return Shape.SLOT;
        }

        @Override
        public List<Point> centres() {
            return List.of();
        }
    }
}
