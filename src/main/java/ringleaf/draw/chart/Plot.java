// SPDX-License-Identifier: Apache-2.0
package ringleaf.draw.chart;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/** One frame with axes; marks differ in shape as well as in colour. */
public final class Plot {
    /** Colours of series, told apart by lightness too. */
    private static final String[] COLOURS = {"#1f4e79", "#b86a00", "#1b7f79", "#6b4fa0", "#8c2f39", "#5b6b7a"};

    private static final Sign[] SIGNS = {Sign.DISC, Sign.SQUARE, Sign.TRIANGLE, Sign.RING, Sign.BOX, Sign.TENT};
    /** Mean width of a letter by its size. */
    private static final double LETTER = 0.56;

    private static final double SMALL = 11;

    private final Chart chart;
    private final double left;
    private final double top;
    private final double width;
    private final double height;
    private final Scale x;
    private final Scale y;
    private final List<double[]> labelled = new ArrayList<>();

    /** Shapes of marks. */
    public enum Sign {
        DISC,
        SQUARE,
        TRIANGLE,
        RING,
        BOX,
        TENT,
        CROSS,
        /** Larger than the others, for what stands out. */
        STAR
    }

    Plot(Chart chart, double left, double top, double width, double height, Scale x, Scale y) {
        this.chart = chart;
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
        this.x = x;
        this.y = y;
        frame();
    }

    /** The sign of a series. */
    public static Sign sign(int series) {
        return SIGNS[series % SIGNS.length];
    }

    /** How many series can be told apart. */
    public static int mostSeries() {
        return SIGNS.length;
    }

    /** The colour of a series. */
    public static String colour(int series) {
        return COLOURS[series % COLOURS.length];
    }

    private void frame() {
        Element group = chart.group();
        double bottom = top + height;
        double widest = 0;
        for (String label : x.labels()) {
            widest = Math.max(widest, label.length() * LETTER * SMALL);
        }
        int every = (int) Math.max(1, Math.ceil(x.ticks().size() * (widest + 10) / width));
        for (int i = 0; i < x.ticks().size(); i++) {
            double at = atX(x.ticks().get(i));
            line(group, at, top, at, bottom, Chart.GRID, 1);
            if (i % every == 0) {
                chart.text(group, x.labels().get(i), at, bottom + 16, SMALL, Chart.INK, "middle");
            }
        }
        for (int i = 0; i < y.ticks().size(); i++) {
            double at = atY(y.ticks().get(i));
            line(group, left, at, left + width, at, Chart.GRID, 1);
            chart.text(group, y.labels().get(i), left - 7, at + 4, SMALL, Chart.INK, "end");
        }
        line(group, left, bottom, left + width, bottom, Chart.INK, 1.2);
        line(group, left, top, left, bottom, Chart.INK, 1.2);
        chart.text(group, x.title(), left + width / 2, bottom + 36, 13, Chart.INK, "middle");
        chart.text(group, y.title(), left - 44, top - 12, 13, Chart.INK, "start");
    }

    /** A line through points, in the order given. */
    public void line(List<double[]> points, String colour, boolean dashed) {
        StringBuilder data = new StringBuilder();
        for (double[] point : points) {
            data.append(data.length() == 0 ? "M" : " L");
            data.append(Chart.number(atX(point[0]))).append(' ').append(Chart.number(atY(point[1])));
        }
        Element path = chart.add(
                chart.group(), "path", "d", data.toString(), "fill", "none", "stroke", colour, "stroke-width", "1.4");
        if (dashed) {
            path.setAttributeNS(null, "stroke-dasharray", "5 4");
        }
    }

