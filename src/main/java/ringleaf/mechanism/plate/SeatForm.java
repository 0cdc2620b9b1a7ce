// SPDX-License-Identifier: Apache-2.0
package ringleaf.mechanism.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringleaf.curve.Circle;
import ringleaf.curve.Shapes;
import ringleaf.geom.Box;
import ringleaf.geom.Contour;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.geom.Region;
import ringleaf.mechanism.Material;
import ringleaf.mechanism.body.ServoOutline;
import ringleaf.part.Layer;
import ringleaf.spec.shared.Bearing;
import ringleaf.spec.shared.Board;
import ringleaf.spec.shared.Contact;
import ringleaf.spec.shared.FitName;
import ringleaf.spec.shared.Screw;
import ringleaf.spec.shared.Servo;

/** What one seat cuts, holds and needs, in its own frame; mm. */
sealed interface SeatForm {
    /** What it is called, e.g. {@code servo}. */
    String label();

    /** Holes through the plate. */
    List<Contour> cuts(Material plate);

    /** Discs that must be material but for the cuts. */
    List<Circle> material(Material plate);

    /**
     * What stands there, with heights counted from the plate's face on its side, away from the plate; below 0 it goes
     * into or through the plate. None where nothing does.
     *
     * @param ahead whether it stands before the plate
     * @param thickness of the plate
     */
    default List<Layer> thing(boolean ahead, double thickness) {
        return List.of();
    }

    /** What is bought for it; empty where nothing is. */
    default Optional<String> goods() {
        return Optional.empty();
    }

    /** Screws that hold it, heads on the other side of the plate. */
    default Optional<Fastened> fastened() {
        return Optional.empty();
    }

    /** Room that it keeps from its own plate where it goes through it; negative infinity where it is set in or lies on it. */
    default double ownRoom() {
        return Double.NEGATIVE_INFINITY;
    }

    /** A bore that takes part in the table of fits. */
    default Optional<Fitted> fitted() {
        return Optional.empty();
    }

    /**
     * Screws with their nuts.
     *
     * @param screw its size
     * @param at where
     * @param grip besides the plate, mm
     * @param hole in the thing itself, mm
     * @param bored in the plate, mm
     */
    record Fastened(Screw screw, List<Point> at, double grip, double hole, double bored) {}

    /**
     * A round thing in a bore.
     *
     * @param fit its name
     * @param nominal diameter of what sits there, mm
     * @param bore as cut, mm
     */
    record Fitted(FitName fit, double nominal, double bore) {}

    private static Circle about(Point at, double hole, Material plate) {
        return new Circle(at, hole / 2 + plate.holeEdge(hole));
    }

    /** A servo, held by its ears. */
    record OfServo(Servo servo, Optional<Screw> screw) implements SeatForm {
        private ServoOutline outline() {
            return new ServoOutline(servo, Placement.IDENTITY);
        }

        @Override
        public String label() {
            return "servo";
        }

        @Override
        public List<Contour> cuts(Material plate) {
            return outline().seat(plate.leastWeb());
        }

        @Override
        public List<Circle> material(Material plate) {
            List<Circle> all = new ArrayList<>();
            for (Point corner :
                    ServoOutline.corners(outline().box(servo.bodyLength()).grown(ServoOutline.ROOM / 2))) {
                all.add(new Circle(corner, plate.leastWeb()));
            }
            outline().ownEarHoles().forEach(hole -> all.add(about(hole, servo.holeDiameter(), plate)));
            for (Point corner : ServoOutline.corners(outline().box(servo.earLength()))) {
                all.add(new Circle(corner, 0.1));
            }
            return all;
        }

        @Override
        public List<Layer> thing(boolean ahead, double thickness) {
            Region body = Region.of(Contour.rectangle(outline().box(servo.bodyLength())));
            Region ears = Region.of(Contour.rectangle(outline().box(servo.earLength())));
            double ear = servo.earThickness();
            return ahead
                    ? List.of(
                            Layer.of(body, ear - servo.bodyBelow(), 0),
                            Layer.of(ears, 0, ear),
                            Layer.of(body, ear, ear + Math.max(0.1, servo.caseHeight())))
                    : List.of(
                            Layer.of(body, -Math.max(0.1, servo.caseHeight()), 0),
                            Layer.of(ears, 0, ear),
                            Layer.of(body, ear, Math.max(ear + 0.1, servo.bodyBelow())));
        }

