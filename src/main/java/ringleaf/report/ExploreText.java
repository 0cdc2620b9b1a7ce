// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.PlainText;
import ringleaf.explore.Axis;
import ringleaf.explore.Column;
import ringleaf.explore.Exploration;
import ringleaf.explore.Row;
import ringleaf.part.ShownUnit;

/** The best of an exploration as a table for people. */
public final class ExploreText {
    private static final int MOST_LIMIT = 90;
    /** Rows that fail are shown only where none works. */
    private static final int MOST_FAILING = 5;

    private final Exploration.Result result;
    private final ShownUnit unit;
    private final List<List<String>> lines = new ArrayList<>();

    private ExploreText(Exploration.Result result, ShownUnit unit) {
        this.result = result;
        this.unit = unit;
    }

    /** The table with what it says above and below it, lengths in this unit. */
    public static String of(Exploration.Result result, ShownUnit unit) {
        return new ExploreText(result, unit).text();
    }

    private String text() {
        int works = 0;
        int against = 0;
        int refused = 0;
        for (Row row : result.rows()) {
            works += row.works() ? 1 : 0;
            against += row.status() == Row.Status.CONTRADICTS ? 1 : 0;
            refused += row.status() == Row.Status.FAILS && !row.solved() ? 1 : 0;
        }
        int failing = result.rows().size() - works - against;
        StringBuilder out = new StringBuilder(4096);
        int all = result.grid().size();
        out.append(result.isWhole() ? "" : result.rows().size() + " of ").append(all);
        out.append(all == 1 ? " combination" : " combinations").append(" at ").append(result.states());
        out.append(" states: ").append(works).append(works == 1 ? " works" : " work");
        out.append(failing == 0 ? "" : ", " + failing + (failing == 1 ? " fails" : " fail"));
        out.append(refused == 0 ? "" : " (" + refused + " as calculated at once)");
        out.append(against == 0 ? "" : ", " + against + (against == 1 ? " is inconsistent" : " are inconsistent"));
        out.append("; sorted by ").append(result.columns().sought().shown()).append('\n');
        List<Row> rows = result.shown().isEmpty()
                ? result.rows().subList(0, Math.min(MOST_FAILING, result.rows().size()))
                : result.shown();
        table(rows, works > 0, out);
        if (against > 0) {
            out.append("inconsistent, e.g. ").append(example()).append('\n');
        }
        if (works > 0) {
            out.append("* best trade-offs: none that works is as good in ")
                    .append(weighed())
                    .append(" and better in ");
            out.append(result.columns().weighed().size() > 1 ? "one of them\n" : "it\n");
            if (result.unjudged() > 0) {
                out.append(
                        "NOT verified: only calculated, nobody has looked at the geometry yet; `ringleaf check` does\n");
            }
        }
        return out.toString();
    }

    /** The first combination that contradicts itself, with the reason. */
    private String example() {
        for (Row row : result.rows()) {
            if (row.status() == Row.Status.CONTRADICTS) {
                return unit.text(PlainText.line(row.limit()));
            }
        }
        return "";
    }

    private String weighed() {
        StringBuilder words = new StringBuilder();
        List<Integer> weighed = result.columns().weighed();
        for (int i = 0; i < weighed.size(); i++) {
            words.append(i == 0 ? "" : i == weighed.size() - 1 ? " and " : ", ");
            words.append(result.columns().all().get(weighed.get(i)).shown());
        }
        return words.toString();
    }

    private void table(List<Row> rows, boolean works, StringBuilder out) {
        List<String> head = new ArrayList<>(List.of("#"));
        for (Axis axis : result.grid().axes()) {
            String name = result.columns().mechanisms().size() == 1
                    ? axis.path().within()
                    : axis.path().shown();
            head.add(isColumn(name, rows) ? name + " asked" : name);
        }
        for (int c = 0; c < result.columns().all().size(); c++) {
            if (!isRepeated(c, rows)) {
                head.add(result.columns().all().get(c).shown());
            }
        }
        for (Column way : result.columns().ways()) {
            head.add(way.shown());
        }
        if (result.unjudged() > 0) {
            head.add("geometry");
        }
        head.add(works ? "limited by" : "fails by");
        lines.add(head);
        for (Row row : rows) {
            lines.add(line(row, rows));
        }
        int[] widths = new int[head.size()];
        for (List<String> line : lines) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], line.get(i).length());
            }
        }
        for (List<String> line : lines) {
            StringBuilder text = new StringBuilder("  ");
            for (int i = 0; i < widths.length; i++) {
                String cell = line.get(i);
                boolean last = i == widths.length - 1;
                String pad = last ? "" : " ".repeat(widths[i] - cell.length());
                text.append(i == 0 ? pad + cell : cell + pad).append(last ? "" : "  ");
            }
            out.append(text.toString().stripTrailing()).append('\n');
        }
    }

    private boolean isColumn(String name, List<Row> rows) {
        for (int c = 0; c < result.columns().all().size(); c++) {
            if (result.columns().all().get(c).shown().equals(name) && !isRepeated(c, rows)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a figure is what was asked for in every row, and stands there already. */
    private boolean isRepeated(int column, List<Row> rows) {
        for (int a = 0; a < result.grid().axes().size(); a++) {
            Axis axis = result.grid().axes().get(a);
            if (!axis.numbers().isEmpty()
                    && axis.path()
                            .within()
                            .equals(result.columns().all().get(column).name())) {
                boolean same = true;
                for (Row row : rows) {
                    double asked = axis.numbers().get(result.grid().place(row.index(), a));
                    double figure = row.figures()[column];
                    same &= !Figures.isNumber(figure) || Math.abs(figure - asked) < 1e-9;
                }
                return same;
            }
        }
        return false;
    }

    private List<String> line(Row row, List<Row> rows) {
        List<String> line = new ArrayList<>();
        line.add((row.undominated() ? "* " : "") + result.rank(row));
        for (int a = 0; a < result.grid().axes().size(); a++) {
            line.add(PlainText.line(result.grid().text(row.index(), a)));
        }
        for (int c = 0; c < row.figures().length; c++) {
            double figure = row.figures()[c];
            if (isRepeated(c, rows)) {
                continue;
            }
            line.add(
                    Figures.isNumber(figure)
                            ? shown(figure, result.columns().units().get(c))
                            : "-");
        }
        line.addAll(row.ways());
        if (result.unjudged() > 0) {
            line.add(row.judged() ? "verified" : "NOT verified");
        }
        String limit = unit.text(PlainText.line(row.limit()));
        line.add(limit.length() > MOST_LIMIT ? limit.substring(0, MOST_LIMIT) + "…" : limit);
        return line;
    }

    private String shown(double figure, String of) {
        if (of.equals("s") && figure >= 60) {
            long seconds = Math.round(figure);
            return seconds / 60 + " min " + seconds % 60 + " s";
        }
        return unit.figure(figure, of);
    }
}
