// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringleaf.draw.chart.Chart;
import ringleaf.draw.chart.Plot;
import ringleaf.draw.chart.Scale;
import ringleaf.explore.Axis;
import ringleaf.explore.Exploration;
import ringleaf.explore.Row;

/**
 * What was explored as a chart: the figure that is sought against the first field that varies, and what is weighed
 * against each other. A star marks the undominated designs, a cross what fails.
 */
public final class ExploreChart {
    private static final double PLOT_WIDTH = 400;
    private static final double PLOT_HEIGHT = 380;
    private static final double TOP = 110;
    private static final double LEFT = 70;
    private static final double GAP = 150;
    private static final double LINE = 18;
    private static final String FAILED = "#9a9a94";
    private static final String STAR = "#b3261e";
    /** Stars whose outlines nobody has looked at. */
    private static final String UNJUDGED = "#c98f89";
    /** Marks beyond these are not drawn: nobody tells them apart, and the file would grow by megabytes. */
    private static final int MOST_MARKS = 4000;

    private final Exploration.Result result;
    private final String title;
    /** Rows to draw: the undominated and the best first. */
    private final List<Row> rows;

    private final List<String> series = new ArrayList<>();
    private final int[] seriesOf;
    /** Axes whose values tell series apart: the second and so many that their marks still can be told apart. */
    private final int axesTold;
    /** Figures that are weighed, those that differ between designs first. */
    private final List<Integer> weighed;

    private ExploreChart(Exploration.Result result, String title) {
        this.result = result;
        this.title = title;
        this.rows = result.rows().subList(0, Math.min(MOST_MARKS, result.rows().size()));
        this.seriesOf = new int[rows.size()];
        this.weighed = weighed();
        int told = axes().size();
        while (told > 1 && seriesOf(told).size() > Plot.mostSeries()) {
            told--;
        }
        this.axesTold = told;
        Map<String, Integer> first = seriesOf(told);
        series.addAll(first.keySet());
        series.sort((a, b) -> Integer.compare(first.get(a), first.get(b)));
        Map<String, Integer> places = new HashMap<>();
        for (int s = 0; s < series.size(); s++) {
            places.put(series.get(s), s);
        }
        for (int i = 0; i < rows.size(); i++) {
            seriesOf[i] = places.getOrDefault(otherValues(rows.get(i), told), 0);
        }
    }

    /** The file, UTF-8. */
    public static byte[] write(Exploration.Result result, String title) {
        return new ExploreChart(result, title).bytes();
    }

    /** Series by the values of so many axes, with the first combination of each. */
    private Map<String, Integer> seriesOf(int told) {
        Map<String, Integer> first = new HashMap<>();
        for (Row row : rows) {
            if (Figures.isNumber(row.figures()[0])) {
                first.merge(otherValues(row, told), row.index(), Math::min);
            }
        }
        return first;
    }

    private List<Integer> weighed() {
        List<Integer> differing = new ArrayList<>();
        List<Integer> others = new ArrayList<>();
        for (int column : result.columns().weighed()) {
            Set<Double> values = new HashSet<>();
            for (Row row : rows) {
                if (row.works() && Figures.isNumber(row.figures()[column])) {
                    values.add(row.figures()[column]);
                }
            }
            (values.size() > 1 ? differing : others).add(column);
        }
        // Nobody learns anything from a third figure that is the same everywhere.
        differing.addAll(others.subList(0, Math.max(0, Math.min(others.size(), 2 - differing.size()))));
        return differing;
    }

    /** Values of the axes up to that many, the first one left out. */
    private String otherValues(Row row, int told) {
        StringBuilder name = new StringBuilder();
        for (int a = 1; a < told; a++) {
            name.append(name.length() == 0 ? "" : ", ")
                    .append(axes().get(a).path().within())
                    .append(' ');
            name.append(result.grid().text(row.index(), a));
        }
        return name.toString();
    }

    private List<Axis> axes() {
        return result.grid().axes();
    }

    /** Whether a key says which mark is which. */
    private boolean hasKeys() {
        return series.size() > 1 && !rows.isEmpty() && rows.get(0).works();
    }

    private boolean hasUnjudged() {
        for (Row row : rows) {
            if (row.undominated() && !row.judged()) {
                return true;
            }
        }
        return false;
    }

    private byte[] bytes() {
        boolean two = weighed.size() >= 2;
        int keys = 2 + (hasUnjudged() ? 1 : 0) + (hasKeys() ? series.size() : 0);
        double height = TOP + PLOT_HEIGHT + 60 + LINE * keys + 20;
        double width = LEFT + PLOT_WIDTH + (two ? GAP + PLOT_WIDTH : 0) + 90;
        String of = result.isWhole()
                ? result.grid().size() + ""
                : result.rows().size() + " of " + result.grid().size();
        Chart chart = new Chart(
                width,
                height,
                title + ": what was explored",
                of + " combinations, each checked at " + result.states() + " states; hover over a mark for its place"
                        + (rows.size() < result.rows().size() ? "; the best " + rows.size() + " are drawn" : "")
                        + untold());
        Plot plot = sought(chart);
        if (two) {
            weighed(chart, weighed.get(0), weighed.get(1));
        }
        double y = TOP + PLOT_HEIGHT + 66;
        for (int i = 0; hasKeys() && i < series.size(); i++, y += LINE) {
            plot.key(LEFT, y, Plot.sign(i), Plot.colour(i), series.get(i));
        }
        plot.key(
                LEFT,
                y,
                Plot.Sign.STAR,
                STAR,
                "best trade-offs: none that works is as good in all that is weighed and" + " better in some of it"
                        + third());
        if (hasUnjudged()) {
            y += LINE;
            plot.key(LEFT, y, Plot.Sign.STAR, UNJUDGED, "the same as calculated; not verified on the geometry");
        }
        plot.key(LEFT, y + LINE, Plot.Sign.CROSS, FAILED, "fails a check");
        return chart.toBytes();
    }

