package ringleaf.report;

import java.util.List;
import ringleaf.draw.PlainText;
import ringleaf.part.Finding;

/** Findings as a table for people: what fails first, then what warns, then what passes. */
public final class FindingsText {
    private static final Finding.Status[] ORDER = {Finding.Status.FAIL, Finding.Status.WARN, Finding.Status.PASS};
    private static final String RESET = "\u001b[0m";

    private FindingsText() {}

    /**
     * The table, a line for each finding and a line of words under each that does not pass; ends with a count.
     *
     * @param colour whether escape codes for a terminal may be used
     */
    public static String of(List<Finding> findings, boolean colour) {
        int check = 5;
        int measured = 8;
        int limit = 5;
        for (Finding finding : findings) {
            check = Math.max(check, PlainText.line(finding.check()).length());
            measured = Math.max(measured, measured(finding).length());
            limit = Math.max(limit, limit(finding).length());
        }
        StringBuilder out = new StringBuilder();
        out.append("      ");
        pad(out, "check", check);
        pad(out, "measured", measured);
        pad(out, "limit", limit);
        out.append("where\n");
        int[] counts = new int[ORDER.length];
        for (int i = 0; i < ORDER.length; i++) {
            for (Finding finding : findings) {
                if (finding.status() != ORDER[i]) {
                    continue;
                }
                counts[i]++;
                String row = row(finding, check, measured, limit);
                out.append(colour ? code(ORDER[i]) : "").append(ORDER[i].label());
                out.append(colour ? RESET : "").append("  ").append(row).append('\n');
                if (ORDER[i] != Finding.Status.PASS) {
                    out.append("      ").append(PlainText.line(finding.message())).append('\n');
                }
            }
        }
        out.append(counts[0]).append(" failed, ").append(counts[1]).append(" warned, ");
        return out.append(counts[2]).append(" passed\n").toString();
    }

    /** One finding in one line. */
    public static String line(Finding finding) {
        return PlainText.line(finding.check()) + ": " + measured(finding) + " against " + limit(finding) + ", "
                + FindingWords.where(finding) + ": " + PlainText.line(finding.message());
    }

    private static String row(Finding finding, int check, int measured, int limit) {
        StringBuilder row = new StringBuilder();
        pad(row, PlainText.line(finding.check()), check);
        pad(row, measured(finding), measured);
        pad(row, limit(finding), limit);
        row.append(FindingWords.where(finding));
        int end = row.length();
        while (end > 0 && row.charAt(end - 1) == ' ') {
            end--;
        }
        return row.substring(0, end);
    }

    private static String measured(Finding finding) {
        return FindingWords.measured(finding);
    }

    private static String limit(Finding finding) {
        return FindingWords.limit(finding);
    }

    private static void pad(StringBuilder out, String text, int width) {
        out.append(text);
        for (int i = text.length(); i < width + 2; i++) {
            out.append(' ');
        }
    }

    private static String code(Finding.Status status) {
        return switch (status) {
            case FAIL -> "\u001b[1;31m";
            case WARN -> "\u001b[33m";
            case PASS -> "\u001b[32m";
        };
    }
}
