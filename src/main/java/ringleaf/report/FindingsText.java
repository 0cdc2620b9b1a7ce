// SPDX-License-Identifier: Apache-2.0
package ringleaf.report;

import java.util.ArrayList;
import java.util.List;
import ringleaf.draw.PlainText;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;

/** Findings for people on a terminal: what fails first, then what warns, then what passes. */
public final class FindingsText {
    private static final Finding.Status[] ORDER = {Finding.Status.FAIL, Finding.Status.WARN, Finding.Status.PASS};
    private static final String RESET = "\u001b[0m";
    private static final int INDENT = 6;
    /** More that fails than this is no longer read; the table has all. */
    private static final int BRIEFLY = 8;

    private final ShownUnit unit;
    private final boolean colour;
    private final StringBuilder out = new StringBuilder(4096);

    private FindingsText(ShownUnit unit, boolean colour) {
        this.unit = unit;
        this.colour = colour;
    }

    /**
     * What does not pass, the worst first, each with its figures and what it says; empty when all pass.
     *
     * @param colour whether escape codes for a terminal may be used
     */
    public static String brief(List<Finding> findings, ShownUnit unit, boolean colour) {
        FindingsText text = new FindingsText(unit, colour);
        Verdict verdict = Verdict.of(findings, unit);
        for (Finding.Status status : List.of(Finding.Status.FAIL, Finding.Status.WARN)) {
            text.some(verdict.with(status), status);
        }
        return text.out.toString();
    }

    private void some(List<Finding> found, Finding.Status status) {
        List<Finding> all = new ArrayList<>();
        for (Finding finding : found) {
            if (all.stream().noneMatch(other -> isSame(other, finding))) {
                all.add(finding);
            }
        }
        for (Finding finding : all.subList(0, Math.min(BRIEFLY, all.size()))) {
            status(status);
            boolean bare = Double.isNaN(finding.measured()) && Double.isNaN(finding.limit());
            String where = FindingWords.where(finding, unit);
            String figures =
                    (bare ? "" : " " + FindingWords.measured(finding, unit) + ", " + FindingWords.limit(finding, unit))
                            + (where.isEmpty() ? "" : ": " + where);
            boolean both = found.stream().anyMatch(other -> other.judge() != finding.judge() && isSame(other, finding));
            String judge = both ? "calculated, and on the geometry" : FindingWords.judge(finding);
            String head = PlainText.line(finding.check()) + figures + " (" + judge + ")";
            // The status before it takes four columns, and escape codes none.
            out.append(Wrap.of(" ".repeat(INDENT), head, INDENT).substring(INDENT - 2));
            out.append(Wrap.of(" ".repeat(INDENT), FindingWords.message(finding, unit), INDENT));
        }
        int more = all.size() - BRIEFLY;
        if (more > 0) {
            out.append(" ".repeat(INDENT)).append("and ").append(more).append(" more\n");
        }
    }

    /** Whether two judges found the same of the same thing. */
    private boolean isSame(Finding one, Finding other) {
        return !Double.isNaN(one.measured())
                && one.check().equals(other.check())
                && one.judge() != other.judge()
                && FindingWords.measured(one, unit).equals(FindingWords.measured(other, unit))
                && FindingWords.limit(one, unit).equals(FindingWords.limit(other, unit));
    }

    private void status(Finding.Status status) {
        out.append(colour ? code(status) : "").append(status.label()).append(colour ? RESET : "");
    }

    /**
     * The table, a line for each finding and a line of words under each that does not pass; ends with a count.
     *
     * @param colour whether escape codes for a terminal may be used
     */
    public static String of(List<Finding> findings, ShownUnit unit, boolean colour) {
        FindingsText text = new FindingsText(unit, colour);
        text.table(findings);
        return text.out.toString();
    }

    private void table(List<Finding> findings) {
        List<String> head = List.of("check", "measured", "limit", "judged", "where");
        int[] widths = new int[head.size()];
        List<List<String>> rows = new ArrayList<>();
        fit(head, widths);
        for (Finding finding : findings) {
            rows.add(List.of(
                    PlainText.line(finding.check()),
                    FindingWords.measured(finding, unit),
                    FindingWords.limit(finding, unit),
                    FindingWords.judge(finding),
                    FindingWords.where(finding, unit)));
            fit(rows.get(rows.size() - 1), widths);
        }
        out.append(" ".repeat(INDENT));
        row(head, widths);
        int[] counts = new int[ORDER.length];
        for (int i = 0; i < ORDER.length; i++) {
            for (int k = 0; k < findings.size(); k++) {
                if (findings.get(k).status() == ORDER[i]) {
                    counts[i]++;
                    status(ORDER[i]);
                    out.append("  ");
                    row(rows.get(k), widths);
                    if (ORDER[i] != Finding.Status.PASS) {
                        out.append(Wrap.of(" ".repeat(INDENT), FindingWords.message(findings.get(k), unit), INDENT));
                    }
                }
            }
        }
        out.append(counts[0]).append(" failed, ").append(counts[1]).append(" warned, ");
        out.append(counts[2]).append(" passed\n");
    }

    private static void fit(List<String> row, int[] widths) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], row.get(i).length());
        }
    }

    private void row(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }

    /** One finding in one line. */
    public static String line(Finding finding, ShownUnit unit) {
        return PlainText.line(finding.check()) + ": " + FindingWords.measured(finding, unit) + " against "
                + FindingWords.limit(finding, unit) + ", " + FindingWords.where(finding, unit) + ": "
                + FindingWords.message(finding, unit);
    }

    private static String code(Finding.Status status) {
        return switch (status) {
            case FAIL -> "\u001b[1;31m";
            case WARN -> "\u001b[33m";
            case PASS -> "\u001b[32m";
        };
    }
}
