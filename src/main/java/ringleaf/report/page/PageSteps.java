// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import java.util.ArrayList;
import java.util.List;
import ringleaf.geom.Point;
import ringleaf.part.Assembly;
import ringleaf.part.BuildStep;
import ringleaf.part.Built;
import ringleaf.part.Finding;
import ringleaf.part.Placing;
import ringleaf.part.ShownUnit;
import ringleaf.part.Way;
import ringleaf.report.FindingWords;

/**
 * The build order as markup. Each step carries the numbers of the members that come now and of those they come to, and
 * where something is glued; the page's script draws the pictures from them.
 */
final class PageSteps {
    private final StringBuilder out;
    private final Assembly assembly;
    private final List<Finding> findings;
    private final ShownUnit unit;

    /** {@code findings} that speak of a step stand with it. */
    PageSteps(StringBuilder out, Assembly assembly, List<Finding> findings, ShownUnit unit) {
        this.out = out;
        this.assembly = assembly;
        this.findings = findings;
        this.unit = unit;
    }

    void list() {
        out.append("<ol class=\"steps\">\n");
        Built built = new Built(assembly.members().size());
        boolean[] shown = new boolean[assembly.members().size()];
        int number = 0;
        for (BuildStep step : assembly.steps()) {
            number++;
            boolean[] coming = new boolean[shown.length];
            if (!step.placings().isEmpty()) {
                shown = join(step, built, coming);
            }
            step(number, step, coming, shown);
        }
        out.append("</ol>\n");
    }

    /**
     * Joins what the step brings; gives the members of the pieces that it works on and marks those that come. Of pieces
     * that are alike, as blades that all get their pins, only the first is shown.
     */
    private boolean[] join(BuildStep step, Built built, boolean[] coming) {
        for (Placing placing : step.placings()) {
            for (int member : built.moving(placing)) {
                coming[member] = true;
            }
            built.join(placing);
        }
        boolean[] shown = new boolean[coming.length];
        boolean[] seen = new boolean[coming.length];
        List<List<String>> kinds = new ArrayList<>();
        for (Placing placing : step.placings()) {
            int first = placing.members().get(0);
            if (!seen[first]) {
                List<Integer> piece = built.with(first);
                List<String> parts = new ArrayList<>();
                for (int member : piece) {
                    seen[member] = true;
                    parts.add(assembly.members().get(member).part().name());
                }
                boolean fresh = !kinds.contains(parts);
                kinds.add(parts);
                for (int member : piece) {
                    shown[member] = fresh;
                    coming[member] &= fresh;
                }
            }
        }
        return shown;
    }

    private void step(int number, BuildStep step, boolean[] coming, boolean[] shown) {
        numbers(out.append("<li data-add=\""), coming);
        numbers(out.append("\" data-here=\""), shown);
        out.append("\" data-glue=\"");
        for (BuildStep.Glue glue : step.glue()) {
            for (Point point : glue.at()) {
                PageText.number(out, point.x(), 2).append(' ');
                PageText.number(out, -point.y(), 2).append(' ');
            }
        }
        PageText.html(out.append("\"><p>"), unit.text(step.words())).append("</p>");
        String ways = ways(step);
        if (!ways.isEmpty()) {
            PageText.html(out.append("<p class=\"quiet\">"), ways).append("</p>");
        }
        for (BuildStep.Glue glue : step.glue()) {
            out.append("<p class=\"quiet\"><span class=\"drop\" aria-hidden=\"true\"></span> Glue, solder or press: ");
            PageText.html(out, unit.text(glue.words())).append(".</p>");
        }
        for (Finding finding : findings) {
            if (finding.failed() && finding.place().step() == number) {
                PageText.html(
                        out.append("<p class=\"note\"><span aria-hidden=\"true\">&#10007;</span> "),
                        FindingWords.message(finding, unit));
                out.append("</p>");
            }
        }
        out.append("</li>\n");
    }

    private static void numbers(StringBuilder out, boolean[] members) {
        boolean begun = false;
        for (int i = 0; i < members.length; i++) {
            if (members[i]) {
                out.append(begun ? " " : "").append(i);
                begun = true;
            }
        }
    }

    /** Which parts come, and from where: {@code From above: cover, base-plate.} */
    private String ways(BuildStep step) {
        List<String> from = new ArrayList<>();
        List<List<String>> parts = new ArrayList<>();
        for (Placing placing : step.placings()) {
            String way = words(placing.way());
            int at = from.indexOf(way);
            if (at < 0) {
                at = from.size();
                from.add(way);
                parts.add(new ArrayList<>());
            }
            for (int member : placing.members()) {
                String part = assembly.members().get(member).part().name();
                if (!parts.get(at).contains(part)) {
                    parts.get(at).add(part);
                }
            }
        }
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < from.size(); i++) {
            words.append(i == 0 ? "" : " ").append(from.get(i)).append(": ");
            words.append(String.join(", ", parts.get(i))).append('.');
        }
        return words.toString();
    }

    private static String words(Way way) {
        if (way instanceof Way.Straight straight) {
            return straight.fromAbove() ? "From above" : "From below";
        }
        if (way instanceof Way.Threaded) {
            return "Under those laid first, their tips lifted";
        }
        if (way instanceof Way.Across) {
            return "Along the plane";
        }
        return way instanceof Way.Aside
                ? "Down beside its place and sideways into it"
                : "With slack, round what is there";
    }
}
