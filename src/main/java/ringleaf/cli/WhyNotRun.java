package ringleaf.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import ringleaf.explore.Change;
import ringleaf.explore.Variants;
import ringleaf.explore.WhyNot;
import ringleaf.part.Design;
import ringleaf.part.Finding;
import ringleaf.report.FindingsText;
import ringleaf.spec.text.Problem;
import ringleaf.spec.text.Problems;

/** A run of {@code explore --why-not}: the smallest changes that make a spec work. */
final class WhyNotRun {
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
                String name = variant.document().orElseThrow().mechanisms().get(i).name();
                Design design = variant.planned().get(i).design(asked.states());
                ResultText text = new ResultText();
                if (!new Judged(design, design.findings()).failed()) {
                    text.list(name, List.of("every closed-form check holds"));
                } else {
                    failed = true;
                    text.list(name + " fails", failures(design));
                    List<Change> changes = changes(whyNot, name, interrupt);
                    List<String> lines = new ArrayList<>();
                    for (Change change : changes) {
                        lines.add(change.words(true));
                    }
                    text.list(interrupt.asked() ? "what would fit, as far as it was looked for" : "what would fit",
                            lines.isEmpty() ? List.of("no single change does; the checks above say what is missing")
                                    : lines);
                }
                out.print(text);
            }
            if (failed) {
                out.print("each alone, every check solved again; per cent of the value, of 1 mm or 10° where it is 0,"
                        + " and another named way counts as 50 %\n");
            }
            out.flush();
            err.flush();
        }
        return failed ? Exit.FAILED : Exit.FINE;
    }

    private List<Change> changes(WhyNot whyNot, String name, Interrupt interrupt) {
        try (Counter counter = Counter.of(name, console.surroundings().errIsTerminal(), err)) {
            return whyNot.changes(name, (done, total) -> counter.show(done, total, "fields tried"), interrupt::asked);
        }
    }

    private static List<String> failures(Design design) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : design.findings()) {
            if (finding.failed()) {
                lines.add(FindingsText.line(finding));
            }
        }
        return lines;
    }
}
