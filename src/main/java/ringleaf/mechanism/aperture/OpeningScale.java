package ringleaf.mechanism.aperture;

import java.util.ArrayList;
import java.util.List;
import ringleaf.curve.StrokeFont;
import ringleaf.geom.Line;
import ringleaf.geom.Path;
import ringleaf.geom.Placement;
import ringleaf.geom.Point;
import ringleaf.part.Words;

/** Openings a fixed factor apart, engraved on the retainer where the arm's line points in each of them. */
final class OpeningScale {
    private static final double TICK = 2.5;
    private static final double TEXT = 1.8;
    private static final double MARGIN = 0.6;

    private final ApertureDesign design;

    OpeningScale(ApertureDesign design) {
        this.design = design;
    }

    /** One stop of the scale. */
    record Stop(double diameter, double ringAngle) {}

    List<Stop> stops() {
        List<Stop> stops = new ArrayList<>();
        if (!(design.spec().drive() instanceof DriveSpec.Hand hand) || hand.scaleFactor().isEmpty()) {
            return stops;
        }
        double factor = hand.scaleFactor().getAsDouble();
        double least = design.spec().leastRadius();
        for (double r = design.spec().clearRadius(); r >= least * (1 - 1e-9) && r > 0.05; r /= factor) {
            double b = Math.max(0, design.band().bladeAngle(Math.min(r, design.band().innerRadius())));
            stops.add(new Stop(2 * r, design.law().ringAngle(b)));
        }
        return stops;
    }

    List<Path> marks() {
        List<Path> marks = new ArrayList<>();
        if (!(design.drive() instanceof HandPlan plan)) {
            return marks;
        }
        double outer = design.rim().outer() - MARGIN;
        for (Stop stop : stops()) {
            double direction = plan.at() + stop.ringAngle();
            marks.add(Path.of(new Line(Point.polar(outer - TICK, direction), Point.polar(outer, direction))));
            String text = Words.number(stop.diameter(), stop.diameter() < 10 ? 1 : 0);
            for (Path stroke : StrokeFont.strokes(text, new Point(-StrokeFont.width(text, TEXT) / 2, 0), TEXT)) {
                double radius = outer - TICK - TEXT * 1.4;
                marks.add(stroke.placed(Placement.turn(direction - Math.PI / 2).then(
                        new Placement(0, Point.polar(radius, direction)))));
            }
        }
        return marks;
    }
}
