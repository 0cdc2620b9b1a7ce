// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.body;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.Overlay;
import ringleaf.geom.Arc;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Line;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.spec.shared.Bearing;
import ringleaf.spec.shared.Servo;

/** What is cut in the middle of a round part to hold it on its axle; outlines about the origin, in mm. */
public sealed interface Bore {
    /** The holes to cut, the part's axis in the origin; features that have a direction look to +x. */
    List<Contour> cuts();

    /** Radius of the circle about the axis that holds every cut, mm; 0 where nothing is cut. */
    double reach();

    /** What it is, for people. */
    String words();

    /** No hole at all. */
    record Solid() implements Bore {
        @Override
        public List<Contour> cuts() {
            return List.of();
        }

        @Override
        public double reach() {
            return 0;
        }

        @Override
        public String words() {
            return "no bore";
        }
    }

    /** A round hole. */
    record Round(double diameter) implements Bore {
        @Override
        public List<Contour> cuts() {
            return List.of(Contour.circle(Point.ORIGIN, diameter / 2));
        }

        @Override
        public double reach() {
            return diameter / 2;
        }

        @Override
        public String words() {
            return "round bore";
        }
    }

    /**
     * A round hole with one flat.
     *
     * @param across from the flat to the far side of the hole, mm, between half the diameter and all of it
     */
    record Flatted(double diameter, double across) implements Bore {
        @Override
        public List<Contour> cuts() {
            double r = diameter / 2;
            double x = across - r;
            double half = Math.acos(x / r);
            Arc round = Arc.of(Point.ORIGIN, r, half, 2 * Math.PI - 2 * half);
            return List.of(Contour.of(round, new Line(round.end(), round.start())));
        }

        @Override
        public double reach() {
            return diameter / 2;
        }

        @Override
        public String words() {
            return "D bore";
        }
    }

    /**
     * A round hole with a slot for a key.
     *
     * @param width of the key, mm
     * @param depth of the slot beyond the hole, measured on the middle line, mm
     */
    record Keyed(double diameter, double width, double depth) implements Bore {
        @Override
        public List<Contour> cuts() {
            Region hole = Region.disc(Point.ORIGIN, diameter / 2);
            Region slot = Region.of(Contour.rectangle(new Box(0, -width / 2, diameter / 2 + depth, width / 2)));
            return List.of(Overlay.union(List.of(hole, slot)).get(0).outer());
        }

        @Override
        public double reach() {
            return Math.hypot(diameter / 2 + depth, width / 2);
        }

        @Override
        public String words() {
            return "bore with keyway";
        }
    }

    /** A square hole. */
    record Square(double side) implements Bore {
        @Override
        public List<Contour> cuts() {
            double h = side / 2;
            return List.of(Contour.rectangle(new Box(-h, -h, h, h)));
        }

        @Override
        public double reach() {
            return side / Math.sqrt(2);
        }

        @Override
        public String words() {
            return "square bore";
        }
    }

    /**
     * The pattern of a servo's horn: a hole that clears the output and screws on the horn's circle. The output's fine
     * teeth are left to the horn that comes with the servo.
     *
     * @param screws number of screws
     */
    record Horn(Servo servo, int screws) implements Bore {
        /** Room round the output's teeth, mm; common practice, no source. */
        public static final double ROOM = 0.5;

        @Override
        public List<Contour> cuts() {
            List<Contour> cuts = new ArrayList<>();
            cuts.add(Contour.circle(Point.ORIGIN, servo.splineDiameter() / 2 + ROOM));
            cuts.addAll(circle(screws, servo.hornScrewCircle() / 2, servo.hornScrewHole() / 2, 0));
            return cuts;
        }

        /** Middles of the screws. */
        List<Point> screwPlaces() {
            return places(screws, servo.hornScrewCircle() / 2, 0);
        }

        @Override
        public double reach() {
            return (servo.hornScrewCircle() + servo.hornScrewHole()) / 2;
        }

        @Override
        public String words() {
            return "screw pattern of the horn of servo " + servo.name();
        }
    }

    /**
     * The seat of a ball bearing.
     *
     * @param diameter of the seat, mm
     */
    record Seat(Bearing bearing, double diameter) implements Bore {
        @Override
        public List<Contour> cuts() {
            return List.of(Contour.circle(Point.ORIGIN, diameter / 2));
        }

        @Override
        public double reach() {
            return diameter / 2;
        }

        @Override
        public String words() {
            return "seat of ball bearing " + bearing.name();
        }
    }

    /** Equal round holes spread evenly on a circle about the origin, the first in {@code direction}, rad. */
    static List<Contour> circle(int count, double circleRadius, double holeRadius, double direction) {
        return places(count, circleRadius, direction).stream()
                .map(at -> Contour.circle(at, holeRadius))
                .toList();
    }

    /** Their middles. */
    static List<Point> places(int count, double circleRadius, double direction) {
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places.add(Point.polar(circleRadius, direction + 2 * Math.PI * i / count));
        }
        return places;
    }
}
