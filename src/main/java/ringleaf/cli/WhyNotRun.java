// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringleaf.explore.Change;
import ringleaf.explore.ChangePair;
import ringleaf.explore.WhyNot;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;
import ringleaf.report.FindingsText;
import ringleaf.report.Headline;
import ringleaf.report.Wrap;

/** A run of {@code explore --why-not}: the smallest changes that make a spec work. */
final class WhyNotRun {
    private static final int MOST_PAIRS = 5;

    private final Console console;
    private final PrintStream out;
    private final PrintStream err;

    WhyNotRun(Console console) {
        this.console = console;
        out = console.out();
        err = console.err();
    }

    /** Judges as {@code check} does; what fails is told with the changes that would mend it. */
    int run(Asked asked, int threads) {
        Run run = Run.read(asked, console.surroundings(), console.in());
        ShownUnit unit = Told.unit(run.document());
        boolean failed = false;
        try (Interrupt interrupt = Interrupt.watch()) {
            WhyNot whyNot = new WhyNot(run.variants(), asked.states(), threads);
            for (Judged judged : run.judge(run.settled(), List.of(), console.surroundings(), err)) {
                String name = judged.design().name();
                ResultText text = new ResultText(unit);
                if (judged.failed()) {
                    failed = true;
                    text.list(name + " fails", failures(judged, unit));
                    found(changes(whyNot, name, interrupt), interrupt.asked(), text);
                } else {
                    List<String> lines = new ArrayList<>();
                    lines.add("every check holds, calculated and on the geometry");
                    lines.addAll(Headline.decided(judged.design(), unit));
                    text.list(name, lines);
                }
                out.print(text);
            }
            if (failed) {
                out.print(Wrap.of(
                        "",
                        "each solved again and verified on the geometry; per cent of the value, of 1 mm or"
                                + " 10° where it is 0, and another named way counts as 50 %",
                        2));
            }
            out.flush();
            err.flush();
            if (interrupt.asked()) {
                return Exit.INTERRUPTED;
            }
        }
        return failed ? Exit.FAILED : Exit.FINE;
    }

    private WhyNot.Found changes(WhyNot whyNot, String name, Interrupt interrupt) {
        try (Counter counter = Counter.of(name, console.surroundings().errIsTerminal(), err)) {
            return whyNot.changes(
                    name,
                    WhyNot.Effort.FULL,
                    (done, total) -> counter.show(done, total, "changes followed"),
                    interrupt::asked);
        }
    }

    private static void found(WhyNot.Found found, boolean stopped, ResultText text) {
        List<String> lines = new ArrayList<>();
        for (Change change : found.single()) {
            lines.add(change.words(true));
        }
        String soFar = stopped ? ", as far as it was looked for" : "";
        if (!lines.isEmpty()) {
            text.list("what would mend it" + soFar, lines);
            return;
        }
        for (ChangePair pair : found.pairs()) {
            if (lines.size() < MOST_PAIRS) {
                lines.add(pair.words());
            }
        }
        if (lines.isEmpty()) {
            lines.add("the checks above say what is missing");
        }
        text.list(
                "no single change would mend it"
                        + (found.pairs().isEmpty() ? ", and no pair of them" : "; two together" + " would") + soFar,
                lines);
    }

    private static List<String> failures(Judged judged, ShownUnit unit) {
        List<String> lines = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Finding finding : judged.findings()) {
            // What is calculated comes first; the geometry says the same of it.
            if (finding.failed() && (told.add(finding.check()) || finding.judge() == Finding.Judge.CALCULATED)) {
                lines.add(FindingsText.line(finding, unit));
            }
        }
        return lines;
    }
}