        @Override
        public Optional<String> goods() {
            return Optional.of(servo.words());
        }

        @Override
        public Optional<Fastened> fastened() {
            return screw.map(s -> new Fastened(
                    s, outline().ownEarHoles(), servo.earThickness(), servo.holeDiameter(), servo.holeDiameter()));
        }

        /** What the window's round corners leave of the room round a body with sharp ones. */
        @Override
        public double ownRoom() {
            return ServoOutline.ROOM / 2 * Math.sqrt(2) - ServoOutline.CORNER * (Math.sqrt(2) - 1);
        }
    }

    /** A ball bearing, flush with the face away from its side. */
    record OfBearing(Bearing bearing, FitName fit, double allowance) implements SeatForm {
        @Override
        public String label() {
            return "bearing";
        }

        private double seat() {
            return bearing.outside() + allowance;
        }

        @Override
        public List<Contour> cuts(Material plate) {
            return List.of(Contour.circle(Point.ORIGIN, seat() / 2));
        }

        @Override
        public List<Circle> material(Material plate) {
            return List.of(about(Point.ORIGIN, seat(), plate));
        }

        @Override
        public List<Layer> thing(boolean ahead, double thickness) {
            Region ring = Region.ring(Point.ORIGIN, bearing.bore() / 2, bearing.outside() / 2);
            return List.of(Layer.of(ring, -thickness, bearing.width() - thickness));
        }

        @Override
        public Optional<String> goods() {
            return Optional.of(bearing.words());
        }

        @Override
        public Optional<Fitted> fitted() {
            return Optional.of(new Fitted(fit, bearing.outside(), seat()));
        }
    }

    /** A round hole that nothing of its own stands in: for an axle, a shaft, a screw or wires. */
    record OfHole(String label, double diameter, Optional<Fitted> fitted) implements SeatForm {
        @Override
        public List<Contour> cuts(Material plate) {
            return List.of(Contour.circle(Point.ORIGIN, diameter / 2));
        }

        @Override
        public List<Circle> material(Material plate) {
            return List.of(about(Point.ORIGIN, diameter, plate));
        }
    }

    /** A rectangular opening. */
    record OfWindow(double width, double height, double corner) implements SeatForm {
        @Override
        public String label() {
            return "window";
        }

        private Box box() {
            return new Box(-width / 2, -height / 2, width / 2, height / 2);
        }

        @Override
        public List<Contour> cuts(Material plate) {
            return List.of(Shapes.roundedRectangle(box(), Math.min(corner, Math.min(width, height) / 2)));
        }

        @Override
        public List<Circle> material(Material plate) {
            return ServoOutline.corners(box()).stream()
                    .map(at -> new Circle(at, plate.leastWeb()))
                    .toList();
        }
    }

    /** A straight slot. */
    record OfSlot(double length, double width) implements SeatForm {
        @Override
        public String label() {
            return "slot";
        }

        private Point end() {
            return new Point(Math.max(0, length - width) / 2, 0);
        }

        @Override
        public List<Contour> cuts(Material plate) {
            return List.of(Shapes.obround(end().times(-1), end(), width / 2));
        }

        @Override
        public List<Circle> material(Material plate) {
            return List.of(about(end().times(-1), width, plate), about(end(), width, plate));
        }
    }

    /** A board on standoffs of a height. */
    record OfBoard(Board board, Screw screw, double height) implements SeatForm {
        @Override
        public String label() {
            return board.round() ? "panel" : "board";
        }

        private List<Point> holes() {
            return board.places().stream().map(p -> new Point(p[0], p[1])).toList();
        }

        @Override
        public List<Contour> cuts(Material plate) {
            List<Contour> cuts = new ArrayList<>();
            holes().forEach(at -> cuts.add(Contour.circle(at, screw.hole() / 2)));
            if (board.view() > 0) {
                cuts.add(Contour.circle(Point.ORIGIN, board.view() / 2));
            }
            return cuts;
        }