    /** A mark; {@code tip} is shown when one points at it. */
    public void mark(double valueX, double valueY, Sign sign, String colour, String tip) {
        double cx = atX(valueX);
        double cy = atY(valueY);
        Element group = chart.group();
        switch (sign) {
            case DISC -> chart.add(group, "circle", circle(cx, cy, 4, colour, colour));
            case RING -> chart.add(group, "circle", circle(cx, cy, 4, "none", colour));
            case SQUARE -> path(group, cx, cy, colour, colour, -3.6, -3.6, 3.6, -3.6, 3.6, 3.6, -3.6, 3.6);
            case BOX -> path(group, cx, cy, "none", colour, -3.6, -3.6, 3.6, -3.6, 3.6, 3.6, -3.6, 3.6);
            case TRIANGLE -> path(group, cx, cy, colour, colour, 0, -5, 4.6, 3.6, -4.6, 3.6);
            case TENT -> path(group, cx, cy, "none", colour, 0, -5, 4.6, 3.6, -4.6, 3.6);
            case STAR -> path(group, cx, cy, "none", colour, 0, -9, 9, 0, 0, 9, -9, 0);
            default -> {
                line(group, cx - 3.5, cy - 3.5, cx + 3.5, cy + 3.5, colour, 1.4);
                line(group, cx - 3.5, cy + 3.5, cx + 3.5, cy - 3.5, colour, 1.4);
            }
        }
        if (!tip.isEmpty()) {
            chart.tip(group, tip);
        }
        labelled.add(new double[] {cx - 5, cy - 5, cx + 5, cy + 5});
    }

    /** Words beside a point where nothing else stands yet; left out where there is no room. */
    public void label(double valueX, double valueY, String words, String ink) {
        double cx = atX(valueX);
        double cy = atY(valueY);
        double w = words.length() * LETTER * SMALL;
        double[][] places = {
            {cx + 11, cy + 4}, {cx - 11 - w, cy + 4}, {cx - w / 2, cy - 13}, {cx - w / 2, cy + 21},
            {cx + 8, cy - 10}, {cx + 8, cy + 18}, {cx - 8 - w, cy - 10}, {cx - 8 - w, cy + 18}
        };
        for (double[] place : places) {
            double[] box = {place[0], place[1] - SMALL, place[0] + w, place[1] + 3};
            boolean inside = box[0] > left + 2 && box[2] < left + width + 60 && box[1] > top && box[3] < top + height;
            if (inside && isFree(box)) {
                chart.text(chart.group(), words, place[0], place[1], SMALL, ink, "start");
                labelled.add(box);
                return;
            }
        }
    }

    /** A sign with its meaning, somewhere on the sheet. */
    public void key(double atX, double atY, Sign sign, String colour, String words) {
        Plot alone = new Plot(chart, atX, atY);
        alone.mark(0, 0, sign, colour, "");
        chart.text(chart.group(), words, atX + 14, atY + 4, SMALL, Chart.INK, "start");
    }

    /** A place for a single sign, without a frame. */
    private Plot(Chart chart, double left, double top) {
        this.chart = chart;
        this.left = left;
        this.top = top;
        this.width = 0;
        this.height = 0;
        this.x = new Scale("", 0, 1, List.of(), List.of(), false);
        this.y = x;
    }

    private boolean isFree(double[] box) {
        for (double[] other : labelled) {
            if (box[0] < other[2] && other[0] < box[2] && box[1] < other[3] && other[1] < box[3]) {
                return false;
            }
        }
        return true;
    }

    private double atX(double value) {
        return left + width * x.share(value);
    }

    private double atY(double value) {
        return top + height - height * y.share(value);
    }

    private static String[] circle(double cx, double cy, double r, String fill, String stroke) {
        return new String[] {
            "cx",
            Chart.number(cx),
            "cy",
            Chart.number(cy),
            "r",
            Chart.number(r),
            "fill",
            fill,
            "stroke",
            stroke,
            "stroke-width",
            "1.4"
        };
    }

    private void path(Element group, double cx, double cy, String fill, String stroke, double... corners) {
        StringBuilder data = new StringBuilder();
        for (int i = 0; i < corners.length; i += 2) {
            data.append(i == 0 ? "M" : " L")
                    .append(Chart.number(cx + corners[i]))
                    .append(' ');
            data.append(Chart.number(cy + corners[i + 1]));
        }
        chart.add(
                group, "path", "d", data.append('Z').toString(), "fill", fill, "stroke", stroke, "stroke-width", "1.4");
    }

    private void line(Element group, double x1, double y1, double x2, double y2, String stroke, double thick) {
        chart.add(
                group,
                "line",
                "x1",
                Chart.number(x1),
                "y1",
                Chart.number(y1),
                "x2",
                Chart.number(x2),
                "y2",
                Chart.number(y2),
                "stroke",
                stroke,
                "stroke-width",
                Chart.number(thick));
    }
}
