package ringleaf.cli;

import java.io.PrintStream;
import java.util.List;
import ringleaf.report.FindingsText;

/** Findings and remedies on standard error. */
final class FindingsOut {
    private FindingsOut() {}

    /** Prints what was found in every mechanism, and after what failed the nearest changes that would fit. */
    static void print(List<Judged> all, boolean colour, PrintStream err) {
        for (Judged judged : all) {
            if (all.size() > 1) {
                err.print(judged.design().name() + "\n");
            }
            err.print(FindingsText.of(judged.findings(), colour));
            List<String> remedies = judged.failed() ? judged.design().remedies() : List.of();
            if (!remedies.isEmpty()) {
                err.print("what would fit\n");
                for (String remedy : remedies) {
                    err.print("  " + remedy + "\n");
                }
            }
        }
        err.flush();
    }
}
