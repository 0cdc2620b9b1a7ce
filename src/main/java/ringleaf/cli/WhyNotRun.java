// SPDX-License-Identifier: Apache-2.0
package ringleaf.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import ringleaf.explore.Change;
import ringleaf.explore.ChangePair;
import ringleaf.explore.Variants;
import ringleaf.explore.WhyNot;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.part.ShownUnit;
import ringleaf.report.FindingsText;
import ringleaf.report.Wrap;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;

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

    int run(Asked asked, int threads) {
        Problems problems = new Problems();
        Variants variants = AskedVariants.of(asked, console, problems).variants();
        Variants.Variant variant = variants.reader().read(List.of());
        for (Problem problem : variant.problems()) {
            problems.at(problem.place(), problem.reason(), problem.hint());
        }
        problems.throwIfAny();
        boolean failed = false;
        try (Interrupt interrupt = Interrupt.watch()) {
            WhyNot whyNot = new WhyNot(variants, asked.states(), threads);
            for (int i = 0; i < variant.planned().size(); i++) {
                String name =
                        variant.document().orElseThrow().mechanisms().get(i).name();
                Design design = variant.planned().get(i).design(asked.states());
                ShownUnit unit = Told.unit(variant.document().orElseThrow());
                ResultText text = new ResultText(unit);
                if (!new Judged(design, design.findings()).failed()) {
                    text.list(name, List.of("every calculated check holds"));
                } else {
                    failed = true;
                    text.list(name + " fails", failures(design, unit));
                    found(changes(whyNot, name, interrupt), interrupt.asked(), text);
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

    private static List<String> failures(Design design, ShownUnit unit) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : design.findings()) {
            if (finding.failed()) {
                lines.add(FindingsText.line(finding, unit));
            }
        }
        return lines;
    }
}
