// SPDX-License-Identifier: Apache-2.0
package ringleaf.report.page;

import java.util.List;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;
import ringleaf.report.FindingWords;
import ringleaf.report.Verdict;

/** Findings of a mechanism as markup: what fails first, then what warns, then what passes, folded away. */
final class PageFindings {
    private static final Finding.Status[] ORDER = {Finding.Status.FAIL, Finding.Status.WARN, Finding.Status.PASS};
    /** A mark and a word for each status, so that colour says nothing on its own. */
    private static final String[] MARKS = {"&#10007;", "!", "&#10003;"};

    private static final String[] WORDS = {"failed", "warned", "passed"};

    private final StringBuilder out;
    private final List<Finding> findings;
    private final MechanismPage page;
    private final ShownUnit unit;
    private final int[] counts = new int[ORDER.length];

    PageFindings(StringBuilder out, List<Finding> findings, MechanismPage page) {
        this.out = out;
        this.page = page;
        this.unit = page.unit();
        this.findings = findings;
        for (Finding finding : findings) {
            counts[finding.status() == Finding.Status.FAIL ? 0 : finding.status() == Finding.Status.WARN ? 1 : 2]++;
        }
    }

    /** Index of the worst status: 0 failed, 1 warned, 2 passed. */
    int worst() {
        return counts[0] > 0 ? 0 : counts[1] > 0 ? 1 : 2;
    }

    /** A line that says whether it may be cut, and why. */
    void verdict() {
        String word = ORDER[worst()].label();
        out.append("<p class=\"verdict ").append(word).append("\"><span class=\"mark\" aria-hidden=\"true\">");
        out.append(MARKS[worst()]).append("</span> ");
        String reason = Verdict.of(findings, unit).reason();
        out.append(
                worst() == 0 ? "<strong>Fail: do not cut this.</strong> " : "<strong>Pass: this may be cut.</strong> ");
        PageText.html(out, Character.toUpperCase(reason.charAt(0)) + reason.substring(1))
                .append('.');
        out.append(" <span class=\"counts\">")
                .append(counts[0])
                .append(" failed, ")
                .append(counts[1]);
        out.append(" warned, ").append(counts[2]).append(" passed.</span></p>\n");
    }

    void tables(String id, List<String> remedies) {
        out.append("<section class=\"findings\" aria-labelledby=\"").append(id).append("-findings\">\n<h3 id=\"");
        out.append(id).append("-findings\">Findings</h3>\n");
        if (counts[0] > 0 && !remedies.isEmpty()) {
            out.append("<h4>What would mend it</h4>\n<ul>\n");
            for (String remedy : remedies) {
                PageText.html(out.append("<li>"), remedy).append("</li>\n");
            }
            out.append("</ul>\n");
        }
        for (int i = 0; i < ORDER.length; i++) {
            if (counts[i] > 0) {
                table(i);
            }
        }
        out.append("</section>\n");
    }

    private void table(int status) {
        boolean folded = ORDER[status] == Finding.Status.PASS;
        String caption = counts[status] + (counts[status] == 1 ? " check " : " checks ") + WORDS[status];
        out.append(folded ? "<details><summary>" : "<h4>").append(caption);
        out.append(folded ? "</summary>\n" : "</h4>\n").append("<div class=\"scroll\" tabindex=\"0\" role=\"region\"");
        out.append(" aria-label=\"").append(caption).append("\"><table>\n<thead><tr>");
        for (String column : new String[] {"Check", "See", "Measured", "Limit", "Where", "Judged", "What it says"}) {
            out.append(column.equals("See") ? "<th scope=\"col\" class=\"see\">" : "<th scope=\"col\">");
            out.append(column).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (int i = 0; i < findings.size(); i++) {
            if (findings.get(i).status() == ORDER[status]) {
                row(findings.get(i), MARKS[status]);
            }
        }
        out.append("</tbody></table></div>\n").append(folded ? "</details>\n" : "");
    }

    private void row(Finding finding, String mark) {
        String status = finding.status().label();
        out.append("<tr class=\"").append(status).append('"');
        place(finding);
        PageText.html(out.append(" data-where=\""), FindingWords.where(finding, unit))
                .append("\" data-check=\"");
        PageText.html(out, finding.check()).append("\" data-limit=\"");
        double limit = finding.unit().equals("mm") ? finding.limit() / unit.millimetres() : finding.limit();
        PageText.number(out, limit, 6).append("\"><th scope=\"row\"><span class=\"mark\" aria-hidden=\"true\">");
        out.append(mark).append("</span><span class=\"quiet\">").append(status).append("</span> ");
        PageText.html(out, finding.check())
                .append("</th><td class=\"see\"></td><td class=\"figure\" data-l=\"measured\">");
        PageText.html(out, FindingWords.measured(finding, unit)).append("</td><td class=\"figure\" data-l=\"limit\">");
        PageText.html(out, FindingWords.limit(finding, unit)).append("</td><td class=\"where\" data-l=\"where\">");
        PageText.html(out, FindingWords.where(finding, unit)).append("</td><td data-l=\"judged\">");
        PageText.html(out, FindingWords.judge(finding)).append("</td><td>");
        PageText.html(out, FindingWords.message(finding, unit)).append("</td></tr>\n");
    }

    /** State, point, build step and pieces of the picture, each where there is one. */
    private void place(Finding finding) {
        Finding.Place place = finding.place();
        if (place.state() >= 0) {
            out.append(" data-state=\"").append(place.state()).append('"');
        }
        place.at().ifPresent(p -> {
            PageText.number(out.append(" data-at=\""), p.x(), 3);
            PageText.number(out.append(' '), p.y(), 3).append('"');
        });
        if (place.step() > 0) {
            out.append(" data-step=\"").append(place.step()).append('"');
        }
        numbers(
                "members",
                finding.subjects().stream()
                        .map(page::member)
                        .filter(i -> i >= 0)
                        .toList());
        numbers(
                "parts",
                finding.subjects().stream().map(page::part).filter(i -> i >= 0).toList());
    }

    private void numbers(String name, List<Integer> numbers) {
        if (!numbers.isEmpty()) {
            out.append(" data-").append(name).append("=\"");
            for (int i = 0; i < numbers.size(); i++) {
                out.append(i == 0 ? "" : " ").append(numbers.get(i));
            }
            out.append('"');
        }
    }
}