    /** Axes whose values look alike. */
    private String untold() {
        StringBuilder words = new StringBuilder();
        for (int a = axesTold; a < axes().size(); a++) {
            words.append(a == axesTold ? "; marks do not tell apart " : ", ")
                    .append(axes().get(a).path().within());
        }
        return words.toString();
    }

    private String third() {
        return weighed.size() > 2 ? " (number beside it: " + name(weighed.get(2)) + ")" : "";
    }

    private String name(int column) {
        return result.columns().all().get(column).shown();
    }

    private String heading(int column) {
        String unit = result.columns().units().get(column);
        return name(column) + (unit.equals("1") ? "" : unit.equals("deg") ? ", °" : ", " + unit);
    }

    private Plot sought(Chart chart) {
        Axis axis = axes().get(0);
        boolean numbers = !axis.numbers().isEmpty();
        String unit = axis.unit().isEmpty() ? "" : ", " + (axis.unit().equals("deg") ? "°" : axis.unit());
        boolean isFigure = axis.path().within().equals(name(0));
        String words = axis.path().within() + (isFigure ? " asked for" : "") + unit;
        Scale x = numbers ? Scale.of(words, axis.numbers()) : Scale.ofWords(words, axis.texts());
        Plot plot = chart.plot(LEFT, TOP, PLOT_WIDTH, PLOT_HEIGHT, x, Scale.of(heading(0), values(0)));
        for (int s = 0; axesTold == axes().size() && s < series.size(); s++) {
            lines(plot, s);
        }
        for (int i = rows.size() - 1; i >= 0; i--) {
            Row row = rows.get(i);
            if (Figures.isNumber(row.figures()[0])) {
                mark(plot, i, at(row), row.figures()[0]);
            }
        }
        return plot;
    }

    private double at(Row row) {
        Axis axis = axes().get(0);
        int place = result.grid().place(row.index(), 0);
        return axis.numbers().isEmpty() ? place : axis.numbers().get(place);
    }

    /** Lines join neighbours on the axis; where one between them does not work the line breaks. */
    private void lines(Plot plot, int wanted) {
        List<Row> own = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (seriesOf[i] == wanted) {
                own.add(rows.get(i));
            }
        }
        own.sort((a, b) -> Double.compare(at(a), at(b)));
        List<double[]> points = new ArrayList<>();
        for (Row row : own) {
            boolean drawn = row.works()
                    && Figures.isNumber(row.figures()[0])
                    && !axes().get(0).numbers().isEmpty();
            if (drawn) {
                points.add(new double[] {at(row), row.figures()[0]});
            }
            if (!drawn || row == own.get(own.size() - 1)) {
                if (points.size() > 1) {
                    plot.line(points, Plot.colour(wanted), false);
                }
                points.clear();
            }
        }
    }

    private void weighed(Chart chart, int across, int up) {
        double left = LEFT + PLOT_WIDTH + GAP;
        Plot plot = chart.plot(
                left,
                TOP,
                PLOT_WIDTH,
                PLOT_HEIGHT,
                Scale.of(heading(across), values(across)),
                Scale.of(heading(up), values(up)));
        for (int i = rows.size() - 1; i >= 0; i--) {
            double[] figures = rows.get(i).figures();
            if (Figures.isNumber(figures[across]) && Figures.isNumber(figures[up])) {
                mark(plot, i, figures[across], figures[up]);
            }
        }
        Set<List<Double>> told = new HashSet<>();
        for (Row row : rows) {
            double[] figures = row.figures();
            boolean stands = row.undominated() && weighed.size() > 2 && Figures.isNumber(figures[across]);
            // Equals lie on one another, and one number is enough for them.
            if (stands && told.add(List.of(figures[across], figures[up], figures[weighed.get(2)]))) {
                plot.label(figures[across], figures[up], Figures.shown(figures[weighed.get(2)]), STAR);
            }
        }
    }

    private void mark(Plot plot, int i, double x, double y) {
        Row row = rows.get(i);
        int shape = seriesOf[i];
        String tip = "place " + (i + 1) + ": " + combination(row) + "; "
                + row.status().label() + " (" + row.judgedBy() + "); " + row.limit();
        if (!row.works()) {
            plot.mark(x, y, Plot.Sign.CROSS, FAILED, tip);
            return;
        }
        plot.mark(x, y, Plot.sign(shape), Plot.colour(shape), tip);
        if (row.undominated()) {
            plot.mark(x, y, Plot.Sign.STAR, row.judged() ? STAR : UNJUDGED, tip);
        }
    }

    private String combination(Row row) {
        StringBuilder words = new StringBuilder();
        for (int a = 0; a < axes().size(); a++) {
            words.append(a == 0 ? "" : ", ")
                    .append(axes().get(a).path().within())
                    .append(' ');
            words.append(result.grid().text(row.index(), a));
        }
        return words.toString();
    }

    private List<Double> values(int column) {
        List<Double> values = new ArrayList<>();
        for (Row row : rows) {
            if (Figures.isNumber(row.figures()[column])) {
                values.add(row.figures()[column]);
            }
        }
        return values;
    }
}
