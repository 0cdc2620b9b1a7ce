// SPDX-License-Identifier: Apache-2.0
package ringleaf.explore;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;
import ringleaf.draw.chart.Chart;
import ringleaf.draw.chart.Plot;
import ringleaf.draw.chart.Scale;

/**
 * Measures what a combination costs against blades and states, by {@link ExploreBenchmark}, and draws it. Arguments: a
 * file of measurements, the picture, and then either {@code redraw}, which measures nothing and draws the file, or what
 * JMH's command line takes, such as {@code -wi 1 -i 1} for a quick look.
 */
public final class CostChart {
    private static final String[] BLADES = {"8", "12", "16", "24", "32", "48"};
    private static final String[] STATES = {"31", "121", "181"};
    private static final int BLADES_BESIDE_STATES = 16;
    private static final int STATES_BESIDE_BLADES = 61;
    private static final String HEAD = "grid,pin,blades,states,per_second,least,most";

    private static final double LEFT = 70;
    private static final double TOP = 110;
    private static final double SIZE = 340;
    private static final double GAP = 120;
    private static final double LINE = 18;

    private CostChart() {}

    /** Cost of one combination: mean of the iterations, the best and the worst of them, ms. */
    private record Cost(String grid, String pin, int blades, int states, double mean, double least, double most) {
        String series() {
            return grid + "/" + pin;
        }
    }

    /** Measures and draws. */
    public static void main(String[] args) throws IOException, RunnerException, CommandLineOptionException {
        Path table = Path.of(args[0]);
        Path picture = Path.of(args[1]);
        String[] more = Arrays.copyOfRange(args, 2, args.length);
        if (!Arrays.equals(more, new String[] {"redraw"})) {
            Options given = new CommandLineOptions(more);
            List<RunResult> results = new ArrayList<>();
            results.addAll(measured(given, BLADES, STATES_BESIDE_BLADES + ""));
            results.addAll(measured(given, new String[] {BLADES_BESIDE_STATES + ""}, STATES));
            Files.createDirectories(table.toAbsolutePath().getParent());
            Files.writeString(table, table(results));
        }
        Files.write(picture, drawn(read(Files.readAllLines(table))));
    }

    private static Collection<RunResult> measured(Options given, String[] blades, String... states)
            throws RunnerException {
        String name = ExploreBenchmark.class.getName();
        return new Runner(new OptionsBuilder()
                        .parent(given)
                        .include("^" + name + ".alone$")
                        .include("^" + name + ".shared$")
                        .param("blades", blades)
                        .param("states", states)
                        .shouldFailOnError(true)
                        .build())
                .run();
    }

    private static String table(List<RunResult> results) {
        StringBuilder text = new StringBuilder(HEAD + '\n');
        for (RunResult result : results) {
            String full = result.getParams().getBenchmark();
            Statistics all = result.getPrimaryResult().getStatistics();
            text.append(full.substring(full.lastIndexOf('.') + 1));
            for (String name : List.of("pin", "blades", "states")) {
                text.append(',').append(result.getParams().getParam(name));
            }
            for (double rate : new double[] {all.getMean(), all.getMin(), all.getMax()}) {
                text.append(',')
                        .append(
                                String.format(Locale.ROOT, "%.3g", rate).contains("e")
                                        ? Math.round(rate)
                                        : String.format(Locale.ROOT, "%.3g", rate));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static List<Cost> read(List<String> lines) {
        if (!lines.get(0).equals(HEAD)) {
            throw new IllegalArgumentException("not a table of " + HEAD);
        }
        List<Cost> costs = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            costs.add(new Cost(
                    cells[0],
                    cells[1],
                    Integer.parseInt(cells[2]),
                    Integer.parseInt(cells[3]),
                    1000 / Double.parseDouble(cells[4]),
                    1000 / Double.parseDouble(cells[6]),
                    1000 / Double.parseDouble(cells[5])));
        }
        return costs;
    }

    private static byte[] drawn(List<Cost> costs) {
        List<String> series = List.of("alone/any", "alone/far-end", "shared/any", "shared/far-end");
        List<String> words = List.of(
                "each combination solved anew, layout of the pin left open",
                "each solved anew, pin at the far end",
                "twenty combinations share their blades, layout left open",
                "twenty share their blades, pin at the far end");
        double width = LEFT + 2 * SIZE + GAP + 60;
        Chart chart = new Chart(
                width,
                TOP + SIZE + 70 + LINE * series.size() + 30,
                "explore: what a combination costs",
                "ms on two threads, warm; both axes logarithmic; bars: best and worst measurement");
        Plot blades = plot(chart, LEFT, "blades, at " + STATES_BESIDE_BLADES + " states", costs, true);
        Plot states = plot(chart, LEFT + SIZE + GAP, "states, with " + BLADES_BESIDE_STATES + " blades", costs, false);
        for (int s = 0; s < series.size(); s++) {
            line(blades, series.get(s), s, costs, true);
            line(states, series.get(s), s, costs, false);
            blades.key(LEFT, TOP + SIZE + 70 + LINE * s, Plot.sign(s), Plot.colour(s), words.get(s));
        }
        return chart.toBytes();
    }

    private static Plot plot(Chart chart, double left, String title, List<Cost> costs, boolean againstBlades) {
        List<Double> across = new ArrayList<>();
        List<Double> up = new ArrayList<>();
        for (Cost cost : costs) {
            up.addAll(List.of(cost.least(), cost.most()));
            if (isOn(cost, againstBlades) && !across.contains(place(cost, againstBlades))) {
                across.add(place(cost, againstBlades));
            }
        }
        across.sort(null);
        return chart.plot(
                left,
                TOP,
                SIZE,
                SIZE,
                Scale.ofRatios(title, across).withTicks(across),
                Scale.ofRatios("ms a combination", up));
    }

    private static boolean isOn(Cost cost, boolean againstBlades) {
        return againstBlades ? cost.states() == STATES_BESIDE_BLADES : cost.blades() == BLADES_BESIDE_STATES;
    }

    private static double place(Cost cost, boolean againstBlades) {
        return againstBlades ? cost.blades() : cost.states();
    }

    private static void line(Plot plot, String series, int s, List<Cost> costs, boolean againstBlades) {
        List<double[]> points = new ArrayList<>();
        for (Cost cost : costs) {
            if (cost.series().equals(series) && isOn(cost, againstBlades)) {
                double x = place(cost, againstBlades);
                points.add(new double[] {x, cost.mean()});
                plot.line(
                        List.of(new double[] {x, cost.least()}, new double[] {x, cost.most()}), Plot.colour(s), false);
                plot.mark(x, cost.mean(), Plot.sign(s), Plot.colour(s), "");
            }
        }
        points.sort((a, b) -> Double.compare(a[0], b[0]));
        plot.line(points, Plot.colour(s), false);
    }
}