        @Override
        public List<Circle> material(Material plate) {
            List<Circle> all = new ArrayList<>();
            double foot = Math.max(screw.headDiameter(), screw.nutAcross() * 2 / Math.sqrt(3)) / 2;
            for (Point at : holes()) {
                all.add(new Circle(
                        at, Math.max(foot, about(at, screw.hole(), plate).radius())));
            }
            if (board.view() > 0) {
                all.add(about(Point.ORIGIN, board.view(), plate));
            }
            return all;
        }

        @Override
        public List<Layer> thing(boolean ahead, double thickness) {
            Region whole = board.round()
                    ? Region.disc(Point.ORIGIN, board.width() / 2)
                    : Region.of(Contour.rectangle(
                            new Box(-board.width() / 2, -board.height() / 2, board.width() / 2, board.height() / 2)));
            return List.of(Layer.of(whole, height - board.below(), height + board.thickness() + board.above()));
        }

        @Override
        public Optional<String> goods() {
            return Optional.of(board.words());
        }

        @Override
        public Optional<Fastened> fastened() {
            return Optional.of(new Fastened(screw, holes(), height + board.thickness(), board.hole(), screw.hole()));
        }
    }

    /** A rotating contact, its flange on its side of the plate, its body through it. */
    record OfContact(Contact contact, Optional<Screw> screw) implements SeatForm {
        @Override
        public String label() {
            return "contact";
        }

        private double bore() {
            return contact.body() + ServoOutline.ROOM;
        }

        private List<Point> holes() {
            List<Point> all = new ArrayList<>();
            for (int i = 0; i < contact.holes(); i++) {
                all.add(Point.polar(contact.circle() / 2, 2 * Math.PI * i / contact.holes()));
            }
            return all;
        }

        private double hole() {
            return screw.map(Screw::hole).orElse(contact.hole());
        }

        @Override
        public List<Contour> cuts(Material plate) {
            List<Contour> cuts = new ArrayList<>(List.of(Contour.circle(Point.ORIGIN, bore() / 2)));
            holes().forEach(at -> cuts.add(Contour.circle(at, hole() / 2)));
            return cuts;
        }

        @Override
        public List<Circle> material(Material plate) {
            List<Circle> all = new ArrayList<>(List.of(about(Point.ORIGIN, bore(), plate)));
            holes().forEach(at -> all.add(about(at, hole(), plate)));
            all.add(new Circle(Point.ORIGIN, contact.flange() / 2));
            return all;
        }

        @Override
        public List<Layer> thing(boolean ahead, double thickness) {
            return List.of(
                    Layer.of(Region.disc(Point.ORIGIN, contact.body() / 2), -contact.length(), 0),
                    Layer.of(Region.disc(Point.ORIGIN, contact.flange() / 2), 0, contact.flangeThickness()));
        }

        @Override
        public Optional<String> goods() {
            return Optional.of(contact.words());
        }

        @Override
        public Optional<Fastened> fastened() {
            return screw.map(s -> new Fastened(s, holes(), contact.flangeThickness(), contact.hole(), hole()));
        }

        @Override
        public double ownRoom() {
            return ServoOutline.ROOM / 2;
        }
    }

    /**
     * A standoff that stands by itself, or a spacer between both plates.
     *
     * @param label {@code standoff} or {@code spacer}
     * @param radius of its outside
     */
    record OfPost(String label, Screw screw, double height, double radius) implements SeatForm {
        @Override
        public List<Contour> cuts(Material plate) {
            return List.of(Contour.circle(Point.ORIGIN, screw.hole() / 2));
        }

        @Override
        public List<Circle> material(Material plate) {
            Circle hole = about(Point.ORIGIN, screw.hole(), plate);
            return List.of(new Circle(Point.ORIGIN, Math.max(radius, hole.radius())));
        }

        @Override
        public List<Layer> thing(boolean ahead, double thickness) {
            return List.of(Layer.of(Region.ring(Point.ORIGIN, screw.hole() / 2, radius), 0, height));
        }

        @Override
        public Optional<Fastened> fastened() {
            return Optional.of(new Fastened(screw, List.of(Point.ORIGIN), height, screw.hole(), screw.hole()));
        }
    }
}
