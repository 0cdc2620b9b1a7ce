// SPDX-License-Identifier: Apache-2.0
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
    private static final double GAP = 0.5;

    private final ApertureDesign design;

    OpeningScale(ApertureDesign design) {
        this.design = design;
    }

    /** One stop of the scale. */
    record Stop(double diameter, double ringAngle) {}

    List<Stop> stops() {
        List<Stop> stops = new ArrayList<>();
        if (!(design.spec().drive() instanceof DriveSpec.Hand hand)
                || hand.scaleFactor().isEmpty()) {
            return stops;
        }
        double factor = hand.scaleFactor().getAsDouble();
        double least = design.spec().leastRadius();
        for (double r = design.spec().clearRadius(); r >= least * (1 - 1e-9) && r > 0.05; r /= factor) {
            double b = Math.max(
                    0, design.band().bladeAngle(Math.min(r, design.band().innerRadius())));
            stops.add(new Stop(2 * r, design.law().ringAngle(b)));
        }
        return stops;
    }

    /** A tick for each stop and its opening in mm beside it, written along the radius so that close stops stay apart. */
    List<Path> marks() {
        List<Path> marks = new ArrayList<>();
        if (!(design.drive() instanceof HandPlan plan)) {
            return marks;
        }
        double outer = design.rim().outer() - MARGIN;
        List<Stop> stops = stops();
        double height = textHeight(stops, outer - 2 * TICK);
        for (Stop stop : stops) {
            double direction = plan.at() + stop.ringAngle();
            marks.add(Path.of(new Line(Point.polar(outer - TICK, direction), Point.polar(outer, direction))));
            String text = Words.number(stop.diameter(), stop.diameter() < 10 ? 1 : 0);
            double start = outer - TICK - GAP - StrokeFont.width(text, height);
            for (Path stroke : StrokeFont.strokes(text, new Point(start, -height / 2), height)) {
                marks.add(stroke.placed(Placement.turn(direction)));
            }
        }
        return marks;
    }

    /** As tall as is usual, or less where neighbouring stops stand closer than that. */
    private static double textHeight(List<Stop> stops, double radius) {
        double height = TEXT;
        for (int i = 1; i < stops.size(); i++) {
            double apart = Math.abs(stops.get(i).ringAngle() - stops.get(i - 1).ringAngle()) * radius;
            height = Math.min(height, 0.75 * apart);
        }
        return height;
    }
}
