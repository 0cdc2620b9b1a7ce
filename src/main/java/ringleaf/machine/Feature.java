// SPDX-License-Identifier: Apache-2.0
package ringleaf.machine;

import java.util.List;
import ringleaf.geom.Contour;
import ringleaf.geom.Point;
import ringleaf.part.FitRow.Shape;

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

    /** What goes into a hole: it is round, and stands in its places. */
    sealed interface Peg extends Feature {
        List<Point> places();

        @Override
        default int count() {
            return places().size();
        }

        @Override
        default List<Point> centres() {
            return places();
        }
    }

    /** A round pin, a screw or an axle. */
    record Pin(String id, double size, List<Point> places) implements Peg {
        @Override
        public Shape shape() {
            return Shape.SHAFT;
        }
    }

    /** The outer ring of a bearing. */
    record Ring(String id, double size, List<Point> places) implements Peg {
        @Override
        public Shape shape() {
            return Shape.RING;
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

    /** A round hole for the outer ring of a bearing. */
    record Seat(String id, double size, List<Point> places) implements Hole {
        @Override
        public Shape shape() {
            return Shape.SEAT;
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

    /** A hole with two straight sides that count: a slot, a keyway, a square. */
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
